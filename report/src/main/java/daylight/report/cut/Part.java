package daylight.report.cut;

import daylight.line.book.Place;
import daylight.line.survey.PlanPoint;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The ground of one sheet.
 *
 * @param number from one on
 * @param up bearing that points up on the sheet, radians clockwise from grid north
 * @param middle of the sheet, on the site grid
 * @param from where its own stretch of pipe begins, its overlap left out; null for one that only
 *     holds what lies beside the pipes
 * @param to where it ends
 * @param matches with other parts
 */
public record Part(
    int number,
    double up,
    PlanPoint middle,
    @Nullable Place from,
    @Nullable Place to,
    List<Match> matches) {
  public Part {
    matches = List.copyOf(matches);
  }

  /**
   * A place of the pipe where one part hands over to another.
   *
   * @param place the same for both
   * @param other the number of the other part
   */
  public record Match(Place place, int other) {}

  Part matching(Match match) {
    List<Match> all = new java.util.ArrayList<>(matches);
    all.add(match);
    return new Part(number, up, middle, from, to, all);
  }

  /** A point as seen from the middle of the sheet: to the right and up, metres. */
  PlanPoint seen(PlanPoint point) {
    return Extent.turned(new PlanPoint(point.x() - middle.x(), point.y() - middle.y()), up);
  }
}
