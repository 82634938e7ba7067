package daylight.report.draw;

import daylight.report.markup.Tag;
import daylight.report.words.Words;
import java.util.ArrayList;
import java.util.List;

/**
 * A plot whose two axes begin at nothing in the left corner: to the right, and up or down. It draws
 * straight onto its sheet.
 */
final class Axes {
  static final double SIZE = 8;

  /** Two marks stand so far apart at most, but for words that are wider, points. */
  private static final double APART_ACROSS = 70;

  private static final double APART_UP = 40;
  private static final double GAP = 8;

  /** From each of 1, 2 and 5 this leads to the next, and not beyond. */
  private static final double NEXT = 2.6;

  private static final double DOT = 3.5;

  /** How far a name stays off the point it names; its rim would cut a line that is nearer. */
  private static final double CLEAR = 5.5;

  private final Sheet sheet;
  private final Words words;
  private final Box plot;
  private final double across;
  private final double up;
  private final boolean down;
  private final Labeller labeller;

  /**
   * @param plot the room inside the axes
   * @param across what the horizontal axis ends at, positive
   * @param up what the vertical one ends at, positive
   * @param down whether that grows downwards
   */
  Axes(Sheet sheet, Words words, Box plot, double across, double up, boolean down) {
    this.sheet = sheet;
    this.words = words;
    this.plot = plot;
    this.across = across;
    this.up = up;
    this.down = down;
    this.labeller = new Labeller(plot);
  }

  double x(double value) {
    return plot.x() + plot.width() * value / across;
  }

  double y(double value) {
    double part = plot.height() * Math.max(0, value) / up;
    return down ? plot.y() + part : plot.bottom() - part;
  }

  Point at(double x, double y) {
    return new Point(x(x), y(y));
  }

  /** Draws a row of points, which no name covers without need. */
  void curve(List<Point> points, String colour, double width, String dashes) {
    Tag path = Pen.path(Pen.through(points, false), colour, width);
    sheet.add(dashes.isEmpty() ? path : path.with("stroke-dasharray", dashes));
    Pen.strokes(points).forEach(labeller::avoid);
  }

  /** Draws a dot, which no name covers. */
  void dot(Point at) {
    sheet.add(Pen.circle(at.x(), at.y(), DOT, Ink.DARK, Ink.PAPER, 1));
    labeller.keepClear(Box.around(at.x(), at.y(), DOT));
  }

  /** Writes a name near a point, when all is drawn that it may not cover. */
  void name(Point at, String text) {
    double high = (Typeface.ASCENT + Typeface.DESCENT) * SIZE;
    labeller
        .place(at.x(), at.y(), CLEAR, Typeface.width(text, SIZE, true), high)
        .ifPresent(
            spot -> {
              if (spot.leader() != null) {
                sheet.add(Pen.line(spot.leader(), Ink.SOFT, 0.7));
              }
              double baseline = spot.box().y() + Typeface.ASCENT * SIZE;
              sheet.add(Pen.rimmed(spot.box().x(), baseline, text, SIZE, true));
            });
  }

  /** A filled band between two rows of points, both from left to right. */
  void band(List<Point> one, List<Point> other, String fill) {
    List<Point> round = new ArrayList<>(one);
    round.addAll(other.reversed());
    sheet.add(Pen.filled(Pen.through(round, true), fill));
  }

  /** The axis below the plot with its marks. */
  void across(AxisUnit unit) {
    double step = roomy(unit);
    double low = plot.bottom();
    sheet.add(Pen.line(new Stroke(plot.x(), low, plot.right(), low), Ink.DARK, 1));
    for (int i = 0; i * step <= across * (1 + 1e-9); i++) {
      double x = x(i * step);
      String text = unit.tick(i * step, words);
      sheet.add(Pen.line(new Stroke(x, low, x, low + 4), Ink.DARK, 1));
      double left = x - Typeface.width(text, SIZE, false) / 2;
      sheet.add(Pen.text(left, low + 13, text, SIZE, false, Ink.DARK));
    }
  }

  /** The step at which the marks have room beside each other. */
  private double roomy(AxisUnit unit) {
    double step = unit.step(APART_ACROSS * across / plot.width());
    while (step < across
        && plot.width() * step / across < Typeface.width(widest(unit, step), SIZE, false) + GAP) {
      step = unit.step(NEXT * step);
    }
    return step;
  }

  private String widest(AxisUnit unit, double step) {
    String widest = "";
    for (int i = 0; i * step <= across * (1 + 1e-9); i++) {
      String text = unit.tick(i * step, words);
      widest = text.length() > widest.length() ? text : widest;
    }
    return widest;
  }

  /** The marks left of the plot, and its edge. */
  void up(AxisUnit unit) {
    double step = unit.step(APART_UP * up / plot.height());
    sheet.add(Pen.line(new Stroke(plot.x(), plot.y(), plot.x(), plot.bottom()), Ink.DARK, 1));
    for (int i = 0; i * step <= up * (1 + 1e-9); i++) {
      double y = y(i * step);
      String text = unit.tick(i * step, words);
      sheet.add(Pen.line(new Stroke(plot.x() - 4, y, plot.x(), y), Ink.DARK, 1));
      double wide = Typeface.width(text, SIZE, false);
      sheet.add(Pen.text(plot.x() - 7 - wide, y + 3, text, SIZE, false, Ink.DARK));
    }
  }
}
