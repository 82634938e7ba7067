package daylight.footage.scene;

/** Arithmetic on colours {@code 0xRRGGBB}. */
final class Packed {
  private Packed() {}

  /** From the first colour (0) to the second (256). */
  static int mix(int a, int b, int share) {
    int rest = 256 - share;
    int redBlue = ((a & 0xFF00FF) * rest + (b & 0xFF00FF) * share) >>> 8 & 0xFF00FF;
    int green = ((a & 0x00FF00) * rest + (b & 0x00FF00) * share) >>> 8 & 0x00FF00;
    return redBlue | green;
  }

  /** The mean of four rows by two columns from a place on. */
  static int mean(int[] source, int from, int stride) {
    int redBlue = 0;
    int green = 0;
    for (int i = 0; i < 4; i++) {
      int a = source[from + i * stride];
      int b = source[from + i * stride + 1];
      redBlue += (a & 0xFF00FF) + (b & 0xFF00FF);
      green += (a & 0x00FF00) + (b & 0x00FF00);
    }
    return (redBlue >>> 3 & 0xFF00FF) | (green >>> 3 & 0x00FF00);
  }
}
