package daylight.line.survey;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;

/**
 * The unknowns of an adjustment in their order: coordinates by label of point, orientations by set,
 * then the three of the satellite tie.
 */
final class Unknowns {
  private final Scene scene;
  private final Map<String, Spot> spots = new HashMap<>();
  private final Map<String, Integer> orientations = new HashMap<>();
  private final List<Double> start = new ArrayList<>();
  private int tie = -1;

  /** The coordinates of some known points, in order, starting from where the scene has them. */
  Unknowns(Scene scene, Collection<String> free) {
    this.scene = scene;
    Datum datum = scene.datum();
    for (String point : free) {
      if (datum.held().containsKey(point)) {
        continue;
      }
      PlanPoint at = scene.position(point).orElseThrow();
      int x = datum.northward().filter(point::equals).isPresent() ? -1 : add(at.x());
      int y = add(at.y());
      spots.put(point, new Spot(x, y, at));
    }
  }

  private int add(double value) {
    start.add(value);
    return start.size() - 1;
  }

  /** Adds the unknown orientations of direction sets, with their start values. */
  Unknowns oriented(SortedMap<String, Double> sets) {
    sets.forEach((set, bearing) -> orientations.put(set, add(bearing)));
    return this;
  }

  /** Adds the unknown tie to satellite fixes, with its start values. */
  Unknowns tied(Shift shift) {
    tie = add(shift.east());
    add(shift.north());
    add(shift.turn());
    return this;
  }

  Spot spot(String point) {
    Spot spot = spots.get(point);
    return spot != null ? spot : new Spot(-1, -1, scene.position(point).orElseThrow());
  }

  int orientation(String set) {
    Integer at = orientations.get(set);
    if (at == null) {
      throw new IllegalArgumentException("set must have an orientation, was " + set);
    }
    return at;
  }

  int tie() {
    return tie;
  }

  double[] start() {
    return start.stream().mapToDouble(Double::doubleValue).toArray();
  }

  /** Where the points lie at a state. */
  Map<String, PlanPoint> positions(double[] state) {
    var positions = new HashMap<String, PlanPoint>();
    spots.forEach(
        (point, spot) -> positions.put(point, new PlanPoint(spot.x(state), spot.y(state))));
    return positions;
  }

  /** The points with a free coordinate. */
  Map<String, Spot> spots() {
    return Map.copyOf(spots);
  }
}
