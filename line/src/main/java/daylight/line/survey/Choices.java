package daylight.line.survey;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** The positions that the ties of one point to known points allow. */
final class Choices {
  /** Positions nearer than this, metres, are one. */
  private static final double SAME = 1e-3;

  /** A direction known worse than this, metres, is not known. */
  private static final double HOPELESS = 1e3;

  private final Ties ties;

  Choices(Ties ties) {
    this.ties = ties;
  }

  /**
   * What is known of a point.
   *
   * @param rivals the positions no reading rules out, the best first
   * @param flat whether its ties meet so flat that no position can be told from its neighbours
   */
  record Choice(List<Candidate> rivals, boolean flat) {}

  Choice of(String point, Scene scene) {
    List<Sighting> own =
        ties.placing(scene, point).stream().filter(tie -> scene.covers(tie, point)).toList();
    var places = new ArrayList<Placed>();
    for (PlanPoint start : starts(point, own, scene)) {
      Placed placed = settle(point, start, own, scene);
      if (placed.equations >= placed.unknowns
          && places.stream().noneMatch(p -> p.at.distanceTo(placed.at) < SAME)) {
        places.add(placed);
      }
    }
    List<Candidate> candidates = places.stream().map(p -> p.candidate(point, scene)).toList();
    List<Candidate> rivals = rivals(candidates, Set.of(point));
    // Only among rivals: a place that is ruled out says nothing of how ties meet.
    List<Placed> open =
        places.stream()
            .filter(p -> rivals.stream().anyMatch(r -> p.at.equals(r.scene().known().get(point))))
            .toList();
    boolean flat = open.stream().anyMatch(p -> flat(p, open));
    return new Choice(flat ? List.of() : rivals, flat);
  }

  private static List<PlanPoint> starts(String point, List<Sighting> own, Scene scene) {
    var loci = new ArrayList<Locus>();
    own.forEach(tie -> loci.addAll(Loci.of(tie, point, scene)));
    Datum datum = scene.datum();
    Optional<PlanPoint> origin =
        datum.northward().filter(point::equals).isPresent()
            ? datum.origin().flatMap(scene::position)
            : Optional.empty();
    origin.ifPresent(o -> loci.add(new Locus.Line(o, 0)));
    return Locus.meetings(loci).stream()
        .filter(at -> origin.isEmpty() || at.y() > origin.get().y())
        .filter(at -> scene.known().values().stream().noneMatch(k -> k.distanceTo(at) < 1e-6))
        .sorted(Comparator.comparingDouble(PlanPoint::x).thenComparingDouble(PlanPoint::y))
        .toList();
  }

  /** One position, improved by all the ties of the point. */
  private record Placed(PlanPoint at, double misfit, int equations, int unknowns, double worstSd) {
    Candidate candidate(String point, Scene scene) {
      return new Candidate(scene.with(point, at), misfit, equations - unknowns);
    }
  }

  private Placed settle(String point, PlanPoint start, List<Sighting> own, Scene scene) {
    Scene begun = scene.with(point, start);
    var unknowns = new Unknowns(begun, List.of(point));
    List<Equation> equations = new PlaneEquations(unknowns, ties.local()).of(own);
    Optional<double[]> settled = LeastSquares.settle(equations, unknowns.start());
    double[] state = settled.orElseGet(unknowns::start);
    Linearised linearised = Linearised.of(equations, state);
    PlanPoint at = unknowns.positions(state).getOrDefault(point, start);
    return new Placed(
        at,
        linearised.sumOfSquares(),
        equations.size(),
        state.length,
        Factored.of(linearised.design()).worstSd());
  }

  /** Two positions, each within the uncertainty of the other, are where circles all but touch. */
  private static boolean flat(Placed placed, List<Placed> places) {
    return placed.worstSd > HOPELESS
        || places.stream()
            .anyMatch(
                p ->
                    !p.equals(placed)
                        && p.at.distanceTo(placed.at) < 2 * Math.max(p.worstSd, placed.worstSd));
  }

  /**
   * Those that no reading and no side hint rules out; of these the nearest to where the points are
   * said to lie, if that is said.
   *
   * @param points those that are being placed
   */
  List<Candidate> rivals(List<Candidate> candidates, Set<String> points) {
    List<Candidate> rivals = Candidate.rivals(onTheirSide(candidates, points));
    if (rivals.size() < 2 || ties.approximate().isEmpty()) {
      return rivals;
    }
    double nearest = rivals.stream().mapToDouble(this::off).min().orElse(0);
    return rivals.stream().filter(c -> off(c) <= nearest + SAME).toList();
  }

  /** How far the points of a candidate lie from where they are said to, metres. */
  private double off(Candidate candidate) {
    double sum = 0;
    for (var said : new TreeMap<>(ties.approximate()).entrySet()) {
      PlanPoint at = candidate.scene().known().get(said.getKey());
      sum += at == null ? 0 : at.distanceTo(said.getValue());
    }
    return sum;
  }

  /**
   * Those that no side hint about the points being placed contradicts; all of them where the hints
   * contradict all.
   */
  List<Candidate> onTheirSide(List<Candidate> candidates, Set<String> points) {
    List<Sighting.Side> sides =
        ties.sides().stream().filter(s -> s.points().stream().anyMatch(points::contains)).toList();
    List<Candidate> right =
        candidates.stream().filter(c -> sides.stream().noneMatch(c.scene()::contradicts)).toList();
    return right.isEmpty() ? candidates : right;
  }
}
