package daylight.line.frost;

import org.hipparchus.special.Erf;

/**
 * Neumann's exact solution for ground that freezes from a surface kept at one temperature, frozen
 * and thawed ground alike: the front runs as 2γ√(κt), and with it λ, by which the front falls short
 * of Stefan's.
 *
 * <p>Source: F. Neumann, in Riemann and Weber (1912); Carslaw and Jaeger, <em>Conduction of Heat in
 * Solids</em>, §11.2 (both from memory); λ = γ√(2/μ) derived.
 */
final class Neumann {
  /** Halvings of an interval of one: to the last bit and beyond. */
  private static final int HALVINGS = 60;

  /** Where e^(−γ²) is lost beside one; no front gets there with water in the ground. */
  private static final double FAR = 6;

  private static final double ROOT_PI = StrictMath.sqrt(StrictMath.PI);

  private Neumann() {}

  /**
   * The share of Stefan's depth that frost reaches.
   *
   * @param alpha how warm the ground is over how cold its surface is, not negative
   * @param mu how much heat cooling takes over how much freezing takes, not negative
   * @return between 0 and 1; 1 where cooling takes nothing
   */
  static double lambda(double alpha, double mu) {
    if (!(alpha >= 0) || !(mu >= 0)) {
      throw new IllegalArgumentException(
          "α and μ must not be negative, were " + alpha + " and " + mu);
    }
    if (mu == 0) {
      return 1;
    }
    double stefan = StrictMath.sqrt(mu / 2);
    double low = 0;
    double high = Math.min(1, FAR / stefan);
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (balance(middle * stefan, alpha, mu) > 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }

  /**
   * Heat that leaves through the frozen ground, less what comes from the thawed, less what freezing
   * gives: falls as γ grows, and is zero at the solution.
   */
  private static double balance(double gamma, double alpha, double mu) {
    double fades = StrictMath.exp(-gamma * gamma);
    double fromBelow = alpha == 0 ? 0 : alpha * fades / Erf.erfc(gamma);
    return fades / Erf.erf(gamma) - fromBelow - ROOT_PI * gamma / mu;
  }

  /** A γ that no front gets beyond: Stefan's. */
  static double farthest(double mu) {
    return Math.min(FAR, StrictMath.sqrt(mu / 2));
  }

  static double erf(double gamma) {
    return Erf.erf(gamma);
  }

  /**
   * How cold the surface must be for a front, over erf γ, kelvin: the same balance solved for the
   * cold. Grows with γ; at no front it is the ground's own warmth.
   *
   * @param warm how much warmer than freezing the ground is, kelvin
   * @param latentOverCapacity heat of freezing over heat capacity, kelvin
   */
  static double coldOverErf(double gamma, double warm, double latentOverCapacity) {
    double freezing = ROOT_PI * gamma * latentOverCapacity * StrictMath.exp(gamma * gamma);
    return warm / Erf.erfc(gamma) + freezing;
  }
}
