package daylight.footage.counter;

/**
 * How much a pixel stands out as part of a thin stroke: what is left of the brightness when all
 * that is wider than a stroke is taken away (the top-hat transform of mathematical morphology). A
 * wide glare behind the letters leaves nothing, a stroke its height above what surrounds it.
 */
final class Ink {
  private final int width;
  private final int[] light;
  private final int[] low;
  private final int[] turned;
  private final int[] strokes;

  Ink(int width, int height) {
    this.width = width;
    light = new int[width * height];
    low = new int[width * height];
    turned = new int[width * height];
    strokes = new int[width * height];
  }

  /** How bright a pixel is, or how dark for dark strokes. */
  int light(int pixel) {
    return light[pixel];
  }

  /** How bright what is behind the strokes is there. */
  int ground(int pixel) {
    return turned[pixel];
  }

  /** The strokes found last: pixel (x, y) at {@code y * width + x}, from 0 to 255. */
  int[] strokes() {
    return strokes;
  }

  /**
   * Looks for strokes.
   *
   * @param pixels row by row
   * @param reach half the width of what is still a stroke, pixels
   * @param dark whether strokes are darker than what surrounds them
   * @param least what is less bright (or, for dark strokes, less dark) than this is no ink
   */
  int[] find(byte[] pixels, int reach, boolean dark, int least) {
    for (int i = 0; i < light.length; i++) {
      int level = pixels[i] & 255;
      light[i] = dark ? 255 - level : level;
    }
    // The least of the surroundings, then the greatest of that, rows first and columns after.
    System.arraycopy(light, 0, low, 0, light.length);
    for (int by = 1; by <= reach; by++) {
      lowerAcross(light, low, by);
    }
    System.arraycopy(low, 0, turned, 0, low.length);
    for (int by = 1; by <= reach; by++) {
      lower(low, turned, by * width);
    }
    System.arraycopy(turned, 0, low, 0, low.length);
    for (int by = 1; by <= reach; by++) {
      raiseAcross(turned, low, by);
    }
    System.arraycopy(low, 0, turned, 0, low.length);
    for (int by = 1; by <= reach; by++) {
      raise(low, turned, by * width);
    }
    for (int i = 0; i < light.length; i++) {
      strokes[i] = light[i] < least ? 0 : light[i] - turned[i];
    }
    return strokes;
  }

  // Plain loops over whole rows, so that the compiler may take several pixels at a time.

  private void lowerAcross(int[] from, int[] to, int by) {
    for (int row = 0; row < from.length; row += width) {
      for (int i = row; i < row + width - by; i++) {
        to[i] = Math.min(to[i], from[i + by]);
      }
      for (int i = row + by; i < row + width; i++) {
        to[i] = Math.min(to[i], from[i - by]);
      }
    }
  }

  private void raiseAcross(int[] from, int[] to, int by) {
    for (int row = 0; row < from.length; row += width) {
      for (int i = row; i < row + width - by; i++) {
        to[i] = Math.max(to[i], from[i + by]);
      }
      for (int i = row + by; i < row + width; i++) {
        to[i] = Math.max(to[i], from[i - by]);
      }
    }
  }

  private static void lower(int[] from, int[] to, int by) {
    for (int i = 0; i < from.length - by; i++) {
      to[i] = Math.min(to[i], from[i + by]);
    }
    for (int i = by; i < from.length; i++) {
      to[i] = Math.min(to[i], from[i - by]);
    }
  }

  private static void raise(int[] from, int[] to, int by) {
    for (int i = 0; i < from.length - by; i++) {
      to[i] = Math.max(to[i], from[i + by]);
    }
    for (int i = by; i < from.length; i++) {
      to[i] = Math.max(to[i], from[i - by]);
    }
  }
}
