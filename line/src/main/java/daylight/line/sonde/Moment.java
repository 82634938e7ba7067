package daylight.line.sonde;

/** The field of a moment and how it changes, as the fit needs it. */
final class Moment {
  private Moment() {}

  /** The field at (rx, ry, rz) from a dipole of that moment. */
  static double[] field(double[] moment, double rx, double ry, double rz) {
    double square = rx * rx + ry * ry + rz * rz;
    double cube = square * StrictMath.sqrt(square);
    double along = 3 * (moment[0] * rx + moment[1] * ry + moment[2] * rz) / square;
    return new double[] {
      (along * rx - moment[0]) / cube,
      (along * ry - moment[1]) / cube,
      (along * rz - moment[2]) / cube
    };
  }

  /**
   * How the field changes, a row for each of its three parts.
   *
   * @return by the three parts of the place, then by the three parts of the moment
   */
  static double[][] slopes(double[] moment, double rx, double ry, double rz) {
    double[] r = {rx, ry, rz};
    double square = rx * rx + ry * ry + rz * rz;
    double fifth = square * square * StrictMath.sqrt(square);
    double dot = moment[0] * rx + moment[1] * ry + moment[2] * rz;
    double[][] slopes = new double[3][6];
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        double same = i == j ? 1 : 0;
        slopes[i][j] =
            (3 * (moment[j] * r[i] + dot * same + moment[i] * r[j])
                    - 15 * dot * r[i] * r[j] / square)
                / fifth;
        slopes[i][3 + j] = (3 * r[i] * r[j] - same * square) / fifth;
      }
    }
    return slopes;
  }
}
