package daylight.footage.counter;

import java.util.ArrayList;
import java.util.List;

/**
 * When two glyphs are a space apart. Where every glyph has a cell of one width, a space is a cell
 * left out; otherwise it is a gap clearly wider than between digits. Within a figure it is wider
 * still: a point or a one stands in the middle of much room.
 *
 * @param pitch from digit to digit, pixels; 0 if not known
 * @param gap between digits, pixels
 * @param cells whether every glyph has a cell of one width
 * @param tall height of a digit
 */
record Spacing(double pitch, double gap, boolean cells, double tall) {
  static final Spacing NONE = new Spacing(0, 0, false, 1000);

  private static final double CELL_LEFT_OUT = 1.6;
  private static final double WORD = 0.17;
  private static final double BESIDE_ONE = 0.4;
  private static final double WITHIN_FIGURE = 0.75;

  /** No two digits of a figure are further apart, heights. */
  private static final double WIDEST = 1.4;

  /** A point has a cell of its own where the digits beside it are so many digits apart. */
  private static final double TWO_CELLS = 1.75;

  /** The same where the width of a cell is not known, in heights. */
  private static final double OVER_POINT = 1.45;

  private static final double USUAL_GAP = 0.15;
  private static final double LEAST_HEIGHT = 0.7;

  static Spacing of(List<List<Cut.Box>> cuts, List<int[]> labels, Kinds kinds, int tall) {
    List<Double> pitches = new ArrayList<>();
    List<Double> gaps = new ArrayList<>();
    List<Double> overPoint = new ArrayList<>();
    for (int n = 0; n < cuts.size(); n++) {
      List<Cut.Box> boxes = cuts.get(n);
      int[] line = labels.get(n);
      for (int i = 1; i < boxes.size(); i++) {
        Cut.Box a = boxes.get(i - 1);
        Cut.Box b = boxes.get(i);
        double step = b.centre() - a.centre();
        if (digit(line[i - 1], a, kinds, tall) && digit(line[i], b, kinds, tall)) {
          if (step < WIDEST * tall) {
            pitches.add(step);
          }
          if (wide(letter(line[i - 1], kinds)) && wide(letter(line[i], kinds))) {
            gaps.add((double) b.left() - a.right());
          }
        }
        if (i > 1
            && digit(line[i], b, kinds, tall)
            && letter(line[i - 1], kinds) == '.'
            && digit(line[i - 2], boxes.get(i - 2), kinds, tall)) {
          overPoint.add(b.centre() - boxes.get(i - 2).centre());
        }
      }
    }
    double gap = gaps.isEmpty() ? USUAL_GAP * tall : middle(gaps);
    if (overPoint.isEmpty()) {
      return new Spacing(pitches.isEmpty() ? 0 : middle(pitches), gap, false, tall);
    }
    double over = middle(overPoint);
    if (pitches.isEmpty()) {
      return new Spacing(over / 2, gap, over > OVER_POINT * tall, tall);
    }
    double pitch = middle(pitches);
    return new Spacing(pitch, gap, over > TWO_CELLS * pitch, tall);
  }

  private static boolean digit(int kind, Cut.Box box, Kinds kinds, int tall) {
    return Character.isDigit(letter(kind, kinds)) && box.height() >= LEAST_HEIGHT * tall;
  }

  private static double middle(List<Double> values) {
    values.sort(null);
    return values.get(values.size() / 2);
  }

  private static char letter(int kind, Kinds kinds) {
    return kind >= 0 ? kinds.letter(kind) : '?';
  }

  private static boolean wide(char letter) {
    return letter == '0' || (letter >= '2' && letter <= '9');
  }

  boolean apart(Cut.Box a, int kindA, Cut.Box b, int kindB, Kinds kinds) {
    char before = letter(kindA, kinds);
    char after = letter(kindB, kinds);
    double extra = b.left() - a.right() - gap;
    boolean figure =
        (Character.isDigit(before) || before == '.') && (Character.isDigit(after) || after == '.');
    if (figure && extra <= WITHIN_FIGURE * tall) {
      return false;
    }
    if (cells) {
      return b.centre() - a.centre() > CELL_LEFT_OUT * pitch;
    }
    boolean one = before == '1' || after == '1' || before == '.' || after == '.';
    return extra > (one ? BESIDE_ONE : WORD) * tall;
  }
}
