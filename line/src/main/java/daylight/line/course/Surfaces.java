package daylight.line.course;

import daylight.line.book.Priors;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Which surface lies above each knot: that of the nearest mark along the pipe. */
final class Surfaces {
  /** Surfaces that are made flat: a floor, a slab, a pavement. */
  private static final Set<String> FLAT = Set.of("slab", "floor", "pavement", "drive", "paving");

  private final String[] names;

  Surfaces(Knots knots, List<Pinned> pinned) {
    int n = knots.pattern().blocks();
    String[] found = new String[n];
    double[] away = new double[n];
    Arrays.fill(found, "");
    Arrays.fill(away, Double.POSITIVE_INFINITY);
    for (Pinned pin : pinned) {
      String surface = pin.mark().surface();
      int block = knots.block(pin.limb(), pin.knot());
      if (surface != null && away[block] > 0) {
        found[block] = surface;
        away[block] = 0;
      }
    }
    double[] gaps = gaps(knots);
    for (int block = n - 1; block > 0; block--) {
      take(found, away, knots.pattern().parent(block), block, gaps[block]);
    }
    for (int block = 1; block < n; block++) {
      take(found, away, block, knots.pattern().parent(block), gaps[block]);
    }
    names = found;
  }

  private static void take(String[] found, double[] away, int to, int from, double gap) {
    if (to >= 0 && from >= 0 && away[from] + gap < away[to]) {
      away[to] = away[from] + gap;
      found[to] = found[from];
    }
  }

  /** How far each knot is from its parent along the pipe. */
  private static double[] gaps(Knots knots) {
    double[] gaps = new double[knots.pattern().blocks()];
    for (int limb = 0; limb < knots.layout().tree().limbs().size(); limb++) {
      for (int i = 1; i < knots.count(limb); i++) {
        gaps[knots.block(limb, i)] = knots.t0(limb, i) - knots.t0(limb, i - 1);
      }
    }
    return gaps;
  }

  /** The surface above a knot; empty where none was ever named. */
  String of(int block) {
    return names[block];
  }

  /** The name of the unknown that is the height of a surface. */
  static String plane(String surface) {
    return "surface/" + surface;
  }

  /** How far the ground at one spot may be from the plane of its surface. */
  static Priors.Kind unevenness(String surface) {
    return FLAT.contains(surface.toLowerCase(Locale.ROOT))
        ? Priors.Kind.GROUND_SLAB
        : Priors.Kind.GROUND_YARD;
  }
}
