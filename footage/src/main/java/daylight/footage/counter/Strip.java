package daylight.footage.counter;

import daylight.footage.codec.Luma;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * One line of letters in the picture: where it is, how its ink is told from the picture, and the
 * shapes of its glyphs.
 */
final class Strip {
  /** Stands between glyphs that are a space apart. */
  static final int SPACE = -2;

  /** Stands for a glyph that is like none. */
  static final int STRANGE = -1;

  private static final int MOST_REACH = 3;
  private static final int[] NOTHING = {};
  private static final float NEAR = 0.86f;

  /** With so much belief nothing better is looked for. */
  private static final double SURE = 0.9;

  /** So much more belief is clearly more. */
  private static final double CLEARLY = 0.02;

  /** Rows kept above and below a line, pixels. */
  private static final int ROWS_AROUND = 4;

  /** On fewer frames a figure may be still by chance. */
  private static final int FEW = 12;

  private final Window window;
  private final boolean dark;
  private final int reach;
  private final int threshold;
  private final int least;
  private final int top;
  private final int bottom;
  private final byte[] pixels;
  private final Ink ink;
  private final Cut cut;
  private final Kinds kinds;
  private final Cells cells;
  private Spacing spacing = Spacing.NONE;
  private double belief;
  private int figureLeft;
  private int figureRight;
  private int wordBefore;
  private boolean changes;
  private boolean rare;

  private Strip(Sheets sheets, int top, int bottom, int reach, Letters letters) {
    window = sheets.window();
    dark = sheets.dark();
    threshold = sheets.threshold();
    least = sheets.least();
    this.reach = reach;
    this.top = top;
    this.bottom = bottom;
    pixels = new byte[window.width() * window.height()];
    ink = new Ink(window.width(), window.height(), sheets.strokeReach());
    cut = new Cut(window.width(), window.height());
    kinds = new Kinds(letters);
    cells =
        new Cells(
            kinds, new Likeness(sheets.inked(), sheets.behind(), window.width(), top, bottom));
  }

  Window window() {
    return new Window(window.left(), window.top() + top, window.width(), bottom - top);
  }

  Kinds kinds() {
    return kinds;
  }

  @Override
  public String toString() {
    return window()
        + (dark ? " dark" : " light")
        + " belief "
        + belief
        + " ink "
        + threshold
        + " reach "
        + reach;
  }

  /** How sure the network is of what it sees, 0 to 1. */
  double belief() {
    return belief;
  }

  /** Whether it says different figures, so that one of them may be a counter's. */
  boolean changes() {
    return changes;
  }

  /** The lines in a window, as they look best; none where nothing looks like letters. */
  static List<Strip> in(Window window, List<byte[]> frames, int pictureWidth, Letters letters) {
    List<Strip> found = new ArrayList<>();
    for (boolean dark : new boolean[] {false, true}) {
      Sheets sheets = new Sheets(window, dark, frames, pictureWidth);
      for (int[] rows : sheets.rows()) {
        best(sheets, rows, letters).ifPresent(found::add);
      }
      if (found.stream().anyMatch(strip -> strip.belief > SURE)) {
        break;
      }
    }
    return found;
  }

  private static Optional<Strip> best(Sheets sheets, int[] rows, Letters letters) {
    Optional<Strip> best = Optional.empty();
    for (int reach = 1; reach <= MOST_REACH; reach++) {
      Strip strip = new Strip(sheets, rows[0], rows[1], reach, letters).settled(sheets, letters);
      if (best.isEmpty() || strip.belief > best.get().belief + CLEARLY) {
        best = Optional.of(strip);
      }
      if (strip.belief > SURE) {
        break;
      }
    }
    return best;
  }

  /**
   * The same line cut down to its figures and what follows each, which is quicker to read; itself
   * where that is no better readable.
   */
  Strip narrowed(List<byte[]> frames, int pictureWidth, Letters letters) {
    if (figureRight <= figureLeft) {
      return this;
    }
    int tall = bottom - top;
    int from = Math.max((wordBefore + figureLeft) / 2, figureLeft - 2 * tall);
    int to = Math.min(window.width(), figureRight + tall);
    int above = Math.max(0, top - ROWS_AROUND);
    int below = Math.min(window.height(), bottom + ROWS_AROUND);
    Window narrow =
        new Window(window.left() + from, window.top() + above, to - from, below - above);
    Sheets sheets = new Sheets(narrow, dark, frames, pictureWidth);
    return sheets.rows().stream()
        .flatMap(rows -> best(sheets, rows, letters).stream())
        .filter(strip -> strip.belief >= belief - CLEARLY && strip.changes)
        .max(Comparator.comparingDouble(strip -> strip.belief))
        .orElse(this);
  }

  /** Where digits begin and end is taken from the glyphs themselves. */
  private Strip settled(Sheets sheets, Letters letters) {
    List<Integer> tops = new ArrayList<>();
    List<Integer> bottoms = new ArrayList<>();
    for (int n = 0; n < sheets.count(); n++) {
      for (Cut.Box box : boxes(sheets.ink(n))) {
        if (box.height() >= 0.7 * (bottom - top)) {
          tops.add(box.top());
          bottoms.add(box.bottom());
        }
      }
    }
    if (tops.size() < sheets.count() / 4) {
      return this;
    }
    tops.sort(null);
    bottoms.sort(null);
    int first = tops.get(tops.size() / 2);
    Strip strip = new Strip(sheets, first, bottoms.get(bottoms.size() / 2), reach, letters);
    strip.learn(sheets);
    return strip;
  }

  private void learn(Sheets sheets) {
    List<List<Cut.Box>> cuts = new ArrayList<>();
    List<int[]> labels = new ArrayList<>();
    for (int n = 0; n < sheets.count(); n++) {
      int[] strokes = sheets.ink(n);
      List<Cut.Box> boxes = boxes(strokes);
      cuts.add(boxes);
      labels.add(boxes.stream().mapToInt(box -> kind(strokes, box)).toArray());
    }
    kinds.settle();
    double sum = 0;
    double all = 0;
    for (int[] line : labels) {
      for (int kind : line) {
        all++;
        if (kind >= 0 && kinds.letter(kind) != '?') {
          float[] opinion = kinds.opinion(kind);
          float most = 0;
          for (float one : opinion) {
            most = Math.max(most, one);
          }
          sum += most * most * most * Math.min(1, kinds.count(kind) / 3.0);
        }
      }
    }
    belief = all == 0 ? 0 : sum / all;
    spacing = Spacing.of(cuts, labels, kinds, bottom - top);
    List<List<String>> said = new ArrayList<>();
    figureLeft = window.width();
    wordBefore = 0;
    for (int n = 0; n < sheets.count(); n++) {
      int[] line = spaced(cuts.get(n), labels.get(n));
      if (clean(line)) {
        cells.place(line, cuts.get(n));
        span(line, cuts.get(n));
      }
      said.add(Said.in(text(line)).stream().map(Said::shown).toList());
    }
    changes = sheets.count() < FEW || said.stream().distinct().count() > 1;
    cells.settle();
    for (int n = 0; n < sheets.count(); n++) {
      int[] line = spaced(cuts.get(n), labels.get(n));
      if (clean(line) && cells.knows(line)) {
        sheets.copy(n, pixels);
        ink.find(pixels, dark, least);
        cells.look(line, ink);
      }
    }
  }

  private String text(int[] line) {
    StringBuilder text = new StringBuilder();
    for (int kind : line) {
      text.append(kind == SPACE ? ' ' : kind < 0 ? '?' : kinds.letter(kind));
    }
    return text.toString();
  }

  /** Takes in where words with digits stand and the word that follows each. */
  private void span(int[] line, List<Cut.Box> boxes) {
    int glyph = 0;
    int begun = 0;
    boolean digits = false;
    boolean before = false;
    for (int at = 0; at <= line.length; at++) {
      if (at == line.length || line[at] == SPACE) {
        if ((digits || before) && glyph > begun) {
          figureLeft = Math.min(figureLeft, boxes.get(begun).left());
          figureRight = Math.max(figureRight, boxes.get(glyph - 1).right());
        } else if (glyph > begun && boxes.get(glyph - 1).right() <= figureLeft) {
          wordBefore = Math.max(wordBefore, boxes.get(glyph - 1).right());
        }
        before = digits;
        digits = false;
        begun = glyph;
      } else {
        digits |= line[at] >= 0 && Character.isDigit(kinds.letter(line[at]));
        glyph++;
      }
    }
  }

  private List<Cut.Box> boxes(int[] strokes) {
    return cut.glyphs(strokes, top, bottom, threshold, reach);
  }

  private int kind(int[] strokes, Cut.Box box) {
    return kinds.of(Shape.of(strokes, window.width(), box.left(), box.right(), top, bottom));
  }

  /**
   * The glyphs of a frame by their kinds, {@link #SPACE} between words; empty where they cannot be
   * told one by one.
   */
  int[] read(Luma luma) {
    luma.copy(window.left(), window.top(), window.width(), window.height(), pixels);
    int[] strokes = ink.find(pixels, dark, least);
    List<Cut.Box> boxes = boxes(strokes);
    int[] labels = new int[boxes.size()];
    boolean near = true;
    for (int i = 0; i < labels.length; i++) {
      labels[i] = kind(strokes, boxes.get(i));
      near &= kinds.near() >= NEAR;
    }
    int[] line = spaced(boxes, labels);
    if (near && clean(line)) {
      cells.place(line, boxes);
      rare = cells.rare(line);
      if (cells.knows(line)) {
        cells.look(line, ink);
        return line;
      }
    }
    return NOTHING;
  }

  /** Whether glyphs seldom stand as on the frame read last, so that one may be none. */
  boolean rare() {
    return rare;
  }

  /** What stood in the window on the frame read last, row by row. */
  byte[] seen() {
    return pixels.clone();
  }

  /** How well digits fit a frame that was seen before, as {@link Cells#fits} tells. */
  List<Fits> fits(byte[] seen, int[] line, char[] names) {
    ink.find(seen, dark, least);
    return cells.fits(line, ink, names);
  }

  private int[] spaced(List<Cut.Box> boxes, int[] labels) {
    int[] line = new int[2 * boxes.size()];
    int length = 0;
    for (int i = 0; i < boxes.size(); i++) {
      if (i > 0 && spacing.apart(boxes.get(i - 1), labels[i - 1], boxes.get(i), labels[i], kinds)) {
        line[length++] = SPACE;
      }
      line[length++] = labels[i];
    }
    return Arrays.copyOf(line, length);
  }

  private boolean clean(int[] line) {
    boolean digits = false;
    for (int kind : line) {
      if (kind == STRANGE || (kind >= 0 && !kinds.settled(kind))) {
        return false;
      }
      digits |= kind >= 0 && Character.isDigit(kinds.letter(kind));
    }
    return digits;
  }
}
