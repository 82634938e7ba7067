package daylight.footage.counter;

import java.util.HashMap;
import java.util.Map;

/**
 * How well a digit fits what stands in a cell, where glyphs cannot be cut because something bright
 * lies between them. Every pixel is taken as a share of ink before a ground whose brightness is
 * seen beside the strokes; where the ground is as bright as the ink the pixel says nothing. What is
 * known of each shape, its mean and its spread, is learned from frames that could be cut.
 */
final class Likeness {
  private static final int COLUMNS = 12;
  private static final int ROWS = 16;
  private static final int CELLS = COLUMNS * ROWS;

  /** So many sights of a shape are enough. */
  private static final int ENOUGH = 40;

  /** Levels that a picture's noise and packing spread; common practice, no source. */
  private static final double NOISE = 10;

  /** A shape's own spread is at least this share of the ink. */
  private static final double LEAST_SPREAD = 0.12;

  /** Neighbouring cells err together: so many count as one. */
  private static final double TOGETHER = 4;

  /** Cells that show less than this share of the usual contrast are not learned from. */
  private static final double CLEAR = 0.4;

  private static final double LEAST_CONTRAST = 4;
  private static final double LEAST_WEIGHT = 1e-3;

  private final int inked;
  private final int behind;
  private final int width;
  private final int top;
  private final int bottom;
  private final Map<Integer, Template> templates = new HashMap<>();
  private final double[] share = new double[CELLS];
  private final double[] weight = new double[CELLS];

  /** What is known of a shape. */
  private static final class Template {
    final double[] sum = new double[CELLS];
    final double[] squares = new double[CELLS];
    int count;
  }

  /**
   * For a line.
   *
   * @param inked how bright ink is
   * @param behind how bright what is behind it usually is
   */
  Likeness(int inked, int behind, int width, int top, int bottom) {
    this.inked = inked;
    this.behind = Math.min(behind, inked - (int) LEAST_CONTRAST);
    this.width = width;
    this.top = top;
    this.bottom = bottom;
  }

  /** Whether more sights of a shape are wanted. */
  boolean wants(int kind) {
    Template known = templates.get(kind);
    return known == null || known.count < ENOUGH;
  }

  /** Learns a shape from where it stands. */
  void learn(int kind, Ink ink, double middle, double wide) {
    double clear = look(ink, middle, wide);
    if (clear < CLEAR) {
      return;
    }
    Template template = templates.computeIfAbsent(kind, _ -> new Template());
    template.count++;
    for (int i = 0; i < CELLS; i++) {
      template.sum[i] += share[i];
      template.squares[i] += share[i] * share[i];
    }
  }

  /** How well what stands in a cell fits each digit under the names given. */
  Fits digits(Ink ink, double middle, double wide, char[] names) {
    look(ink, middle, wide);
    Fits fits = new Fits(nothing());
    templates.forEach(
        (kind, template) -> {
          int digit = names[kind] - '0';
          if (digit >= 0 && digit <= 9) {
            compare(template, digit, fits);
          }
        });
    return fits;
  }

  private void compare(Template template, int digit, Fits into) {
    double likelihood = 0;
    double squares = 0;
    for (int i = 0; i < CELLS; i++) {
      double mean = template.sum[i] / template.count;
      double own =
          Math.max(0, template.squares[i] / template.count - mean * mean)
              + LEAST_SPREAD * LEAST_SPREAD;
      double variance = variance(own, weight[i]);
      double square = (share[i] - mean) * (share[i] - mean) / variance;
      likelihood -= (square + StrictMath.log(variance)) / 2;
      squares += square;
    }
    into.take(digit, likelihood / TOGETHER, squares / CELLS);
  }

  private double nothing() {
    double likelihood = 0;
    for (int i = 0; i < CELLS; i++) {
      double variance = variance(LEAST_SPREAD * LEAST_SPREAD, weight[i]);
      likelihood -= (share[i] * share[i] / variance + StrictMath.log(variance)) / 2;
    }
    return likelihood / TOGETHER;
  }

  private double variance(double own, double weight) {
    double noise = NOISE / (inked - behind);
    return own + noise * noise / Math.max(LEAST_WEIGHT, weight);
  }

  /** Fills shares and weights for a cell; gives how much of the usual contrast it shows. */
  private double look(Ink ink, double middle, double wide) {
    double tall = bottom - top + 2.0;
    double x0 = middle - wide / 2 - 1;
    double across = (wide + 2) / COLUMNS;
    double down = tall / ROWS;
    int height = ink.strokes().length / width;
    double clear = 0;
    for (int row = 0; row < ROWS; row++) {
      double y0 = top - 1 + row * down;
      for (int column = 0; column < COLUMNS; column++) {
        int at = row * COLUMNS + column;
        clear += cell(at, ink, height, x0 + column * across, across, y0, down);
      }
    }
    return clear / CELLS;
  }

  private double cell(
      int at, Ink ink, int height, double x0, double across, double y0, double down) {
    double all = 0;
    double shares = 0;
    double weights = 0;
    int lastX = Math.min(width - 1, (int) Math.ceil(x0 + across) - 1);
    int lastY = Math.min(height - 1, (int) Math.ceil(y0 + down) - 1);
    for (int y = Math.max(0, (int) Math.floor(y0)); y <= lastY; y++) {
      double wy = Math.min(y + 1, y0 + down) - Math.max(y, y0);
      for (int x = Math.max(0, (int) Math.floor(x0)); x <= lastX; x++) {
        double part = wy * (Math.min(x + 1, x0 + across) - Math.max(x, x0));
        int pixel = y * width + x;
        double contrast = inked - ink.ground(pixel);
        double usual = Math.max(0, contrast / (inked - behind));
        double clear = Math.min(1, usual * usual);
        double stroke = ink.light(pixel) - ink.ground(pixel);
        all += part;
        weights += part * clear;
        shares += part * clear * Math.clamp(stroke / Math.max(LEAST_CONTRAST, contrast), -0.5, 1.5);
      }
    }
    share[at] = weights > 0 ? shares / weights : 0;
    weight[at] = all > 0 ? weights / all : 0;
    return weight[at];
  }
}
