package daylight.line.survey;

import java.util.Comparator;
import java.util.List;

/**
 * One way to place some points, with how badly it fits.
 *
 * @param scene the points known with it
 * @param misfit weighted sum of squares of the ties that placed them
 * @param dof ties beyond the necessary
 */
record Candidate(Scene scene, double misfit, int dof) {

  /**
   * Twice the log of a thousand to one: a worse fit by this much is no longer a rival. Where even
   * the best fits badly, so much more is asked.
   */
  private static final double CLEAR = 2 * StrictMath.log(1000);

  /** Those no reading rules out, the best first. */
  static List<Candidate> rivals(List<Candidate> candidates) {
    List<Candidate> sorted =
        candidates.stream().sorted(Comparator.comparingDouble(Candidate::misfit)).toList();
    if (sorted.isEmpty()) {
      return sorted;
    }
    Candidate best = sorted.getFirst();
    double bound = best.misfit + CLEAR * Math.max(1, best.misfit / Math.max(1, best.dof));
    return sorted.stream().filter(c -> c.misfit <= bound).toList();
  }
}
