package daylight.footage.counter;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** Cuts a line of ink into glyphs: what hangs together, or stands above one another, is one. */
final class Cut {
  /** One glyph's box, ends exclusive. */
  record Box(int left, int top, int right, int bottom, int pixels) {
    double centre() {
      return (left + right) / 2.0;
    }

    int width() {
      return right - left;
    }

    int height() {
      return bottom - top;
    }

    Box with(Box other) {
      return new Box(
          Math.min(left, other.left),
          Math.min(top, other.top),
          Math.max(right, other.right),
          Math.max(bottom, other.bottom),
          pixels + other.pixels);
    }
  }

  private static final int MOST = 64;

  private static final int SHIFT = 16;

  private final int width;
  private final boolean[] open;
  private final int[] inColumn;
  private final int[] stack;

  Cut(int width, int height) {
    this.width = width;
    open = new boolean[width * height];
    inColumn = new int[width];
    stack = new int[width * height];
  }

  /**
   * The glyphs between two rows, from left to right.
   *
   * @param from ink at least this strong counts
   * @param reach pixels this far apart still hang together, at least 1
   */
  List<Box> glyphs(int[] ink, int top, int bottom, int from, int reach) {
    Arrays.fill(inColumn, 0);
    for (int y = top; y < bottom; y++) {
      int row = y * width;
      for (int x = 0; x < width; x++) {
        boolean inked = ink[row + x] >= from;
        open[row + x] = inked;
        inColumn[x] += inked ? 1 : 0;
      }
    }
    List<Box> pieces = new ArrayList<>();
    for (int x = 0; x < width && pieces.size() < MOST; x++) {
      for (int y = top; y < bottom && inColumn[x] > 0; y++) {
        if (open[y * width + x]) {
          pieces.add(piece(x, y, top, bottom, reach));
        }
      }
    }
    int tall = bottom - top;
    pieces.removeIf(box -> box.pixels() < Math.max(2, tall * tall / 150));
    return stacked(pieces);
  }

  private Box piece(int x0, int y0, int top, int bottom, int reach) {
    int count = 0;
    count = took(x0, y0, count);
    int left = x0;
    int right = x0;
    int high = y0;
    int low = y0;
    int pixels = 0;
    while (count > 0) {
      int at = stack[--count];
      int x = at & ((1 << SHIFT) - 1);
      int y = at >> SHIFT;
      pixels++;
      left = Math.min(left, x);
      right = Math.max(right, x);
      high = Math.min(high, y);
      low = Math.max(low, y);
      for (int ny = Math.max(top, y - reach); ny <= Math.min(bottom - 1, y + reach); ny++) {
        for (int nx = Math.max(0, x - reach); nx <= Math.min(width - 1, x + reach); nx++) {
          if (open[ny * width + nx]) {
            count = took(nx, ny, count);
          }
        }
      }
    }
    return new Box(left, high, right + 1, low + 1, pixels);
  }

  private int took(int x, int y, int count) {
    open[y * width + x] = false;
    inColumn[x]--;
    stack[count] = (y << SHIFT) | x;
    return count + 1;
  }

  private static List<Box> stacked(List<Box> pieces) {
    List<Box> boxes = new ArrayList<>();
    pieces.sort(Comparator.comparingInt(Box::left));
    for (Box piece : pieces) {
      if (!boxes.isEmpty()) {
        Box last = boxes.getLast();
        int shared = Math.min(last.right(), piece.right()) - Math.max(last.left(), piece.left());
        if (shared * 2 > Math.min(last.width(), piece.width())) {
          boxes.set(boxes.size() - 1, last.with(piece));
          continue;
        }
      }
      boxes.add(piece);
    }
    return boxes;
  }
}
