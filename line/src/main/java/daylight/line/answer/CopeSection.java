package daylight.line.answer;

import daylight.line.book.Catalogue;
import daylight.line.book.Material;
import daylight.line.book.Place;
import daylight.line.book.Priors;
import daylight.line.book.Reach;
import daylight.line.course.PlacedFinding;
import daylight.line.course.Run;
import daylight.line.fall.FallStretch;
import daylight.line.fall.Faller;
import daylight.line.flow.FlowTables;
import daylight.line.flow.FrictionLaw;
import daylight.line.flow.GravityPipe;
import daylight.line.flow.Water;
import daylight.line.measure.Measured;
import daylight.line.measure.Reading;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A section of a reach with one bore and one material, and how it falls from end to end. A dip
 * within it is for "Does it drain": water that fills a pipe runs through a dip.
 *
 * @param run the reach
 * @param fall from its upper to its lower end
 * @param pipe as the flow room takes it
 * @param wall how rough its material is, with the source
 * @param narrowed what was measured to take most of the section; null where nothing was
 */
record CopeSection(
    Run run,
    FallStretch fall,
    GravityPipe pipe,
    FlowTables.Wall wall,
    @Nullable PlacedFinding narrowed) {
  /**
   * Shorter pieces of another bore or material make no section of their own, metres; common
   * practice.
   */
  private static final double SHORTEST = 0.5;

  private static final String SHARE = "share";

  /**
   * A share that fills all is held for nearly all: something may always seep by; common practice.
   */
  private static final double LEAST_FREE = 0.01;

  /** A change on the way: what the pipe is from there on. */
  private record Change(double at, @Nullable Measured bore, @Nullable Material material) {}

  /** The sections of a reach, with the water; none where its bore or heights are not known. */
  static List<CopeSection> of(Case one, Run run) {
    Reading written = run.reach().bore();
    if (written == null || !(written.value() > 0) || run.stations().size() < 2) {
      return List.of();
    }
    double sd = one.rules().priors().sd(Priors.Kind.BORE, written);
    Measured bore = new Measured(written.value(), sd);
    Material material = run.reach().material();
    double end = run.stations().getLast().place().distance();
    List<CopeSection> sections = new ArrayList<>();
    double from = 0;
    for (Change change : changes(one, run)) {
      if (change.at() - from >= SHORTEST && end - change.at() >= SHORTEST) {
        section(one, run, from, change.at(), bore, material).ifPresent(sections::add);
        from = change.at();
      }
      bore = change.bore() == null ? bore : change.bore();
      material = change.material() == null ? material : change.material();
    }
    section(one, run, from, end, bore, material).ifPresent(sections::add);
    return sections;
  }

  private static List<Change> changes(Case one, Run run) {
    List<Change> changes = new ArrayList<>();
    for (PlacedFinding placed : one.findings()) {
      if (placed.from().reach().equals(run.reach().label())) {
        double at = placed.from().distance();
        Reading bore = placed.finding().quantities().get("becomes");
        String word = placed.finding().words().get("becomes");
        switch (placed.finding().kind()) {
          case "bore-change" -> {
            if (bore != null && bore.value() > 0) {
              double sd = one.rules().priors().sd(Priors.Kind.BORE, bore);
              changes.add(new Change(at, new Measured(bore.value(), sd), null));
            }
          }
          case "material-change" -> changes.add(new Change(at, null, material(word)));
          default -> {}
        }
      }
    }
    changes.sort(Comparator.comparingDouble(Change::at));
    return changes;
  }

  /** A word that names no material is an unknown one. */
  private static Material material(@Nullable String word) {
    String wanted = word == null ? "" : word.strip().toLowerCase(Locale.ROOT).replace(' ', '-');
    for (Material one : Material.values()) {
      if (one.name().toLowerCase(Locale.ROOT).replace('_', '-').equals(wanted)) {
        return one;
      }
    }
    return Material.UNKNOWN;
  }

  private static Optional<CopeSection> section(
      Case one, Run run, double from, double to, Measured bore, Material material) {
    FlowTables.Wall wall = wall(one.rules().flow(), material);
    PlacedFinding narrowed = narrowed(one, run, from, to);
    double free = narrowed == null ? 1 : Math.max(LEAST_FREE, 1 - share(narrowed));
    return Faller.between(one.line(), run.at(from), run.at(to), one.rules().fall())
        .map(
            fall ->
                new CopeSection(
                    run,
                    fall,
                    new GravityPipe(
                        bore,
                        fall.slope(),
                        wall.roughness(),
                        free,
                        Water.viscosity(Water.USUAL_CELSIUS)),
                    wall,
                    narrowed));
  }

  private static FlowTables.Wall wall(FlowTables tables, Material material) {
    return tables
        .wall(material, FlowTables.State.USED, FrictionLaw.MANNING)
        .or(() -> tables.wall(Material.UNKNOWN, FlowTables.State.USED, FrictionLaw.MANNING))
        .orElseThrow(() -> new IllegalStateException("no row of an unknown wall"));
  }

  /** What takes most of the section, of what was measured; water itself takes nothing. */
  private static @Nullable PlacedFinding narrowed(Case one, Run run, double from, double to) {
    return one.findings(Catalogue.Bears.OPERATION).stream()
        .filter(placed -> placed.from().reach().equals(run.reach().label()))
        .filter(placed -> !placed.finding().kind().endsWith("-water"))
        .filter(placed -> share(placed) > 0)
        .filter(placed -> placed.from().distance() < to && end(placed) >= from)
        .max(Comparator.comparingDouble(CopeSection::share))
        .orElse(null);
  }

  private static double end(PlacedFinding placed) {
    Place to = placed.to();
    return to == null ? placed.from().distance() : to.distance();
  }

  private static double share(PlacedFinding placed) {
    Reading share = placed.finding().quantities().get(SHARE);
    return share == null ? 0 : share.value();
  }

  Reach reach() {
    return run.reach();
  }
}
