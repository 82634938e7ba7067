package daylight.line.sonde;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;

/**
 * Levenberg's and Marquardt's way downhill: the normal equations with their diagonal raised, by
 * less after a step that gains and by more after one that does not.
 */
final class Descent {
  private static final int MOST_ROUNDS = 100;
  private static final double HARDEST = 1e12;
  private static final double SMALL = 1e-10;

  private final Residuals residuals;
  private final double[] left;
  private final double[][] slopes;
  private double[] at;
  private double sum;
  private boolean settled;

  private Descent(Residuals residuals, double[] start) {
    this.residuals = residuals;
    this.left = new double[residuals.size()];
    this.slopes = new double[residuals.size()][Residuals.UNKNOWNS];
    this.at = start.clone();
    this.sum = residuals.at(at, left, slopes);
  }

  static Descent from(Residuals residuals, double[] start) {
    Descent descent = new Descent(residuals, start);
    descent.run();
    return descent;
  }

  double[] at() {
    return at.clone();
  }

  double sum() {
    return sum;
  }

  boolean settled() {
    return settled;
  }

  private void run() {
    double raised = 1e-3;
    for (int round = 0; round < MOST_ROUNDS && !settled; round++) {
      DMatrixRMaj normal = normal();
      DMatrixRMaj right = new DMatrixRMaj(Residuals.UNKNOWNS, 1);
      for (int k = 0; k < Residuals.UNKNOWNS; k++) {
        for (int i = 0; i < left.length; i++) {
          right.add(k, 0, -slopes[i][k] * left[i]);
        }
      }
      boolean gained = false;
      while (!gained && raised < HARDEST) {
        double[] next = step(normal, right, raised);
        double there = next.length == 0 ? Double.NaN : residuals.at(next, left, null);
        if (there < sum || (there == sum && there == 0)) {
          settled = sum - there <= SMALL * (1 + there);
          at = next;
          gained = true;
          raised = StrictMath.max(1e-15, raised / 10);
        } else {
          raised *= 10;
        }
      }
      sum = residuals.at(at, left, slopes);
      if (!gained) {
        settled = true;
      }
    }
  }

  /** Where one step leads; nothing where the equations cannot be solved. */
  private double[] step(DMatrixRMaj normal, DMatrixRMaj right, double raised) {
    DMatrixRMaj system = normal.copy();
    for (int k = 0; k < Residuals.UNKNOWNS; k++) {
      double own = system.get(k, k);
      system.set(k, k, own * (1 + raised) + Double.MIN_NORMAL);
    }
    LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.chol(Residuals.UNKNOWNS);
    DMatrixRMaj by = new DMatrixRMaj(Residuals.UNKNOWNS, 1);
    if (!solver.setA(system)) {
      return new double[0];
    }
    solver.solve(right, by);
    double[] next = at.clone();
    for (int k = 0; k < next.length; k++) {
      // A depth that would more than treble at one go has lost the ground.
      double most = k == 2 ? 1.1 : Double.MAX_VALUE;
      next[k] += StrictMath.max(-most, StrictMath.min(most, by.get(k, 0)));
    }
    return next;
  }

  private DMatrixRMaj normal() {
    DMatrixRMaj normal = new DMatrixRMaj(Residuals.UNKNOWNS, Residuals.UNKNOWNS);
    for (int k = 0; k < Residuals.UNKNOWNS; k++) {
      for (int l = 0; l < Residuals.UNKNOWNS; l++) {
        double product = 0;
        for (double[] row : slopes) {
          product += row[k] * row[l];
        }
        normal.set(k, l, product);
      }
    }
    return normal;
  }

  /**
   * The covariance of the unknowns; empty where the readings leave one of them open.
   *
   * @param openest share of itself that an unknown may keep once the others are known
   */
  double[][] covariance(double openest) {
    DMatrixRMaj normal = normal();
    double[] scale = new double[Residuals.UNKNOWNS];
    for (int k = 0; k < scale.length; k++) {
      scale[k] = StrictMath.sqrt(normal.get(k, k));
      if (!(scale[k] > 0)) {
        return new double[0][];
      }
    }
    for (int k = 0; k < scale.length; k++) {
      for (int l = 0; l < scale.length; l++) {
        normal.set(k, l, normal.get(k, l) / (scale[k] * scale[l]));
      }
    }
    DMatrixRMaj back = new DMatrixRMaj(Residuals.UNKNOWNS, Residuals.UNKNOWNS);
    if (!CommonOps_DDRM.invert(normal, back)) {
      return new double[0][];
    }
    double[][] covariance = new double[scale.length][scale.length];
    for (int k = 0; k < scale.length; k++) {
      if (!(back.get(k, k) > 0) || back.get(k, k) > 1 / openest) {
        return new double[0][];
      }
      for (int l = 0; l < scale.length; l++) {
        covariance[k][l] = back.get(k, l) / (scale[k] * scale[l]);
      }
    }
    return covariance;
  }
}
