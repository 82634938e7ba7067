package daylight.footage.counter;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads a line whose glyphs cannot be cut apart, because something bright lies between them: where
 * each glyph stands is known from frames that could be cut, and what stands there is the shape that
 * is most alike. It gives no answer where two shapes are about as alike.
 */
final class Cells {
  private static final float ALIKE = 0.72f;
  private static final float CLEARLY = 0.08f;
  private static final float VERY = 0.9f;
  private static final float BARELY = 0.035f;
  private static final int MOST_LAYOUTS = 8;
  private static final int LEAST_SEEN = 2;

  /** Where glyphs stand, and which they are where they are no digits. */
  private static final class Layout {
    final int[] line;
    final double[] sum;
    final int[] count;
    int seen;

    Layout(int[] line, int glyphs) {
      this.line = line;
      sum = new double[glyphs];
      count = new int[glyphs];
    }

    double middle(int glyph) {
      return sum[glyph] / count[glyph];
    }
  }

  private final Map<String, Layout> layouts = new HashMap<>();
  private final Map<Integer, float[]> shapes = new HashMap<>();
  private final Map<Integer, Integer> times = new HashMap<>();
  private final Kinds kinds;
  private final int width;
  private final int top;
  private final int bottom;
  private double wide;

  Cells(Kinds kinds, int width, int top, int bottom) {
    this.kinds = kinds;
    this.width = width;
    this.top = top;
    this.bottom = bottom;
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
    return layouts.containsKey(key(line));
  }

  /** Learns where glyphs stand from a line that was cut cleanly. */
  void place(int[] line, List<Cut.Box> boxes) {
    Layout layout = layouts.computeIfAbsent(key(line), _ -> new Layout(line, boxes.size()));
    layout.seen++;
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

  /** Learns how digits look in their cells; all layouts are placed before. */
  void look(int[] line, int[] ink) {
    Layout layout = layouts.get(key(line));
    if (layout == null) {
      return;
    }
    int glyph = 0;
    for (int kind : line) {
      if (kind == Strip.SPACE) {
        continue;
      }
      if (digit(kind)) {
        float[] seen = cell(ink, layout.middle(glyph));
        float[] sum = shapes.computeIfAbsent(kind, _ -> new float[Shape.CELLS]);
        for (int i = 0; i < sum.length; i++) {
          sum[i] += seen[i];
        }
        times.merge(kind, 1, Integer::sum);
      }
      glyph++;
    }
  }

  /** Makes the learned shapes comparable. */
  void settle() {
    for (float[] shape : shapes.values()) {
      float length = (float) Math.sqrt(Shape.alike(shape, shape));
      for (int i = 0; i < shape.length; i++) {
        shape[i] /= length;
      }
    }
    List<Layout> usual = new ArrayList<>(layouts.values());
    usual.sort(Comparator.comparingInt((Layout one) -> one.seen).reversed());
    layouts.values().removeIf(one -> one.seen < LEAST_SEEN || usual.indexOf(one) >= MOST_LAYOUTS);
  }

  private float[] cell(int[] ink, double middle) {
    return Shape.of(ink, width, middle - wide / 2 - 0.5, middle + wide / 2 + 0.5, top, bottom);
  }

  /** What a line says; empty if it cannot be told. */
  int[] read(int[] ink) {
    int[] best = new int[0];
    float most = ALIKE;
    for (Layout layout : layouts.values()) {
      int[] line = layout.line.clone();
      float mean = fill(line, layout, ink);
      if (mean > most) {
        most = mean;
        best = line;
      }
    }
    return best;
  }

  private float fill(int[] line, Layout layout, int[] ink) {
    int glyph = 0;
    float sum = 0;
    int digits = 0;
    for (int at = 0; at < line.length; at++) {
      if (line[at] == Strip.SPACE) {
        continue;
      }
      if (digit(line[at])) {
        float[] seen = cell(ink, layout.middle(glyph));
        float[] byName = new float[10];
        Arrays.fill(byName, -1);
        int kind = -1;
        float near = -1;
        for (Map.Entry<Integer, float[]> one : shapes.entrySet()) {
          float alike = Shape.alike(one.getValue(), seen);
          int name = kinds.letter(one.getKey()) - '0';
          byName[name] = Math.max(byName[name], alike);
          if (alike > near) {
            near = alike;
            kind = one.getKey();
          }
        }
        Arrays.sort(byName);
        if (near < ALIKE || byName[9] - byName[8] < (near > VERY ? BARELY : CLEARLY)) {
          return -1;
        }
        line[at] = kind;
        sum += near;
        digits++;
      }
      glyph++;
    }
    return digits == 0 ? -1 : sum / digits;
  }
}
