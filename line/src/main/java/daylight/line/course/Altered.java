package daylight.line.course;

import daylight.line.book.FieldBook;
import daylight.line.book.Pass;
import daylight.line.book.Visit;
import daylight.line.book.Work;
import java.util.List;

/**
 * Which measurements still hold: once a repair altered how a reach lies, what was measured of that
 * reach on earlier visits no longer counts for its geometry.
 */
final class Altered {
  private Altered() {}

  /** Whether what a visit measured of a reach still holds. */
  static boolean holds(FieldBook book, Visit visit, String reach) {
    int at = book.visits().indexOf(visit);
    List<Visit> later = book.visits().subList(at + 1, book.visits().size());
    return later.stream().flatMap(v -> v.works().stream()).noneMatch(work -> alters(work, reach));
  }

  /** Whether every reach that a pass went through still lies as it did then. */
  static boolean holds(FieldBook book, Visit visit, Pass pass) {
    return pass.walk().stream().allMatch(leg -> holds(book, visit, leg.reach()));
  }

  private static boolean alters(Work work, String reach) {
    return work instanceof Work.Repair repair && repair.altered() && repair.reach().equals(reach);
  }
}
