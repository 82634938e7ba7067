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

  /** How often the ties that fit a place are chosen anew. */
  private static final int ROUNDS = 3;

  /** At a mere start, ties may stray by so many times what chance allows. */
  private static final double FIRST_LOOK = 4;

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
    if (places.stream().anyMatch(Placed::settled)) {
      places.removeIf(p -> !p.settled);
    }
    // The same place, but for a tie that strays and bends it.
    List<Placed> gathered = List.copyOf(places);
    places.removeIf(p -> gathered.stream().anyMatch(q -> p.strays > 0 && bent(p, q)));
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
        .filter(at -> own.stream().noneMatch(tie -> lost(tie, point, at, scene)))
        .sorted(Comparator.comparingDouble(PlanPoint::x).thenComparingDouble(PlanPoint::y))
        .toList();
  }

  /**
   * Whether a tie has no direction at a place: a tape, bearing or angle to a point right there. Two
   * points may well lie at one place otherwise, as a locate right over its access point does.
   */
  private static boolean lost(Sighting tie, String point, PlanPoint at, Scene scene) {
    return !(tie instanceof Sighting.AlongOut)
        && tie.points().stream()
            .filter(other -> !other.equals(point))
            .flatMap(other -> scene.position(other).stream())
            .anyMatch(known -> known.distanceTo(at) < 1e-6);
  }

  /** One position, improved by the ties of the point. */
  private record Placed(
      PlanPoint at,
      double misfit,
      int equations,
      int unknowns,
      int strays,
      double worstSd,
      boolean settled) {
    Candidate candidate(String point, Scene scene) {
      return new Candidate(scene.with(point, at), misfit, equations - unknowns, strays);
    }
  }

  /**
   * A start improved by all the ties and, where some of them stray and there are enough to outvote
   * them, by those alone that fit.
   */
  private Placed settle(String point, PlanPoint start, List<Sighting> own, Scene scene) {
    var unknowns = new Unknowns(scene.with(point, start), List.of(point));
    List<Equation> all = new PlaneEquations(unknowns, ties.local()).of(own);
    boolean vote = all.size() >= unknowns.start().length + 2;
    Optional<double[]> settled = LeastSquares.settle(all, unknowns.start());
    double[] together = settled.orElseGet(unknowns::start);
    Placed whole = placed(point, unknowns, all, together, settled.isPresent(), vote);
    if (!vote || (whole.settled && whole.strays == 0)) {
      return whole;
    }
    double[] state = unknowns.start();
    for (int round = 0; round < ROUNDS; round++) {
      List<Equation> fitting = fitting(all, state, round == 0 ? FIRST_LOOK : 1);
      Optional<double[]> better =
          fitting.size() <= state.length ? Optional.empty() : LeastSquares.settle(fitting, state);
      if (better.isEmpty()) {
        return whole;
      }
      state = better.get();
    }
    Placed part = placed(point, unknowns, all, state, true, true);
    return !whole.settled || part.misfit < whole.misfit ? part : whole;
  }

  /** Equations that stray by no more than so many times what chance allows. */
  private static List<Equation> fitting(List<Equation> all, double[] state, double times) {
    double[] misfit = Linearised.of(all, state).misfit();
    double bound = times * StrictMath.sqrt(Candidate.STRAY);
    var fitting = new ArrayList<Equation>();
    for (int i = 0; i < misfit.length; i++) {
      if (Math.abs(misfit[i]) <= bound) {
        Equation equation = all.get(i);
        fitting.add(equation.in(Block.of(equation.block().sd(equation.row())), 0));
      }
    }
    return fitting;
  }

  private static Placed placed(
      String point,
      Unknowns unknowns,
      List<Equation> all,
      double[] state,
      boolean settled,
      boolean vote) {
    Linearised linearised = Linearised.of(all, state);
    double misfit = 0;
    int strays = 0;
    for (double each : linearised.misfit()) {
      boolean stray = vote && each * each > Candidate.STRAY;
      misfit += stray ? Candidate.STRAY : each * each;
      strays += stray ? 1 : 0;
    }
    return new Placed(
        unknowns.positions(state).getOrDefault(point, unknowns.spot(point).held()),
        misfit,
        all.size(),
        state.length,
        strays,
        Factored.of(linearised.design()).worstSd(),
        settled);
  }

  private static boolean bent(Placed p, Placed q) {
    return q.misfit < p.misfit && p.at.distanceTo(q.at) < 2 * Math.max(p.worstSd, q.worstSd);
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
