package daylight.report.draw;

import daylight.line.course.LocateFit;
import daylight.line.measure.Argument;
import daylight.report.markup.Tag;

/** What was found from the ground: its sign by how and when it was found, and what it is called. */
final class Located {
  private Located() {}

  /** Its sign, which is told to the legend. */
  static Tag drawn(Subject subject, LocateFit fit, Point at, Legend legend) {
    if (subject.isExposure(fit)) {
      legend.use(Legend.Entry.EXPOSURE);
      return Symbols.exposure(at.x(), at.y());
    }
    String visit = subject.visitOf(fit);
    if (visit.equals(subject.answers().visit())) {
      legend.use(Legend.Entry.LOCATE);
      return Symbols.locate(at.x(), at.y());
    }
    legend.use(Legend.Entry.LOCATE_OTHER, visit);
    return Symbols.otherLocate(at.x(), at.y());
  }

  /** Its label, with its visit where that is not the judged one, and the depth that was read. */
  static String label(Subject subject, LocateFit fit) {
    String name = name(subject, fit);
    return fit.depth() == null
        ? name
        : subject
            .words()
            .say("draw.depth", new Argument.Text(name), new Argument.Length(fit.depth().value()));
  }

  /** Its label, with its visit where that is not the judged one. */
  static String name(Subject subject, LocateFit fit) {
    String visit = subject.visitOf(fit);
    String label = fit.entry().label();
    return visit.equals(subject.answers().visit()) ? label : label + " " + visit;
  }
}
