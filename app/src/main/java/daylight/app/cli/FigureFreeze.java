package daylight.app.cli;

import daylight.line.book.Priors;
import daylight.line.frost.Around;
import daylight.line.frost.FreezeTime;
import daylight.line.frost.Freezing;
import daylight.line.frost.StandingWater;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Measured;
import daylight.line.measure.Reading;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** How long water that stands in a pipe takes to freeze. */
@Command(
    name = "freeze",
    mixinStandardHelpOptions = true,
    description = {
      "How long water that stands in a pipe takes to freeze, at the least.",
      "",
      "First until it is at its freezing point, then until it is ice. Round the pipe lies either a",
      "layer, with the air's cold outside it, or the ground, with the cold of the ground at the pipe's",
      "depth. Water that runs does not freeze so."
    })
final class FigureFreeze extends SondeFigure {
  /** Half of the 95 % interval of a temperature that was typed, kelvin; common practice. */
  private static final double DEGREES = 1;

  /** Standard uncertainty of a conductivity that was typed, a share; common practice. */
  private static final double CONDUCTS = 0.1;

  @Option(names = "--bore", paramLabel = "LENGTH", description = "Inside diameter of the pipe.")
  private @Nullable String bore;

  @Option(
      names = "--outside-diameter",
      paramLabel = "LENGTH",
      description = "Outside diameter of the pipe; the bore where not given.")
  private @Nullable String outside;

  @Option(
      names = "--water",
      paramLabel = "LENGTH",
      description = "How deep the water stands in it; full where not given.")
  private @Nullable String water;

  @Option(
      names = "--water-temperature",
      paramLabel = "TEMPERATURE",
      description = "How warm it is at first: 42 °F.")
  private @Nullable String warm;

  @Option(
      names = "--outside",
      paramLabel = "TEMPERATURE",
      description = "The air's, or that of the ground at the pipe's depth: 20 °F.")
  private @Nullable String cold;

  @Option(
      names = "--insulation",
      paramLabel = "LENGTH",
      description = "How thick the layer round the pipe is.")
  private @Nullable String layer;

  @Option(
      names = "--depth",
      paramLabel = "LENGTH",
      description = "How deep the middle of the pipe lies in the ground, in place of --insulation.")
  private @Nullable String depth;

  @Option(
      names = "--conductivity",
      paramLabel = "CONDUCTIVITY",
      description = "Of the layer or of the ground: 0.025 Btu/hftF, 1.3 W/mK.")
  private @Nullable String conductivity;

  @Override
  @Nullable Figured figured(Given given, Priors priors) {
    given.need("--bore", bore);
    given.need("--water-temperature", warm);
    given.need("--outside", cold);
    given.need("--conductivity", conductivity);
    Reading inside = given.positiveLength("--bore", bore);
    Reading stands = given.positiveLength("--water", water);
    Reading first =
        positive(
            given,
            "--water-temperature",
            given.quantity(Dimension.TEMPERATURE, "--water-temperature", warm));
    Reading air = given.quantity(Dimension.TEMPERATURE, "--outside", cold);
    Reading outer = given.positiveLength("--outside-diameter", outside);
    if (inside != null && outer != null && outer.value() < inside.value()) {
      given.complain("--outside-diameter", "figure.freeze.thinner", Given.text(outer.written()));
    }
    Around around = around(given, priors, inside, outer);
    if (inside == null || first == null || air == null || around == null || !given.sound()) {
      return null;
    }
    Measured in = new Measured(inside.value(), priors.sd(Priors.Kind.BORE, inside));
    Measured deep =
        stands == null
            ? null
            : new Measured(stands.value(), priors.sd(Priors.Kind.WATER_DEPTH, stands));
    StandingWater standing = StandingWater.in(in, deep, degrees(first));
    return told(Freezing.time(standing, around, degrees(air)), depth != null);
  }

  private static @Nullable Reading positive(
      Given given, String option, @Nullable Reading temperature) {
    if (temperature != null && !(temperature.value() > 0)) {
      given.complain(option, "figure.freeze.frozen", Given.text(temperature.written()));
      return null;
    }
    return temperature;
  }

  private @Nullable Around around(
      Given given, Priors priors, @Nullable Reading inside, @Nullable Reading outer) {
    if ((layer == null) == (depth == null)) {
      given.complain("--insulation", "figure.freeze.one-around");
    }
    Reading thick = given.positiveLength("--insulation", layer);
    Reading below = given.positiveLength("--depth", depth);
    Reading conducts =
        given.positive(
            "--conductivity",
            given.quantity(Dimension.CONDUCTIVITY, "--conductivity", conductivity));
    if (inside == null || conducts == null || (thick == null && below == null)) {
      return null;
    }
    double across = outer == null ? inside.value() : Math.max(inside.value(), outer.value());
    Measured k = new Measured(conducts.value(), CONDUCTS * conducts.value());
    if (thick != null) {
      double sd = 2 * priors.sd(Priors.Kind.BORE, thick);
      return new Around.Insulated(across, new Measured(across + 2 * thick.value(), sd), k);
    }
    if (below == null || below.value() <= across / 2) {
      given.complain("--depth", "figure.freeze.above", Given.text(String.valueOf(depth)));
      return null;
    }
    double sd = priors.sd(Priors.Kind.EXPOSURE, below);
    return new Around.Buried(new Measured(below.value(), sd), across / 2, k);
  }

  private static Measured degrees(Reading temperature) {
    Double stated = temperature.sd();
    return new Measured(temperature.value(), stated == null ? DEGREES / Measured.Z95 : stated);
  }

  private static Figured told(FreezeTime time, boolean buried) {
    Figured figured = new Figured("freeze");
    switch (time) {
      case FreezeTime.Never() -> figured.saying("never");
      case FreezeTime.Freezes(Measured cooling, Measured solid, Measured whole) -> {
        figured.with("cooling", duration(cooling.value()), off(cooling));
        figured.with("solid", duration(solid.value()), off(solid));
        figured.with("whole", duration(whole.value()), off(whole));
      }
    }
    figured.saying(buried ? "left-out-buried" : "left-out");
    figured.saying("usual-doubt", new Argument.Quantity(Dimension.SHARE, Measured.Z95 * CONDUCTS));
    figured.saying("source");
    return figured.saying("caution");
  }

  private static Argument off(Measured time) {
    return duration(Measured.Z95 * time.sd());
  }

  private static Argument duration(double seconds) {
    return new Argument.Quantity(Dimension.DURATION, seconds);
  }
}
