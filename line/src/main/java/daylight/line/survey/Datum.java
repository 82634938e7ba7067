package daylight.line.survey;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What holds the grid: the rule of the package description.
 *
 * @param held control points, or the one point that carries the grid
 * @param origin the point that looks along grid north, if a landmark gives north
 * @param northward the landmark it looks at: its x is the origin's, its y is free and greater
 */
record Datum(Map<String, PlanPoint> held, Optional<String> origin, Optional<String> northward) {

  /** A base shorter than this, metres, gives no direction. */
  private static final double ONE_SPOT = 1e-3;

  static Optional<Datum> of(List<Sighting> sightings, List<String> base) {
    var fixed = new TreeMap<String, PlanPoint>();
    boolean bearings = false;
    boolean placed = false;
    for (Sighting sighting : sightings) {
      if (sighting instanceof Sighting.Fixed(String point, double x, double y)) {
        fixed.put(point, new PlanPoint(x, y));
      }
      bearings |= sighting instanceof Sighting.Bearing || sighting instanceof Sighting.Offset;
      placed |= sighting instanceof Sighting.Sketched;
    }
    if (fixed.size() >= 2) {
      return Optional.of(new Datum(fixed, Optional.empty(), Optional.empty()));
    }
    boolean itself = base.isEmpty() && placed;
    if (fixed.isEmpty() && !itself) {
      return onBase(base, bearings);
    }
    if (bearings || itself) {
      return Optional.of(new Datum(fixed, Optional.empty(), Optional.empty()));
    }
    String origin = fixed.firstKey();
    return base.stream()
        .filter(landmark -> !landmark.equals(origin))
        .findFirst()
        .map(north -> new Datum(fixed, Optional.of(origin), Optional.of(north)));
  }

  private static Optional<Datum> onBase(List<String> base, boolean bearings) {
    if (base.size() >= 2) {
      return Optional.of(
          new Datum(
              Map.of(base.getFirst(), new PlanPoint(0, 0)),
              Optional.of(base.getFirst()),
              Optional.of(base.get(1))));
    }
    return base.size() == 1 && bearings
        ? Optional.of(
            new Datum(
                Map.of(base.getFirst(), new PlanPoint(0, 0)), Optional.empty(), Optional.empty()))
        : Optional.empty();
  }

  /** Whether one looks along grid north from the first point to the second, by the rule itself. */
  boolean looksNorth(String from, String to) {
    return origin.filter(from::equals).isPresent() && northward.filter(to::equals).isPresent();
  }

  /** Whether what should span the grid is one spot. */
  boolean coincident(List<Sighting> sightings) {
    return (northward.isPresent() && northward.equals(origin))
        || (held.size() >= 2 && held.values().stream().distinct().count() == 1)
        || sightings.stream().anyMatch(this::tapesTheBaseAsNothing);
  }

  private boolean tapesTheBaseAsNothing(Sighting sighting) {
    return sighting instanceof Sighting.Tape(_, String from, String to, double metres, _)
        && metres < ONE_SPOT
        && (looksNorth(from, to) || looksNorth(to, from));
  }
}
