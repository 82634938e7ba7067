package daylight.line.course;

import daylight.line.book.Place;
import daylight.line.counter.Tracks;
import daylight.line.measure.Measured;
import daylight.line.survey.Covariance2;
import daylight.line.survey.ErrorEllipse;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * How often stated regions hold the truth, over many lines, one place on each drawn evenly over its
 * length; and how wide they have to be for it.
 */
final class Calibration {
  /** The probabilities that regions are tried at. */
  static final double[] LEVELS = {0.50, 0.80, 0.95, 0.99};

  /** Of the standard normal distribution: half-widths of the central intervals of those levels. */
  private static final double[] NORMAL = {0.674490, 1.281552, 1.959964, 2.575829};

  private final List<Trial> trials = new ArrayList<>();
  private int unanswered;

  /**
   * One place of one line.
   *
   * @param squared squared distance in plan from the truth, in units of the stated covariance
   * @param size longest half-axis of the stated 95 % region, metres
   * @param away along the pipe to the nearest locate, metres
   * @param across by how much the truth lies beside the estimate, square to the pipe
   * @param along the same in the direction of the pipe
   * @param depth by how much the truth is deeper; null where no depth is stated
   */
  record Trial(
      LineSort sort,
      double squared,
      double size,
      double away,
      Off across,
      Off along,
      @Nullable Off depth) {

    /** Whether the region in plan of the level of that index holds the truth. */
    boolean planHolds(int level) {
      return squared <= -2 * StrictMath.log1p(-LEVELS[level]);
    }
  }

  /** An error and the standard uncertainty stated for it, metres. */
  record Off(double by, double sd) {
    boolean holds(int level) {
      return Math.abs(by) <= NORMAL[level] * sd;
    }

    /**
     * The interval score at 95 %: the width, and 2/0.05 times how far the truth lies outside.
     * Source: Gneiting and Raftery, Strictly proper scoring rules, prediction, and estimation
     * (2007), section 6.2 (from memory, gneiting-raftery-2007).
     */
    double score() {
      double half = NORMAL[2] * sd;
      return 2 * half + 40 * Math.max(0, Math.abs(by) - half);
    }
  }

  /** How many of how many. */
  record Share(int held, int of) {
    double value() {
      return (double) held / of;
    }
  }

  /**
   * Estimates one line and tries one place of it. A reach of which only the start is located is
   * honestly not placed: then another place is drawn.
   */
  void add(KnownProperty property, SplitMix64 random) {
    add(property, Estimator.estimate(property.book(), Tracks.NONE, KnownProperty.PRIORS), random);
  }

  /** The same of a line that was estimated already. */
  void add(KnownProperty property, Line line, SplitMix64 random) {
    if (line.runs().stream().noneMatch(run -> run.path() instanceof Run.Path.Found)) {
      unanswered++;
      return;
    }
    while (true) {
      Place drawn = property.drawnPlace(random);
      if (line.findRun(drawn.reach()).orElseThrow().path() instanceof Run.Path.Found found) {
        trials.add(trial(property, found.nearest(drawn.distance())));
        return;
      }
    }
  }

  private static Trial trial(KnownProperty property, Station station) {
    Tools.Spot spot = property.spot(station.place());
    TruePipe.At truth = property.truth(spot);
    double e = truth.east() - station.spot().x();
    double n = truth.north() - station.spot().y();
    double bearing = station.bearing();
    double sine = StrictMath.sin(bearing);
    double cosine = StrictMath.cos(bearing);
    Measured depth = station.depth();
    return new Trial(
        property.plan().sort(),
        squared(station.spread(), e, n),
        ErrorEllipse.of(station.spread(), 0.95).semiMajor(),
        property.located().stream()
            .mapToDouble(one -> one.spot().awayFrom(spot))
            .min()
            .orElseThrow(),
        new Off(cosine * e - sine * n, station.across()),
        new Off(sine * e + cosine * n, station.along(bearing)),
        depth == null ? null : new Off(truth.ground() - truth.up() - depth.value(), depth.sd()));
  }

  /** Squared length of a vector in units of a covariance. */
  static double squared(Covariance2 c, double e, double n) {
    double determinant = c.xx() * c.yy() - c.xy() * c.yx();
    return (c.yy() * e * e - (c.xy() + c.yx()) * e * n + c.xx() * n * n) / determinant;
  }

  List<Trial> trials() {
    return List.copyOf(trials);
  }

  /** Lines of which the estimate placed nothing. */
  int unanswered() {
    return unanswered;
  }

  Share plan(int level, Predicate<Trial> which) {
    List<Trial> all = trials.stream().filter(which).toList();
    return new Share((int) all.stream().filter(t -> t.planHolds(level)).count(), all.size());
  }

  Share depth(int level, Predicate<Trial> which) {
    int held = 0;
    int of = 0;
    for (Trial trial : trials) {
      Off depth = trial.depth();
      if (depth != null && which.test(trial)) {
        of++;
        held += depth.holds(level) ? 1 : 0;
      }
    }
    return new Share(held, of);
  }

  /** The mean interval score of a figure at 95 %, metres. */
  double score(java.util.function.Function<Trial, @Nullable Off> figure, Predicate<Trial> which) {
    return trials.stream()
        .filter(which)
        .map(figure)
        .filter(off -> off != null)
        .mapToDouble(off -> Known.known(off).score())
        .average()
        .orElse(Double.NaN);
  }

  /** The trials in three parts of equal number, by rising value. */
  List<Predicate<Trial>> thirds(ToDoubleFunction<Trial> by) {
    double[] sorted =
        trials.stream().sorted(Comparator.comparingDouble(by)).mapToDouble(by).toArray();
    double low = sorted[sorted.length / 3];
    double high = sorted[2 * sorted.length / 3];
    return List.of(
        t -> by.applyAsDouble(t) < low,
        t -> by.applyAsDouble(t) >= low && by.applyAsDouble(t) < high,
        t -> by.applyAsDouble(t) >= high);
  }

  /** The stated standard uncertainty of the depth; 0 where none is stated. */
  static double depthSize(Trial trial) {
    Off depth = trial.depth();
    return depth == null ? 0 : depth.sd();
  }
}
