package daylight.line.answer;

import daylight.line.book.Boundary;
import daylight.line.book.Place;
import daylight.line.course.Run;
import daylight.line.course.Station;
import daylight.line.survey.Adjusted;
import daylight.line.survey.Adjustment;
import daylight.line.survey.PlanPoint;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineSegment;

/** Where the estimated course of a run crosses a line on the ground. */
final class Crossing {
  /** Two crossings nearer to each other than this are one, metres. */
  private static final double SAME_WITHIN = 1e-6;

  private Crossing() {}

  /** A crossing and the standard uncertainty of its place along the pipe, metres. */
  record At(Place place, double sd) {}

  /** The crossings; none where a point of the boundary is not known in plan. */
  static List<At> of(Run run, Boundary boundary, Adjustment survey) {
    List<At> crossings = new ArrayList<>();
    if (!(survey instanceof Adjusted plan)
        || !plan.points().keySet().containsAll(boundary.points())) {
      return crossings;
    }
    List<Station> stations = run.stations();
    for (int i = 1; i < stations.size(); i++) {
      for (int j = 1; j < boundary.points().size(); j++) {
        At at =
            crossing(
                stations.get(i - 1),
                stations.get(i),
                plan.point(boundary.points().get(j - 1)),
                plan.point(boundary.points().get(j)));
        if (at != null && !known(crossings, at)) {
          crossings.add(at);
        }
      }
    }
    return crossings;
  }

  /** A crossing right at a station is met from both sides of it. */
  private static boolean known(List<At> crossings, At at) {
    return crossings.stream()
        .anyMatch(c -> Math.abs(c.place().distance() - at.place().distance()) < SAME_WITHIN);
  }

  private static @Nullable At crossing(Station a, Station b, PlanPoint p, PlanPoint q) {
    LineSegment pipe = new LineSegment(coordinate(a.spot()), coordinate(b.spot()));
    LineSegment line = new LineSegment(coordinate(p), coordinate(q));
    Coordinate hit = pipe.intersection(line);
    if (hit == null) {
      return null;
    }
    double share = Math.clamp(pipe.projectionFactor(hit), 0, 1);
    double from = a.place().distance();
    double distance = from + share * (b.place().distance() - from);
    // Square to the boundary the spot is uncertain by s; along the pipe that is s over the sine of
    // the angle between them.
    double bearing = p.bearingTo(q);
    double square = a.along(bearing + Math.PI / 2);
    double sine = Math.abs(StrictMath.sin(a.bearing() - bearing));
    return new At(new Place(a.place().reach(), distance), square / Math.max(0.1, sine));
  }

  private static Coordinate coordinate(PlanPoint point) {
    return new Coordinate(point.x(), point.y());
  }
}
