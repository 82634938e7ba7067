package daylight.footage.counter;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Where the glyphs of a line stand, known from frames that could be cut, so that what stands there
 * can be compared on frames that could not.
 */
final class Cells {
  private static final int MOST_LAYOUTS = 8;
  private static final int LEAST_SEEN = 2;
  private static final double RARE = 0.3;

  /** Where glyphs stand, and which they are where they are no digits. */
  private static final class Layout {
    final double[] sum;
    final int[] count;
    int seen;

    Layout(int glyphs) {
      sum = new double[glyphs];
      count = new int[glyphs];
    }

    double middle(int glyph) {
      return sum[glyph] / count[glyph];
    }
  }

  private final Map<String, Layout> layouts = new HashMap<>();
  private final Kinds kinds;
  private final Likeness likeness;
  private double wide;
  private int all;

  Cells(Kinds kinds, Likeness likeness) {
    this.kinds = kinds;
    this.likeness = likeness;
  }

  private boolean digit(int kind) {
    return kind >= 0 && Character.isDigit(kinds.letter(kind));
  }

  private String key(int[] line) {
    StringBuilder key = new StringBuilder();
    for (int kind : line) {
      key.append(kind == Strip.SPACE ? ' ' : digit(kind) ? '0' : kinds.letter(kind));
    }
    return key.toString();
  }

  /** Whether glyphs stood like that before. */
  boolean knows(int[] line) {
    Layout layout = layouts.get(key(line));
    return layout != null && layout.seen >= LEAST_SEEN;
  }

  /** Whether glyphs stood like that on a small share of all frames. */
  boolean rare(int[] line) {
    Layout layout = layouts.get(key(line));
    return layout == null || layout.seen < RARE * all;
  }

  /**
   * How far at most a glyph of a line stands from where such glyphs stand, pixels, wherever the
   * line as a whole stands.
   */
  double off(int[] line, List<Cut.Box> boxes) {
    Layout layout = layouts.get(key(line));
    if (layout == null) {
      return Double.POSITIVE_INFINITY;
    }
    double[] off = new double[boxes.size()];
    for (int glyph = 0; glyph < off.length; glyph++) {
      off[glyph] = boxes.get(glyph).centre() - layout.middle(glyph);
    }
    double[] sorted = off.clone();
    Arrays.sort(sorted);
    double shift = sorted[sorted.length / 2];
    return Arrays.stream(off).map(one -> Math.abs(one - shift)).max().orElse(0);
  }

  /** Learns where glyphs stand from a line that was cut cleanly. */
  void place(int[] line, List<Cut.Box> boxes) {
    Layout layout = layouts.computeIfAbsent(key(line), _ -> new Layout(boxes.size()));
    layout.seen++;
    all++;
    int glyph = 0;
    for (int kind : line) {
      if (kind == Strip.SPACE) {
        continue;
      }
      Cut.Box box = boxes.get(glyph);
      boolean narrow = kinds.letter(kind) == '1';
      int weight = narrow ? 1 : 50;
      layout.sum[glyph] += weight * box.centre();
      layout.count[glyph] += weight;
      if (digit(kind)) {
        wide = Math.max(wide, box.width());
      }
      glyph++;
    }
  }

  /** Forgets where glyphs stood once only. */
  void settle() {
    List<Layout> usual = new ArrayList<>(layouts.values());
    usual.sort(Comparator.comparingInt((Layout one) -> one.seen).reversed());
    layouts.values().removeIf(one -> one.seen < LEAST_SEEN || usual.indexOf(one) >= MOST_LAYOUTS);
  }

  /** Learns how digits look from a line that was cut cleanly. */
  void look(int[] line, Ink ink) {
    Layout layout = layouts.get(key(line));
    if (layout == null) {
      return;
    }
    int glyph = 0;
    for (int kind : line) {
      if (kind == Strip.SPACE) {
        continue;
      }
      if (digit(kind) && likeness.wants(kind)) {
        likeness.learn(kind, ink, layout.middle(glyph), wide);
      }
      glyph++;
    }
  }

  /**
   * How well digits fit where those of lines like one stand: a row a glyph of the line that is a
   * digit under the names given, empty where no line like it is known.
   */
  List<Fits> fits(int[] line, Ink ink, char[] names) {
    Layout layout = layouts.get(key(line));
    if (layout == null) {
      return List.of();
    }
    List<Fits> rows = new ArrayList<>();
    int glyph = 0;
    for (int kind : line) {
      if (kind == Strip.SPACE) {
        continue;
      }
      if (kind >= 0 && Character.isDigit(names[kind])) {
        rows.add(likeness.digits(ink, layout.middle(glyph), wide, names));
      }
      glyph++;
    }
    return rows;
  }
}
