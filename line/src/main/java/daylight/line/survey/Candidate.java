package daylight.line.survey;

import java.util.Comparator;
import java.util.List;

/**
 * One way to place some points, with how badly it fits.
 *
 * @param scene the points known with it
 * @param misfit weighted sum of squares of the ties that placed them
 * @param dof ties beyond the necessary
 * @param strays ties that do not fit it at all; each counts {@link #STRAY} in the misfit
 */
record Candidate(Scene scene, double misfit, int dof, int strays) {

  /** A square that is beyond chance: more than this says only that the reading is wrong. */
  static final double STRAY = 25;

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
    double fitting = best.misfit - STRAY * best.strays;
    double scale = Math.max(1, fitting / Math.max(1, best.dof - best.strays));
    double bound = best.misfit + CLEAR * scale;
    return sorted.stream().filter(c -> c.misfit <= bound).toList();
  }
}
