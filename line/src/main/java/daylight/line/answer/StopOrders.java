package daylight.line.answer;

import daylight.line.book.Catalogue;
import daylight.line.book.FieldBook;
import daylight.line.book.Finding;
import daylight.line.book.Pass;
import daylight.line.book.Place;
import daylight.line.book.Visit;
import daylight.line.book.Work;
import daylight.line.course.Line;
import daylight.line.course.PlacedFinding;
import daylight.line.course.Route;
import daylight.line.course.Run;
import daylight.line.measure.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The stop orders of a book. */
final class StopOrders {
  private StopOrders() {}

  /** A foreign pipe seen on any visit stops the work until a later repair there is written down. */
  static List<StopOrder> of(FieldBook book, Line line, Rules rules) {
    List<StopOrder> stops = new ArrayList<>();
    for (Visit visit : book.visits()) {
      for (Pass pass : visit.passes()) {
        for (Finding finding : pass.findings()) {
          Optional<Catalogue.Kind> kind = rules.catalogue().find(finding.kind());
          if (kind.filter(k -> k.hazard() == Catalogue.Hazard.STOP).isPresent()) {
            PlacedFinding placed = placed(line, visit, pass, finding);
            if (!repaired(book, placed)) {
              stops.add(new StopOrder(placed));
            }
          }
        }
      }
    }
    return stops;
  }

  private static boolean repaired(FieldBook book, PlacedFinding placed) {
    boolean later = false;
    for (Visit visit : book.visits()) {
      if (later && visit.works().stream().anyMatch(work -> mends(work, placed))) {
        return true;
      }
      later = later || visit.label().equals(placed.visit());
    }
    return false;
  }

  private static boolean mends(Work work, PlacedFinding placed) {
    if (!(work instanceof Work.Repair repair) || !repair.reach().equals(placed.from().reach())) {
      return false;
    }
    Reading from = repair.from();
    Reading to = repair.to();
    Place end = placed.to();
    double first = placed.from().distance();
    double last = end == null ? first : end.distance();
    return (from == null || from.value() <= first) && (to == null || last <= to.value());
  }

  /**
   * A finding at its place; one that nothing places, as at a moment of footage that nobody read,
   * may be anywhere on the reach its pass went into, and stops the work there all the same.
   */
  private static PlacedFinding placed(Line line, Visit visit, Pass pass, Finding finding) {
    return line.findings().stream()
        .filter(placed -> placed.finding().id().equals(finding.id()))
        .findFirst()
        .orElseGet(
            () -> {
              Run run =
                  pass.walk().stream()
                      .flatMap(leg -> line.findRun(leg.reach()).stream())
                      .findFirst()
                      .orElse(line.runs().getFirst());
              double length = Route.extent(run);
              return new PlacedFinding(
                  visit.label(),
                  pass.label(),
                  finding,
                  run.at(0),
                  length > 0 ? run.at(length) : null,
                  Math.max(1, length));
            });
  }
}
