package daylight.footage.counter;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;

/**
 * Finds where letters are burned in: their edges stay where they are while the picture moves behind
 * them, so that over frames far apart the picture's edges cancel out and theirs do not.
 */
final class Survey {
  /** An edge's mean steepness, levels a pixel, from which it may be a letter's. */
  private static final float STEEP = 5;

  /** How much of an edge's steepness must be left in the mean. */
  private static final float STEADY = 0.33f;

  /** Sums of so many frames' steepness, at most 510 each, are below 32 768. */
  static final int MOST_FRAMES = 64;

  /** In taller pictures every second row is enough. */
  private static final int TALL = 800;

  private static final int BLOCK = 4;
  private static final int FEWEST_IN_BLOCK = 2;
  private static final int REACH = 3;
  private static final int SHORTEST = 7;
  private static final double TALLEST = 1.0 / 5;

  /** So many heights apart are still one line. */
  private static final double WORD_GAP = 1.5;

  private final int width;
  private final int height;
  private final int step;

  // Sums over frames, of the rows that are looked at one after the other. So few frames fit a
  // short,
  // and memory touched for the first time is what looking at them costs most.
  private final short[] across;
  private final short[] down;
  private final short[] any;
  private int frames;

  Survey(int width, int height) {
    this.width = width;
    this.height = height;
    step = height > TALL ? 2 : 1;
    int size = width * ((height + step - 1) / step);
    across = new short[size];
    down = new short[size];
    any = new short[size];
  }

  /**
   * Takes a frame, row by row.
   *
   * @throws IllegalArgumentException if it has another size or is one too many
   */
  void take(byte[] frame) {
    if (frames == MOST_FRAMES || frame.length != width * height) {
      throw new IllegalArgumentException("frame " + frames + " of " + frame.length + " pixels");
    }
    frames++;
    for (int y = 1; y < height - 1; y += step) {
      row(frame, y * width, y / step * width);
    }
  }

  private void row(byte[] pixels, int row, int kept) {
    for (int x = 1; x < width - 1; x++) {
      int i = row + x;
      int gx = (pixels[i + 1] & 255) - (pixels[i - 1] & 255);
      int gy = (pixels[i + width] & 255) - (pixels[i - width] & 255);
      across[kept + x] += (short) gx;
      down[kept + x] += (short) gy;
      any[kept + x] += (short) (Math.abs(gx) + Math.abs(gy));
    }
  }

  /** Where lines of letters seem to be, from the top down. */
  List<Window> lines() {
    int columns = (width + BLOCK - 1) / BLOCK;
    int rows = (height + BLOCK - 1) / BLOCK;
    int[] count = new int[columns * rows];
    for (int y = 1; y < height - 1; y += step) {
      for (int x = 1; x < width - 1; x++) {
        int i = y / step * width + x;
        int steady = Math.abs(across[i]) + Math.abs(down[i]);
        if (steady >= 2 * STEEP * frames && steady >= STEADY * any[i]) {
          count[y / BLOCK * columns + x / BLOCK]++;
        }
      }
    }
    List<Window> pieces = pieces(count, columns, rows);
    return merged(pieces);
  }

  private List<Window> pieces(int[] count, int columns, int rows) {
    List<Window> pieces = new ArrayList<>();
    int fewest = Math.max(1, FEWEST_IN_BLOCK / step);
    boolean[] seen = new boolean[count.length];
    Deque<Integer> open = new ArrayDeque<>();
    for (int start = 0; start < count.length; start++) {
      if (seen[start] || count[start] < fewest) {
        continue;
      }
      int left = columns;
      int right = 0;
      int top = rows;
      int bottom = 0;
      seen[start] = true;
      open.add(start);
      while (!open.isEmpty()) {
        int at = open.remove();
        int x = at % columns;
        int y = at / columns;
        left = Math.min(left, x);
        right = Math.max(right, x);
        top = Math.min(top, y);
        bottom = Math.max(bottom, y);
        for (int dy = -1; dy <= 1; dy++) {
          for (int dx = -REACH; dx <= REACH; dx++) {
            int nx = x + dx;
            int ny = y + dy;
            if (nx < 0 || ny < 0 || nx >= columns || ny >= rows) {
              continue;
            }
            int next = ny * columns + nx;
            if (!seen[next] && count[next] >= fewest) {
              seen[next] = true;
              open.add(next);
            }
          }
        }
      }
      Window piece =
          new Window(
              left * BLOCK, top * BLOCK, (right - left + 1) * BLOCK, (bottom - top + 1) * BLOCK);
      if (piece.height() <= height * TALLEST + 2 * BLOCK) {
        pieces.add(piece);
      }
    }
    return pieces;
  }

  private List<Window> merged(List<Window> pieces) {
    List<Window> lines = new ArrayList<>(pieces);
    boolean again = true;
    while (again) {
      again = false;
      for (int i = 0; i < lines.size() && !again; i++) {
        for (int j = i + 1; j < lines.size() && !again; j++) {
          if (oneLine(lines.get(i), lines.get(j))) {
            Window both = lines.get(i).with(lines.get(j));
            lines.remove(j);
            lines.set(i, both);
            again = true;
          }
        }
      }
    }
    return lines.stream()
        .filter(one -> one.height() >= SHORTEST && one.width() >= one.height())
        .map(one -> one.grown(one.height(), BLOCK, width, height))
        .sorted(Comparator.comparingInt(Window::top).thenComparingInt(Window::left))
        .toList();
  }

  private static boolean oneLine(Window a, Window b) {
    int overlap = Math.min(a.bottom(), b.bottom()) - Math.max(a.top(), b.top());
    int gap = Math.max(a.left(), b.left()) - Math.min(a.right(), b.right());
    int tall = Math.max(a.height(), b.height());
    return overlap >= 0.6 * Math.min(a.height(), b.height())
        && gap <= WORD_GAP * tall
        && Math.max(a.bottom(), b.bottom()) - Math.min(a.top(), b.top()) <= 1.4 * tall;
  }
}
