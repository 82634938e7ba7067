package daylight.line.course;

import daylight.line.normal.Gradient;
import java.util.List;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;

/**
 * The estimate by a general-purpose library and no knowledge of trees: every equation written out
 * in full, Gauss–Newton steps by a dense factor of EJML, the covariance as a dense inverse. From
 * the first guess, with as many steps as it takes.
 */
final class DenseReference {
  private static final int MOST_STEPS = 60;
  private static final double SETTLED = 1e-11;

  /** Where an unknown hardly hangs on anything, steps shorten slowly. */
  private static final double NEARLY = 1e-8;

  private final double[] x;
  private final DMatrixRMaj covariance;

  private DenseReference(double[] x, DMatrixRMaj covariance) {
    this.x = x;
    this.covariance = covariance;
  }

  /** The least-squares solution of a model, from its first guess. */
  static DenseReference of(Model model, int[] hands) {
    double[] shared = Start.shared(model.gathered(), model.book(), model.priors());
    double[] x = Start.values(model, shared, hands);
    int n = x.length;
    for (int step = 0; step < MOST_STEPS; step++) {
      List<Equations.Row> rows = at(model, x, hands).rows();
      DMatrixRMaj matrix = new DMatrixRMaj(n, n);
      DMatrixRMaj right = new DMatrixRMaj(n, 1);
      double cost = fill(rows, matrix, right);
      DMatrixRMaj full = matrix.copy();
      LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.symmPosDef(n);
      if (!solver.setA(matrix)) {
        throw new IllegalStateException("an unknown hangs on nothing");
      }
      DMatrixRMaj move = new DMatrixRMaj(n, 1);
      solver.solve(right, move);
      double gain = CommonOps_DDRM.dot(right, move);
      double share = gain < SETTLED ? 1 : share(model, x, hands, move.data, cost);
      x = Step.take(model.knots(), x, move.data, share);
      if (gain < SETTLED || share < 1e-6 || (step == MOST_STEPS - 1 && gain < NEARLY)) {
        DMatrixRMaj inverse = new DMatrixRMaj(n, n);
        LinearSolverDense<DMatrixRMaj> last = LinearSolverFactory_DDRM.symmPosDef(n);
        last.setA(full);
        last.invert(inverse);
        return new DenseReference(x, inverse);
      }
    }
    throw new IllegalStateException("not settled after " + MOST_STEPS + " steps");
  }

  private static Equations at(Model model, double[] x, int[] hands) {
    return model.equations(x, hands, new Shape(model.knots(), x));
  }

  private static double share(Model model, double[] x, int[] hands, double[] move, double cost) {
    double share = 1;
    Shape reference = new Shape(model.knots(), x);
    while (share > 1e-6) {
      double[] tried = Step.take(model.knots(), x, move, share);
      if (model.layout().hasLengths(tried)
          && model.equations(tried, hands, reference).cost() <= cost * (1 + 1e-12)) {
        return share;
      }
      share /= 2;
    }
    return share;
  }

  private static double fill(List<Equations.Row> rows, DMatrixRMaj matrix, DMatrixRMaj right) {
    double cost = 0;
    for (Equations.Row row : rows) {
      double weight = 1 / (row.sd() * row.sd());
      Gradient g = row.gradient();
      cost += weight * row.misfit() * row.misfit();
      for (int i = 0; i < g.count(); i++) {
        right.add(g.unknown(i), 0, weight * g.value(i) * row.misfit());
        for (int j = 0; j < g.count(); j++) {
          matrix.add(g.unknown(i), g.unknown(j), weight * g.value(i) * g.value(j));
        }
      }
    }
    return cost;
  }

  double[] x() {
    return x;
  }

  /** The covariance of two unknowns. */
  double of(int a, int b) {
    return covariance.get(a, b);
  }
}
