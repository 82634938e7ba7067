package daylight.line.normal;

/** Sums over small dense matrices kept row by row. */
final class Small {
  private Small() {}

  /** Replaces a symmetric matrix by its lower factor; false where it is not positive definite. */
  static boolean cholesky(double[] a, int n) {
    for (int j = 0; j < n; j++) {
      double d = a[j * n + j];
      for (int k = 0; k < j; k++) {
        d -= a[j * n + k] * a[j * n + k];
      }
      if (!(d > 0)) {
        return false;
      }
      double root = Math.sqrt(d);
      a[j * n + j] = root;
      for (int i = j + 1; i < n; i++) {
        double s = a[i * n + j];
        for (int k = 0; k < j; k++) {
          s -= a[i * n + k] * a[j * n + k];
        }
        a[i * n + j] = s / root;
        a[j * n + i] = 0;
      }
    }
    return true;
  }

  /** Solves L·x = b in place. */
  static void forward(double[] lower, int n, double[] x, int at) {
    for (int i = 0; i < n; i++) {
      double s = x[at + i];
      for (int k = 0; k < i; k++) {
        s -= lower[i * n + k] * x[at + k];
      }
      x[at + i] = s / lower[i * n + i];
    }
  }

  /** Solves Lᵀ·x = b in place. */
  static void backward(double[] lower, int n, double[] x, int at) {
    for (int i = n - 1; i >= 0; i--) {
      double s = x[at + i];
      for (int k = i + 1; k < n; k++) {
        s -= lower[k * n + i] * x[at + k];
      }
      x[at + i] = s / lower[i * n + i];
    }
  }

  /** Solves L·x = row for every row. */
  static void forwardRows(double[] lower, int n, double[] rows, int count) {
    for (int r = 0; r < count; r++) {
      forward(lower, n, rows, r * n);
    }
  }

  /** Solves Lᵀ·x = row for every row. */
  static void backwardRows(double[] lower, int n, double[] rows, int count) {
    for (int r = 0; r < count; r++) {
      backward(lower, n, rows, r * n);
    }
  }

  /** to −= a·bᵀ, with a of {@code rows} and b of {@code columns} rows of length n. */
  static void subtractProduct(
      double[] to, int width, double[] a, int rows, double[] b, int columns, int n) {
    for (int i = 0; i < rows; i++) {
      if (nothing(a, i * n, n)) {
        continue;
      }
      for (int j = 0; j < columns; j++) {
        double s = 0;
        for (int k = 0; k < n; k++) {
          s += a[i * n + k] * b[j * n + k];
        }
        to[i * width + j] -= s;
      }
    }
  }

  /** to −= a·aᵀ, with a of {@code rows} rows of length n; both halves. */
  static void subtractSquare(double[] to, double[] a, int rows, int n) {
    for (int i = 0; i < rows; i++) {
      if (nothing(a, i * n, n)) {
        continue;
      }
      for (int j = 0; j <= i; j++) {
        double s = 0;
        for (int k = 0; k < n; k++) {
          s += a[i * n + k] * a[j * n + k];
        }
        to[i * rows + j] -= s;
        if (j < i) {
          to[j * rows + i] -= s;
        }
      }
    }
  }

  private static boolean nothing(double[] a, int from, int n) {
    for (int k = 0; k < n; k++) {
      if (a[from + k] != 0) {
        return false;
      }
    }
    return true;
  }

  /** to −= rows·x, with {@code count} rows of length n. */
  static void subtractTimes(
      double[] to, int toAt, double[] rows, int count, int n, double[] x, int at) {
    for (int r = 0; r < count; r++) {
      double s = 0;
      for (int k = 0; k < n; k++) {
        s += rows[r * n + k] * x[at + k];
      }
      to[toAt + r] -= s;
    }
  }

  /** to −= rowsᵀ·x, with {@code count} rows of length n. */
  static void subtractTransposed(
      double[] to, int toAt, double[] rows, int count, int n, double[] x, int at) {
    for (int r = 0; r < count; r++) {
      double xr = x[at + r];
      for (int k = 0; k < n; k++) {
        to[toAt + k] -= rows[r * n + k] * xr;
      }
    }
  }

  /** The inverse of L·Lᵀ. */
  static void inverse(double[] lower, int n, double[] to) {
    for (int j = 0; j < n; j++) {
      double[] column = new double[n];
      column[j] = 1;
      forward(lower, n, column, 0);
      backward(lower, n, column, 0);
      for (int i = 0; i < n; i++) {
        to[i * n + j] = column[i];
      }
    }
  }

  /** to −= c·g, with c of {@code count} rows of length p and g of p rows of length n. */
  static void subtractRows(double[] to, int count, int n, double[] c, int p, double[] g) {
    for (int r = 0; r < count; r++) {
      for (int q = 0; q < p; q++) {
        double crq = c[r * p + q];
        if (crq != 0) {
          for (int k = 0; k < n; k++) {
            to[r * n + k] -= crq * g[q * n + k];
          }
        }
      }
    }
  }

  /** to −= cᵀ·h, with c of m rows of length p and h of m rows of length n; to has p rows. */
  static void subtractColumns(double[] to, int p, int n, double[] c, int m, double[] h) {
    for (int q = 0; q < m; q++) {
      for (int r = 0; r < p; r++) {
        double cqr = c[q * p + r];
        if (cqr != 0) {
          for (int k = 0; k < n; k++) {
            to[r * n + k] -= cqr * h[q * n + k];
          }
        }
      }
    }
  }

  /** to −= aᵀ·b, both of {@code count} rows of length n. */
  static void subtractInner(double[] to, int n, double[] a, double[] b, int count) {
    for (int r = 0; r < count; r++) {
      for (int i = 0; i < n; i++) {
        double ari = a[r * n + i];
        if (ari != 0) {
          for (int k = 0; k < n; k++) {
            to[i * n + k] -= ari * b[r * n + k];
          }
        }
      }
    }
  }

  static void raiseDiagonal(double[] a, int n, double share) {
    for (int i = 0; i < n; i++) {
      a[i * n + i] *= 1 + share;
    }
  }
}
