package daylight.line.survey;

import org.ejml.data.DMatrixRMaj;

/**
 * A whitened design matrix taken apart, its columns brought to one length. Where the unknowns are
 * plainly determined the normal equations do it quickly; where that is in doubt, singular values
 * tell.
 */
sealed interface Factored permits Normals, SingularValues {
  /** Below this share of the longest, a column counts as nothing. */
  double NOTHING = 1e-7;

  static Factored of(DMatrixRMaj design) {
    double[] scale = columnLengths(design);
    Factored quick = Normals.of(design, scale);
    return quick != null ? quick : SingularValues.of(design, scale);
  }

  private static double[] columnLengths(DMatrixRMaj design) {
    double[] length = new double[design.numCols];
    double longest = 0;
    for (int row = 0; row < design.numRows; row++) {
      for (int k = 0; k < length.length; k++) {
        length[k] += design.get(row, k) * design.get(row, k);
      }
    }
    for (int k = 0; k < length.length; k++) {
      length[k] = StrictMath.sqrt(length[k]);
      longest = Math.max(longest, length[k]);
    }
    for (int k = 0; k < length.length; k++) {
      length[k] = longest == 0 ? 1 : Math.max(length[k], NOTHING * longest);
    }
    return length;
  }

  /** The least-squares step that takes the whitened misfits away. */
  double[] step(double[] misfit);

  /** Change of each unknown (row) by one standard deviation of each reading (column). */
  DMatrixRMaj gain();

  /** The joint covariance of the unknowns. */
  DMatrixRMaj covariance();

  /** The covariance of two whitened residuals. */
  double residualCovariance(int a, int b);

  int rank();

  /** The largest standard deviation of any unknown; infinite if one is open. */
  double worstSd();

  /** Which unknowns can move without any reading noticing. */
  boolean[] open();
}
