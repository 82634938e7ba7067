package daylight.line.survey;

import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/** Which sightings and which unknowns take part in one adjustment. */
final class Plan {
  /** Points that move at least this share of what the one that moves most does move with it. */
  private static final double RESTLESS = 0.5;

  private final Scene scene;
  private final Unknowns unknowns;
  private final List<Equation> equations;

  Plan(Ties ties, Scene scene) {
    this.scene = scene;
    Optional<Shift> shift = ties.shift(scene);
    var sets = new TreeMap<String, Double>();
    ties.sets().forEach((set, members) -> orientation(members).ifPresent(o -> sets.put(set, o)));
    List<Sighting> used =
        ties.sightings().stream()
            .filter(sighting -> scene.covers(sighting, ""))
            .filter(sighting -> !(sighting instanceof Sighting.Gnss) || shift.isPresent())
            .filter(
                sighting ->
                    !(sighting instanceof Sighting.Direction d) || sets.containsKey(d.set()))
            .toList();
    unknowns = new Unknowns(scene, scene.known().keySet()).oriented(sets);
    if (used.stream().anyMatch(Sighting.Gnss.class::isInstance)) {
      shift.ifPresent(unknowns::tied);
    }
    equations = ties.joined(new PlaneEquations(unknowns, ties.local()).of(used));
  }

  /** The bearing of a set's zero by its first member; a set with one member says nothing. */
  private Optional<Double> orientation(List<Sighting.Direction> members) {
    List<Sighting.Direction> seen =
        members.stream().filter(member -> scene.covers(member, "")).toList();
    return seen.size() < 2
        ? Optional.empty()
        : scene
            .bearing(seen.getFirst().from(), seen.getFirst().to())
            .map(bearing -> bearing - seen.getFirst().rad());
  }

  Scene scene() {
    return scene;
  }

  Unknowns unknowns() {
    return unknowns;
  }

  List<Equation> equations() {
    return equations;
  }

  /** The points that can move at a state without any reading noticing. */
  SortedSet<String> open(double[] state) {
    boolean[] open = Factored.of(Linearised.of(equations, state).design()).open();
    var points = new TreeSet<String>();
    unknowns
        .spots()
        .forEach(
            (point, spot) -> {
              if ((spot.atX() >= 0 && open[spot.atX()]) || (spot.atY() >= 0 && open[spot.atY()])) {
                points.add(point);
              }
            });
    return points;
  }

  /** The points that move most where the iteration fits well and yet does not settle. */
  SortedSet<String> restless(double[] start) {
    var points = new TreeSet<String>();
    LeastSquares.restless(equations, start)
        .ifPresent(
            step -> {
              double most =
                  unknowns.spots().values().stream().mapToDouble(s -> far(s, step)).max().orElse(0);
              unknowns
                  .spots()
                  .forEach(
                      (point, spot) -> {
                        if (most > 0 && far(spot, step) >= RESTLESS * most) {
                          points.add(point);
                        }
                      });
            });
    return points;
  }

  private static double far(Spot spot, double[] step) {
    double x = spot.atX() < 0 ? 0 : step[spot.atX()];
    double y = spot.atY() < 0 ? 0 : step[spot.atY()];
    return StrictMath.hypot(x, y);
  }
}
