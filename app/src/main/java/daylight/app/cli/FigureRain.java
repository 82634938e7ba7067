package daylight.app.cli;

import daylight.archive.Bundled;
import daylight.archive.DataReader;
import daylight.line.book.Priors;
import daylight.line.flow.FlowInput;
import daylight.line.flow.FlowTables;
import daylight.line.flow.Propagated;
import daylight.line.flow.Rain;
import daylight.line.measure.Dimension;
import daylight.line.measure.Measured;
import daylight.line.measure.Reading;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** What rain and fixtures bring. */
@Command(
    name = "rain",
    mixinStandardHelpOptions = true,
    description = {
      "What rain off roofs and paving brings, and fixtures with it.",
      "",
      "By the rational method: the share that runs off, times the rain, times the area seen from above.",
      "Good for areas so small that all of them drain at once. Fixtures add what each gives at most, as",
      "if all ran together."
    })
final class FigureRain extends SondeFigure {
  /** How far off what was given without its doubt may be, of itself; common practice. */
  private static final double AREA_OFF = 0.05;

  private static final double RAIN_OFF = 0.1;

  @Option(
      names = "--roof",
      paramLabel = "AREA",
      description = "A roof or paved area, seen from above; give it again for another.")
  private List<String> roofs = List.of();

  @Option(names = "--rain", paramLabel = "RAINFALL", description = "How hard it rains: 2 in/h.")
  private @Nullable String rain;

  @Option(
      names = "--rain-give-or-take",
      paramLabel = "RAINFALL",
      description = "How far off that may be, 19 times of 20; default: 20 %%.")
  private @Nullable String rainOff;

  @Option(
      names = "--surface",
      paramLabel = "SURFACE",
      description = "roof, asphalt, concrete, brick, gravel or lawn; default: roof.")
  private @Nullable String surface;

  @Option(
      names = "--runoff",
      paramLabel = "SHARE",
      description = "The share that runs off, in place of --surface.")
  private @Nullable String runoff;

  @Option(
      names = "--fixture",
      paramLabel = "FLOW",
      description = "What a fixture gives at most; give it again for another.")
  private List<String> fixtures = List.of();

  @Option(
      names = "--flow-data",
      paramLabel = "FILE",
      description = "Figures of your own in place of those of Daylight.")
  private @Nullable Path data;

  @Override
  @Nullable Figured figured(Given given, Priors priors) {
    Path own = data;
    FlowTables tables =
        own == null
            ? Bundled.flow()
            : FigureChoices.taken(given, "--flow-data", DataReader.flow(own), Bundled.flow());
    List<FlowTables.Origin> origins = new ArrayList<>();
    Measured share = share(given, tables, origins);
    List<Rain.Catch> areas = areas(given, share);
    Measured falls = falls(given);
    List<Propagated> parts = new ArrayList<>();
    for (String text : fixtures) {
      Reading flow = given.positive("--fixture", given.quantity(Dimension.FLOW, "--fixture", text));
      if (flow != null) {
        Measured gives = new Measured(flow.value(), RAIN_OFF * flow.value());
        parts.add(Propagated.measured(FlowInput.FIXTURES, "", gives));
      }
    }
    if (roofs.isEmpty() && fixtures.isEmpty()) {
      given.complain("--roof", "figure.rain.nothing");
    }
    if (!given.sound() || (falls == null && !roofs.isEmpty())) {
      return null;
    }
    Figured figured = new Figured("rain");
    FlowTold told = new FlowTold(figured);
    if (falls != null && !areas.isEmpty()) {
      Propagated off = Rain.of(areas, falls);
      told.with("off", Dimension.FLOW, off.value());
      parts.addFirst(off);
    }
    Propagated all = Propagated.sum(parts);
    told.with("all", Dimension.FLOW, all.value()).decides(all).origins(origins);
    return figured.saying("usual-doubt").saying("caution");
  }

  private List<Rain.Catch> areas(Given given, @Nullable Measured share) {
    List<Rain.Catch> areas = new ArrayList<>();
    for (String text : roofs) {
      Reading area = given.positive("--roof", given.quantity(Dimension.AREA, "--roof", text));
      if (area != null && share != null) {
        Measured seen = new Measured(area.value(), AREA_OFF * area.value());
        areas.add(new Rain.Catch(text, seen, share));
      }
    }
    return areas;
  }

  private @Nullable Measured falls(Given given) {
    if (!roofs.isEmpty()) {
      given.need("--rain", rain);
    }
    Reading falls = given.positive("--rain", given.quantity(Dimension.RAINFALL, "--rain", rain));
    Reading off =
        given.positive(
            "--rain-give-or-take",
            given.quantity(Dimension.RAINFALL, "--rain-give-or-take", rainOff));
    return falls == null
        ? null
        : new Measured(falls.value(), given.sd(off, RAIN_OFF * falls.value()));
  }

  private @Nullable Measured share(
      Given given, FlowTables tables, List<FlowTables.Origin> origins) {
    if (surface != null && runoff != null) {
      given.complain("--runoff", "figure.rain.one-share");
    }
    Reading runs = given.positive("--runoff", given.quantity(Dimension.SHARE, "--runoff", runoff));
    if (runoff != null) {
      return runs == null ? null : new Measured(runs.value(), AREA_OFF * runs.value());
    }
    String named = surface == null ? "roof" : surface;
    Optional<FlowTables.Surface> row = tables.surface(named);
    if (row.isEmpty()) {
      List<String> known = tables.surfaces().stream().map(FlowTables.Surface::id).toList();
      PipeChoices.notAmong(given, "--surface", named, known);
      return null;
    }
    if (!roofs.isEmpty()) {
      origins.add(row.get().origin());
    }
    return row.get().runoff();
  }
}
