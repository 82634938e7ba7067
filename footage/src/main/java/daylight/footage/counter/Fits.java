package daylight.footage.counter;

import java.util.Arrays;

/** How well what stands in a cell fits each digit and nothing. */
final class Fits {
  private static final int DIGITS = 10;

  private final double[] likelihood = new double[DIGITS];
  private final double[] misfit = new double[DIGITS];
  private final double nothing;

  /** Nothing is known of any digit yet. */
  Fits(double nothing) {
    this.nothing = nothing;
    Arrays.fill(likelihood, Double.NEGATIVE_INFINITY);
    Arrays.fill(misfit, Double.POSITIVE_INFINITY);
  }

  /** A digit may have several shapes; the one that fits best counts. */
  void take(int digit, double likelihood, double misfit) {
    if (likelihood > this.likelihood[digit]) {
      this.likelihood[digit] = likelihood;
      this.misfit[digit] = misfit;
    }
  }

  /** Whether the digit was seen before. */
  boolean knows(int digit) {
    return likelihood[digit] > Double.NEGATIVE_INFINITY;
  }

  /**
   * The logarithm of how much likelier a digit is than that there is nothing. One that was never
   * seen may fit as well as any.
   */
  double above(int digit) {
    return (knows(digit) ? likelihood[digit] : Arrays.stream(likelihood).max().orElseThrow())
        - nothing;
  }

  /** How far off a digit is, as a mean square in its spreads: about 1 at most for the right one. */
  double misfit(int digit) {
    return misfit[digit];
  }
}
