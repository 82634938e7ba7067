package daylight.line.survey;

import org.ejml.data.DMatrixRMaj;
import org.jspecify.annotations.Nullable;

/**
 * The normal equations of a design whose unknowns are all plainly determined, by Cholesky. A
 * reading speaks of a handful of unknowns, so its row is kept by its entries that are not zero.
 */
final class Normals implements Factored {
  /**
   * The normal matrix, its diagonal one, is trusted while its smallest eigenvalue is above this:
   * the covariance then keeps more than seven digits. Singular values decide below it.
   */
  private static final double PLAIN = 1e-8;

  /** Steps of inverse iteration toward the smallest eigenvalue. */
  private static final int STEPS = 6;

  private final int unknowns;
  private final double[] scale;

  /** By reading: the unknowns it speaks of, and the scaled entries of its row. */
  private final int[][] columns;

  private final double[][] entries;

  /** Lower triangular, by rows. */
  private final double[][] root;

  private double @Nullable [][] inverse;

  private Normals(double[] scale, int[][] columns, double[][] entries, double[][] root) {
    this.unknowns = scale.length;
    this.scale = scale;
    this.columns = columns;
    this.entries = entries;
    this.root = root;
  }

  /** Null where it is in doubt whether everything is determined. */
  static @Nullable Normals of(DMatrixRMaj design, double[] scale) {
    int unknowns = design.numCols;
    if (unknowns == 0 || design.numRows < unknowns) {
      return null;
    }
    int[][] columns = new int[design.numRows][];
    double[][] entries = new double[design.numRows][];
    double[][] normal = new double[unknowns][unknowns];
    for (int row = 0; row < design.numRows; row++) {
      sparse(design, row, scale, columns, entries);
      int[] at = columns[row];
      double[] value = entries[row];
      for (int i = 0; i < at.length; i++) {
        for (int j = 0; j <= i; j++) {
          normal[at[i]][at[j]] += value[i] * value[j];
        }
      }
    }
    if (!factor(normal)) {
      return null;
    }
    var normals = new Normals(scale, columns, entries, normal);
    return normals.smallest() > PLAIN ? normals : null;
  }

  private static void sparse(
      DMatrixRMaj design, int row, double[] scale, int[][] columns, double[][] entries) {
    int count = 0;
    for (int k = 0; k < scale.length; k++) {
      count += design.get(row, k) == 0 ? 0 : 1;
    }
    columns[row] = new int[count];
    entries[row] = new double[count];
    int next = 0;
    for (int k = 0; k < scale.length; k++) {
      double value = design.get(row, k);
      if (value != 0) {
        columns[row][next] = k;
        entries[row][next++] = value / scale[k];
      }
    }
  }

  /** Turns the lower half into its Cholesky root; false at a pivot that leaves doubt. */
  private static boolean factor(double[][] matrix) {
    for (int i = 0; i < matrix.length; i++) {
      double[] own = matrix[i];
      for (int j = 0; j <= i; j++) {
        double[] other = matrix[j];
        double sum = own[j];
        for (int k = 0; k < j; k++) {
          sum -= own[k] * other[k];
        }
        if (j < i) {
          own[j] = sum / other[j];
        } else if (sum > PLAIN) {
          own[i] = StrictMath.sqrt(sum);
        } else {
          return false;
        }
      }
    }
    return true;
  }

  /** The smallest eigenvalue by inverse iteration, from above. */
  private double smallest() {
    double[] vector = new double[unknowns];
    for (int k = 0; k < unknowns; k++) {
      // No direction of interest is likely to be square to this.
      vector[k] = 1 + 0.5 * StrictMath.sin(1.7 * k);
    }
    double growth = 1;
    for (int i = 0; i < STEPS; i++) {
      double before = length(vector);
      for (int k = 0; k < unknowns; k++) {
        vector[k] /= before;
      }
      solve(vector);
      growth = length(vector);
    }
    return 1 / growth;
  }

  private static double length(double[] vector) {
    double sum = 0;
    for (double each : vector) {
      sum += each * each;
    }
    return StrictMath.sqrt(sum);
  }

  /** Solves the normal equations in place. */
  private void solve(double[] vector) {
    for (int i = 0; i < unknowns; i++) {
      double[] own = root[i];
      double sum = vector[i];
      for (int k = 0; k < i; k++) {
        sum -= own[k] * vector[k];
      }
      vector[i] = sum / own[i];
    }
    for (int i = unknowns - 1; i >= 0; i--) {
      double[] own = root[i];
      double value = vector[i] / own[i];
      vector[i] = value;
      for (int k = 0; k < i; k++) {
        vector[k] -= own[k] * value;
      }
    }
  }

  @Override
  public double[] step(double[] misfit) {
    double[] step = new double[unknowns];
    for (int row = 0; row < columns.length; row++) {
      for (int i = 0; i < columns[row].length; i++) {
        step[columns[row][i]] -= entries[row][i] * misfit[row];
      }
    }
    solve(step);
    for (int k = 0; k < unknowns; k++) {
      step[k] /= scale[k];
    }
    return step;
  }

  /** The inverse of the scaled normal matrix. */
  private double[][] inverse() {
    if (inverse == null) {
      double[][] made = new double[unknowns][];
      for (int k = 0; k < unknowns; k++) {
        made[k] = new double[unknowns];
        made[k][k] = 1;
        solve(made[k]);
      }
      inverse = made;
    }
    return inverse;
  }

  @Override
  public DMatrixRMaj covariance() {
    double[][] scaled = inverse();
    var covariance = new DMatrixRMaj(unknowns, unknowns);
    for (int i = 0; i < unknowns; i++) {
      for (int j = 0; j <= i; j++) {
        double value = (scaled[i][j] + scaled[j][i]) / 2 / scale[i] / scale[j];
        covariance.set(i, j, value);
        covariance.set(j, i, value);
      }
    }
    return covariance;
  }

  @Override
  public DMatrixRMaj gain() {
    double[][] scaled = inverse();
    var gain = new DMatrixRMaj(unknowns, columns.length);
    for (int k = 0; k < unknowns; k++) {
      double[] own = scaled[k];
      for (int row = 0; row < columns.length; row++) {
        gain.set(k, row, along(own, row) / scale[k]);
      }
    }
    return gain;
  }

  private double along(double[] vector, int row) {
    int[] at = columns[row];
    double[] value = entries[row];
    double sum = 0;
    for (int i = 0; i < at.length; i++) {
      sum += vector[at[i]] * value[i];
    }
    return sum;
  }

  @Override
  public double residualCovariance(int a, int b) {
    double[][] scaled = inverse();
    double sum = a == b ? 1 : 0;
    for (int i = 0; i < columns[a].length; i++) {
      sum -= entries[a][i] * along(scaled[columns[a][i]], b);
    }
    return sum;
  }

  @Override
  public int rank() {
    return unknowns;
  }

  @Override
  public double worstSd() {
    double[][] scaled = inverse();
    double worst = 0;
    for (int k = 0; k < unknowns; k++) {
      worst = Math.max(worst, StrictMath.sqrt(scaled[k][k]) / scale[k]);
    }
    return worst;
  }

  @Override
  public boolean[] open() {
    return new boolean[unknowns];
  }
}
