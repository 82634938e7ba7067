package daylight.line.answer;

import daylight.line.book.Catalogue;
import daylight.line.book.FieldBook;
import daylight.line.book.Priors;
import daylight.line.book.Reach;
import daylight.line.cause.CauseRules;
import daylight.line.condition.Condition;
import daylight.line.condition.FindingGrade;
import daylight.line.condition.GradeScheme;
import daylight.line.condition.Seen;
import daylight.line.course.Line;
import daylight.line.course.PlacedFinding;
import daylight.line.dig.DigLimits;
import daylight.line.fall.FallRules;
import daylight.line.flow.FlowTables;
import daylight.line.frost.FrostTables;
import daylight.line.measure.Reading;
import daylight.line.proving.HoldLimits;
import daylight.line.urgency.HowSoon;
import daylight.line.urgency.Urgencies;
import daylight.line.urgency.UrgencyTable;

/**
 * What the answers are judged by: data with their sources.
 *
 * @param catalogue the kinds of finding
 * @param fall the table of smallest slopes
 * @param limits our own thresholds
 * @param priors by which the line was estimated: a dig is laid out as well as a tape is usually
 *     laid, and a depth of water is graded as well as depths are usually judged
 * @param grades by which findings are graded
 * @param urgency how soon, by class and consequence
 * @param causes what may be behind a complaint
 * @param holds by which hold tests are judged
 * @param flow figures of pipes that nobody measures on site
 * @param frost what is usual of soils, surfaces and snow where frost is asked about
 */
public record Rules(
    Catalogue catalogue,
    FallRules fall,
    Limits limits,
    Priors priors,
    GradeScheme grades,
    UrgencyTable urgency,
    CauseRules causes,
    HoldLimits holds,
    FlowTables flow,
    FrostTables frost) {

  /** How soon something is to be done about a finding of a line of a book. */
  public HowSoon howSoon(PlacedFinding placed, FieldBook book, Line line) {
    return Urgencies.of(placed, grade(placed, line), book, line, urgency);
  }

  /** What the scheme says of a finding of a line, in the bore of the reach it lies in. */
  public FindingGrade grade(PlacedFinding placed, Line line) {
    Reading bore =
        line.findRun(placed.from().reach()).map(run -> run.reach()).map(Reach::bore).orElse(null);
    Seen seen = Seen.of(placed.finding(), bore == null ? null : bore.value());
    return new Condition(grades, catalogue).grade(seen.withUsualDoubt(priors));
  }

  /**
   * Thresholds of the judgement that no published rule sets; common practice.
   *
   * @param seenShare share of the length that must have been seen for "clear" and "sound" to hold
   *     without "for the part seen"
   * @param obstruction share of the bore from which a finding counts as an obstruction
   * @param trenchNotice depth from which a trench caution is given, metres
   * @param trenchProtect depth from which a protective system is called for, metres
   * @param digMargin room to work on every side of where the pipe may be, metres
   * @param nearMark how near to another service's mark one digs by hand alone, metres
   */
  public record Limits(
      double seenShare,
      double obstruction,
      double trenchNotice,
      double trenchProtect,
      double digMargin,
      double nearMark) {
    /** What a dig is laid out by. */
    public DigLimits dig() {
      return DigLimits.usual(trenchNotice, trenchProtect)
          .withMargin(digMargin)
          .withNearMark(nearMark);
    }
  }
}
