package daylight.line.dig;

import daylight.line.book.Place;
import daylight.line.course.Line;
import daylight.line.course.Run;
import daylight.line.course.Station;
import daylight.line.measure.Measured;
import daylight.line.survey.Covariance2;
import daylight.line.survey.PlanPoint;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineSegment;

/**
 * Where the estimated course crosses a line on the ground: a boundary, or marks of another service.
 *
 * @param place in the pipe
 * @param along the distance of that place from the upstream node, with its uncertainty
 */
public record Crossing(Place place, Measured along) {
  /** Two crossings nearer to each other than this are one, metres. */
  private static final double SAME_WITHIN = 1e-6;

  /** A crossing flatter than this says little of where it is: the sine of six degrees. */
  private static final double FLATTEST = 0.1;

  /** The crossings of a run, upstream first; none where one of the points has no place. */
  static List<Crossing> of(Line line, Run run, List<String> labels) {
    List<PlanPoint> points = Grounds.points(line, labels);
    List<Crossing> crossings = new ArrayList<>();
    List<Station> stations = run.stations();
    for (int i = 1; i < stations.size(); i++) {
      for (int j = 1; j < points.size(); j++) {
        Crossing at =
            crossing(
                line,
                labels,
                stations.get(i - 1),
                stations.get(i),
                points.get(j - 1),
                points.get(j));
        if (at != null && !known(crossings, at)) {
          crossings.add(at);
        }
      }
    }
    return crossings;
  }

  /** A crossing right at a station is met from both sides of it. */
  private static boolean known(List<Crossing> crossings, Crossing at) {
    return crossings.stream()
        .anyMatch(c -> Math.abs(c.place().distance() - at.place().distance()) < SAME_WITHIN);
  }

  /**
   * Square to that line the spot is uncertain by s against the nearest of its points; along the
   * pipe that is s over the sine of the angle between them.
   */
  private static @Nullable Crossing crossing(
      Line line, List<String> labels, Station a, Station b, PlanPoint p, PlanPoint q) {
    LineSegment pipe = new LineSegment(coordinate(a.spot()), coordinate(b.spot()));
    Coordinate hit = pipe.intersection(new LineSegment(coordinate(p), coordinate(q)));
    if (hit == null) {
      return null;
    }
    double share = Math.clamp(pipe.projectionFactor(hit), 0, 1);
    double from = a.place().distance();
    Place place = new Place(a.place().reach(), from + share * (b.place().distance() - from));
    PlanPoint spot = new PlanPoint(hit.getX(), hit.getY());
    String nearest = Grounds.nearest(line, labels, spot);
    Covariance2 c = line.relative(place, nearest).orElse(a.spread());
    double bearing = p.bearingTo(q);
    double square = Math.sqrt(Vector.of(bearing + Math.PI / 2).variance(c));
    double sine = Math.abs(StrictMath.sin(a.spot().bearingTo(b.spot()) - bearing));
    double sd = Math.max(square / Math.max(FLATTEST, sine), SAME_WITHIN);
    return new Crossing(place, new Measured(place.distance(), sd));
  }

  private static Coordinate coordinate(PlanPoint point) {
    return new Coordinate(point.x(), point.y());
  }
}
