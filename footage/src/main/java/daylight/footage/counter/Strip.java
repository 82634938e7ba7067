package daylight.footage.counter;

import daylight.footage.codec.Luma;
import java.util.ArrayList;
import java.util.Arrays;
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

  private static final int WEAKEST = 10;
  private static final double STROKE = 0.13;
  private static final int MOST_REACH = 3;
  private static final float NEAR = 0.86f;
  private static final double DIMMEST = 0.8;

  private final Window window;
  private final boolean dark;
  private final int strokeReach;
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

  private Strip(Ground ground, int top, int bottom, int reach, Letters letters) {
    window = ground.window;
    dark = ground.dark;
    strokeReach = ground.strokeReach;
    threshold = ground.threshold;
    least = ground.least;
    this.reach = reach;
    this.top = top;
    this.bottom = bottom;
    pixels = new byte[window.width() * window.height()];
    ink = new Ink(window.width(), window.height());
    cut = new Cut(window.width(), window.height());
    kinds = new Kinds(letters);
    cells = new Cells(kinds, window.width(), top, bottom);
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

  /** The lines in a window, as they look best; none where nothing looks like letters. */
  static List<Strip> in(Window window, List<byte[]> frames, int pictureWidth, Letters letters) {
    List<Strip> found = new ArrayList<>();
    for (boolean dark : new boolean[] {false, true}) {
      Ground ground = new Ground(window, dark, frames, pictureWidth);
      for (int[] rows : ground.rows()) {
        Optional<Strip> best = Optional.empty();
        for (int reach = 1; reach <= MOST_REACH; reach++) {
          Strip strip =
              new Strip(ground, rows[0], rows[1], reach, letters)
                  .settled(frames, pictureWidth, letters);
          if (best.isEmpty() || strip.belief > best.get().belief + 0.02) {
            best = Optional.of(strip);
          }
        }
        best.ifPresent(found::add);
      }
    }
    return found;
  }

  /** Where digits begin and end is taken from the glyphs themselves. */
  private Strip settled(List<byte[]> frames, int pictureWidth, Letters letters) {
    List<Integer> tops = new ArrayList<>();
    List<Integer> bottoms = new ArrayList<>();
    for (byte[] frame : frames) {
      crop(frame, pictureWidth);
      for (Cut.Box box : boxes()) {
        if (box.height() >= 0.7 * (bottom - top)) {
          tops.add(box.top());
          bottoms.add(box.bottom());
        }
      }
    }
    if (tops.size() < frames.size() / 4) {
      return this;
    }
    tops.sort(null);
    bottoms.sort(null);
    Ground same = new Ground(window, dark, strokeReach, threshold, least);
    Strip strip =
        new Strip(same, tops.get(tops.size() / 2), bottoms.get(bottoms.size() / 2), reach, letters);
    strip.learn(frames, pictureWidth);
    return strip;
  }

  private void learn(List<byte[]> frames, int pictureWidth) {
    List<List<Cut.Box>> cuts = new ArrayList<>();
    List<int[]> labels = new ArrayList<>();
    for (byte[] frame : frames) {
      crop(frame, pictureWidth);
      List<Cut.Box> boxes = boxes();
      cuts.add(boxes);
      labels.add(boxes.stream().mapToInt(this::kind).toArray());
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
    for (int n = 0; n < frames.size(); n++) {
      int[] line = spaced(cuts.get(n), labels.get(n));
      if (clean(line)) {
        cells.place(line, cuts.get(n));
      }
    }
    for (int n = 0; n < frames.size(); n++) {
      int[] line = spaced(cuts.get(n), labels.get(n));
      if (clean(line)) {
        crop(frames.get(n), pictureWidth);
        cells.look(line, ink.strokes());
      }
    }
    cells.settle();
  }

  private void crop(byte[] frame, int pictureWidth) {
    window.copy(frame, pictureWidth, pixels);
    ink.find(pixels, strokeReach, dark, least);
  }

  private List<Cut.Box> boxes() {
    return cut.glyphs(ink.strokes(), top, bottom, threshold, reach);
  }

  private int kind(Cut.Box box) {
    return kinds.of(Shape.of(ink.strokes(), window.width(), box.left(), box.right(), top, bottom));
  }

  /** The glyphs of a frame by their kinds, {@link #SPACE} between words. */
  int[] read(Luma luma) {
    luma.copy(window.left(), window.top(), window.width(), window.height(), pixels);
    ink.find(pixels, strokeReach, dark, least);
    List<Cut.Box> boxes = boxes();
    int[] labels = new int[boxes.size()];
    boolean near = true;
    for (int i = 0; i < labels.length; i++) {
      labels[i] = kind(boxes.get(i));
      near &= kinds.near() >= NEAR;
    }
    int[] line = spaced(boxes, labels);
    if (near && clean(line) && cells.knows(line)) {
      return line;
    }
    int[] again = cells.read(ink.strokes());
    return again.length > 0 ? again : line;
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

  /** How ink stands out in a window over many frames. */
  private static final class Ground {
    final Window window;
    final boolean dark;
    final int strokeReach;
    final int threshold;
    final int least;
    private final int[] mean;

    Ground(Window window, boolean dark, int strokeReach, int threshold, int least) {
      this.window = window;
      this.dark = dark;
      this.strokeReach = strokeReach;
      this.threshold = threshold;
      this.least = least;
      mean = new int[0];
    }

    Ground(Window window, boolean dark, List<byte[]> frames, int pictureWidth) {
      this.window = window;
      this.dark = dark;
      strokeReach = (int) Math.max(1, Math.rint(STROKE * (window.height() - 8)));
      int size = window.width() * window.height();
      byte[] pixels = new byte[size];
      Ink ink = new Ink(window.width(), window.height());
      mean = new int[size];
      int[] light = new int[size];
      for (byte[] frame : frames) {
        window.copy(frame, pictureWidth, pixels);
        int[] strokes = ink.find(pixels, strokeReach, dark, 0);
        for (int i = 0; i < size; i++) {
          mean[i] += strokes[i];
          light[i] += ink.light(i);
        }
      }
      for (int i = 0; i < size; i++) {
        mean[i] /= frames.size();
      }
      int level = level();
      threshold = Math.max(WEAKEST, level / 2);
      least = leastLight(light, frames.size(), level);
    }

    /** Ink is about as bright as where it always stands. */
    private int leastLight(int[] light, int frames, int level) {
      List<Integer> bright = new ArrayList<>();
      for (int i = 0; i < light.length; i++) {
        if (mean[i] >= level) {
          bright.add(light[i] / frames);
        }
      }
      bright.sort(null);
      return bright.isEmpty() ? 0 : (int) (bright.get(bright.size() / 2) * DIMMEST);
    }

    /** How strong ink is where it always stands. */
    private int level() {
      int[] sorted = mean.clone();
      Arrays.sort(sorted);
      int most = sorted[sorted.length - 1];
      int from = 0;
      while (sorted[from] < most / 4) {
        from++;
      }
      return sorted[from + (sorted.length - from) * 8 / 10];
    }

    /** Runs of rows with ink, each from and to. */
    List<int[]> rows() {
      List<int[]> rows = new ArrayList<>();
      int begun = -1;
      for (int y = 0; y <= window.height(); y++) {
        int inked = 0;
        for (int x = 0; y < window.height() && x < window.width(); x++) {
          inked += mean[y * window.width() + x] > threshold / 2 ? 1 : 0;
        }
        if (inked >= 2 && begun < 0) {
          begun = y;
        } else if (inked < 2 && begun >= 0) {
          if (y - begun >= 6) {
            rows.add(new int[] {Math.max(0, begun - 1), Math.min(window.height(), y + 1)});
          }
          begun = -1;
        }
      }
      return rows;
    }
  }
}
