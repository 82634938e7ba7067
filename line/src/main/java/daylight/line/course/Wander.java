package daylight.line.course;

import daylight.line.normal.Covariance;
import daylight.line.normal.Gradient;
import java.util.Arrays;

/**
 * By how much a pipe whose direction is unsure falls short of its length.
 *
 * <p>A step of length h in a direction that errs by δ goes only h·cos δ the right way. With the
 * variance P of the direction the expected step is h·e^(−P/2), and the steps of a pipe fall short
 * together: the shortfalls h·δ²/2 of two steps have the covariance h²·P₁₂²/2. An adjustment that
 * took every step for its full length would bow a flexible pipe to one side to use up its cable.
 * (Moments of the normal distribution; linearising about the distribution and not about a point:
 * García-Fernández, Svensson, Morelande and Särkkä, Posterior linearization filter, 2015, from
 * memory.)
 */
final class Wander {
  /** A direction surer than this, rad², shortens nothing worth the while: 0.15 % of the length. */
  private static final double STRAIGHT = 0.003;

  /** Variances of a direction that differ by less, rad², are the same. */
  private static final double SAME = 3e-4;

  /** Directions are compared with at most so many others. */
  private static final int MOST_COMPARED = 24;

  /** The variance of one direction at most; beyond it, it points anywhere. */
  private static final double ANYWHERE = 2.0;

  /** What a step may fall short by where nobody knows, m² for each metre. */
  private static final double OPEN = 0.1;

  private final double[][] middles;
  private final double[][] variances;
  private final double[][] noises;

  private final double otherwise;

  private Wander(double[][] middles, double[][] variances, double[][] noises, double otherwise) {
    this.otherwise = otherwise;
    this.middles = middles;
    this.variances = variances;
    this.noises = noises;
  }

  /** Every direction sure. */
  static Wander none() {
    return new Wander(new double[0][], new double[0][], new double[0][], 0);
  }

  /**
   * Nobody knows: no step is held to its length. From there a pipe settles on the widest course
   * that is as unsure as it says, and not on one of two bows that use up its cable equally well.
   */
  static Wander open() {
    return new Wander(new double[0][], new double[0][], new double[0][], OPEN);
  }

  /** As sure as the directions of an estimate are. */
  static Wander of(Fit.Fitted fitted) {
    Knots knots = fitted.model().knots();
    int limbs = knots.layout().tree().limbs().size();
    double[][] middles = new double[limbs][];
    double[][] variances = new double[limbs][];
    double[][] noises = new double[limbs][];
    for (int limb = 0; limb < limbs; limb++) {
      int n = knots.count(limb) - 1;
      middles[limb] = new double[n];
      noises[limb] = new double[n];
      for (int i = 0; i < n; i++) {
        middles[limb][i] = middle(knots, limb, i);
      }
      variances[limb] = variances(knots, fitted.covariance(), limb);
      if (Arrays.stream(variances[limb]).max().orElse(0) > STRAIGHT) {
        noises(knots, fitted, limb, noises[limb]);
      }
    }
    return new Wander(middles, variances, noises, 0);
  }

  private static double middle(Knots knots, int limb, int i) {
    return (knots.t0(limb, i) + knots.t0(limb, i + 1)) / 2;
  }

  /** The variance of the direction of each step of a limb. */
  private static double[] variances(Knots knots, Covariance covariance, int limb) {
    double[] variances = new double[knots.count(limb) - 1];
    for (int i = 0; i < variances.length; i++) {
      double variance = covariance.variance(mean(knots, limb, i + 1, Knots.BEARING));
      if (knots.layout().heights()) {
        variance += covariance.variance(mean(knots, limb, i + 1, Knots.PITCH));
      }
      variances[i] = Math.min(ANYWHERE, variance);
    }
    return variances;
  }

  private static Gradient mean(Knots knots, int limb, int end, int which) {
    Gradient gradient = new Gradient();
    gradient.add(knots.unknown(limb, end, which), 0.5);
    gradient.add(knots.unknown(limb, end - 1, which), 0.5);
    return gradient;
  }

  /** For each step the variance that, taken for its own, adds up to that of all falling short. */
  private static void noises(Knots knots, Fit.Fitted fitted, int limb, double[] noises) {
    int stride = (noises.length + MOST_COMPARED - 1) / MOST_COMPARED;
    double[] found = new double[noises.length];
    for (int i = 0; i < noises.length; i += stride) {
      double[] follows = fitted.factor().follows(mean(knots, limb, i + 1, Knots.BEARING));
      for (int j = 0; j < noises.length; j++) {
        double together = mean(knots, limb, j + 1, Knots.BEARING).dot(follows);
        double h = knots.t0(limb, j + 1) - knots.t0(limb, j);
        found[i] += h * Math.min(ANYWHERE * ANYWHERE, together * together) / 2;
      }
    }
    for (int i = 0; i < noises.length; i++) {
      noises[i] = found[i - i % stride];
    }
  }

  private int nearest(int limb, double t0) {
    double[] of = middles[limb];
    int found = Arrays.binarySearch(of, t0);
    int beyond = found >= 0 ? found : -found - 1;
    if (beyond == 0 || beyond == of.length) {
      return Math.max(0, beyond - 1);
    }
    return of[beyond] - t0 <= t0 - of[beyond - 1] ? beyond : beyond - 1;
  }

  /** The expected share of a step's length that it goes its way. */
  double share(int limb, double middle) {
    return middles.length == 0 ? 1 : StrictMath.exp(-variances[limb][nearest(limb, middle)] / 2);
  }

  /** The variance of its falling short for each metre of a step, m². */
  double noise(int limb, double middle) {
    return middles.length == 0 ? otherwise : noises[limb][nearest(limb, middle)];
  }

  /** Whether an estimate is about as sure of its directions. */
  boolean agrees(Fit.Fitted fitted) {
    if (otherwise > 0) {
      return false;
    }
    Knots knots = fitted.model().knots();
    for (int limb = 0; limb < knots.layout().tree().limbs().size(); limb++) {
      double[] variances = variances(knots, fitted.covariance(), limb);
      for (int i = 0; i < variances.length; i++) {
        double before = 2 * -StrictMath.log(share(limb, middle(knots, limb, i)));
        double now = variances[i];
        if (Math.abs(now - before) > SAME + 0.02 * now) {
          return false;
        }
      }
    }
    return true;
  }
}
