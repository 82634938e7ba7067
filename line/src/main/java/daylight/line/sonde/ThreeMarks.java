package daylight.line.sonde;

import daylight.line.measure.Measured;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;

/** What the uncertainty of three marks makes of the position, depth and tilt that they fix. */
final class ThreeMarks {
  private static final double STEP = 1e-6;

  private ThreeMarks() {}

  /**
   * @param at position, depth and tilt
   */
  static NullReading spread(NullMarks marks, Measured over, double[] at, double beside) {
    DMatrixRMaj slopes = new DMatrixRMaj(3, 3);
    for (int column = 0; column < 3; column++) {
      double step = column == 1 ? STEP * at[1] : STEP;
      double[] more = moved(at, column, step, beside);
      double[] less = moved(at, column, -step, beside);
      for (int row = 0; row < 3; row++) {
        slopes.set(row, column, (more[row] - less[row]) / (2 * step));
      }
    }
    DMatrixRMaj back = new DMatrixRMaj(3, 3);
    if (!CommonOps_DDRM.invert(slopes, back)) {
      return new NoDipole(NoDipole.Reason.OTHER_TILT, 0);
    }
    double[] sd = {marks.first().sd(), marks.second().sd(), over.sd()};
    double[][] spread = new double[3][3];
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        for (int k = 0; k < 3; k++) {
          spread[i][j] += back.get(i, k) * sd[k] * sd[k] * back.get(j, k);
        }
      }
    }
    return NullFix.of(at, spread, 0);
  }

  private static double[] moved(double[] at, int which, double by, double beside) {
    double[] there = at.clone();
    there[which] += by;
    return new double[] {
      there[0] + NullModel.behind(there[1], there[2], beside),
      there[0] + NullModel.ahead(there[1], there[2], beside),
      there[0] + NullModel.over(there[1], there[2], beside)
    };
  }
}
