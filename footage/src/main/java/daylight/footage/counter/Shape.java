package daylight.footage.counter;

/**
 * A glyph made comparable: its ink on a small grid that keeps where it stands in its line and how
 * wide it is, scaled so that the mean is 0 and the length 1.
 */
final class Shape {
  static final int COLUMNS = 12;
  static final int ROWS = 16;
  static final int CELLS = COLUMNS * ROWS;

  private Shape() {}

  /**
   * The glyph in a box of a picture of ink.
   *
   * @param left of the glyph, its first column
   * @param right of the glyph, behind its last column
   * @param top of its line, where a digit begins
   * @param bottom of its line, behind where a digit ends
   */
  static float[] of(int[] ink, int width, double left, double right, double top, double bottom) {
    double tall = (bottom - top) * (ROWS + 2.0) / ROWS;
    double cellDown = tall / ROWS;
    double cellAcross = Math.max((bottom - top) / ROWS, (right - left) / COLUMNS) * 1.1;
    double x0 = (left + right) / 2 - cellAcross * COLUMNS / 2;
    double y0 = (top + bottom) / 2 - tall / 2;
    int height = ink.length / width;
    float[] shape = new float[CELLS];
    int from = Math.max(0, (int) Math.floor(left));
    int to = Math.min(width, (int) Math.ceil(right));
    for (int row = 0; row < ROWS; row++) {
      for (int column = 0; column < COLUMNS; column++) {
        shape[row * COLUMNS + column] =
            mean(
                ink,
                width,
                height,
                Math.max(from, x0 + column * cellAcross),
                Math.min(to, x0 + (column + 1) * cellAcross),
                y0 + row * cellDown,
                y0 + (row + 1) * cellDown,
                cellAcross);
      }
    }
    scale(shape);
    return shape;
  }

  private static float mean(
      int[] ink,
      int width,
      int height,
      double x0,
      double x1,
      double y0,
      double y1,
      double cellAcross) {
    if (x1 <= x0) {
      return 0;
    }
    double sum = 0;
    int lastX = Math.min(width - 1, (int) Math.ceil(x1) - 1);
    int lastY = Math.min(height - 1, (int) Math.ceil(y1) - 1);
    for (int y = Math.max(0, (int) Math.floor(y0)); y <= lastY; y++) {
      double wy = Math.min(y + 1, y1) - Math.max(y, y0);
      for (int x = Math.max(0, (int) Math.floor(x0)); x <= lastX; x++) {
        sum += wy * (Math.min(x + 1, x1) - Math.max(x, x0)) * ink[y * width + x];
      }
    }
    return (float) (sum / (cellAcross * (y1 - y0)));
  }

  private static void scale(float[] shape) {
    double mean = 0;
    for (float one : shape) {
      mean += one;
    }
    mean /= CELLS;
    double squares = 0;
    for (int i = 0; i < CELLS; i++) {
      shape[i] -= (float) mean;
      squares += shape[i] * shape[i];
    }
    double length = Math.sqrt(squares);
    for (int i = 0; i < CELLS; i++) {
      shape[i] = length > 0 ? (float) (shape[i] / length) : 0;
    }
  }

  /** How alike two are, at most 1. */
  static float alike(float[] a, float[] b) {
    float sum = 0;
    for (int i = 0; i < CELLS; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }
}
