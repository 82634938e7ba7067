package daylight.footage;

/**
 * One picture in memory, to be painted on and read from: row by row from the top left, each pixel
 * as {@code 0xRRGGBB}. One raster serves for a whole film.
 */
public final class Raster {
  private final int width;
  private final int height;
  private final int[] pixels;

  /** A black picture. */
  public Raster(int width, int height) {
    if (width <= 0 || height <= 0) {
      throw new IllegalArgumentException("a picture has pixels, was " + width + " × " + height);
    }
    this.width = width;
    this.height = height;
    this.pixels = new int[width * height];
  }

  /** Pixels across. */
  public int width() {
    return width;
  }

  /** Pixels down. */
  public int height() {
    return height;
  }

  /** The pixels themselves, not a copy: pixel (x, y) is at {@code y * width + x}. */
  public int[] pixels() {
    return pixels;
  }
}
