package daylight.footage.counter;

import daylight.footage.codec.Luma;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToIntFunction;

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

  /** Colour has fewer pixels than brightness and must look so much better. */
  private static final double COARSER = 0.1;

  /** Rows kept above and below a line, pixels. */
  private static final int ROWS_AROUND = 4;

  /** On such a share of the frames glyphs touch that they have to be parted. */
  private static final double TOUCH = 0.02;

  /** Pieces are odder than what touches always; so much less belief in them is no reason. */
  private static final double LESS_SURE = 0.1;

  private static final int MOST_SPECKS = 6;

  /** A digit is at least so high, as a share of the rows with ink; where glare lies above, less. */
  private static final double[] HIGH = {0.7, 0.5};

  /** So far from where it usually stands, in heights, a glyph is not the one that stands there. */
  private static final double CELL = 0.3;

  /** On fewer frames a figure may be still by chance. */
  private static final int FEW = 12;

  private final View view;
  private final Window window;
  private final boolean dark;
  private final int reach;
  private final int threshold;
  private final int least;
  private final int top;
  private final int bottom;
  private final byte[] pixels;
  private final Ink ink;
  private final Cutter cutter;
  private final Kinds kinds;
  private final Cells cells;
  private Spacing spacing = Spacing.NONE;
  private double belief;
  private int digitWidth;
  private int figureLeft;
  private int figureRight;
  private int wordBefore;
  private boolean changes;
  private boolean rare;
  private boolean sure;

  private Strip(Sheets sheets, int top, int bottom, int reach, Letters letters) {
    view = sheets.view();
    window = sheets.window();
    dark = sheets.dark();
    threshold = sheets.threshold();
    least = sheets.least();
    this.reach = reach;
    this.top = top;
    this.bottom = bottom;
    pixels = new byte[window.width() * window.height()];
    ink = new Ink(window.width(), window.height(), sheets.strokeReach());
    kinds = new Kinds(letters);
    cutter = new Cutter(window, kinds, top, bottom, threshold, reach);
    cells =
        new Cells(
            kinds, new Likeness(sheets.inked(), sheets.behind(), window.width(), top, bottom));
  }

  Window window() {
    return new Window(window.left(), window.top() + top, window.width(), bottom - top);
  }

  /** How frames are looked at. */
  View view() {
    return view;
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

  /** Whether nothing better is to be looked for. */
  boolean beyondDoubt() {
    return belief > SURE;
  }

  /** By which one of several views of the same line is chosen. */
  double merit() {
    return view.against() == null ? belief : belief - COARSER;
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
  static List<Strip> in(Window window, View view, Letters letters) {
    List<Strip> found = new ArrayList<>();
    for (boolean dark : new boolean[] {false, true}) {
      Sheets sheets = new Sheets(window, dark, view);
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
  Strip narrowed(Letters letters) {
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
    Sheets sheets = new Sheets(narrow, dark, view);
    return sheets.rows().stream()
        .flatMap(rows -> best(sheets, rows, letters).stream())
        .filter(strip -> strip.belief >= belief - CLEARLY && strip.changes)
        .max(Comparator.comparingDouble(strip -> strip.belief))
        .orElse(this);
  }

  /** Where digits begin and end is taken from the glyphs themselves. */
  private Strip settled(Sheets sheets, Letters letters) {
    List<Cut.Box> boxes = new ArrayList<>();
    for (int n = 0; n < sheets.count(); n++) {
      boxes.addAll(cutter.boxes(sheets.ink(n)));
    }
    for (double share : HIGH) {
      List<Cut.Box> high =
          boxes.stream().filter(box -> box.height() >= share * (bottom - top)).toList();
      if (high.size() >= sheets.count() / 4) {
        return between(middle(high, Cut.Box::top), middle(high, Cut.Box::bottom), sheets, letters);
      }
    }
    return this;
  }

  private static int middle(List<Cut.Box> boxes, ToIntFunction<Cut.Box> edge) {
    int[] sorted = boxes.stream().mapToInt(edge).sorted().toArray();
    return sorted[sorted.length / 2];
  }

  /** The same line between two rows, learnt. */
  private Strip between(int first, int last, Sheets sheets, Letters letters) {
    Strip strip = new Strip(sheets, first, last, reach, letters);
    double touch = strip.learn(sheets);
    strip.cutter.part(strip.digitWidth);
    if (touch < TOUCH) {
      return strip;
    }
    Strip parted = new Strip(sheets, first, last, reach, letters);
    parted.cutter.part(strip.digitWidth);
    parted.learn(sheets);
    return parted.belief > strip.belief - LESS_SURE * touch ? parted : strip;
  }

  /** Learns the line; gives the share of the frames on which glyphs seem to touch. */
  private double learn(Sheets sheets) {
    List<Glyphs> lines = new ArrayList<>();
    for (int n = 0; n < sheets.count(); n++) {
      lines.add(cutter.glyphs(sheets.ink(n), 0));
    }
    kinds.settle();
    belief = Glyphs.belief(lines, kinds);
    Ending.name(lines, kinds);
    spacing = Spacing.of(lines, kinds, bottom - top);
    digitWidth = Glyphs.digitWidth(lines, kinds, bottom - top);
    List<List<String>> said = new ArrayList<>();
    figureLeft = window.width();
    wordBefore = 0;
    for (Glyphs glyphs : lines) {
      int[] line = glyphs.line(spacing, kinds);
      if (clean(line)) {
        cells.place(line, glyphs.boxes());
        span(line, glyphs.boxes());
      }
      said.add(Said.in(text(line)).stream().map(Said::shown).toList());
    }
    changes = sheets.count() < FEW || said.stream().distinct().count() > 1;
    cells.settle();
    for (int n = 0; n < sheets.count(); n++) {
      int[] line = lines.get(n).line(spacing, kinds);
      if (certain(line)) {
        sheets.copy(n, pixels);
        ink.find(pixels, dark, least);
        cells.look(line, ink);
      }
    }
    return (double) lines.stream().filter(line -> line.touch(kinds, digitWidth)).count()
        / sheets.count();
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

  /**
   * The glyphs of a frame by their kinds, {@link #SPACE} between words; empty where they cannot be
   * told one by one. Whether shapes seen for the first time come again, and so are glyphs, is known
   * at the end only: {@link #holds}.
   */
  int[] read(Luma luma) {
    view.of(luma).copy(window.left(), window.top(), window.width(), window.height(), pixels);
    int[] strokes = ink.find(pixels, dark, least);
    Glyphs glyphs = cutter.glyphs(strokes, NEAR);
    int[] line = glyphs.line(spacing, kinds);
    if (!certain(line) || cells.rare(line)) {
      int[] rest = withoutSpecks(glyphs);
      if (rest.length > 0) {
        sure = true;
        rare = false;
        return rest;
      }
    }
    if (!legible(line)) {
      sure = false;
      return NOTHING;
    }
    if (clean(line)) {
      cells.place(line, glyphs.boxes());
    }
    rare = cells.rare(line);
    sure = certain(line);
    if (sure) {
      cells.look(line, ink);
    }
    return line;
  }

  /**
   * The same without what is too small for a digit and stands where letters do by chance: what is
   * left must stand as letters usually do. Empty where that is never so.
   */
  private int[] withoutSpecks(Glyphs glyphs) {
    int[] small = glyphs.small(bottom - top);
    int[] best = NOTHING;
    double nearest = CELL * (bottom - top);
    for (int set = 1; set < 1 << Math.min(small.length, MOST_SPECKS); set++) {
      Glyphs left = glyphs.without(small, set);
      int[] line = left.line(spacing, kinds);
      if (holds(line) && !cells.rare(line)) {
        double off = cells.off(line, left.boxes());
        if (off < nearest) {
          nearest = off;
          best = line;
        }
      }
    }
    return best;
  }

  /** Whether the frame read last is read for good. */
  boolean sure() {
    return sure && !rare;
  }

  /** Whether all shapes of a line, and how they stand, were seen more than by chance. */
  private boolean certain(int[] line) {
    return clean(line) && cells.knows(line);
  }

  /** The same where a digit beyond doubt need not be seen more than once. */
  boolean holds(int[] line) {
    return legible(line)
        && Arrays.stream(line).allMatch(kind -> kind == SPACE || kinds.holds(kind))
        && cells.knows(line);
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

  private boolean clean(int[] line) {
    return legible(line)
        && Arrays.stream(line).allMatch(kind -> kind == SPACE || kinds.settled(kind));
  }

  /** Whether every glyph is like one seen before and one is a digit. */
  private boolean legible(int[] line) {
    boolean digits = false;
    for (int kind : line) {
      if (kind == STRANGE) {
        return false;
      }
      digits |= kind >= 0 && Character.isDigit(kinds.letter(kind));
    }
    return digits;
  }
}
