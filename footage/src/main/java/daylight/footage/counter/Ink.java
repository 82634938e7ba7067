package daylight.footage.counter;

/**
 * How much a pixel stands out as part of a thin stroke: what is left of the brightness when all
 * that is wider than a stroke is taken away (the top-hat transform of mathematical morphology). A
 * wide glare behind the letters leaves nothing, a stroke its height above what surrounds it.
 */
final class Ink {
  private final int width;
  private final int height;
  private final int[] light;
  private final int[] low;
  private final int[] turned;
  private final int[] strokes;

  Ink(int width, int height) {
    this.width = width;
    this.height = height;
    light = new int[width * height];
    low = new int[width * height];
    turned = new int[width * height];
    strokes = new int[width * height];
  }

  int width() {
    return width;
  }

  int height() {
    return height;
  }

  /** How bright a pixel is, or how dark for dark strokes. */
  int light(int pixel) {
    return light[pixel];
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
    rows(light, low, reach, true);
    columns(low, turned, reach, true);
    rows(turned, low, reach, false);
    columns(low, turned, reach, false);
    for (int i = 0; i < light.length; i++) {
      strokes[i] = light[i] < least ? 0 : light[i] - turned[i];
    }
    return strokes;
  }

  private void rows(int[] from, int[] to, int reach, boolean least) {
    for (int y = 0; y < height; y++) {
      int row = y * width;
      for (int x = 0; x < width; x++) {
        int first = row + Math.max(0, x - reach);
        int last = row + Math.min(width - 1, x + reach);
        int best = from[first];
        for (int i = first + 1; i <= last; i++) {
          best = least ? Math.min(best, from[i]) : Math.max(best, from[i]);
        }
        to[row + x] = best;
      }
    }
  }

  private void columns(int[] from, int[] to, int reach, boolean least) {
    for (int y = 0; y < height; y++) {
      int first = Math.max(0, y - reach);
      int last = Math.min(height - 1, y + reach);
      int at = y * width;
      System.arraycopy(from, first * width, to, at, width);
      for (int row = first + 1; row <= last; row++) {
        int other = row * width;
        for (int x = 0; x < width; x++) {
          int value = from[other + x];
          if (least ? value < to[at + x] : value > to[at + x]) {
            to[at + x] = value;
          }
        }
      }
    }
  }
}
