package daylight.line.survey;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.SingularValueDecomposition_F64;

/**
 * The singular values of a whitened design matrix with its columns brought to one length.
 * Directions in which the readings say nothing have no singular value; a step does not move along
 * them.
 */
final class Factored {
  /** Below this share of the largest, a singular value or a column counts as nothing. */
  private static final double NOTHING = 1e-7;

  /** A column this small in a silent direction does not take part in it. */
  private static final double TAKES_PART = 1e-4;

  private final int rows;
  private final int unknowns;
  private final double[] scale;
  private final double[] singular;
  private final DMatrixRMaj left;
  private final DMatrixRMaj right;

  private Factored(
      int rows, double[] scale, double[] singular, DMatrixRMaj left, DMatrixRMaj right) {
    this.rows = rows;
    this.unknowns = scale.length;
    this.scale = scale;
    this.singular = singular;
    this.left = left;
    this.right = right;
  }

  static Factored of(DMatrixRMaj design) {
    int unknowns = design.numCols;
    if (unknowns == 0) {
      return new Factored(
          design.numRows, new double[0], new double[0], new DMatrixRMaj(), new DMatrixRMaj());
    }
    double[] scale = columnLengths(design);
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
    return new Factored(
        design.numRows, scale, singular, svd.getU(null, false), svd.getV(null, false));
  }

  private static double[] columnLengths(DMatrixRMaj design) {
    double[] length = new double[design.numCols];
    double longest = 0;
    for (int k = 0; k < length.length; k++) {
      double sum = 0;
      for (int row = 0; row < design.numRows; row++) {
        sum += design.get(row, k) * design.get(row, k);
      }
      length[k] = StrictMath.sqrt(sum);
      longest = Math.max(longest, length[k]);
    }
    for (int k = 0; k < length.length; k++) {
      length[k] = longest == 0 ? 1 : Math.max(length[k], NOTHING * longest);
    }
    return length;
  }

  /** Change of each unknown (row) by one standard deviation of each reading (column). */
  DMatrixRMaj gain() {
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

  /** The least-squares step that takes the whitened misfits away. */
  double[] step(double[] misfit) {
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

  /** The covariance of the whitened residuals, I − UUᵀ. */
  DMatrixRMaj residualCovariance() {
    var covariance = new DMatrixRMaj(rows, rows);
    for (int a = 0; a < rows; a++) {
      for (int b = 0; b <= a; b++) {
        double sum = a == b ? 1 : 0;
        for (int i = 0; i < singular.length; i++) {
          sum -= singular[i] == 0 ? 0 : left.get(a, i) * left.get(b, i);
        }
        covariance.set(a, b, sum);
        covariance.set(b, a, sum);
      }
    }
    return covariance;
  }

  int rank() {
    int rank = 0;
    for (double each : singular) {
      rank += each == 0 ? 0 : 1;
    }
    return rank;
  }

  /** The largest standard deviation of any unknown; infinite if one is open. */
  double worstSd() {
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

  /** Which unknowns can move without any reading noticing. */
  boolean[] open() {
    boolean[] open = new boolean[unknowns];
    for (int i = 0; i < singular.length; i++) {
      for (int k = 0; k < unknowns; k++) {
        open[k] |= singular[i] == 0 && Math.abs(right.get(k, i)) > TAKES_PART;
      }
    }
    return open;
  }
}
