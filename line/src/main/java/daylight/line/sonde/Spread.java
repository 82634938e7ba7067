package daylight.line.sonde;

import java.util.ArrayList;
import java.util.List;

/** The covariance of a sonde from that of the unknowns it was fitted by. */
final class Spread {
  private static final int SIZE = Residuals.UNKNOWNS;

  /** An upright sonde has no bearing: it is then taken to be anywhere. */
  private static final double UPRIGHT = 1e-6;

  private Spread() {}

  /** Row by row: x, y, depth, bearing, tilt, strength. */
  static List<Double> of(double[] at, double[][] inner, double wider) {
    double[][] turn = new double[SIZE][SIZE];
    double level = StrictMath.hypot(at[3], at[4]);
    double strength = StrictMath.hypot(level, at[5]);
    boolean upright = level < UPRIGHT * strength;
    double sign = at[3] < 0 || (at[3] == 0 && at[4] < 0) ? -1 : 1;
    turn[0][0] = 1;
    turn[1][1] = 1;
    turn[2][2] = StrictMath.exp(at[2]);
    if (!upright) {
      turn[3][3] = at[4] / (level * level);
      turn[3][4] = -at[3] / (level * level);
      turn[4][3] = -sign * at[5] * at[3] / (level * strength * strength);
      turn[4][4] = -sign * at[5] * at[4] / (level * strength * strength);
    }
    turn[4][5] = sign * (upright ? 1 / strength : level / (strength * strength));
    for (int k = 3; k < SIZE; k++) {
      turn[5][k] = at[k] / strength;
    }
    List<Double> covariance = new ArrayList<>();
    for (int i = 0; i < SIZE; i++) {
      for (int j = 0; j < SIZE; j++) {
        double sum = 0;
        for (int k = 0; k < SIZE; k++) {
          for (int l = 0; l < SIZE; l++) {
            sum += turn[i][k] * inner[k][l] * turn[j][l];
          }
        }
        boolean anywhere = upright && i == 3 && j == 3;
        covariance.add(anywhere ? StrictMath.PI * StrictMath.PI / 12 : wider * sum);
      }
    }
    return covariance;
  }
}
