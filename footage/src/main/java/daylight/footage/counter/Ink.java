package daylight.footage.counter;

import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;
import java.util.Arrays;

/**
 * How much a pixel stands out as part of a thin stroke: what is left of the brightness when all
 * that is wider than a stroke is taken away (the top-hat transform of mathematical morphology). A
 * wide glare behind the letters leaves nothing, a stroke its height above what surrounds it.
 *
 * <p>It is done on every frame, so it is done with few loops over whole arrays: the least of {@code
 * 2^n} neighbours is the lesser of two times the least of {@code 2^(n-1)}, and a margin around the
 * picture saves asking where it ends.
 */
final class Ink {
  private static final int BRIGHTEST = 255;
  private static final long GREATEST = 0;
  private static final long LEAST = ~GREATEST;
  private static final long HIGHEST = 0x8080808080808080L;
  private static final VarHandle EIGHT =
      MethodHandles.byteArrayViewVarHandle(long[].class, ByteOrder.LITTLE_ENDIAN);

  private final int width;
  private final int height;
  private final int reach;
  private final int across;
  private final int[] light;
  private final int[] strokes;
  private byte[] ground;
  private byte[] other;

  /**
   * For windows of one size.
   *
   * @param reach half the width of what is still a stroke, pixels
   */
  Ink(int width, int height, int reach) {
    this.width = width;
    this.height = height;
    this.reach = reach;
    across = width + reach;
    int margins = reach * across + reach;
    int size = 2 * margins + across * height + Long.BYTES;
    light = new int[width * height];
    strokes = new int[width * height];
    ground = new byte[size];
    other = new byte[size];
  }

  /** How bright a pixel is, or how dark for dark strokes. */
  int light(int pixel) {
    return light[pixel];
  }

  /** How bright what is behind the strokes is there. */
  int ground(int pixel) {
    return ground[at(pixel / width) + pixel % width] & BRIGHTEST;
  }

  /** Where a row begins within the margins. */
  private int at(int row) {
    return (reach + row) * across + reach;
  }

  /** The strokes found last: pixel (x, y) at {@code y * width + x}, from 0 to 255. */
  int[] strokes() {
    return strokes;
  }

  /**
   * Looks for strokes.
   *
   * @param pixels row by row
   * @param dark whether strokes are darker than what surrounds them
   * @param least what is less bright (or, for dark strokes, less dark) than this is no ink
   */
  int[] find(byte[] pixels, boolean dark, int least) {
    int turn = dark ? BRIGHTEST : 0;
    Arrays.fill(ground, (byte) BRIGHTEST);
    for (int y = 0; y < height; y++) {
      int row = y * width;
      int into = at(y) - row;
      for (int i = row; i < row + width; i++) {
        int level = (pixels[i] & BRIGHTEST) ^ turn;
        light[i] = level;
        ground[i + into] = (byte) level;
      }
    }
    around(1, LEAST);
    around(across, LEAST);
    margin((byte) 0);
    around(1, GREATEST);
    around(across, GREATEST);
    for (int y = 0; y < height; y++) {
      int row = y * width;
      int behind = at(y) - row;
      for (int i = row; i < row + width; i++) {
        strokes[i] = light[i] < least ? 0 : light[i] - (ground[i + behind] & BRIGHTEST);
      }
    }
    return strokes;
  }

  /** Sets all that is not of the picture. */
  private void margin(byte level) {
    Arrays.fill(ground, 0, at(0), level);
    for (int y = 0; y < height; y++) {
      Arrays.fill(ground, at(y) + width, at(y + 1), level);
    }
    Arrays.fill(ground, at(height), ground.length, level);
  }

  /**
   * Puts the least or the greatest of all within reach, so many places a step, in the place of each
   * (erosion and dilation).
   */
  private void around(int step, long which) {
    int wide = 1;
    while (2 * wide <= 2 * reach + 1) {
      pairs(wide * step, 0, which);
      wide *= 2;
    }
    pairs((2 * reach + 1 - wide) * step, reach * step, which);
  }

  /**
   * Of every place and the one so far behind it takes one and puts it so far behind the first.
   * Eight pixels at a time, each a byte of a long: the compiler makes nothing better of bytes.
   */
  private void pairs(int by, int into, long which) {
    byte[] from = ground;
    byte[] to = other;
    int last = from.length - Math.max(by, into) - Long.BYTES;
    for (int i = 0; i <= last; i += Long.BYTES) {
      long a = (long) EIGHT.get(from, i);
      long b = (long) EIGHT.get(from, i + by);
      long first = notLess(a, b) ^ which;
      EIGHT.set(to, i + into, (a & first) | (b & ~first));
    }
    ground = to;
    other = from;
  }

  /**
   * All bits of each byte where that of a, taken without sign, is not less than that of b: the
   * bytes are subtracted with their highest bits set apart, so that none borrows from the next.
   */
  private static long notLess(long a, long b) {
    long rest = (a | HIGHEST) - (b & ~HIGHEST);
    long not = ((a & ~b) | (~(a ^ b) & rest)) & HIGHEST;
    return (not >>> (Byte.SIZE - 1)) * BRIGHTEST;
  }
}
