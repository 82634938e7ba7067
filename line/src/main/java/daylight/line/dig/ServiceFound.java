package daylight.line.dig;

import daylight.line.book.FieldBook;
import daylight.line.book.Papers;
import daylight.line.book.Place;
import daylight.line.book.Visit;
import daylight.line.course.Line;
import daylight.line.course.Run;
import daylight.line.course.Station;
import daylight.line.survey.Covariance2;
import daylight.line.survey.PlanPoint;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Marks of another service on the ground, and how they lie to the line. Between the places where
 * paint was seen the service is taken to run straight; how deep it lies, no paint tells.
 *
 * @param visit the label of the visit that recorded them
 * @param mark as written
 * @param points where paint was seen, in its order; none where one of them has no place in plan, so
 *     that the service may be anywhere
 * @param crossings where it crosses the estimated course, in the order of the reaches
 * @param nearest where it comes nearest to the course; null where either has no place
 */
public record ServiceFound(
    String visit,
    Papers.ServiceMark mark,
    List<PlanPoint> points,
    List<Crossing> crossings,
    @Nullable Nearest nearest) {
  /** Half of what is left out of a 95 % interval. */
  private static final double TAIL = 0.025;

  public ServiceFound {
    points = List.copyOf(points);
    crossings = List.copyOf(crossings);
  }

  /**
   * Where it comes nearest.
   *
   * @param place of the line
   * @param away level, metres
   * @param least it is nearer than this once in forty, metres
   */
  public record Nearest(Place place, double away, double least) {}

  static List<ServiceFound> of(FieldBook book, Line line) {
    List<ServiceFound> found = new ArrayList<>();
    for (Visit visit : book.visits()) {
      for (Papers.ServiceMark mark : visit.papers().services()) {
        found.add(of(visit, mark, line));
      }
    }
    return found;
  }

  private static ServiceFound of(Visit visit, Papers.ServiceMark mark, Line line) {
    List<PlanPoint> points =
        mark.points().isEmpty() ? List.of() : Grounds.points(line, mark.points());
    List<Crossing> crossings = new ArrayList<>();
    if (points.size() > 1) {
      line.runs().forEach(run -> crossings.addAll(Crossing.of(line, run, mark.points())));
    }
    return new ServiceFound(visit.label(), mark, points, crossings, nearest(line, mark, points));
  }

  private static @Nullable Nearest nearest(
      Line line, Papers.ServiceMark mark, List<PlanPoint> points) {
    if (points.isEmpty()) {
      return null;
    }
    Station best = null;
    double least = Double.POSITIVE_INFINITY;
    for (Run run : line.runs()) {
      for (Station station : run.stations()) {
        double away = Distances.to(station.spot(), points);
        if (away < least) {
          best = station;
          least = away;
        }
      }
    }
    if (best == null) {
      return null;
    }
    String post = Grounds.nearest(line, mark.points(), best.spot());
    Covariance2 spread = line.relative(best.place(), post).orElse(best.spread());
    double once = Distances.of(best.spot(), spread, points).quantile(TAIL);
    return new Nearest(best.place(), least, Math.min(once, least));
  }
}
