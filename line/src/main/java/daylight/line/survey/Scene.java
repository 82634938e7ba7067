package daylight.line.survey;

import java.util.Collections;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;

/** Which points have an approximate position so far. Immutable. */
final class Scene {
  /** How far north the northward landmark is taken to be while only its direction is used. */
  private static final double NOMINAL = 10;

  private final Datum datum;
  private final NavigableMap<String, PlanPoint> known;

  Scene(Datum datum, Map<String, PlanPoint> known) {
    this.datum = datum;
    this.known = Collections.unmodifiableNavigableMap(new TreeMap<>(known));
  }

  Scene with(String point, PlanPoint at) {
    return with(Map.of(point, at));
  }

  Scene with(Map<String, PlanPoint> more) {
    var all = new TreeMap<>(known);
    all.putAll(more);
    return new Scene(datum, all);
  }

  Scene without(String point) {
    var rest = new TreeMap<>(known);
    rest.remove(point);
    return new Scene(datum, rest);
  }

  Datum datum() {
    return datum;
  }

  NavigableMap<String, PlanPoint> known() {
    return known;
  }

  boolean knows(String point) {
    return known.containsKey(point);
  }

  /** The position of a known point; a stand-in on grid north for the northward landmark. */
  Optional<PlanPoint> position(String point) {
    PlanPoint at = known.get(point);
    if (at == null && datum.northward().filter(point::equals).isPresent()) {
      return datum.origin().map(known::get).map(o -> new PlanPoint(o.x(), o.y() + NOMINAL));
    }
    return Optional.ofNullable(at);
  }

  /** The bearing from one point to another, if both are known or the datum gives it. */
  Optional<Double> bearing(String from, String to) {
    if (!knows(from) || !(knows(to) || datum.looksNorth(from, to))) {
      return Optional.empty();
    }
    return position(from).flatMap(f -> position(to).map(f::bearingTo));
  }

  /**
   * Whether every point of a sighting is known, taking one point as known. The northward landmark
   * counts as known where only its direction is used.
   */
  boolean covers(Sighting sighting, String besides) {
    return sighting.points().stream()
        .allMatch(p -> p.equals(besides) || knows(p) || directionOnly(sighting, p));
  }

  /** Whether a sighting uses a point for the direction of grid north and nothing else. */
  private boolean directionOnly(Sighting sighting, String point) {
    if (datum.northward().filter(point::equals).isEmpty()) {
      return false;
    }
    return switch (sighting) {
      case Sighting.AlongOut s -> datum.looksNorth(s.wallFrom(), s.wallTo());
      case Sighting.Angle s -> datum.looksNorth(s.at(), point);
      case Sighting.Direction s -> datum.looksNorth(s.from(), s.to());
      case Sighting.Side s -> datum.looksNorth(s.wallFrom(), s.wallTo());
      case Sighting.Tape _,
          Sighting.Bearing _,
          Sighting.Sketched _,
          Sighting.Offset _,
          Sighting.Gnss _,
          Sighting.Fixed _ ->
          false;
    };
  }

  /** Whether a side hint speaks of known points and is contradicted by them. */
  boolean contradicts(Sighting.Side side) {
    if (!covers(side, "")) {
      return false;
    }
    PlanPoint from = position(side.wallFrom()).orElseThrow();
    PlanPoint to = position(side.wallTo()).orElseThrow();
    PlanPoint p = position(side.point()).orElseThrow();
    double left =
        (to.x() - from.x()) * (p.y() - from.y()) - (to.y() - from.y()) * (p.x() - from.x());
    return switch (side.hand()) {
      case LEFT -> left < 0;
      case RIGHT -> left > 0;
    };
  }
}
