package daylight.line.urgency;

import daylight.line.book.Boundary;
import daylight.line.book.FieldBook;
import daylight.line.book.Place;
import daylight.line.book.Reach;
import daylight.line.book.Surroundings;
import daylight.line.book.WaterWay;
import daylight.line.course.Line;
import daylight.line.course.PlacedFinding;
import daylight.line.course.Run;
import daylight.line.course.Station;
import daylight.line.measure.Measured;
import daylight.line.survey.Adjusted;
import daylight.line.survey.PlanPoint;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What may come of a finding, by where it lies and what drains through it. */
final class Consequences {
  private final FieldBook book;
  private final Line line;
  private final double near;

  Consequences(FieldBook book, Line line, double near) {
    this.book = book;
    this.line = line;
    this.near = near;
  }

  /**
   * @param worst the worst that is so
   * @param unknown worse ones of which nobody can tell, the worst first
   */
  record Met(Consequence worst, List<Consequence> unknown) {
    Met {
      unknown = List.copyOf(unknown);
    }
  }

  private enum So {
    YES,
    NO,
    UNKNOWN
  }

  Met of(PlacedFinding placed) {
    List<Consequence> unknown = new ArrayList<>();
    for (Consequence one : Consequence.values()) {
      switch (so(one, placed)) {
        case YES -> {
          return new Met(one, unknown);
        }
        case UNKNOWN -> unknown.add(one);
        case NO -> {}
      }
    }
    throw new IllegalStateException("the ground is always there");
  }

  private So so(Consequence consequence, PlacedFinding placed) {
    Optional<Run> run = line.findRun(placed.from().reach());
    return run.isEmpty()
        ? So.UNKNOWN
        : switch (consequence) {
          case SEWAGE_INSIDE -> sewage(run.get().reach());
          case BUILDING_OR_ROAD -> above(run.get(), placed);
          case WATER_INSIDE -> water(run.get().reach());
          case GROUND -> So.YES;
        };
  }

  private So sewage(Reach reach) {
    So inside = inside(reach);
    return switch (reach.use()) {
      case SANITARY, COMBINED -> inside;
      case UNKNOWN, PUMPED -> inside == So.NO ? So.NO : So.UNKNOWN;
      case STORM -> So.NO;
    };
  }

  private So water(Reach reach) {
    return inside(reach);
  }

  /** Whether something in a building drains through a reach, so that it can come up there. */
  private So inside(Reach reach) {
    List<Surroundings.Fixture> fixtures = book.site().surroundings().fixtures();
    if (fixtures.isEmpty()) {
      return So.UNKNOWN;
    }
    Set<String> above = WaterWay.above(book.site(), reach);
    return fixtures.stream().anyMatch(one -> above.contains(one.node())) ? So.YES : So.NO;
  }

  /** Whether a building or a road stands above it or right beside it. */
  private So above(Run run, PlacedFinding placed) {
    List<Boundary> walls =
        book.site().boundaries().stream()
            .filter(
                one -> one.kind() == Boundary.Kind.FOUNDATION || one.kind() == Boundary.Kind.ROAD)
            .toList();
    List<Station> stations = stations(run, placed);
    if (walls.isEmpty() || stations.isEmpty()) {
      return So.UNKNOWN;
    }
    So so = So.NO;
    for (Boundary wall : walls) {
      List<PlanPoint> points = points(wall);
      if (points.size() < wall.points().size()) {
        so = So.UNKNOWN;
      } else if (stations.stream()
          .anyMatch(s -> beside(s, points) || (isWall(wall) && beyond(s, run, points)))) {
        return So.YES;
      }
    }
    return so;
  }

  private static List<Station> stations(Run run, PlacedFinding placed) {
    if (!(run.path() instanceof Run.Path.Found found)) {
      return List.of();
    }
    Place to = placed.to();
    double from = placed.from().distance();
    double end = to == null ? from : to.distance();
    List<Station> stations = new ArrayList<>(List.of(found.nearest(from)));
    found.stations().stream()
        .filter(s -> from <= s.place().distance() && s.place().distance() <= end)
        .forEach(stations::add);
    return stations;
  }

  private List<PlanPoint> points(Boundary wall) {
    return line.survey() instanceof Adjusted adjusted
        ? wall.points().stream()
            .flatMap(label -> Optional.ofNullable(adjusted.points().get(label)).stream())
            .toList()
        : List.of();
  }

  /** Nearer than the limit, were it only in one of twenty. */
  private boolean beside(Station station, List<PlanPoint> wall) {
    double doubt = Measured.Z95 * Math.max(station.across(), station.along(station.bearing()));
    for (int i = 1; i < wall.size(); i++) {
      if (distance(station.spot(), wall.get(i - 1), wall.get(i)) <= near + doubt) {
        return true;
      }
    }
    return false;
  }

  /** What lies behind a road's edge may be the garden beyond it; behind a wall is the house. */
  private static boolean isWall(Boundary boundary) {
    return boundary.kind() == Boundary.Kind.FOUNDATION;
  }

  /** On the other side of a wall from where its pipe ends, right behind the wall. */
  private static boolean beyond(Station station, Run run, List<PlanPoint> wall) {
    PlanPoint end = run.stations().getLast().spot();
    for (int i = 1; i < wall.size(); i++) {
      PlanPoint a = wall.get(i - 1);
      PlanPoint b = wall.get(i);
      double share = share(station.spot(), a, b);
      boolean behind = side(station.spot(), a, b) * side(end, a, b) < 0;
      if (behind && share >= 0 && share <= 1) {
        return true;
      }
    }
    return false;
  }

  private static double side(PlanPoint spot, PlanPoint a, PlanPoint b) {
    return (b.x() - a.x()) * (spot.y() - a.y()) - (b.y() - a.y()) * (spot.x() - a.x());
  }

  private static double share(PlanPoint spot, PlanPoint a, PlanPoint b) {
    double x = b.x() - a.x();
    double y = b.y() - a.y();
    double squared = x * x + y * y;
    return squared > 0 ? ((spot.x() - a.x()) * x + (spot.y() - a.y()) * y) / squared : 0;
  }

  private static double distance(PlanPoint spot, PlanPoint a, PlanPoint b) {
    double share = Math.clamp(share(spot, a, b), 0, 1);
    return spot.distanceTo(
        new PlanPoint(a.x() + share * (b.x() - a.x()), a.y() + share * (b.y() - a.y())));
  }
}
