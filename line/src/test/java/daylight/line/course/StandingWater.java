package daylight.line.course;

import static daylight.line.course.Draft.metres;

import daylight.line.book.Finding;
import daylight.line.book.Priors;
import daylight.line.book.Where;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The water that stands in the low stretches of a known main: up to the lip beyond which it would
 * run off.
 */
final class StandingWater {
  /** Shorter water than this nobody notes, metres. */
  private static final double NOTED = 0.8;

  /** Shallower water neither. */
  private static final double SEEN = 0.01;

  private static final double STEP = 0.02;

  private final List<Pool> pools = new ArrayList<>();

  /** Between two distances from the entry, and how deep at most. */
  record Pool(double from, double to, double deepest) {}

  StandingWater(KnownProperty property) {
    boolean back = property.plan().is(LineSort.Way.FROM_OUTLET);
    double length = property.mainLength();
    int n = (int) (length / STEP);
    double[] up = new double[n + 1];
    double[] surface = new double[n + 1];
    for (int i = 0; i <= n; i++) {
      up[i] = property.truth(new Tools.Spot(0, i * STEP)).up();
    }
    // Water stands up to the highest bottom that lies before it on its way.
    for (int k = 0; k <= n; k++) {
      int i = back ? k : n - k;
      int next = back ? i - 1 : i + 1;
      surface[i] = k == 0 ? up[i] : Math.max(up[i], surface[next]);
    }
    for (int i = 0; i <= n; i++) {
      if (surface[i] > up[i]) {
        int from = i;
        double deepest = 0;
        while (i <= n && surface[i] > up[i]) {
          deepest = Math.max(deepest, surface[i] - up[i]);
          i++;
        }
        boolean whole = from > 0.3 / STEP && i < n - 0.3 / STEP;
        if (whole && deepest > SEEN && (i - from) * STEP > NOTED) {
          pools.add(new Pool(from * STEP, i * STEP, deepest));
        }
      }
    }
  }

  List<Pool> pools() {
    return pools;
  }

  void noteIn(Push push, Tools.Cable cable, SplitMix64 random, Errors errors) {
    for (Pool pool : pools) {
      double deep =
          pool.deepest()
              + errors.of(KnownProperty.PRIORS.sd(Priors.Kind.WATER_DEPTH, pool.deepest()));
      push.finding(
          "standing-water",
          new Where.FromTo(metres(cable.reads(pool.from())), metres(cable.reads(pool.to()))),
          Finding.Moving.PUSHING,
          deep > SEEN && random.chance(0.7) ? Map.of("depth", deep) : Map.of(),
          Map.of("still", "yes"),
          null);
    }
  }
}
