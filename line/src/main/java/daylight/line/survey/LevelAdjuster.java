package daylight.line.survey;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/** Adjusts one level network. Every equation is linear; heights need no approximate values. */
final class LevelAdjuster {
  private final LevelNetwork network;
  private final List<LevelSighting> sightings;
  private final SortedMap<String, Double> held = new TreeMap<>();
  private final SortedSet<String> reached = new TreeSet<>();
  private final SortedSet<String> setups = new TreeSet<>();

  LevelAdjuster(LevelNetwork network) {
    this.network = network;
    this.sightings =
        network.sightings().stream()
            .sorted(Comparator.comparing(LevelSighting::entry).thenComparing(Object::toString))
            .toList();
  }

  LevelAdjustment adjust() {
    var points = new TreeSet<String>();
    sightings.forEach(sighting -> points.addAll(sighting.points()));
    if (points.isEmpty()) {
      return new LevelAdjustment.Unadjustable(LevelAdjustment.Reason.NOTHING_TO_ADJUST, List.of());
    }
    String datum = network.datumPoint() == null ? points.first() : network.datumPoint();
    hold(datum);
    if (reached.isEmpty() && !points.contains(datum)) {
      return new LevelAdjustment.Unadjustable(LevelAdjustment.Reason.DATUM_MISSING, List.of(datum));
    }
    reach();
    return solve(points);
  }

  /** Benchmarks and measured heights are the datum; without any, one point is zero. */
  private void hold(String datum) {
    for (LevelSighting sighting : sightings) {
      switch (sighting) {
        case LevelSighting.Benchmark b -> {
          held.put(b.point(), b.metres());
          reached.add(b.point());
        }
        case LevelSighting.Height h -> reached.add(h.point());
        case LevelSighting.Rise _, LevelSighting.Rod _ -> {}
      }
    }
    if (reached.isEmpty() && sightings.stream().anyMatch(s -> s.points().contains(datum))) {
      held.put(datum, 0.0);
      reached.add(datum);
    }
  }

  /** Spreads from the datum along rises and set-ups until nothing more is reached. */
  private void reach() {
    int before;
    do {
      before = reached.size() + setups.size();
      for (LevelSighting sighting : sightings) {
        if (sighting instanceof LevelSighting.Rise(_, String from, String to, _, _)
            && (reached.contains(from) || reached.contains(to))) {
          reached.add(from);
          reached.add(to);
        } else if (sighting instanceof LevelSighting.Rod(_, String setup, String point, _, _)
            && (reached.contains(point) || setups.contains(setup))) {
          reached.add(point);
          setups.add(setup);
        }
      }
    } while (reached.size() + setups.size() > before);
  }

  private LevelAdjustment solve(SortedSet<String> points) {
    Map<String, Integer> unknowns = new HashMap<>();
    reached.stream()
        .filter(p -> !held.containsKey(p))
        .forEach(p -> unknowns.put(p, unknowns.size()));
    Map<String, Integer> ofSetup = new HashMap<>();
    setups.forEach(s -> ofSetup.put(s, unknowns.size() + ofSetup.size()));
    var equations = new ArrayList<Equation>();
    for (LevelSighting sighting : sightings) {
      if (reached.containsAll(sighting.points())) {
        equation(sighting, unknowns, ofSetup, equations);
      }
    }
    Solution solution =
        new Snooper(network.snooping())
            .adjust(equations, new double[unknowns.size() + ofSetup.size()])
            .orElseThrow(() -> new IllegalArgumentException("linear equations must settle"));
    var heights = new TreeMap<>(held);
    unknowns.forEach((point, unknown) -> heights.put(point, solution.at(unknown)));
    return new LevelAdjusted(
        heights,
        unknowns,
        ofSetup,
        solution,
        points.stream().filter(p -> !reached.contains(p)).toList());
  }

  private void equation(
      LevelSighting sighting,
      Map<String, Integer> unknowns,
      Map<String, Integer> ofSetup,
      List<Equation> into) {
    switch (sighting) {
      case LevelSighting.Benchmark _ -> {}
      case LevelSighting.Height h -> {
        int at = unknowns.getOrDefault(h.point(), -1);
        double zero = held.getOrDefault(h.point(), 0.0);
        into.add(
            new Equation(h.entry(), Quantity.HEIGHT, h.metres(), h.sd(), sum(at, 1, -1, 0, zero)));
      }
      case LevelSighting.Rise r -> {
        int from = unknowns.getOrDefault(r.from(), -1);
        int to = unknowns.getOrDefault(r.to(), -1);
        double rise = held.getOrDefault(r.to(), 0.0) - held.getOrDefault(r.from(), 0.0);
        into.add(
            new Equation(r.entry(), Quantity.RISE, r.metres(), r.sd(), sum(to, 1, from, -1, rise)));
      }
      case LevelSighting.Rod r -> {
        Integer setup = ofSetup.get(r.setup());
        int point = unknowns.getOrDefault(r.point(), -1);
        double zero = -held.getOrDefault(r.point(), 0.0);
        into.add(
            new Equation(
                r.entry(),
                Quantity.ROD,
                r.reading(),
                r.sd(),
                sum(setup == null ? -1 : setup, 1, point, -1, zero)));
      }
    }
  }

  /** constant + p·unknown a + q·unknown b; −1 for a held one, which is in the constant. */
  private static Equation.Model sum(int a, double p, int b, double q, double constant) {
    return (state, gradient) -> {
      double value = constant;
      if (a >= 0) {
        value += p * state[a];
        gradient[a] = p;
      }
      if (b >= 0) {
        value += q * state[b];
        gradient[b] = q;
      }
      return value;
    };
  }
}
