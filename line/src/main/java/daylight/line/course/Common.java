package daylight.line.course;

import java.util.ArrayList;
import java.util.List;
import org.ejml.data.DMatrixRMaj;

/**
 * The errors of surveyed points, cut into what each has of its own and what they share.
 *
 * <p>Spots tied to landmarks err together only because the landmarks do: given those, they are
 * independent. So the covariance C of all is D + U·Uᵀ with D block by block and few columns U. The
 * columns are found by holding, one after another, the points that others depend on most, until
 * nothing is left between different points.
 */
@SuppressWarnings("ArrayRecordComponent") // never leaves this room
record Common(double[][] own, double[][] shared, int columns) {
  /** A correlation this small is none. */
  private static final double NOTHING = 1e-7;

  /** A variance this small is none, square metres: a micrometre. */
  private static final double HELD = 1e-12;

  /**
   * Cuts the covariance of points into own and shared.
   *
   * @param covariance of all points, those that are wanted first
   * @param wanted how many points are wanted
   * @param helpers how many more there are, which the wanted ones may hang on
   * @param dimension coordinates a point has
   * @return {@code own}: for each point, helpers last, its own covariance, row by row; {@code
   *     shared}: for each coordinate its row of U
   */
  static Common of(DMatrixRMaj covariance, int wanted, int helpers, int dimension) {
    int points = wanted + helpers;
    DMatrixRMaj rest = covariance.copy();
    List<double[]> columns = new ArrayList<>();
    boolean[] holding = new boolean[points];
    int next = mostShared(rest, wanted, points, dimension, holding);
    while (next >= 0) {
      holding[next] = true;
      for (int axis = 0; axis < dimension; axis++) {
        take(rest, next * dimension + axis, columns);
      }
      next = mostShared(rest, wanted, points, dimension, holding);
    }
    double[][] own = new double[points][dimension * dimension];
    for (int point = 0; point < points; point++) {
      for (int a = 0; a < dimension; a++) {
        for (int b = 0; b < dimension; b++) {
          own[point][a * dimension + b] = rest.get(point * dimension + a, point * dimension + b);
        }
      }
    }
    double[][] shared = new double[points * dimension][columns.size()];
    for (int row = 0; row < shared.length; row++) {
      for (int column = 0; column < columns.size(); column++) {
        shared[row][column] = columns.get(column)[row];
      }
    }
    return new Common(own, shared, columns.size());
  }

  /** Takes out of a covariance what goes with one coordinate. */
  private static void take(DMatrixRMaj rest, int pivot, List<double[]> columns) {
    double variance = rest.get(pivot, pivot);
    if (variance <= HELD) {
      return;
    }
    double root = Math.sqrt(variance);
    double[] column = new double[rest.numRows];
    for (int row = 0; row < column.length; row++) {
      column[row] = rest.get(row, pivot) / root;
    }
    for (int i = 0; i < column.length; i++) {
      for (int j = 0; j < column.length; j++) {
        rest.add(i, j, -column[i] * column[j]);
      }
    }
    columns.add(column);
  }

  /** The point not yet held that explains most of what goes between others; −1 for nothing left. */
  private static int mostShared(
      DMatrixRMaj rest, int wanted, int points, int dimension, boolean[] holding) {
    int best = -1;
    double most = 0;
    boolean left = false;
    for (int point = 0; point < points; point++) {
      double score = 0;
      for (int a = point * dimension; a < (point + 1) * dimension; a++) {
        for (int other = 0; other < wanted; other++) {
          for (int b = other * dimension; other != point && b < (other + 1) * dimension; b++) {
            double scale = rest.get(a, a) * rest.get(b, b);
            double c = rest.get(a, b);
            if (rest.get(a, a) > HELD
                && rest.get(b, b) > HELD
                && c * c > NOTHING * NOTHING * scale) {
              left |= point < wanted;
              score += c * c / scale;
            }
          }
        }
      }
      if (!holding[point] && score > most) {
        most = score;
        best = point;
      }
    }
    return left ? best : -1;
  }

  /** U of one coordinate of a point. */
  double[] row(int point, int dimension, int axis) {
    return shared[point * dimension + axis];
  }
}
