package daylight.report.draw;

import daylight.line.book.Reach;
import daylight.line.course.Route;
import daylight.line.course.Run;
import daylight.line.course.Station;
import daylight.line.measure.Measured;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Heights along a route, as far as they are known.
 *
 * @param known what the heights are
 * @param samples by rising distance; none when nothing is known
 */
record Profile(Known known, List<Sample> samples) {
  /** From here up the height of the ground is called less sure: standard uncertainty in metres. */
  private static final double LESS_SURE = 0.04;

  Profile {
    samples = List.copyOf(samples);
  }

  /** What is known of the heights. */
  enum Known {
    /** Heights above the site datum. */
    HEIGHTS,
    /** Only how deep the pipe lies; the ground is drawn level. */
    DEPTHS,
    NOTHING
  }

  /**
   * One place on the route.
   *
   * @param x distance from the start, metres
   * @param ground height, metres
   * @param bottom height of the inside bottom with its uncertainty, metres
   * @param bore inside diameter, metres; null when not recorded
   * @param sure whether the height of the ground is well known there
   */
  record Sample(double x, double ground, Measured bottom, @Nullable Double bore, boolean sure) {}

  static Profile along(Route route) {
    List<Sample> heights = new ArrayList<>();
    List<Sample> depths = new ArrayList<>();
    double before = 0;
    for (Run run : route.runs()) {
      Double bore = bore(run.reach());
      for (Station station : run.stations()) {
        double x = before + station.place().distance();
        Measured ground = station.ground();
        Measured invert = station.invert();
        Measured depth = station.depth();
        if (ground != null && invert != null) {
          boolean sure = ground.sd() < LESS_SURE;
          heights.add(new Sample(x, ground.value(), invert, bore, sure));
        }
        if (depth != null) {
          depths.add(new Sample(x, 0, new Measured(-depth.value(), depth.sd()), bore, false));
        }
      }
      before = route.station(run.at(0)).orElse(before) + end(run);
    }
    if (heights.size() > 1) {
      return new Profile(Known.HEIGHTS, heights);
    }
    return depths.size() > 1
        ? new Profile(Known.DEPTHS, depths)
        : new Profile(Known.NOTHING, List.of());
  }

  private static double end(Run run) {
    return run.stations().isEmpty()
        ? run.length() == null ? 0 : run.length().value()
        : run.stations().getLast().place().distance();
  }

  private static @Nullable Double bore(Reach reach) {
    return reach.bore() == null ? null : Double.valueOf(reach.bore().value());
  }

  /** The sample nearest to a distance. */
  Sample nearest(double x) {
    Sample best = samples.getFirst();
    for (Sample sample : samples) {
      if (Math.abs(sample.x() - x) < Math.abs(best.x() - x)) {
        best = sample;
      }
    }
    return best;
  }

  /** Ground and bottom at a distance, between the samples about it. */
  Sample at(double x) {
    for (int i = 1; i < samples.size(); i++) {
      Sample a = samples.get(i - 1);
      Sample b = samples.get(i);
      if (x <= b.x() && b.x() > a.x()) {
        double t = Math.clamp((x - a.x()) / (b.x() - a.x()), 0.0, 1.0);
        Measured bottom =
            new Measured(
                a.bottom().value() + t * (b.bottom().value() - a.bottom().value()),
                a.bottom().sd() + t * (b.bottom().sd() - a.bottom().sd()));
        return new Sample(
            x, a.ground() + t * (b.ground() - a.ground()), bottom, a.bore(), a.sure());
      }
    }
    return samples.getLast();
  }
}
