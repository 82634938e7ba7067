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

  void draw(Sheet sheet, PlanFrame frame, Labeller labeller, Legend legend) {
    for (ServiceFound one : all) {
      List<Point> path = one.points().stream().map(frame::at).toList();
      if (path.size() > 1) {
        sheet.add(ServiceInk.way(one.mark().service(), Pen.through(path, false)));
        legend.useWay(one.mark().service());
        // Nothing is written over it: it must not be overlooked.
        Pen.strokes(path).forEach(labeller::wall);
      }
      for (Point at : path) {
        sheet.add(ServiceInk.spot(one.mark().service(), at.x(), at.y()));
        labeller.keepClear(Box.around(at.x(), at.y(), 3));
        legend.use(one.mark().service());
      }
    }
  }

  void labels(PlanFrame frame, Marks marks) {
    for (ServiceFound one : all) {
      List<Point> path = one.points().stream().map(frame::at).toList();
      if (!path.isEmpty()) {
        Point at = path.getFirst();
        if (path.size() > 1) {
          Point next = path.get(1);
          at =
              new Point(
                  at.x() + LABEL_AT * (next.x() - at.x()), at.y() + LABEL_AT * (next.y() - at.y()));
        }
        marks.write(Tag.of("g"), at, 3, Captions.service(subject, one), true);
      }
    }
  }

  /** What the signs cannot say. */
  void notes(Sheet sheet) {
    if (all.isEmpty()) {
      return;
    }
    all.stream()
        .filter(one -> one.points().isEmpty())
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
