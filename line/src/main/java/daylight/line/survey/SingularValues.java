package daylight.line.survey;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.SingularValueDecomposition_F64;

/**
 * The singular values of a whitened design matrix with its columns brought to one length.
 * Directions in which the readings say nothing have no singular value; a step does not move along
 * them.
 */
final class SingularValues implements Factored {
  /** A column this small in a silent direction does not take part in it. */
  private static final double TAKES_PART = 1e-4;

  private final int rows;
  private final int unknowns;
  private final double[] scale;
  private final double[] singular;
  private final DMatrixRMaj left;
  private final DMatrixRMaj right;

  private SingularValues(
      int rows, double[] scale, double[] singular, DMatrixRMaj left, DMatrixRMaj right) {
    this.rows = rows;
    this.unknowns = scale.length;
    this.scale = scale;
    this.singular = singular;
    this.left = left;
    this.right = right;
  }

  static SingularValues of(DMatrixRMaj design, double[] scale) {
    int unknowns = design.numCols;
    if (unknowns == 0) {
      return new SingularValues(
          design.numRows, new double[0], new double[0], new DMatrixRMaj(), new DMatrixRMaj());
    }
    // Rows of zeros are added so that there are at least as many rows as unknowns.
    var scaled = new DMatrixRMaj(Math.max(design.numRows, unknowns), unknowns);
    for (int row = 0; row < design.numRows; row++) {
      for (int k = 0; k < unknowns; k++) {
        scaled.set(row, k, design.get(row, k) / scale[k]);
      }
    }
    SingularValueDecomposition_F64<DMatrixRMaj> svd =
        DecompositionFactory_DDRM.svd(scaled.numRows, unknowns, true, true, true);
    if (!svd.decompose(scaled)) {
      throw new IllegalArgumentException(
          "design must be finite, its singular values did not settle");
    }
    double[] singular = svd.getSingularValues().clone();
    double largest = 0;
    for (double each : singular) {
      largest = Math.max(largest, each);
    }
    for (int i = 0; i < singular.length; i++) {
      singular[i] = singular[i] > NOTHING * largest ? singular[i] : 0;
    }
    return new SingularValues(
        design.numRows, scale, singular, svd.getU(null, false), svd.getV(null, false));
  }

  @Override
  public DMatrixRMaj gain() {
    var gain = new DMatrixRMaj(unknowns, rows);
    for (int k = 0; k < unknowns; k++) {
      for (int row = 0; row < rows; row++) {
        double sum = 0;
        for (int i = 0; i < singular.length; i++) {
          sum += singular[i] == 0 ? 0 : right.get(k, i) * left.get(row, i) / singular[i];
        }
        gain.set(k, row, sum / scale[k]);
      }
    }
    return gain;
  }

  @Override
  public double[] step(double[] misfit) {
    double[] step = new double[unknowns];
    for (int i = 0; i < singular.length; i++) {
      if (singular[i] == 0) {
        continue;
      }
      double part = 0;
      for (int row = 0; row < rows; row++) {
        part += left.get(row, i) * misfit[row];
      }
      for (int k = 0; k < unknowns; k++) {
        step[k] -= right.get(k, i) * part / singular[i] / scale[k];
      }
    }
    return step;
  }

  @Override
  public DMatrixRMaj covariance() {
    var covariance = new DMatrixRMaj(unknowns, unknowns);
    for (int a = 0; a < unknowns; a++) {
      for (int b = 0; b <= a; b++) {
        double sum = 0;
        for (int i = 0; i < singular.length; i++) {
          double both = right.get(a, i) * right.get(b, i);
          sum += singular[i] == 0 ? 0 : both / (singular[i] * singular[i]);
        }
        covariance.set(a, b, sum / scale[a] / scale[b]);
        covariance.set(b, a, sum / scale[a] / scale[b]);
      }
    }
    return covariance;
  }

  /** An element of I − UUᵀ. */
  @Override
  public double residualCovariance(int a, int b) {
    double sum = a == b ? 1 : 0;
    for (int i = 0; i < singular.length; i++) {
      sum -= singular[i] == 0 ? 0 : left.get(a, i) * left.get(b, i);
    }
    return sum;
  }

  @Override
  public int rank() {
    int rank = 0;
    for (double each : singular) {
      rank += each == 0 ? 0 : 1;
    }
    return rank;
  }

  @Override
  public double worstSd() {
    double worst = 0;
    for (int k = 0; k < unknowns; k++) {
      double variance = 0;
      for (int i = 0; i < singular.length; i++) {
        double part = right.get(k, i) / scale[k];
        variance += part == 0 ? 0 : part * part / (singular[i] * singular[i]);
      }
      worst = Math.max(worst, StrictMath.sqrt(variance));
    }
    return worst;
  }

  @Override
  public boolean[] open() {
    boolean[] open = new boolean[unknowns];
    for (int i = 0; i < singular.length; i++) {
      for (int k = 0; k < unknowns; k++) {
        open[k] |= singular[i] == 0 && Math.abs(right.get(k, i)) > TAKES_PART;
      }
    }
    return open;
  }
}
