package daylight.footage.scene;

import java.util.Arrays;

/**
 * The painted wall, kept where the lens is and as fine as it can be seen: a millimetre a row close
 * by, four times as coarse at each further level. Pages are painted when first asked for and let go
 * when far away; whether they are there changes no pixel.
 */
final class Unrolled {
  private static final double ROW = 0.001;
  private static final int PAGE = 64;
  private static final int LEVELS = 4;

  /** Parts of a texel, between which colours are weighed. */
  private static final int PART = 256;

  /** Parts of a row in a metre, by level. */
  private static final double[] PARTS = {
    PART / ROW, PART / ROW / 4, PART / ROW / 16, PART / ROW / 64
  };

  /** Rows of pages on either side of the lens that are kept, at every level. */
  private static final int KEPT = 48;

  private static final int[] NOTHING = new int[0];

  private final Wall wall;
  private final double start;
  private final int[][][] pages;
  private final Ring ring = new Ring();

  /** From {@code from} to {@code to} metres in; asked beyond, the last row answers. */
  Unrolled(Wall wall, double from, double to) {
    this.wall = wall;
    this.start = from;
    int rows = (int) StrictMath.ceil((to - from) / ROW);
    pages = new int[LEVELS][][];
    for (int level = 0; level < LEVELS; level++) {
      pages[level] = new int[(rows >> (2 * level)) / PAGE + 2][];
      Arrays.fill(pages[level], NOTHING);
    }
  }

  /** Lets go of pages far from there. */
  void moveTo(double in) {
    for (int level = 0; level < LEVELS; level++) {
      int here = (int) ((in - start) / ROW / PAGE) >> (2 * level);
      for (int i = 0; i < pages[level].length; i++) {
        if (Math.abs(i - here) > KEPT) {
          pages[level][i] = NOTHING;
        }
      }
    }
  }

  /**
   * The colour of the wall, weighed between its four neighbours.
   *
   * @param in metres in
   * @param turn from 0 at twelve clockwise to 1
   * @param level 0 for the finest
   */
  int at(double in, float turn, int level) {
    int y = (int) ((in - start) * PARTS[level]) - PART / 2;
    int row = Math.max(0, y) / PART;
    int v = Math.max(0, y) % PART;
    int columns = Ring.COLUMNS >> level;
    int x = (int) (turn * columns * PART) + columns * PART - PART / 2;
    int left = (x / PART) & (columns - 1);
    int right = (left + 1) & (columns - 1);
    int u = x % PART;
    int[] here = page(level, row / PAGE);
    int[] below = page(level, (row + 1) / PAGE);
    int a = (row % PAGE) * columns;
    int b = ((row + 1) % PAGE) * columns;
    return Packed.mix(
        Packed.mix(here[a + left], here[a + right], u),
        Packed.mix(below[b + left], below[b + right], u),
        v);
  }

  private int[] page(int level, int index) {
    int i = Math.min(index, pages[level].length - 1);
    int[] page = pages[level][i];
    if (page.length == 0) {
      page = level == 0 ? paint(i) : shrink(level, i);
      pages[level][i] = page;
    }
    return page;
  }

  private int[] paint(int index) {
    int[] page = new int[PAGE * Ring.COLUMNS];
    for (int i = 0; i < PAGE; i++) {
      ring.row = index * PAGE + i;
      ring.in = start + (ring.row + 0.5) * ROW;
      wall.paint(ring);
      for (int column = 0; column < Ring.COLUMNS; column++) {
        page[i * Ring.COLUMNS + column] = ring.packed(column);
      }
    }
    return page;
  }

  /** Four rows by two columns of the finer level make one. */
  private int[] shrink(int level, int index) {
    int columns = Ring.COLUMNS >> level;
    int[] page = new int[PAGE * columns];
    for (int i = 0; i < PAGE; i++) {
      int fine = 4 * (index * PAGE + i);
      int[] source = page(level - 1, fine / PAGE);
      for (int column = 0; column < columns; column++) {
        page[i * columns + column] =
            Packed.mean(source, (fine % PAGE) * 2 * columns + 2 * column, 2 * columns);
      }
    }
    return page;
  }
}
