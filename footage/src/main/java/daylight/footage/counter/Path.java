package daylight.footage.counter;

import java.util.ArrayList;
import java.util.List;

/**
 * The most likely path through readings. Readings that stay the same are one stay; each stay is
 * either kept or passed over at a price that grows with its length, and from one kept stay to the
 * next no cable is pushed faster than a person can without a leap being paid for. A smudged digit
 * is cheaper to pass over than two leaps; a counter that was zeroed goes on from there, so that one
 * leap is cheaper than passing over all that follows.
 */
final class Path {
  /** Nobody pushes faster, metres a second; common practice, no source. */
  static final double FASTEST = 2.5;

  /** Seldom faster than this, metres a second; common practice, no source. */
  private static final double USUAL = 1;

  private static final double LEAP = 9;
  private static final double DEAREST_STAY = 10;
  private static final int LOOK_BACK = 60;

  /** So many frames are brief. */
  private static final int BRIEF = 3;

  /** So many steps beyond both neighbours are a spike. */
  private static final long SPIKE = 2;

  /** A stretch of frames with one reading. */
  record Stay(long steps, int first, int last, int count) {}

  private Path() {}

  /** The stays that are kept, in order. */
  static List<Stay> through(Series series, double[] seconds) {
    List<Stay> stays = stays(series);
    int n = stays.size();
    if (n == 0) {
      return List.of();
    }
    double[] best = new double[n];
    int[] from = new int[n];
    double[] passed = new double[n + 1];
    for (int i = 0; i < n; i++) {
      passed[i + 1] = passed[i] + Math.min(DEAREST_STAY, stays.get(i).count());
    }
    for (int i = 0; i < n; i++) {
      best[i] = passed[i];
      from[i] = -1;
      for (int j = Math.max(0, i - LOOK_BACK); j < i; j++) {
        double price =
            best[j]
                + passed[i]
                - passed[j + 1]
                + leap(stays.get(j), stays.get(i), series.metresPerStep(), seconds)
                + (j < i - 1
                    ? hurry(stays.get(j), stays.get(i), series.metresPerStep(), seconds)
                    : 0);
        if (price < best[i]) {
          best[i] = price;
          from[i] = j;
        }
      }
    }
    int last = n - 1;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < n; i++) {
      double price = best[i] + passed[n] - passed[i + 1];
      if (price <= least) {
        least = price;
        last = i;
      }
    }
    List<Stay> kept = new ArrayList<>();
    for (int i = last; i >= 0; i = from[i]) {
      kept.addFirst(stays.get(i));
    }
    return unspiked(kept, series.metresPerStep(), seconds);
  }

  /** Without brief readings that go there and back: a cable cannot turn round twice so quickly. */
  private static List<Stay> unspiked(List<Stay> kept, double metresPerStep, double[] seconds) {
    List<Stay> left = new ArrayList<>(kept);
    while (true) {
      int worst = -1;
      long most = SPIKE - 1;
      for (int i = 1; i < left.size() - 1; i++) {
        Stay a = left.get(i - 1);
        Stay stay = left.get(i);
        Stay b = left.get(i + 1);
        long above = stay.steps() - Math.max(a.steps(), b.steps());
        long over = Math.max(above, Math.min(a.steps(), b.steps()) - stay.steps());
        boolean brief = stay.count() <= BRIEF && !leaps(a, b, metresPerStep, seconds);
        if (brief && over > most) {
          most = over;
          worst = i;
        }
      }
      if (worst < 0) {
        return left;
      }
      left.remove(worst);
    }
  }

  /** Whether from one stay to the next no cable can have run as the counter says. */
  static boolean leaps(Stay a, Stay b, double metresPerStep, double[] seconds) {
    double most = FASTEST * (seconds[b.first()] - seconds[a.last()]) / metresPerStep + 1;
    return Math.abs(b.steps() - a.steps()) > most;
  }

  private static double leap(Stay a, Stay b, double metresPerStep, double[] seconds) {
    return leaps(a, b, metresPerStep, seconds) ? LEAP : 0;
  }

  /** What a run costs that is faster than usual where readings between are passed over. */
  private static double hurry(Stay a, Stay b, double metresPerStep, double[] seconds) {
    double metres = (Math.abs(b.steps() - a.steps()) - 1) * metresPerStep;
    double speed = metres / Math.max(1e-9, seconds[b.first()] - seconds[a.last()]);
    return LEAP * Math.clamp((speed - USUAL) / (FASTEST - USUAL), 0, 1);
  }

  private static List<Stay> stays(Series series) {
    List<Stay> stays = new ArrayList<>();
    for (int i = 0; i < series.frames(); i++) {
      if (series.at(i) == Series.NONE) {
        continue;
      }
      if (!stays.isEmpty() && stays.getLast().steps() == series.at(i)) {
        Stay last = stays.removeLast();
        stays.add(new Stay(series.at(i), last.first(), i, last.count() + 1));
      } else {
        stays.add(new Stay(series.at(i), i, i, 1));
      }
    }
    return stays;
  }
}
