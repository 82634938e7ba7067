package daylight.line.course;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
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

  /** A way whose cost is higher by this much is e³ ≈ 20 times less likely. */
  private static final double CLEARLY_WORSE = 6;

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

  /**
   * The best of every way in which the turns of free plane may go; at most four are tried. A turn
   * that fits about as well the other way is left open to both sides.
   */
  static Fitted fit(Model model, double[] start) {
    int free = model.freeTurns().size();
    int tried = Math.min(free, 4);
    List<Descent> ways = new ArrayList<>();
    for (int way = 0; way < 1 << tried; way++) {
      int[] hands = new int[free];
      for (int i = 0; i < tried; i++) {
        hands[i] = (way >> i & 1) == 0 ? -1 : 1;
      }
      ways.add(descend(model, start, hands));
    }
    Descent best = ways.stream().min(Comparator.comparingDouble(Descent::cost)).orElseThrow();
    int[] sure = sure(ways, best);
    return fitted(model, Arrays.equals(sure, best.hands()) ? best : descend(model, start, sure));
  }

  /** The hands of the best way, none where another way with the other hand fits about as well. */
  private static int[] sure(List<Descent> ways, Descent best) {
    int[] sure = best.hands().clone();
    for (Descent other : ways) {
      for (int i = 0; i < sure.length; i++) {
        if (other.hands()[i] != best.hands()[i] && other.cost() < best.cost() + CLEARLY_WORSE) {
          sure[i] = 0;
        }
      }
    }
    return sure;
  }

  private static Fitted fitted(Model model, Descent best) {
    double[] x = best.x();
    DMatrixRMaj covariance = new DMatrixRMaj(x.length, x.length);
    LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.chol(x.length);
    Equations equations = model.equations(x, best.hands());
    if (!solver.setA(equations.normal())) {
      throw new IllegalStateException("an unknown of the line hangs on nothing");
    }
    solver.invert(covariance);
    return new Fitted(x, covariance, equations, best.cost(), best.settled());
  }

  @SuppressWarnings("ArrayRecordComponent") // never leaves this room
  private record Descent(double[] x, int[] hands, double cost, boolean settled) {}

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
      double nextCost = model.layout().hasLengths(next) ? there.cost() : Double.POSITIVE_INFINITY;
      if (nextCost <= cost) {
        x = next;
        equations = there;
        cost = nextCost;
        damping = Math.max(1e-12, damping / 10);
        if (largest < SETTLED) {
          return new Descent(x, hands, cost, true);
        }
      } else if (largest < SETTLED) {
        return new Descent(x, hands, cost, true);
      } else {
        damping = Math.min(1e9, damping * 10);
      }
    }
    return new Descent(x, hands, cost, false);
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
