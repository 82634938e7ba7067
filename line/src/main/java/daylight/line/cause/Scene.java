package daylight.line.cause;

import daylight.line.book.FieldBook;
import daylight.line.book.Visit;
import daylight.line.condition.FindingGrade;
import daylight.line.course.Line;
import daylight.line.course.PlacedFinding;
import daylight.line.fall.Fall;
import daylight.line.proving.Proving;
import java.util.List;
import java.util.function.Function;

/**
 * What one visit saw and tried.
 *
 * @param fall of the line, with the water of this visit
 * @param proving what the tests of this visit proved
 * @param grades tells the grade of a finding
 * @param seenShare share of the length that must have been seen before nothing found means anything
 */
public record Scene(
    FieldBook book,
    Line line,
    Fall fall,
    Proving proving,
    Visit visit,
    Function<PlacedFinding, FindingGrade> grades,
    double seenShare) {

  /** The findings of the visit, by reach in the book's order and by distance. */
  List<PlacedFinding> findings() {
    List<String> reaches = line.runs().stream().map(run -> run.reach().label()).toList();
    return line.findings().stream()
        .filter(placed -> placed.visit().equals(visit.label()))
        .sorted(
            java.util.Comparator.comparingInt(
                    (PlacedFinding p) -> reaches.indexOf(p.from().reach()))
                .thenComparingDouble(p -> p.from().distance())
                .thenComparing(p -> p.finding().id()))
        .toList();
  }
}
