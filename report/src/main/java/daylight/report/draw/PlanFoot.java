package daylight.report.draw;

import daylight.line.measure.Shown;
import daylight.report.markup.Tag;
import daylight.report.words.Words;

/** Scale bar, scale and north arrow along the foot of the plan. */
final class PlanFoot {
  private static final double PART = 60;

  private PlanFoot() {}

  static void draw(Sheet sheet, PlanFrame frame, Words words) {
    Box body = sheet.body();
    double right = measure(sheet, body, frame, words, PART);
    double x = right + 40;
    double y = body.bottom() - 16;
    sheet.add(Pen.text(x, y - 1, frame.scale().say(words), 8, false, Ink.DARK));
    sheet.add(Pen.text(x, y + 10, way(frame, words), 8, false, Ink.DARK));
  }

  /** Which way up the drawing lies. */
  static String way(PlanFrame frame, Words words) {
    return words.word(frame.isNorthUp() ? "draw.north_up" : "draw.turned");
  }

  /**
   * Only the bar and the arrow, along the foot of a box; where the bar ends.
   *
   * @param part the longest that a quarter of the bar may be, points
   */
  static double measure(Canvas sheet, Box body, PlanFrame frame, Words words, double part) {
    double y = body.bottom() - 16;
    north(sheet, frame, words, body.x() + 10, y - 2);
    return bar(sheet, frame, words, body.x() + 30, y, part);
  }

  private static double bar(
      Canvas sheet, PlanFrame frame, Words words, double left, double y, double part) {
    Shown shown = words.shown();
    double x = left + 26;
    double step = AxisUnit.length(shown).step(part / frame.scale().pointsPerMetre());
    for (int i = 0; i < 4; i++) {
      Box quarter = new Box(x + i * frame.length(step), y - 3, frame.length(step), 5);
      sheet.add(
          Pen.box(quarter, i % 2 == 0 ? Ink.DARK : Ink.PAPER, Ink.DARK).with("stroke-width", 0.8));
    }
    for (int i = 0; i <= 4; i += 2) {
      String text = AxisUnit.length(shown).tick(i * step, words);
      double half = Typeface.width(text, 7.5, false) / 2;
      sheet.add(Pen.text(x + i * frame.length(step) - half, y + 12, text, 7.5, false, Ink.DARK));
    }
    return x + 4 * frame.length(step);
  }

  /** The grid is the site's own, so the arrow says "grid". */
  private static void north(Canvas sheet, PlanFrame frame, Words words, double x, double y) {
    double turn = frame.turn(0) + 90;
    sheet.add(
        Tag.of("g")
            .with(
                "transform",
                "translate(%s %s) rotate(%s)"
                    .formatted(Tag.number(x), Tag.number(y), Tag.number(turn)))
            .add(Pen.filled("M0 -11L4 5L0 2Z", Ink.DARK))
            .add(Pen.path("M0 -11L4 5L0 2L-4 5Z", Ink.DARK, 0.9)));
    String text = words.word("draw.grid_north");
    sheet.add(Pen.text(x - 8, y + 17, text, 7.5, false, Ink.DARK));
  }
}
