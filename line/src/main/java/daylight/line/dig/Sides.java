package daylight.line.dig;

import daylight.line.survey.Covariance2;
import daylight.line.survey.PlanPoint;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.special.Erf;

/**
 * The probability that a normally distributed spot lies to the left of a line of several straight
 * pieces, the first and the last of which run on for ever.
 *
 * <p>The spot is made standard normal by the inverse of a Cholesky factor, which keeps left left.
 * Then 2π·P = Σ ∫ (1 − e^(−r²/2)) dθ over the pieces as seen from the mean, θ growing leftward and
 * r being how far the piece is at that angle, and what is left open far away on the left counts
 * with its angle. With h the distance to the line of a piece, r = h/cos φ, and ∫ e^(−r²/2) dφ from
 * 0 is 2π·T(h, tan φ), Owen's function. For a single straight line this is Φ(distance/σ). Source:
 * Owen, Tables for computing bivariate normal probabilities (1956), T and its rule for a &gt; 1
 * (from memory, owen-1956); the sum over the pieces is derived from it.
 */
final class Sides {
  /** A spot that is nowhere certain to less than this, metres, so that it has a covariance. */
  private static final double LEAST_SD = 1e-6;

  /** Nothing measured excludes a side altogether. */
  private static final double LEAST = 1e-12;

  /** How many parts an angle of at most 45° is cut into for Gauss's rule of five points. */
  private static final int PARTS = 8;

  private static final double[] NODES = {
    -0.906179845938664, -0.538469310105683, 0, 0.538469310105683, 0.906179845938664
  };
  private static final double[] WEIGHTS = {
    0.236926885056189, 0.478628670499366, 0.568888888888889, 0.478628670499366, 0.236926885056189
  };

  private Sides() {}

  /**
   * @param line at least two points, in the order in which it is walked
   */
  static double left(PlanPoint mean, Covariance2 covariance, List<PlanPoint> line) {
    List<Vector> seen = whitened(mean, covariance, line);
    Vector first = difference(seen.get(1), seen.getFirst());
    Vector last = difference(seen.getLast(), seen.get(seen.size() - 2));
    double sum = closing(first, last);
    int n = seen.size();
    for (int i = 0; i < n - 1; i++) {
      Vector a = seen.get(i);
      Vector direction = difference(seen.get(i + 1), a).unit();
      double h = a.cross(direction);
      double from = i == 0 ? Double.NEGATIVE_INFINITY : a.dot(direction);
      double to = i == n - 2 ? Double.POSITIVE_INFINITY : seen.get(i + 1).dot(direction);
      double seen0 = StrictMath.atan2(from, Math.abs(h)) - within(Math.abs(h), from);
      double seen1 = StrictMath.atan2(to, Math.abs(h)) - within(Math.abs(h), to);
      sum += (h >= 0 ? 1 : -1) * (seen1 - seen0);
    }
    return Math.clamp(sum / (2 * Math.PI), LEAST, 1 - LEAST);
  }

  /** The angle round the far side, from where the line goes to where it comes from, leftward. */
  private static double closing(Vector first, Vector last) {
    double to = StrictMath.atan2(-first.y(), -first.x());
    double from = StrictMath.atan2(last.y(), last.x());
    double round = to - from;
    return round <= 1e-12 ? round + 2 * Math.PI : round;
  }

  /** ∫ e^(−h²/(2·cos²φ)) dφ from the foot of the distance h to so far along the line. */
  private static double within(double h, double along) {
    if (along < 0) {
      return -within(h, -along);
    }
    if (along <= h) {
      return along == 0 ? 0 : integral(h, StrictMath.atan2(along, h));
    }
    // T(h, a) = ½Φ(h) + ½Φ(ah) − Φ(h)Φ(ah) − T(ah, 1/a) for a > 1; far along only the first.
    double lower = normal(h);
    double upper = normal(along);
    double rest = Double.isInfinite(along) ? 0 : integral(along, StrictMath.atan2(h, along));
    return Math.PI * (lower + upper - 2 * lower * upper) - rest;
  }

  /** ∫ e^(−h²/(2·cos²φ)) dφ from 0 to an angle of at most 45°. */
  private static double integral(double h, double angle) {
    double step = angle / PARTS;
    double sum = 0;
    for (int part = 0; part < PARTS; part++) {
      double middle = (part + 0.5) * step;
      for (int k = 0; k < NODES.length; k++) {
        double r = h / StrictMath.cos(middle + NODES[k] * step / 2);
        sum += WEIGHTS[k] * StrictMath.exp(-r * r / 2);
      }
    }
    return sum * step / 2;
  }

  /** Φ. */
  private static double normal(double x) {
    return Erf.erfc(-x / StrictMath.sqrt(2)) / 2;
  }

  private static List<Vector> whitened(
      PlanPoint mean, Covariance2 covariance, List<PlanPoint> points) {
    Cholesky factor = Cholesky.of(covariance, LEAST_SD);
    List<Vector> whitened = new ArrayList<>();
    for (PlanPoint point : points) {
      Vector next = factor.solve(Vector.between(mean, point));
      if (whitened.isEmpty() || difference(next, whitened.getLast()).length() > 0) {
        whitened.add(next);
      }
    }
    if (whitened.size() < 2) {
      throw new IllegalArgumentException("line must have two points apart, had " + points);
    }
    return whitened;
  }

  private static Vector difference(Vector a, Vector b) {
    return new Vector(a.x() - b.x(), a.y() - b.y());
  }
}
