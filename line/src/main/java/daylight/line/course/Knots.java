package daylight.line.course;

import daylight.line.normal.Pattern;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;

/**
 * The knots of a tree: places along each limb at which the pipe has a position and a direction as
 * unknowns. There is one at each end, one at each mark, two around each bend seen, and enough
 * between them.
 *
 * <p>Distances are those of the first guess, from the root's side of the limb; a limb that turns
 * out longer carries its knots along.
 */
final class Knots {
  static final int EAST = 0;
  static final int NORTH = 1;
  static final int BEARING = 2;
  static final int UP = 3;
  static final int PITCH = 4;

  /** Distortion of depths by what lies in the ground there, in units of its prior. */
  static final int BENT = 5;

  static final int GROUND = 6;

  private static final int FLAT = 3;
  private static final int SOLID = 7;

  /** Half the length of pipe over which a bend turns, metres; common practice, no source. */
  static final double HALF_BEND = 0.15;

  /** Knots are no nearer to each other than this, metres. */
  private static final double NEAREST = 0.05;

  private final Layout layout;
  private final double[][] distances;
  private final int[] first;
  private final Pattern pattern;

  /** Something on a limb that wants a knot of its own. */
  record Wanted(int limb, double t0) {}

  /**
   * Lays out the knots.
   *
   * @param marks where something is known from above
   * @param bends where a bend was seen
   * @param furthest apart that two knots may be, metres
   */
  Knots(Layout layout, List<Wanted> marks, List<Wanted> bends, double furthest) {
    this.layout = layout;
    List<Tree.Limb> limbs = layout.tree().limbs();
    distances = new double[limbs.size()][];
    first = new int[limbs.size()];
    List<Integer> parents = new ArrayList<>();
    for (int limb = 0; limb < limbs.size(); limb++) {
      distances[limb] = distances(layout.length0(limb), of(limb, marks), of(limb, bends), furthest);
      first[limb] = parents.size();
      parents.add(joinsAt(limb, limbs.get(limb).parent()));
      for (int i = 1; i < distances[limb].length; i++) {
        parents.add(first[limb] + i - 1);
      }
    }
    int[] parentOf = parents.stream().mapToInt(p -> p).toArray();
    int[] sizes = new int[parentOf.length];
    java.util.Arrays.fill(sizes, layout.heights() ? SOLID : FLAT);
    pattern = new Pattern(layout.shared(), parentOf, sizes);
  }

  /** The knot a limb's first knot hangs on: its parent's last, or the root's. */
  private int joinsAt(int limb, int parent) {
    if (parent >= 0) {
      return last(parent);
    }
    return limb == 0 ? -1 : first[0];
  }

  private static List<Double> of(int limb, List<Wanted> wanted) {
    return wanted.stream().filter(w -> w.limb() == limb).map(Wanted::t0).sorted().toList();
  }

  private static double[] distances(
      double length, List<Double> marks, List<Double> bends, double furthest) {
    TreeSet<Double> fixed = new TreeSet<>(List.of(0.0, length));
    List<double[]> turning = turning(length, bends);
    for (double[] stretch : turning) {
      put(fixed, stretch[0]);
      put(fixed, stretch[1]);
    }
    for (double mark : marks) {
      double t = Math.clamp(mark, 0, length);
      if (turning.stream().noneMatch(s -> t > s[0] && t < s[1])) {
        put(fixed, t);
      }
    }
    List<Double> all = new ArrayList<>();
    double before = 0;
    for (double t : fixed) {
      boolean bent = turning.stream().anyMatch(s -> s[0] < t && t <= s[1]);
      int parts = bent ? 1 : Math.max(1, (int) Math.ceil((t - before) / furthest));
      for (int i = 1; i < parts; i++) {
        all.add(before + (t - before) * i / parts);
      }
      all.add(t);
      before = t;
    }
    return all.stream().mapToDouble(t -> t).toArray();
  }

  private static void put(NavigableSet<Double> fixed, double t) {
    Double below = fixed.floor(t);
    Double above = fixed.ceiling(t);
    if ((below == null || t - below >= NEAREST) && (above == null || above - t >= NEAREST)) {
      fixed.add(t);
    }
  }

  /** The stretches over which the bends turn: apart from each other and within the limb. */
  private static List<double[]> turning(double length, List<Double> bends) {
    List<double[]> stretches = new ArrayList<>();
    for (int i = 0; i < bends.size(); i++) {
      double at = Math.clamp(bends.get(i), 0, length);
      double from = Math.max(0, at - HALF_BEND);
      double to = Math.min(length, at + HALF_BEND);
      double[] last = stretches.isEmpty() ? null : stretches.getLast();
      if (last != null && from < last[1] + NEAREST) {
        if (to - last[1] < 2 * NEAREST) {
          continue;
        }
        from = last[1];
      }
      stretches.add(new double[] {from, to});
    }
    return stretches;
  }

  Pattern pattern() {
    return pattern;
  }

  /** How many knots a limb has, at least two. */
  int count(int limb) {
    return distances[limb].length;
  }

  /** The distance of the i-th knot of a limb, metres of the first guess. */
  double t0(int limb, int i) {
    return distances[limb][i];
  }

  /** The block of the i-th knot of a limb. */
  int block(int limb, int i) {
    return first[limb] + i;
  }

  int last(int limb) {
    return first[limb] + distances[limb].length - 1;
  }

  /** The index of one of a knot's unknowns. */
  int unknown(int limb, int i, int which) {
    return pattern.first(block(limb, i)) + which;
  }

  /** The knot nearest to a distance of the first guess. */
  int nearest(int limb, double t0) {
    int end = segment(limb, t0);
    double[] t = distances[limb];
    return Math.abs(t[end] - t0) < Math.abs(t[end - 1] - t0) ? end : end - 1;
  }

  /** The segment that a distance of the first guess is in, by the index of the knot at its end. */
  int segment(int limb, double t0) {
    double[] t = distances[limb];
    int low = 1;
    int high = t.length - 1;
    while (low < high) {
      int middle = (low + high) / 2;
      if (t0 <= t[middle]) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low;
  }

  Layout layout() {
    return layout;
  }
}
