package daylight.report.cut;

import daylight.line.book.Place;
import daylight.line.course.Route;
import daylight.line.survey.PlanPoint;
import java.util.ArrayList;
import java.util.List;

/** A route by points of it, each with its distance along, metres. */
record Way(Route route, List<Mark> marks) {
  /** Nearer together they say nothing more. */
  private static final double STEP = 0.5;

  record Mark(double distance, PlanPoint spot) {}

  static Way of(Route route) {
    List<Mark> marks = new ArrayList<>();
    List<Route.Sample> samples = route.samples();
    for (Route.Sample sample : samples) {
      boolean last = sample.equals(samples.getLast());
      if (last || marks.isEmpty() || sample.distance() - marks.getLast().distance() >= STEP) {
        marks.add(new Mark(sample.distance(), sample.station().spot()));
      }
    }
    return new Way(route, marks);
  }

  boolean isEmpty() {
    return marks.isEmpty();
  }

  double start() {
    return marks.getFirst().distance();
  }

  double end() {
    return marks.getLast().distance();
  }

  /** The distance of the next point beyond one; infinite beyond the last. */
  double after(double distance) {
    for (Mark mark : marks) {
      if (mark.distance() > distance) {
        return mark.distance();
      }
    }
    return Double.POSITIVE_INFINITY;
  }

  /** The points between two distances, and those next to them on either side. */
  List<PlanPoint> between(double from, double to) {
    List<PlanPoint> points = new ArrayList<>();
    for (Mark mark : marks) {
      if (mark.distance() >= from - STEP && mark.distance() <= to + STEP) {
        points.add(mark.spot());
      }
    }
    return points;
  }

  /** Whether a pipe is drawn at a distance: of some reaches it is not known where they lie. */
  boolean isFoundAt(double distance) {
    String reach = place(distance).reach();
    return route.runs().stream()
        .anyMatch(run -> run.reach().label().equals(reach) && !run.stations().isEmpty());
  }

  Place place(double distance) {
    return route.place(distance);
  }
}
