package daylight.line.course;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;

/**
 * Nonlinear least squares over all unknowns of a line at once, by damped Gauss–Newton steps with a
 * dense Cholesky factor. Plain and slow, cubic in the number of unknowns; its virtue is that
 * nothing can be wrong with it.
 *
 * <p>Source of the method: Madsen, Nielsen and Tingleff, <em>Methods for Non-Linear Least Squares
 * Problems</em>, 2nd ed. (2004), algorithm 3.16 (from memory).
 */
final class DenseFit {
  private static final int MOST_STEPS = 60;
  private static final double SETTLED = 1e-9;

  /**
   * A settled estimate.
   *
   * @param equations the equations at these unknowns
   * @param cost weighted sum of squared misfits
   * @param settled whether the last step was small enough
   */
  @SuppressWarnings("ArrayRecordComponent") // never leaves this room
  record Fitted(
      double[] x, DMatrixRMaj covariance, Equations equations, double cost, boolean settled) {}

  private DenseFit() {}

  /** The best of every way in which the turns of free plane may go; at most four are tried. */
  static Fitted fit(Model model, double[] start) {
    int free = model.freeTurns().size();
    int tried = Math.min(free, 4);
    int[] hands = new int[free];
    Best best = new Best();
    for (int way = 0; way < 1 << tried; way++) {
      for (int i = 0; i < tried; i++) {
        hands[i] = (way >> i & 1) == 0 ? -1 : 1;
      }
      best.offer(descend(model, start, hands), hands);
    }
    return best.fitted(model);
  }

  private static final class Best {
    private double[] x = new double[0];
    private int[] hands = new int[0];
    private double cost = Double.POSITIVE_INFINITY;
    private boolean settled;

    void offer(Descent descent, int[] ways) {
      if (descent.cost() < cost) {
        x = descent.x();
        hands = ways.clone();
        cost = descent.cost();
        settled = descent.settled();
      }
    }

    Fitted fitted(Model model) {
      DMatrixRMaj covariance = new DMatrixRMaj(x.length, x.length);
      LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.chol(x.length);
      Equations equations = model.equations(x, hands);
      if (!solver.setA(equations.normal())) {
        throw new IllegalStateException("an unknown of the line hangs on nothing");
      }
      solver.invert(covariance);
      return new Fitted(x, covariance, equations, cost, settled);
    }
  }

  @SuppressWarnings("ArrayRecordComponent") // never leaves this room
  private record Descent(double[] x, double cost, boolean settled) {}

  private static Descent descend(Model model, double[] start, int[] hands) {
    double[] x = start.clone();
    Equations equations = model.equations(x, hands);
    double cost = equations.cost();
    double damping = 1e-6;
    for (int step = 0; step < MOST_STEPS; step++) {
      double[] move = move(equations, damping);
      double[] next = x.clone();
      double largest = 0;
      for (int k = 0; k < next.length; k++) {
        next[k] += move[k];
        largest = Math.max(largest, Math.abs(move[k]));
      }
      Equations there = model.equations(next, hands);
      double nextCost = there.cost();
      if (nextCost <= cost) {
        x = next;
        equations = there;
        cost = nextCost;
        damping = Math.max(1e-12, damping / 10);
        if (largest < SETTLED) {
          return new Descent(x, cost, true);
        }
      } else if (largest < SETTLED) {
        return new Descent(x, cost, true);
      } else {
        damping = Math.min(1e9, damping * 10);
      }
    }
    return new Descent(x, cost, false);
  }

  private static double[] move(Equations equations, double damping) {
    DMatrixRMaj normal = equations.normal();
    double[] right = equations.right();
    for (int k = 0; k < right.length; k++) {
      normal.set(k, k, normal.get(k, k) * (1 + damping) + 1e-12);
    }
    LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.chol(right.length);
    if (!solver.setA(normal)) {
      throw new IllegalStateException("an unknown of the line hangs on nothing");
    }
    DMatrixRMaj out = new DMatrixRMaj(right.length, 1);
    solver.solve(DMatrixRMaj.wrap(right.length, 1, right), out);
    return out.data;
  }
}
