package daylight.line.survey;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ejml.data.DMatrixRMaj;

/** Positions set down by hand as if a survey had found them, to try drawings on. */
public final class Placed {
  private Placed() {}

  /** Every point with one standard uncertainty in all directions, in metres; 0 for a held point. */
  public static Adjusted survey(
      SortedMap<String, PlanPoint> points, Map<String, Double> sds, Optional<SiteTie> tie) {
    Map<String, Adjusted.Slots> slots = new TreeMap<>();
    List<String> free = points.keySet().stream().filter(sds::containsKey).toList();
    DMatrixRMaj gain = new DMatrixRMaj(2 * free.size(), 2 * free.size());
    for (int i = 0; i < free.size(); i++) {
      slots.put(free.get(i), new Adjusted.Slots(2 * i, 2 * i + 1));
      double sd = sds.getOrDefault(free.get(i), 0.0);
      gain.set(2 * i, 2 * i, sd);
      gain.set(2 * i + 1, 2 * i + 1, sd);
    }
    Solution solution =
        new Solution(
            new double[2 * free.size()], List.of(), gain, new Fit(List.of(), 0, 0, List.of()));
    return new Adjusted(points, slots, solution, List.of(), tie);
  }
}
