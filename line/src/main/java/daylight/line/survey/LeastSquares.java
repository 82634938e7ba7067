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

  /** Up to so many squared standard deviations a reading, readings do not contradict each other. */
  private static final double FITTING = 4;

  private LeastSquares() {}

  /** The best state near a start; empty when the iteration does not settle. */
  static Optional<double[]> settle(List<Equation> equations, double[] start) {
    Run run = new Run(equations, start);
    return run.go() ? Optional.of(run.state) : Optional.empty();
  }

  /**
   * How far each unknown would still be moved where the iteration fits well and yet does not
   * settle, as where the best fit lies right on the line of two marks: there both tapes pull along
   * that line, and none says how far beside it. Empty where it settles or does not fit.
   */
  static Optional<double[]> restless(List<Equation> equations, double[] start) {
    Run run = new Run(equations, start);
    return !run.go() && run.here.sumOfSquares() <= FITTING * equations.size()
        ? Optional.of(run.step)
        : Optional.empty();
  }

  /** One iteration from start to end. */
  private static final class Run {
    private final List<Equation> equations;
    private double[] state;
    private double[] step;
    private Linearised here;

    Run(List<Equation> equations, double[] start) {
      this.equations = equations;
      state = start.clone();
      step = new double[start.length];
      here = Linearised.of(equations, state);
    }

    /** Whether it settles. */
    boolean go() {
      for (int i = 0; i < ITERATIONS; i++) {
        step = Factored.of(here.design()).step(here.misfit());
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
          return true;
        }
      }
      return false;
    }
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
