package daylight.line.survey;

import java.util.List;
import java.util.Optional;

/**
 * Weighted least squares by Gauss–Newton, a step being halved as long as it makes the fit worse
 * (Ghilani, Adjustment Computations, ch. 11). Shared by plan and levels.
 */
final class LeastSquares {
  private static final int ITERATIONS = 50;
  private static final int HALVINGS = 20;
  private static final double SETTLED = 1e-10;

  private LeastSquares() {}

  /** The best state near a start; empty when the iteration does not settle. */
  static Optional<double[]> settle(List<Equation> equations, double[] start) {
    double[] state = start.clone();
    Linearised here = Linearised.of(equations, state);
    for (int i = 0; i < ITERATIONS; i++) {
      double[] step = Factored.of(here.design()).step(here.misfit());
      boolean small = largest(step) <= SETTLED * (1 + largest(state));
      double share = 1;
      double[] next = moved(state, step, share);
      Linearised there = Linearised.of(equations, next);
      for (int h = 0; h < HALVINGS && !small && there.sumOfSquares() > bearable(here); h++) {
        share /= 2;
        next = moved(state, step, share);
        there = Linearised.of(equations, next);
      }
      state = next;
      here = there;
      if (small) {
        return Optional.of(state);
      }
    }
    return Optional.empty();
  }

  /** Rounding must not count as getting worse. */
  private static double bearable(Linearised here) {
    return here.sumOfSquares() * (1 + 1e-9) + 1e-9;
  }

  private static double[] moved(double[] state, double[] step, double share) {
    double[] moved = state.clone();
    for (int k = 0; k < moved.length; k++) {
      moved[k] += share * step[k];
    }
    return moved;
  }

  private static double largest(double[] values) {
    double largest = 0;
    for (double value : values) {
      largest = Math.max(largest, Math.abs(value));
    }
    return largest;
  }
}
