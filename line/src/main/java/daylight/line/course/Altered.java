package daylight.line.course;

import daylight.line.book.FieldBook;
import daylight.line.book.Pass;
import daylight.line.book.Visit;
import daylight.line.book.Work;
import java.time.LocalDate;

/**
 * Which measurements still hold: once a repair altered how a reach lies, what was measured of that
 * reach on earlier visits no longer counts for its geometry.
 */
final class Altered {
  private Altered() {}

  /** Whether what a visit measured of a reach still holds. */
  static boolean holds(FieldBook book, Visit visit, String reach) {
    int at = book.visits().indexOf(visit);
    for (int i = 0; i < book.visits().size(); i++) {
      boolean recordedLater = i > at;
      for (Work work : book.visits().get(i).works()) {
        if (work instanceof Work.Repair repair
            && repair.altered()
            && repair.reach().equals(reach)
            && after(repair, visit, recordedLater)) {
          return false;
        }
      }
    }
    return true;
  }

  /** Days decide where both are known, else which visit wrote the repair down. */
  private static boolean after(Work.Repair repair, Visit visit, boolean recordedLater) {
    LocalDate mended = repair.date();
    LocalDate seen = visit.date();
    return (mended != null && seen != null) ? mended.isAfter(seen) : recordedLater;
  }

  /** Whether every reach that a pass went through still lies as it did then. */
  static boolean holds(FieldBook book, Visit visit, Pass pass) {
    return pass.walk().stream().allMatch(leg -> holds(book, visit, leg.reach()));
  }
}
