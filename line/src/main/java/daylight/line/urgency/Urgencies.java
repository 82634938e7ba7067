package daylight.line.urgency;

import daylight.line.book.FieldBook;
import daylight.line.condition.Aspect;
import daylight.line.condition.FindingGrade;
import daylight.line.condition.Grade;
import daylight.line.condition.Immediate;
import daylight.line.condition.Verdict;
import daylight.line.course.Line;
import daylight.line.course.PlacedFinding;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The door of this room: how soon something is to be done about a finding. */
public final class Urgencies {
  private Urgencies() {}

  /** How soon, by its grade and by what may come of it. */
  public static HowSoon of(
      PlacedFinding placed, FindingGrade grade, FieldBook book, Line line, UrgencyTable table) {
    if (grade.ungraded() == FindingGrade.Ungraded.OUTRANKS) {
      return new HowSoon.Stop();
    }
    if (grade.ungraded() == FindingGrade.Ungraded.FEATURE) {
      return new HowSoon.Nothing();
    }
    if (grade.immediate() instanceof Immediate.Yes) {
      return new HowSoon.Listed();
    }
    return worst(grade)
        .map(worst -> ruled(worst, new Consequences(book, line, table.near()).of(placed), table))
        .orElseGet(HowSoon.CannotSay::new);
  }

  private record Worst(Grade grade, Aspect aspect) {}

  private static Optional<Worst> worst(FindingGrade grade) {
    return grade.verdicts().entrySet().stream()
        .flatMap(Urgencies::graded)
        .min(Comparator.comparing(Worst::grade));
  }

  private static java.util.stream.Stream<Worst> graded(Map.Entry<Aspect, Verdict> one) {
    return one.getValue() instanceof Verdict.Graded graded
        ? java.util.stream.Stream.of(new Worst(graded.grade(), one.getKey()))
        : java.util.stream.Stream.empty();
  }

  private static HowSoon ruled(Worst worst, Consequences.Met met, UrgencyTable table) {
    List<Consequence> unknown = met.unknown();
    boolean taken = table.whenUnknown() == UrgencyTable.WhenUnknown.WORST && !unknown.isEmpty();
    Consequence consequence = taken ? unknown.getFirst() : met.worst();
    Urgency urgency = table.urgency(worst.grade(), consequence);
    Urgency atWorst =
        unknown.isEmpty() ? urgency : table.urgency(worst.grade(), unknown.getFirst());
    return new HowSoon.Ruled(
        urgency,
        worst.grade(),
        worst.aspect(),
        consequence,
        unknown,
        atWorst == urgency ? null : atWorst);
  }
}
