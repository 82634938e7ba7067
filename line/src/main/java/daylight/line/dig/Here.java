package daylight.line.dig;

import daylight.line.book.Place;
import daylight.line.course.Line;
import daylight.line.course.Run;
import daylight.line.course.Station;
import daylight.line.measure.Measured;
import daylight.line.survey.Covariance2;
import daylight.line.survey.PlanPoint;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The pipe at one place between two stations.
 *
 * @param slack how far along the pipe the place itself may be off, metres; 0 for a given distance
 */
record Here(
    Place place,
    PlanPoint spot,
    Covariance2 spread,
    double bearing,
    @Nullable Measured depth,
    double slack) {
  /** A place this far beyond either end is taken for the end, metres. */
  private static final double BEYOND = 0.05;

  /** Where that place is; empty where the course has no such place. */
  static Optional<Here> of(Line line, Place place, double slack) {
    List<Station> stations = line.findRun(place.reach()).map(Run::stations).orElse(List.of());
    double d = place.distance();
    if (stations.size() < 2
        || d < stations.getFirst().place().distance() - BEYOND
        || d > stations.getLast().place().distance() + BEYOND) {
      return Optional.empty();
    }
    int i = 1;
    while (i < stations.size() - 1 && stations.get(i).place().distance() < d) {
      i++;
    }
    return Optional.of(between(stations.get(i - 1), stations.get(i), place, slack));
  }

  private static Here between(Station a, Station b, Place place, double slack) {
    double span = b.place().distance() - a.place().distance();
    double share = span > 0 ? (place.distance() - a.place().distance()) / span : 0;
    double t = Math.clamp(share, 0, 1);
    Vector step = Vector.between(a.spot(), b.spot());
    double bearing = step.length() > 0 ? a.spot().bearingTo(b.spot()) : a.bearing();
    Covariance2 spread = mixed(a.spread(), b.spread(), t);
    Measured depth = null;
    if (a.depth() != null && b.depth() != null) {
      depth =
          new Measured(
              mixed(a.depth().value(), b.depth().value(), t),
              mixed(a.depth().sd(), b.depth().sd(), t));
    }
    return new Here(
        place,
        new PlanPoint(mixed(a.spot().x(), b.spot().x(), t), mixed(a.spot().y(), b.spot().y(), t)),
        Vector.sum(spread, Vector.of(bearing).along(slack * slack)),
        bearing,
        depth,
        slack);
  }

  private static double mixed(double a, double b, double t) {
    return (1 - t) * a + t * b;
  }

  private static Covariance2 mixed(Covariance2 a, Covariance2 b, double t) {
    return new Covariance2(
        mixed(a.xx(), b.xx(), t),
        mixed(a.xy(), b.xy(), t),
        mixed(a.yx(), b.yx(), t),
        mixed(a.yy(), b.yy(), t));
  }

  /** The covariance of the vector from a landmark to here; of the grid where it has none. */
  Covariance2 from(Line line, String landmark) {
    return line.relative(place, landmark)
        .map(c -> Vector.sum(c, Vector.of(bearing).along(slack * slack)))
        .orElse(spread);
  }
}
