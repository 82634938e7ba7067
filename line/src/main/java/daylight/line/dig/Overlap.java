package daylight.line.dig;

import daylight.line.book.Boundary;
import daylight.line.book.Place;
import daylight.line.course.Line;
import daylight.line.course.Run;
import daylight.line.course.Station;
import daylight.line.survey.PlanPoint;
import java.util.List;
import java.util.Optional;

/**
 * A run that is estimated to stay on one side of a boundary, and how likely it is not to.
 *
 * @param boundary that line
 * @param place where the chance is greatest
 * @param left whether the far side, where the run is not thought to be, is the left one
 * @param beyond the probability that the run lies on the far side at that place
 * @param away how far that place is from the boundary, metres
 */
public record Overlap(Boundary boundary, Place place, boolean left, double beyond, double away) {

  static Optional<Overlap> of(Line line, Run run, Boundary boundary) {
    List<PlanPoint> points = Grounds.points(line, boundary.points());
    List<Station> stations = run.stations();
    if (points.size() < 2
        || stations.isEmpty()
        || !Crossing.of(line, run, boundary.points()).isEmpty()) {
      return Optional.empty();
    }
    Overlap worst = null;
    for (Station station : stations) {
      String nearest = Grounds.nearest(line, boundary.points(), station.spot());
      double left =
          Sides.left(
              station.spot(),
              line.relative(station.place(), nearest).orElse(station.spread()),
              points);
      double beyond = Math.min(left, 1 - left);
      if (worst == null || beyond > worst.beyond()) {
        double away = Distances.to(station.spot(), points);
        worst = new Overlap(boundary, station.place(), left < 0.5, beyond, away);
      }
    }
    return Optional.ofNullable(worst);
  }
}
