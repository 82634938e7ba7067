package daylight.footage.scene;

/**
 * A square of smooth noise that repeats without a seam in both directions: the raw stuff of walls,
 * water and mud. Values lie around 0, mostly between -1 and 1.
 */
final class Cloud {
  static final int SIZE = 512;

  /** Patches from a quarter of the square down. */
  static final Cloud COARSE = new Cloud(11, 4, 5);

  /** Nothing larger than a sixteenth of the square. */
  static final Cloud FINE = new Cloud(23, 32, 4);

  private static final int MASK = SIZE - 1;

  private final float[] tone = new float[SIZE * SIZE];

  private Cloud(long seed, int cells, int octaves) {
    double weight = 1;
    for (int octave = 0; octave < octaves; octave++) {
      add(seed + octave, cells << octave, weight);
      weight *= 0.55;
    }
  }

  private void add(long seed, int cells, double weight) {
    double scale = (double) cells / SIZE;
    for (int y = 0; y < SIZE; y++) {
      int row = (int) (y * scale);
      double v = ease(y * scale - row);
      for (int x = 0; x < SIZE; x++) {
        int column = (int) (x * scale);
        double u = ease(x * scale - column);
        double above = lerp(knot(seed, column, row, cells), knot(seed, column + 1, row, cells), u);
        double below =
            lerp(knot(seed, column, row + 1, cells), knot(seed, column + 1, row + 1, cells), u);
        tone[y * SIZE + x] += (float) (weight * lerp(above, below, v));
      }
    }
  }

  private static double knot(long seed, int column, int row, int cells) {
    return 2 * Chance.at(seed, column % cells, row % cells) - 1;
  }

  /** The value at whole coordinates, whatever they are. */
  float at(int x, int y) {
    return tone[((y & MASK) << 9) | (x & MASK)];
  }

  /** The value between whole coordinates. */
  float between(float x, float y) {
    int column = (int) Math.floor(x);
    int row = (int) Math.floor(y);
    float u = x - column;
    float v = y - row;
    float above = at(column, row) + u * (at(column + 1, row) - at(column, row));
    float below = at(column, row + 1) + u * (at(column + 1, row + 1) - at(column, row + 1));
    return above + v * (below - above);
  }

  /** A step from 0 to 1 with level ends, for shares from 0 to 1; held outside. */
  static double ease(double share) {
    double s = Math.clamp(share, 0.0, 1.0);
    return s * s * (3 - 2 * s);
  }

  private static double lerp(double a, double b, double share) {
    return a + share * (b - a);
  }
}
