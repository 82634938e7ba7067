package daylight.footage.counter;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * When two glyphs are a space apart. Where every glyph has a cell of one width, a space is a cell
 * left out; otherwise it is a gap clearly wider than between digits. Within a figure it is wider
 * still: a point or a one stands in the middle of much room.
 *
 * @param pitch from digit to digit, pixels; 0 if not known
 * @param gap between digits, pixels
 * @param cells whether every glyph has a cell of one width
 * @param tall height of a digit
 * @param unit whether a space stands before the unit; null if that is not known
 * @param mark the same behind the mark of feet
 */
record Spacing(
    double pitch,
    double gap,
    boolean cells,
    double tall,
    @Nullable Boolean unit,
    @Nullable Boolean mark) {
  static final Spacing NONE = new Spacing(0, 0, false, 1000, null, null);

  private static final double CELL_LEFT_OUT = 1.6;

  /** A letter wider than its cell leaves less than that beside it. */
  private static final double MOST_OF_A_CELL = 0.6;

  private static final double WORD = 0.17;

  /** The same for the mean of many. */
  private static final double MEAN_WORD = 0.14;

  private static final double BESIDE_ONE = 0.4;
  private static final double WITHIN_FIGURE = 0.75;

  /** No two digits of a figure are further apart, heights. */
  private static final double WIDEST = 1.4;

  /** No unit is further from its figure, heights. */
  private static final double FARTHEST = 3;

  /** A point has a cell of its own where the digits beside it are so many digits apart. */
  private static final double TWO_CELLS = 1.75;

  /** The same where the width of a cell is not known, in heights. */
  private static final double OVER_POINT = 1.45;

  private static final double USUAL_GAP = 0.15;
  private static final double LEAST_HEIGHT = 0.7;

  static Spacing of(List<Glyphs> lines, Kinds kinds, int tall) {
    List<Double> pitches = new ArrayList<>();
    List<Double> gaps = new ArrayList<>();
    List<Double> overPoint = new ArrayList<>();
    for (Glyphs glyphs : lines) {
      List<Cut.Box> boxes = glyphs.boxes();
      for (int i = 1; i < boxes.size(); i++) {
        Cut.Box a = boxes.get(i - 1);
        Cut.Box b = boxes.get(i);
        double step = b.centre() - a.centre();
        if (digit(glyphs.kind(i - 1), a, kinds, tall) && digit(glyphs.kind(i), b, kinds, tall)) {
          if (step < WIDEST * tall) {
            pitches.add(step);
          }
          if (wide(kinds.letter(glyphs.kind(i - 1))) && wide(kinds.letter(glyphs.kind(i)))) {
            gaps.add((double) b.left() - a.right());
          }
        }
        if (i > 1
            && digit(glyphs.kind(i), b, kinds, tall)
            && kinds.letter(glyphs.kind(i - 1)) == '.'
            && digit(glyphs.kind(i - 2), boxes.get(i - 2), kinds, tall)) {
          overPoint.add(b.centre() - boxes.get(i - 2).centre());
        }
      }
    }
    double gap = gaps.isEmpty() ? USUAL_GAP * tall : middle(gaps);
    Spacing plain = plain(pitches, overPoint, gap, tall);
    return new Spacing(
        plain.pitch,
        gap,
        plain.cells,
        tall,
        plain.mostly(lines, kinds, Series.LENGTH_LETTERS, false),
        plain.mostly(lines, kinds, "'", true));
  }

  private static Spacing plain(List<Double> pitches, List<Double> overPoint, double gap, int tall) {
    if (overPoint.isEmpty()) {
      return new Spacing(pitches.isEmpty() ? 0 : middle(pitches), gap, false, tall, null, null);
    }
    double over = middle(overPoint);
    if (pitches.isEmpty()) {
      return new Spacing(over / 2, gap, over > OVER_POINT * tall, tall, null, null);
    }
    double pitch = middle(pitches);
    return new Spacing(pitch, gap, over > TWO_CELLS * pitch, tall, null, null);
  }

  /**
   * Whether a letter stands a space apart from a digit: a typeface does one or the other, only its
   * wide digits tell, and on small letters only the mean does.
   */
  private @Nullable Boolean mostly(
      List<Glyphs> lines, Kinds kinds, String letters, boolean before) {
    double extra = 0;
    int apart = 0;
    int all = 0;
    for (Glyphs glyphs : lines) {
      for (int i = 1; i < glyphs.count(); i++) {
        char digit = kinds.letter(glyphs.kind(before ? i : i - 1));
        char other = kinds.letter(glyphs.kind(before ? i - 1 : i));
        Cut.Box a = glyphs.boxes().get(i - 1);
        Cut.Box b = glyphs.boxes().get(i);
        double between = b.left() - a.right() - gap;
        if (wide(digit) && letters.indexOf(other) >= 0 && Math.abs(between) < FARTHEST * tall) {
          all++;
          extra += between;
          apart += apart(a, glyphs.kind(i - 1), b, glyphs.kind(i), kinds) ? 1 : 0;
        }
      }
    }
    return all == 0 ? null : cells ? 2 * apart > all : extra > MEAN_WORD * tall * all;
  }

  private static boolean digit(int kind, Cut.Box box, Kinds kinds, int tall) {
    return Character.isDigit(kinds.letter(kind)) && box.height() >= LEAST_HEIGHT * tall;
  }

  private static double middle(List<Double> values) {
    values.sort(null);
    return values.get(values.size() / 2);
  }

  private static boolean wide(char letter) {
    return letter == '0' || (letter >= '2' && letter <= '9');
  }

  boolean apart(Cut.Box a, int kindA, Cut.Box b, int kindB, Kinds kinds) {
    char before = kinds.letter(kindA);
    char after = kinds.letter(kindB);
    if (unit != null && Character.isDigit(before) && Series.LENGTH_LETTERS.indexOf(after) >= 0) {
      return unit;
    }
    if (mark != null && before == '\'' && Character.isDigit(after)) {
      return mark;
    }
    double extra = b.left() - a.right() - gap;
    boolean figure =
        (Character.isDigit(before) || before == '.') && (Character.isDigit(after) || after == '.');
    if (figure && extra <= WITHIN_FIGURE * tall) {
      return false;
    }
    if (cells) {
      return b.centre() - a.centre() > CELL_LEFT_OUT * pitch
          && b.left() - a.right() > MOST_OF_A_CELL * pitch;
    }
    boolean one = before == '1' || after == '1' || before == '.' || after == '.';
    return extra > (one ? BESIDE_ONE : WORD) * tall;
  }
}
