package daylight.report.draw;

import daylight.line.answer.Sight;
import daylight.report.markup.Tag;

/** The signs that only the strip uses, drawn about a point; each reads in black and white. */
final class StripSigns {
  private StripSigns() {}

  static Legend.Entry entry(Sight.Seen seen) {
    return switch (seen) {
      case CLEAR -> Legend.Entry.STRIP_CLEAR;
      case POOR -> Legend.Entry.STRIP_POOR;
      case BLIND, UNDER_WATER -> Legend.Entry.STRIP_BLIND;
      case NOT_NOTED -> Legend.Entry.STRIP_NOT_NOTED;
      case NOT_SEEN -> Legend.Entry.STRIP_NOT_SEEN;
    };
  }

  /** The bar of the sight track: open, striped, filled, dashed, or a cross through nothing. */
  static Tag sight(Sight.Seen seen, Box row) {
    Tag group = Tag.of("g");
    Tag outline = Pen.box(row, Ink.PAPER, Ink.DARK).with("stroke-width", 0.8);
    switch (seen) {
      case CLEAR -> group.add(outline);
      case POOR -> group.add(outline).add(strokes(row, 5));
      case BLIND, UNDER_WATER ->
          group.add(Pen.box(row, Ink.DARK, Ink.DARK).with("stroke-width", 0.8));
      case NOT_NOTED -> group.add(outline.with("stroke-dasharray", "1 2"));
      case NOT_SEEN -> {
        group.add(outline.with("stroke-dasharray", "4 3"));
        double y = row.middleY();
        group.add(Pen.line(new Stroke(row.x(), y, row.right(), y), Ink.DARK, 0.8));
      }
    }
    return group;
  }

  /** Slanted strokes across a bar. */
  private static Tag strokes(Box row, double gap) {
    StringBuilder d = new StringBuilder();
    for (double x = row.x() + gap; x < row.right(); x += gap) {
      double foot = Math.max(row.x(), x - row.height() / 2);
      d.append(
          "M%s %sL%s %s"
              .formatted(
                  Tag.number(foot), Tag.number(row.bottom()), Tag.number(x), Tag.number(row.y())));
    }
    return Pen.path(d.toString(), Ink.DARK, 0.8);
  }

  static Tag of(Legend.Entry entry) {
    Tag sign = Tag.of("g");
    Box bar = new Box(-9, -4, 18, 8);
    return switch (entry) {
      case STRIP_WALL ->
          sign.add(Pen.box(new Box(-9, -4.4, 18, 2.2), Ink.DRAIN, Ink.DRAIN))
              .add(Pen.box(new Box(-9, 2.2, 18, 2.2), Ink.DRAIN, Ink.DRAIN));
      case STRIP_GUESSED ->
          sign.add(dashed(new Box(-9, -4.4, 18, 2.2))).add(dashed(new Box(-9, 2.2, 18, 2.2)));
      case STRIP_BREAK -> Pen.path("M0 -5.5q3 1.4 0 2.75t0 2.75t0 2.75t0 2.75", Ink.DARK, 0.9);
      case STRIP_FLOW -> Pen.path("M-5 0h9m-4 -3.5l4 3.5l-4 3.5", Ink.WATER, 1.6);
      case STRIP_FLOWING ->
          sign.add(Pen.filled("M-9 -3H9V4H-9Z", Ink.WATER).with("fill-opacity", 0.28))
              .add(Pen.path("M-9 -3H9", Ink.WATER, 1.2).with("stroke-dasharray", "6 3"))
              .add(Pen.path("M-7 1h4m3 0h4m-8 2.5h4", Ink.WATER, 0.9));
      case STRIP_DEPOSIT ->
          sign.add(Pen.box(bar, Ink.PAPER, Ink.DARK).with("stroke-width", 0.8))
              .add(Pen.path("M-6 -1h0.01M-2 2h0.01M2 -1h0.01M6 2h0.01", Ink.DARK, 1.8));
      case STRIP_JOINT -> Pen.path("M0 -7V-2M0 2V7", Ink.DARK, 1.1);
      case STRIP_STRETCH -> Pen.box(new Box(-9, -1.6, 18, 3.2), Ink.DARK, Ink.PAPER);
      case STRIP_DOUBT ->
          sign.add(Pen.path("M-7 0H7M-7 -2V2M7 -2V2", Ink.DARK, 0.8))
              .add(Pen.circle(0, 0, 1.6, Ink.DARK, "none", 0));
      case STRIP_CLEAR -> sight(Sight.Seen.CLEAR, bar);
      case STRIP_POOR -> sight(Sight.Seen.POOR, bar);
      case STRIP_BLIND -> sight(Sight.Seen.BLIND, bar);
      case STRIP_NOT_NOTED -> sight(Sight.Seen.NOT_NOTED, bar);
      case STRIP_NOT_SEEN -> sight(Sight.Seen.NOT_SEEN, bar);
      case STRIP_PUSH ->
          sign.add(Pen.path("M-9 0H9", Ink.DARK, 1.1)).add(Pen.filled("M9 0l-5 -3v6z", Ink.DARK));
      case STRIP_STOPPED ->
          sign.add(Pen.path("M-9 0H0", Ink.DARK, 1.1))
              .add(Pen.filled("M0 0l-5 -3v6z", Ink.DARK))
              .add(Pen.path("M0.5 -4.5V4.5", Ink.DARK, 1.8));
      default -> throw new IllegalArgumentException("no sign of the strip: " + entry);
    };
  }

  private static Tag dashed(Box bar) {
    return Pen.box(bar, Ink.PAPER, Ink.DRAIN)
        .with("stroke-width", 0.7)
        .with("stroke-dasharray", "3 2");
  }
}
