package daylight.line.course;

import static daylight.line.course.LineSort.Way.BRANCH;
import static daylight.line.course.LineSort.Way.COVERED;
import static daylight.line.course.LineSort.Way.FLEXIBLE;
import static daylight.line.course.LineSort.Way.FROM_OUTLET;
import static daylight.line.course.LineSort.Way.HELD;
import static daylight.line.course.LineSort.Way.LEVELLED;
import static daylight.line.course.LineSort.Way.LONG;

import java.util.List;
import java.util.Set;

/**
 * Twelve sorts of line that between them show every pair of what tells lines apart: a covering
 * array of strength two over bends (0, 1, 2, 3), locates (1, 2–3, 4–8) and seven things that are or
 * are not. {@link LineClassesTest} proves that no pair is missing.
 *
 * <p>A flexible pipe of 150 m with one locate is no pair and is left out: it wanders by more than
 * half a right angle beyond the one spot, and no ellipse is the shape of where it may be.
 */
final class LineClasses {
  static final List<LineSort> ALL =
      List.of(
          sort(1, 0, 1, 1, FLEXIBLE, HELD, BRANCH, FROM_OUTLET),
          sort(2, 1, 1, 1, HELD, COVERED, BRANCH, FROM_OUTLET, LEVELLED),
          sort(3, 2, 1, 1),
          sort(4, 3, 1, 1, LONG, HELD, BRANCH, FROM_OUTLET, LEVELLED),
          sort(5, 0, 2, 3, BRANCH, LEVELLED),
          sort(6, 1, 2, 3, FLEXIBLE, LONG, COVERED, BRANCH, FROM_OUTLET),
          sort(7, 2, 2, 3, HELD, COVERED, FROM_OUTLET, LEVELLED),
          sort(8, 3, 2, 3, FLEXIBLE, HELD, COVERED, LEVELLED),
          sort(9, 0, 4, 8, FLEXIBLE, LONG, HELD, COVERED),
          sort(10, 1, 4, 8, FLEXIBLE, LONG, LEVELLED),
          sort(11, 2, 4, 8, FLEXIBLE, LONG, BRANCH, LEVELLED),
          sort(12, 3, 4, 8, FROM_OUTLET));

  private LineClasses() {}

  private static LineSort sort(int number, int bends, int fewest, int most, LineSort.Way... ways) {
    return new LineSort(number, bends, fewest, most, Set.of(ways));
  }
}
