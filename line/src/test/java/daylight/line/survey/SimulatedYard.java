package daylight.line.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.UnaryOperator;

/**
 * An invented yard: five or six landmarks round a house and some spots, each spot taped from
 * several landmarks and some set off from a wall, with errors drawn from the standard deviations
 * stated.
 */
final class SimulatedYard {
  private static final double SD = 0.02;
  private final SplitMix64 random;
  private final Map<String, PlanPoint> truth = new TreeMap<>();
  private final List<Sighting> sightings = new ArrayList<>();

  SimulatedYard(long seed) {
    this(seed, UnaryOperator.identity(), false);
  }

  /**
   * The yard of a seed, its truth moved, turned or mirrored before it is measured; the errors of
   * the readings stay the same.
   *
   * @param mirrored whether the move swaps left and right
   */
  SimulatedYard(long seed, UnaryOperator<PlanPoint> move, boolean mirrored) {
    random = new SplitMix64(seed);
    double[][] corners = {{0, 0}, {0, 12}, {15, 13}, {14, -1}, {-9, 5}, {6, -11}};
    int landmarks = 5 + random.below(2);
    for (int i = 0; i < landmarks; i++) {
      place("M" + i, corners[i][0] + random.between(-1, 1), corners[i][1] + random.between(-1, 1));
    }
    int spots = 2 + random.below(4);
    for (int i = 0; i < spots; i++) {
      place("S" + i, random.between(-15, 20), random.between(-15, 20));
    }
    truth.replaceAll((_, at) -> move.apply(at));
    for (int i = 0; i < 2; i++) {
      PlanPoint at = at("M" + i);
      sightings.add(new Sighting.Fixed("M" + i, at.x(), at.y()));
    }
    for (int i = 2; i < landmarks; i++) {
      tapes("M" + i, i);
      wall("M" + i, mirrored);
    }
    for (int i = 0; i < spots; i++) {
      tapes("S" + i, landmarks);
      if (random.uniform() < 0.5) {
        wall("S" + i, mirrored);
      }
    }
  }

  private void place(String point, double x, double y) {
    truth.put(point, new PlanPoint(x, y));
  }

  private PlanPoint at(String point) {
    return truth.getOrDefault(point, new PlanPoint(0, 0));
  }

  /** To a point from the first so many landmarks. */
  private void tapes(String point, int landmarks) {
    for (int i = 0; i < landmarks; i++) {
      String from = "M" + i;
      double metres = at(from).distanceTo(at(point)) + SD * random.normal();
      sightings.add(Networks.tape(from, point, metres, SD));
    }
  }

  private void wall(String point, boolean mirrored) {
    PlanPoint from = at("M0");
    double turn = from.bearingTo(at(point)) - from.bearingTo(at("M1"));
    double reach = from.distanceTo(at(point));
    double along = reach * StrictMath.cos(turn) + SD * random.normal();
    double error = SD * random.normal();
    double out = -reach * StrictMath.sin(turn) + (mirrored ? -error : error);
    sightings.add(new Sighting.AlongOut("wall " + point, "M0", "M1", point, along, out, SD, SD));
  }

  Map<String, PlanPoint> truth() {
    return truth;
  }

  List<Sighting> sightings() {
    return List.copyOf(sightings);
  }

  Adjusted adjusted() {
    return Networks.adjusted(sightings());
  }
}
