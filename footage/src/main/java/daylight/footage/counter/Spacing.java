package daylight.footage.counter;

import java.util.ArrayList;
import java.util.List;

/**
 * When two glyphs are a space apart. Where every glyph has a cell of one width, a space is a cell
 * left out; otherwise it is a gap clearly wider than between digits.
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

  /** A point stands alone in a cell as wide as a digit's. */
  private static final double BESIDE_POINT = 0.75;

  private static final double BETWEEN_DIGITS = 0.6;

  static Spacing of(List<List<Cut.Box>> cuts, List<int[]> labels, Kinds kinds, int tall) {
    List<Double> pitches = new ArrayList<>();
    List<Double> gaps = new ArrayList<>();
    List<Double> overPoint = new ArrayList<>();
    for (int n = 0; n < cuts.size(); n++) {
      List<Cut.Box> boxes = cuts.get(n);
      int[] line = labels.get(n);
      for (int i = 1; i < boxes.size(); i++) {
        char a = letter(line[i - 1], kinds);
        char b = letter(line[i], kinds);
        double step = boxes.get(i).centre() - boxes.get(i - 1).centre();
        if (wide(a) && wide(b) && step < 1.4 * tall) {
          pitches.add(step);
          gaps.add((double) boxes.get(i).left() - boxes.get(i - 1).right());
        }
        if (i > 1
            && b >= '0'
            && b <= '9'
            && a == '.'
            && Character.isDigit(letter(line[i - 2], kinds))) {
          overPoint.add(boxes.get(i).centre() - boxes.get(i - 2).centre());
        }
      }
    }
    if (gaps.isEmpty()) {
      return overPoint.isEmpty()
          ? new Spacing(0, 0.15 * tall, false, tall)
          : new Spacing(middle(overPoint) / 2, 0.15 * tall, middle(overPoint) > 1.45 * tall, tall);
    }
    double pitch = middle(pitches);
    boolean cells = !overPoint.isEmpty() && middle(overPoint) > 1.75 * pitch;
    return new Spacing(pitch, middle(gaps), cells, tall);
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
    if (cells) {
      return b.centre() - a.centre() > CELL_LEFT_OUT * pitch;
    }
    char before = letter(kindA, kinds);
    char after = letter(kindB, kinds);
    double extra = b.left() - a.right() - gap;
    if (Character.isDigit(before) && Character.isDigit(after)) {
      return extra > BETWEEN_DIGITS * tall;
    }
    boolean point = before == '.' || after == '.';
    boolean one = before == '1' || after == '1';
    return extra > (point ? BESIDE_POINT : one ? BESIDE_ONE : WORD) * tall;
  }
}
