package daylight.report.draw;

import daylight.line.book.Place;
import daylight.line.course.PlacedFinding;
import daylight.report.markup.Tag;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** What other visits than the judged one saw in the pipe: small marks without words. */
record PlanOthers(
    Subject subject,
    Canvas sheet,
    Legend legend,
    Labeller labeller,
    Function<Place, @Nullable Point> where) {
  private static final double RADIUS = 3.2;

  void findings() {
    for (PlacedFinding placed : subject.line().findings()) {
      Point at = where.apply(placed.from());
      boolean other = !placed.visit().equals(subject.answers().visit());
      if (other && at != null && placed.finding().node() == null) {
        Tag sign = Symbols.otherFinding(at.x(), at.y());
        sheet.add(Pen.at(placed.from()).add(sign));
        labeller.keepClear(Box.around(at.x(), at.y(), RADIUS));
        legend.use(Legend.Entry.FINDING_OTHER, placed.visit());
      }
    }
  }
}
