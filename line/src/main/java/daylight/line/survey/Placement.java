package daylight.line.survey;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Approximate positions, built outward from the datum: first every point whose ties to known points
 * leave one position, then groups of points that only together, or only by their redundancy, decide
 * between mirror positions. What stays undecided is left with all its candidates.
 */
final class Placement {
  /** At most so many ways to place a group are followed at a time. */
  private static final int WAYS = 64;

  /** Candidates nearer than this, metres, are one place. */
  private static final double SAME_PLACE = 0.01;

  private final Ties ties;
  private final Choices choices;
  private final SortedSet<String> points;
  private final SortedMap<String, List<PlanPoint>> mirrors = new TreeMap<>();
  private final Set<String> flat = new HashSet<>();
  private Scene scene;

  Placement(Ties ties, Datum datum, SortedSet<String> points) {
    this.ties = ties;
    this.choices = new Choices(ties);
    this.points = points;
    this.scene = new Scene(datum, datum.held());
    place();
    if (startFromApproximate()) {
      place();
    }
  }

  private void place() {
    boolean more = true;
    while (more) {
      placeSingly();
      more = placeGroups();
    }
  }

  /** Whether points that no tie could place take a start from where they are said to lie. */
  private boolean startFromApproximate() {
    Map<String, PlanPoint> starts = new TreeMap<>();
    open().stream()
        .filter(ties.approximate()::containsKey)
        .forEach(point -> starts.put(point, ties.approximate().get(point)));
    Optional<String> north = scene.datum().northward();
    north.ifPresent(starts::remove);
    scene = scene.with(starts);
    flat.removeAll(starts.keySet());
    return !starts.isEmpty();
  }

  Scene scene() {
    return scene;
  }

  /** Points with more than one position, and these. */
  SortedMap<String, List<PlanPoint>> mirrors() {
    return mirrors;
  }

  /** Points whose ties meet too flat. */
  Set<String> flat() {
    return flat;
  }

  private List<String> open() {
    return points.stream().filter(p -> !scene.knows(p) && !mirrors.containsKey(p)).toList();
  }

  private void placeSingly() {
    boolean more = true;
    while (more) {
      more = false;
      for (String point : open()) {
        Choices.Choice choice = choices.of(point, scene);
        flat.remove(point);
        if (choice.flat()) {
          flat.add(point);
        }
        if (choice.rivals().size() == 1) {
          scene = choice.rivals().getFirst().scene();
          more = true;
        }
      }
    }
  }

  /** Whether a group brought a point that others can hang on. */
  private boolean placeGroups() {
    for (Set<String> group : groups()) {
      if (place(group)) {
        return true;
      }
    }
    return false;
  }

  /** The open points, together where a tie joins them. */
  private List<Set<String>> groups() {
    List<Set<String>> groups = new ArrayList<>();
    List<String> open = open();
    for (String point : open) {
      groups.add(new LinkedHashSet<>(Set.of(point)));
    }
    for (Sighting tie : ties.placing(scene)) {
      List<String> joined = tie.points().stream().filter(open::contains).toList();
      Set<String> all = new TreeSet<>();
      groups.stream().filter(g -> joined.stream().anyMatch(g::contains)).forEach(all::addAll);
      if (!all.isEmpty()) {
        groups.removeIf(all::containsAll);
        groups.add(all);
      }
    }
    return groups.stream()
        .sorted(Comparator.comparing((Set<String> g) -> g.iterator().next()))
        .toList();
  }

  private boolean place(Set<String> group) {
    List<Candidate> ways = ways(group);
    int most = ways.stream().mapToInt(way -> way.scene().known().size()).max().orElse(0);
    if (most == scene.known().size()) {
      return false;
    }
    List<Candidate> whole =
        ways.stream()
            .filter(way -> way.scene().known().size() == most)
            .map(way -> settled(way, group))
            .toList();
    List<Candidate> rivals = choices.rivals(whole, group);
    boolean placed = false;
    for (String point : group) {
      List<PlanPoint> places = places(point, rivals);
      if (places.size() == 1) {
        scene = scene.with(point, places.getFirst());
        placed = true;
      } else if (places.size() > 1) {
        mirrors.put(point, places);
      }
    }
    return placed;
  }

  private static List<PlanPoint> places(String point, List<Candidate> rivals) {
    var places = new ArrayList<PlanPoint>();
    for (Candidate rival : rivals) {
      PlanPoint at = rival.scene().known().get(point);
      if (at != null && places.stream().noneMatch(p -> p.distanceTo(at) < SAME_PLACE)) {
        places.add(at);
      }
    }
    places.sort(Comparator.comparingDouble(PlanPoint::x).thenComparingDouble(PlanPoint::y));
    return places;
  }

  /** All ways to place a group point by point, the best few kept. */
  private List<Candidate> ways(Set<String> group) {
    List<Candidate> ways = List.of(new Candidate(scene, 0, 0, 0));
    while (true) {
      var further = new ArrayList<Candidate>();
      boolean grown = false;
      for (Candidate way : ways) {
        List<Candidate> next = grow(way, group);
        grown |= !next.isEmpty();
        further.addAll(next.isEmpty() ? List.of(way) : next);
      }
      if (!grown) {
        return ways;
      }
      ways =
          choices.onTheirSide(further, group).stream()
              .sorted(Comparator.comparingDouble(Candidate::misfit))
              .limit(WAYS)
              .toList();
    }
  }

  /** The ways on from one way: the point with the fewest rivals, the first by label, is next. */
  private List<Candidate> grow(Candidate way, Set<String> group) {
    List<Candidate> fewest = List.of();
    for (String point : new TreeSet<>(group)) {
      if (way.scene().knows(point)) {
        continue;
      }
      List<Candidate> rivals = choices.of(point, way.scene()).rivals();
      if (!rivals.isEmpty() && (fewest.isEmpty() || rivals.size() < fewest.size())) {
        fewest = rivals;
      }
    }
    return fewest.stream()
        .map(
            c ->
                new Candidate(
                    c.scene(),
                    way.misfit() + c.misfit(),
                    way.dof() + c.dof(),
                    way.strays() + c.strays()))
        .toList();
  }

  /** One way, all its points improved together. */
  private Candidate settled(Candidate way, Set<String> group) {
    List<String> free = group.stream().filter(way.scene()::knows).sorted().toList();
    List<Sighting> among =
        ties.placing(scene).stream()
            .filter(tie -> tie.points().stream().anyMatch(free::contains))
            .filter(tie -> way.scene().covers(tie, ""))
            .toList();
    var unknowns = new Unknowns(way.scene(), free);
    List<Equation> equations = new PlaneEquations(unknowns, ties.local()).of(among);
    Optional<double[]> state = LeastSquares.settle(equations, unknowns.start());
    if (state.isEmpty()) {
      return way;
    }
    Map<String, PlanPoint> at = unknowns.positions(state.get());
    double misfit = Linearised.of(equations, state.get()).sumOfSquares();
    return new Candidate(way.scene().with(at), misfit, way.dof(), 0);
  }
}
