package daylight.line.fall;

import daylight.line.book.Place;
import daylight.line.book.Reach;
import daylight.line.course.Line;
import daylight.line.course.LocateFit;
import daylight.line.course.PlacedFinding;
import daylight.line.course.Run;
import daylight.line.measure.Measured;
import daylight.line.measure.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The door of this room: how the invert falls, stretch by stretch, and where water stood.
 *
 * <p>A stretch runs from one place whose depth or level was measured to the next, because between
 * them nothing was; and from end to end of each reach. Slope is drop over length along the pipe;
 * its uncertainty comes from the joint covariance of both ends, so errors they share cancel.
 */
public final class Faller {
  /**
   * Places nearer to each other than this make no stretch of their own, metres; common practice.
   */
  private static final double SHORTEST = 1.5;

  private final Line line;
  private final FallRules rules;

  private Faller(Line line, FallRules rules) {
    this.line = line;
    this.rules = rules;
  }

  /**
   * The fall of every reach whose heights are known.
   *
   * @param line what was estimated
   * @param visit the label of the visit whose water counts
   * @param rules the table of smallest slopes
   */
  public static Fall of(Line line, String visit, FallRules rules) {
    Faller faller = new Faller(line, rules);
    List<FallStretch> stretches = new ArrayList<>();
    for (Run run : line.runs()) {
      faller.stretches(run, stretches);
    }
    List<PlacedFinding> standing =
        line.findings().stream()
            .filter(placed -> placed.visit().equals(visit))
            .filter(placed -> placed.finding().kind().equals("standing-water"))
            .toList();
    List<WaterSeen> water = new ArrayList<>();
    if (!standing.isEmpty()) {
      WaterWeigher weigher = new WaterWeigher(line, visit, Ponder.dry(line, Draws.USUAL));
      standing.forEach(placed -> water.add(faller.water(placed, weigher.held(placed))));
    }
    return new Fall(stretches, water, Ponder.of(line, Draws.USUAL));
  }

  private void stretches(Run run, List<FallStretch> into) {
    if (run.stations().size() < 2) {
      return;
    }
    double length = run.stations().getLast().place().distance();
    add(run, 0, length, true, into);
    List<Double> supports = supports(run, length);
    if (supports.size() > 2) {
      for (int i = 1; i < supports.size(); i++) {
        add(run, supports.get(i - 1), supports.get(i), false, into);
      }
    }
  }

  private List<Double> supports(Run run, double length) {
    List<Double> measured =
        line.locates().stream()
            .filter(fit -> fit.depth() != null)
            .map(LocateFit::place)
            .filter(place -> place.reach().equals(run.reach().label()))
            .map(Place::distance)
            .sorted()
            .toList();
    List<Double> supports = new ArrayList<>(List.of(0.0));
    for (double distance : measured) {
      if (distance - supports.getLast() >= SHORTEST && length - distance >= SHORTEST) {
        supports.add(distance);
      }
    }
    supports.add(length);
    return supports;
  }

  /**
   * The fall from one place of a reach to another, downstream of it.
   *
   * @return empty where heights are not known there, or the second is not downstream of the first
   *     on the same reach
   */
  public static Optional<FallStretch> between(Line line, Place from, Place to, FallRules rules) {
    return from.reach().equals(to.reach())
        ? line.findRun(from.reach())
            .flatMap(
                run -> new Faller(line, rules).stretch(run, from.distance(), to.distance(), false))
        : Optional.empty();
  }

  private void add(Run run, double from, double to, boolean whole, List<FallStretch> into) {
    stretch(run, from, to, whole).ifPresent(into::add);
  }

  private Optional<FallStretch> stretch(Run run, double from, double to, boolean whole) {
    Optional<Measured> drop = line.fall(run.at(from), run.at(to));
    if (drop.isEmpty() || to <= from) {
      return Optional.empty();
    }
    Measured slope = drop.get().times(1 / (to - from));
    FallLimit limit = limit(run.reach());
    boolean flows = !(run.reach().water() instanceof Reach.Water.Unknown);
    return Optional.of(
        new FallStretch(
            run.at(from),
            run.at(to),
            whole,
            drop.get(),
            slope,
            limit,
            limit == null ? null : flatter(slope, limit.slope(), flows),
            flows ? slope.probabilityBelow(0) : 0));
  }

  /** Where nobody knows which way the water goes, a fall either way will do. */
  private static double flatter(Measured slope, double limit, boolean flows) {
    double below = slope.probabilityBelow(limit);
    return flows ? below : Math.max(0, below - slope.probabilityBelow(-limit));
  }

  private @Nullable FallLimit limit(Reach reach) {
    Reading bore = reach.bore();
    return rules.limit(bore == null ? null : bore.value(), reach.use()).orElse(null);
  }

  private WaterSeen water(PlacedFinding placed, Held held) {
    Reading depth = placed.finding().quantities().get("depth");
    Reading share = placed.finding().quantities().get("share");
    Reading bore = line.findRun(placed.from().reach()).map(run -> run.reach().bore()).orElse(null);
    Double filled = share == null ? null : share.value();
    Measured deep = null;
    if (depth != null) {
      deep = new Measured(depth.value(), sd(depth, 0.01));
    } else if (filled != null && bore != null) {
      deep = new Measured(filled * bore.value(), 0.05 * bore.value());
    }
    if (filled == null && depth != null && bore != null) {
      filled = Math.min(1, depth.value() / bore.value());
    }
    String still = placed.finding().words().get("still");
    return new WaterSeen(
        placed.finding().label(),
        placed.from(),
        placed.to(),
        deep,
        filled,
        still == null ? null : still.equalsIgnoreCase("yes"),
        held);
  }

  /** Water judged from a picture is judged to about a centimetre; common practice, no source. */
  private static double sd(Reading reading, double otherwise) {
    Double stated = reading.sd();
    return stated != null ? stated : otherwise;
  }
}
