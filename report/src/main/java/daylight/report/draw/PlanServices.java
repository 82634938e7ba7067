package daylight.report.draw;

import daylight.line.dig.Digger;
import daylight.line.dig.ServiceFound;
import daylight.line.survey.PlanPoint;
import daylight.report.markup.Tag;
import java.util.List;

/** Marks of other services on the plan, below everything else that is drawn. */
final class PlanServices {
  /** So far along a mark its label is anchored, where the drain is least likely to be. */
  private static final double LABEL_AT = 0.2;

  private final Subject subject;
  private final List<ServiceFound> all;

  PlanServices(Subject subject) {
    this.subject = subject;
    this.all = Digger.services(subject.book(), subject.line());
  }

  /** Where paint was seen, so that the sheet has room for it. */
  List<PlanPoint> points() {
    return all.stream().flatMap(one -> one.points().stream()).toList();
  }

  void draw(Canvas sheet, PlanFrame frame, Window window, Labeller labeller, Legend legend) {
    for (ServiceFound one : all) {
      List<Point> path = one.points().stream().map(frame::at).toList();
      for (List<Point> piece : pieces(path, window)) {
        sheet.add(ServiceInk.way(one.mark().service(), Pen.through(piece, false)));
        legend.useWay(one.mark().service());
        // Nothing is written over it: it must not be overlooked.
        Pen.strokes(piece).forEach(labeller::wall);
      }
      for (Point at : path.stream().filter(window::holds).toList()) {
        sheet.add(ServiceInk.spot(one.mark().service(), at.x(), at.y()));
        labeller.keepClear(Box.around(at.x(), at.y(), 3));
        legend.use(one.mark().service());
      }
    }
  }

  private static List<List<Point>> pieces(List<Point> path, Window window) {
    return path.size() > 1 ? window.pieces(path) : List.of();
  }

  void labels(PlanFrame frame, Window window, Marks marks) {
    for (ServiceFound one : all) {
      List<Point> path = one.points().stream().map(frame::at).toList();
      List<List<Point>> pieces = pieces(path, window);
      List<Point> shown = pieces.isEmpty() ? path : pieces.getFirst();
      if (!shown.isEmpty() && (!pieces.isEmpty() || window.holds(shown.getFirst()))) {
        Point at = shown.getFirst();
        if (shown.size() > 1 && !pieces.isEmpty()) {
          Point next = shown.get(1);
          at =
              new Point(
                  at.x() + LABEL_AT * (next.x() - at.x()), at.y() + LABEL_AT * (next.y() - at.y()));
        }
        marks.write(Tag.of("g"), at, 3, Captions.service(subject, one), true);
      }
    }
  }

  /** Those of which one point has no place, so that they may be anywhere. */
  List<ServiceFound> unplaced() {
    return all.stream().filter(one -> one.points().isEmpty()).toList();
  }

  /** What the signs cannot say. */
  void notes(Sheet sheet) {
    if (all.isEmpty()) {
      return;
    }
    unplaced()
        .forEach(
            one ->
                sheet.note(
                    subject
                        .words()
                        .say(
                            "draw.service.open",
                            new daylight.line.measure.Argument.Text(
                                Captions.service(subject, one)))));
    sheet.note(subject.words().word("draw.service.note"));
  }
}
