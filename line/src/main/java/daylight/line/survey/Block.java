package daylight.line.survey;

import org.jspecify.annotations.Nullable;

/**
 * The joint covariance of a few readings, and its lower triangular root L by Cholesky: L⁻¹ times
 * their misfits are free of correlation and have unit variance. Immutable.
 */
final class Block {
  /** A pivot below this share of its variance leaves the readings no uncertainty of their own. */
  private static final double NOTHING_LEFT = 1e-12;

  private final double[][] covariance;
  private final double[][] root;

  private Block(double[][] covariance, double[][] root) {
    this.covariance = covariance;
    this.root = root;
  }

  /** One reading by itself. */
  static Block of(double sd) {
    return new Block(new double[][] {{sd * sd}}, new double[][] {{sd}});
  }

  /** Two readings. */
  static Block of(double sd, double otherSd, double correlation) {
    double rest = StrictMath.sqrt(1 - correlation * correlation);
    double cross = correlation * sd * otherSd;
    return new Block(
        new double[][] {{sd * sd, cross}, {cross, otherSd * otherSd}},
        new double[][] {{sd, 0}, {correlation * otherSd, otherSd * rest}});
  }

  /** A covariance that is square and symmetric; null where it is not positive definite. */
  static @Nullable Block of(double[][] covariance) {
    int size = covariance.length;
    double[][] root = new double[size][size];
    for (int i = 0; i < size; i++) {
      for (int j = 0; j <= i; j++) {
        double sum = covariance[i][j];
        for (int k = 0; k < j; k++) {
          sum -= root[i][k] * root[j][k];
        }
        if (i == j) {
          if (!(sum > NOTHING_LEFT * covariance[i][i])) {
            return null;
          }
          root[i][i] = StrictMath.sqrt(sum);
        } else {
          root[i][j] = sum / root[j][j];
        }
      }
    }
    return new Block(covariance, root);
  }

  int size() {
    return root.length;
  }

  /** An element of the lower triangular root, in the units of the readings. */
  double root(int row, int column) {
    return root[row][column];
  }

  double sd(int row) {
    return size() == 1 ? root[0][0] : StrictMath.sqrt(covariance[row][row]);
  }

  /** The block without one of its readings. */
  Block without(int row) {
    double[][] rest = new double[size() - 1][size() - 1];
    for (int i = 0; i < rest.length; i++) {
      for (int j = 0; j < rest.length; j++) {
        rest[i][j] = covariance[i < row ? i : i + 1][j < row ? j : j + 1];
      }
    }
    Block block = of(rest);
    if (block == null) {
      throw new IllegalArgumentException("a part of a sound covariance must be sound");
    }
    return block;
  }

  /** What one unit of a reading makes of the whitened readings, from its own row onward. */
  double[] probe(int row) {
    double[] probe = new double[size() - row];
    probe[0] = 1 / root[row][row];
    for (int i = 1; i < probe.length; i++) {
      double sum = 0;
      for (int j = 0; j < i; j++) {
        sum -= root[row + i][row + j] * probe[j];
      }
      probe[i] = sum / root[row + i][row + i];
    }
    return probe;
  }
}
