package daylight.line.survey;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Adjusts one plane network: datum, approximate positions, least squares, report. */
final class PlaneAdjuster {
  private final PlaneNetwork network;
  private final Ties ties;

  PlaneAdjuster(PlaneNetwork network) {
    this.network = network;
    this.ties = new Ties(network);
  }

  Adjustment adjust() {
    if (network.sightings().stream().allMatch(PlaneAdjuster::readsNothing)) {
      return new Unadjustable(Unadjustable.Reason.NOTHING_TO_ADJUST, List.of());
    }
    Optional<Datum> datum = Datum.of(ties.sightings(), network.baseLandmarks());
    if (datum.isEmpty()) {
      return new Unadjustable(Unadjustable.Reason.DATUM_MISSING, List.of());
    }
    if (datum.get().coincident(ties.sightings())) {
      return new Unadjustable(Unadjustable.Reason.BASE_COINCIDENT, List.of());
    }
    var points = new TreeSet<String>(datum.get().held().keySet());
    datum.get().northward().ifPresent(points::add);
    ties.sightings().forEach(sighting -> points.addAll(sighting.points()));
    var placement = new Placement(ties, datum.get(), points);
    return solve(placement, points);
  }

  private static boolean readsNothing(Sighting sighting) {
    return sighting instanceof Sighting.Fixed || sighting instanceof Sighting.Side;
  }

  /** Adjusts what was placed, leaving out what turns out to be open. */
  private Adjustment solve(Placement placement, SortedSet<String> points) {
    Scene scene = placement.scene();
    while (true) {
      var plan = new Plan(ties, scene);
      var missing = new Missing(ties, placement, plan, points);
      if (plan.equations().isEmpty()) {
        return new Unadjustable(missing.reason(), missing.list());
      }
      double[] start = plan.unknowns().start();
      Optional<double[]> settled =
          LeastSquares.settle(plan.equations(), start)
              .or(() -> LeastSquares.settle(Snooper.fitting(plan.equations(), start), start));
      SortedSet<String> open = settled.map(plan::open).orElseGet(() -> plan.restless(start));
      if (settled.isEmpty() && open.isEmpty()) {
        return new Unadjustable(Unadjustable.Reason.NOT_CONVERGED, missing.list());
      }
      if (open.isEmpty()) {
        return adjusted(plan, missing, settled.orElseThrow());
      }
      placement.flat().addAll(open);
      for (String point : open) {
        scene = scene.without(point);
      }
    }
  }

  private Adjustment adjusted(Plan plan, Missing missing, double[] settled) {
    Optional<Solution> solution = new Snooper(network.snooping()).adjust(plan.equations(), settled);
    if (solution.isEmpty()) {
      return new Unadjustable(Unadjustable.Reason.NOT_CONVERGED, missing.list());
    }
    double[] state = solution.get().state();
    var points = new TreeMap<>(plan.scene().known());
    points.putAll(plan.unknowns().positions(state));
    Scene result = plan.scene().with(points);
    Map<String, Adjusted.Slots> slots =
        plan.unknowns().spots().entrySet().stream()
            .collect(
                Collectors.toMap(
                    Map.Entry::getKey,
                    e -> new Adjusted.Slots(e.getValue().atX(), e.getValue().atY())));
    List<String> contradicted =
        ties.all(Sighting.Side.class)
            .filter(result::contradicts)
            .map(Sighting::entry)
            .distinct()
            .toList();
    return new Adjusted(
        points, slots, solution.get(), missing.list(), contradicted, siteTie(plan, solution.get()));
  }

  private Optional<SiteTie> siteTie(Plan plan, Solution solution) {
    int tie = plan.unknowns().tie();
    return tie < 0
        ? Optional.empty()
        : ties.local()
            .map(
                origin ->
                    new SiteTie(
                        origin.latitudeRad(),
                        origin.longitudeRad(),
                        solution.at(tie),
                        solution.at(tie + 1),
                        StrictMath.IEEEremainder(solution.at(tie + 2), 2 * Math.PI),
                        StrictMath.sqrt(solution.covariance(tie + 2, tie + 2)),
                        StrictMath.sqrt(solution.covariance(tie, tie)),
                        StrictMath.sqrt(solution.covariance(tie + 1, tie + 1))));
  }
}
