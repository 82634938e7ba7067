package daylight.footage.scene;

/**
 * A ring of the wall one row high, unrolled clockwise from twelve and being painted: light that it
 * throws back, from 0 to 1 a colour.
 */
final class Ring {
  /** Columns around. */
  static final int COLUMNS = 512;

  final float[] red = new float[COLUMNS];
  final float[] green = new float[COLUMNS];
  final float[] blue = new float[COLUMNS];

  /** How far in, in metres. */
  double in;

  /** The pipe's radius here, in metres. */
  double radius;

  /** Number of the row, for noise. */
  int row;

  /** Mixes in a colour {@code 0xRRGGBB}, from not at all (0) to fully (1). */
  void mix(int column, int colour, float share) {
    float s = Math.clamp(share, 0f, 1f);
    red[column] += s * (((colour >> 16) & 255) / 255f - red[column]);
    green[column] += s * (((colour >> 8) & 255) / 255f - green[column]);
    blue[column] += s * ((colour & 255) / 255f - blue[column]);
  }

  void shade(int column, float factor) {
    red[column] *= factor;
    green[column] *= factor;
    blue[column] *= factor;
  }

  /** Metres along the wall from a clock position to a column, clockwise positive. */
  double across(int column, double clock) {
    double turn = (column + 0.5) / COLUMNS - clock / (2 * StrictMath.PI);
    return (turn - StrictMath.rint(turn)) * 2 * StrictMath.PI * radius;
  }

  /** Column at a clock position. */
  static int column(double clock) {
    double turn = clock / (2 * StrictMath.PI);
    return (int) ((turn - Math.floor(turn)) * COLUMNS) & (COLUMNS - 1);
  }

  int packed(int column) {
    return (level(red[column]) << 16) | (level(green[column]) << 8) | level(blue[column]);
  }

  private static int level(float value) {
    return Math.clamp((int) (value * 255 + 0.5f), 0, 255);
  }
}
