package daylight.line.dig;

import daylight.line.survey.Covariance2;
import daylight.line.survey.PlanPoint;
import java.util.Arrays;
import java.util.List;

/**
 * How far a normally distributed spot lies from a line of straight pieces or from a point, taken
 * from equally likely places of it: rings of equal probability, each with places at equal angles,
 * every ring turned against the one before.
 */
final class Distances {
  private static final int RINGS = 240;
  private static final int PLACES = 180;

  /** Turns rings against each other so that no place hides another: π·(3 − √5). */
  private static final double TURN = Math.PI * (3 - Math.sqrt(5));

  private static final double LEAST_SD = 1e-6;

  private final double[] sorted;

  private Distances(double[] sorted) {
    this.sorted = sorted;
  }

  /**
   * @param line one point or several
   */
  static Distances of(PlanPoint mean, Covariance2 covariance, List<PlanPoint> line) {
    Cholesky factor = Cholesky.of(covariance, LEAST_SD);
    double[] distances = new double[RINGS * PLACES];
    for (int ring = 0; ring < RINGS; ring++) {
      double r = Math.sqrt(-2 * StrictMath.log1p(-(ring + 0.5) / RINGS));
      for (int k = 0; k < PLACES; k++) {
        double angle = ring * TURN + 2 * Math.PI * k / PLACES;
        Vector off = factor.times(r * StrictMath.cos(angle), r * StrictMath.sin(angle));
        PlanPoint spot = new PlanPoint(mean.x() + off.x(), mean.y() + off.y());
        distances[ring * PLACES + k] = to(spot, line);
      }
    }
    Arrays.sort(distances);
    return new Distances(distances);
  }

  /** The distance from a spot to the nearest place of a line or to a point. */
  static double to(PlanPoint spot, List<PlanPoint> line) {
    double least = spot.distanceTo(line.getFirst());
    for (int i = 1; i < line.size(); i++) {
      least = Math.min(least, to(spot, line.get(i - 1), line.get(i)));
    }
    return least;
  }

  private static double to(PlanPoint spot, PlanPoint a, PlanPoint b) {
    Vector piece = Vector.between(a, b);
    double squared = piece.dot(piece);
    double share = squared > 0 ? Math.clamp(Vector.between(a, spot).dot(piece) / squared, 0, 1) : 0;
    return spot.distanceTo(new PlanPoint(a.x() + share * piece.x(), a.y() + share * piece.y()));
  }

  /** The distance that is not reached with that probability, between 0 and 1. */
  double quantile(double probability) {
    int at = (int) Math.floor(probability * sorted.length);
    return sorted[Math.clamp(at, 0, sorted.length - 1)];
  }

  /** The probability that the spot is nearer than that. */
  double nearer(double limit) {
    int below = 0;
    while (below < sorted.length && sorted[below] < limit) {
      below++;
    }
    // Beyond the last place of all there is still a little left.
    return (below + 0.5) / (sorted.length + 1);
  }
}
