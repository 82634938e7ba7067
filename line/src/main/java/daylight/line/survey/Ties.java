package daylight.line.survey;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * The sightings of a network in one fixed order, and in the form in which approximate positions are
 * built: directions of one set as the angles between them, satellite fixes as distances between
 * them until two fixed points are known, and as places from then on.
 */
final class Ties {
  private final List<Sighting> sightings;
  private final List<Sighting> plain;
  private final Map<String, List<Sighting>> plainByPoint = new HashMap<>();
  private final List<Sighting.Side> sides;
  private final List<Sighting.Gnss> fixes;
  private final Optional<LocalGrid> local;
  private final Joined joined;
  private final Map<String, PlanPoint> approximate;

  Ties(PlaneNetwork network) {
    joined = new Joined(network.correlated());
    approximate = network.approximate();
    sightings =
        network.sightings().stream()
            .sorted(Comparator.comparing(Sighting::entry).thenComparing(Object::toString))
            .toList();
    fixes =
        all(Sighting.Gnss.class)
            .sorted(Comparator.comparing(Sighting.Gnss::point).thenComparing(Sighting::entry))
            .toList();
    local = fixes.isEmpty() ? Optional.empty() : Optional.of(LocalGrid.about(fixes));
    plain = Stream.concat(sightings.stream().filter(Ties::plain), angles()).toList();
    for (Sighting tie : plain) {
      for (String point : tie.points()) {
        plainByPoint.computeIfAbsent(point, _ -> new ArrayList<>()).add(tie);
      }
    }
    sides = all(Sighting.Side.class).toList();
  }

  private static boolean plain(Sighting sighting) {
    return switch (sighting) {
      case Sighting.Tape _,
          Sighting.AlongOut _,
          Sighting.Bearing _,
          Sighting.Angle _,
          Sighting.Sketched _,
          Sighting.Offset _ ->
          true;
      case Sighting.Direction _, Sighting.Gnss _, Sighting.Fixed _, Sighting.Side _ -> false;
    };
  }

  /** Each direction against every later one of its set. */
  private Stream<Sighting> angles() {
    var angles = new ArrayList<Sighting>();
    for (List<Sighting.Direction> set : sets().values()) {
      for (int i = 0; i < set.size(); i++) {
        for (int j = i + 1; j < set.size(); j++) {
          Sighting.Direction a = set.get(i);
          Sighting.Direction b = set.get(j);
          if (!a.to().equals(b.to())) {
            double sd = StrictMath.hypot(a.sd(), b.sd());
            angles.add(
                new Sighting.Angle(b.entry(), a.from(), a.to(), b.to(), b.rad() - a.rad(), sd));
          }
        }
      }
    }
    return angles.stream();
  }

  /** Every sighting, in order of entry. */
  List<Sighting> sightings() {
    return sightings;
  }

  <T extends Sighting> Stream<T> all(Class<T> kind) {
    return sightings.stream().filter(kind::isInstance).map(kind::cast);
  }

  SortedMap<String, List<Sighting.Direction>> sets() {
    var sets = new TreeMap<String, List<Sighting.Direction>>();
    all(Sighting.Direction.class)
        .forEach(d -> sets.computeIfAbsent(d.set(), _ -> new ArrayList<>()).add(d));
    return sets;
  }

  /** Equations of these sightings, those of correlated readings together. */
  List<Equation> joined(List<Equation> equations) {
    return joined.of(equations);
  }

  /** About where points are said to lie. */
  Map<String, PlanPoint> approximate() {
    return approximate;
  }

  Optional<LocalGrid> local() {
    return local;
  }

  /** How the grid lies on local east and north; empty with fixes at fewer than two known points. */
  Optional<Shift> shift(Scene scene) {
    var grid = new ArrayList<PlanPoint>();
    var ground = new ArrayList<PlanPoint>();
    var points = new ArrayList<String>();
    for (Sighting.Gnss fix : fixes) {
      if (scene.knows(fix.point())) {
        grid.add(scene.known().get(fix.point()));
        ground.add(local.orElseThrow().local(fix));
        points.add(fix.point());
      }
    }
    return points.stream().distinct().count() < 2
        ? Optional.empty()
        : Optional.of(Shift.between(grid, ground));
  }

  List<Sighting.Side> sides() {
    return sides;
  }

  /** The ties that can place a point beside those of a scene. */
  List<Sighting> placing(Scene scene, String point) {
    return fixes.isEmpty()
        ? plainByPoint.getOrDefault(point, List.of())
        : placing(scene).stream().filter(tie -> tie.points().contains(point)).toList();
  }

  /** The ties that can place points beside those of a scene. */
  List<Sighting> placing(Scene scene) {
    if (fixes.isEmpty()) {
      return plain;
    }
    var placing = new ArrayList<>(plain);
    Optional<Shift> shift = shift(scene);
    if (shift.isPresent()) {
      fixes.forEach(fix -> placing.add(place(fix, shift.get())));
    } else {
      placing.addAll(distances());
    }
    return placing;
  }

  private Sighting place(Sighting.Gnss fix, Shift shift) {
    PlanPoint at = shift.back(local.orElseThrow().local(fix));
    double sd = Math.max(fix.sdEast(), fix.sdNorth());
    return new Sighting.Sketched(fix.entry(), fix.point(), at.x(), at.y(), sd);
  }

  private List<Sighting> distances() {
    var distances = new ArrayList<Sighting>();
    for (int i = 0; i < fixes.size(); i++) {
      for (int j = i + 1; j < fixes.size(); j++) {
        Sighting.Gnss a = fixes.get(i);
        Sighting.Gnss b = fixes.get(j);
        if (!a.point().equals(b.point())) {
          double metres = local.orElseThrow().local(a).distanceTo(local.orElseThrow().local(b));
          double sd =
              StrictMath.hypot(
                  Math.max(a.sdEast(), a.sdNorth()), Math.max(b.sdEast(), b.sdNorth()));
          distances.add(new Sighting.Tape(b.entry(), a.point(), b.point(), metres, sd));
        }
      }
    }
    return distances;
  }
}
