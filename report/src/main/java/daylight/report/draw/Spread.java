package daylight.report.draw;

import java.util.ArrayList;
import java.util.List;

/**
 * Lays things out in a row without overlap and in order, each as near to where it belongs as the
 * others allow: least squares by pooling neighbours that violate the order (Ayer and others, An
 * empirical distribution function for sampling with incomplete information, Annals of Mathematical
 * Statistics 26, 1955; from memory).
 */
final class Spread {
  private Spread() {}

  private record Pool(double sum, int count) {
    double mean() {
      return sum / count;
    }

    Pool with(Pool other) {
      return new Pool(sum + other.sum, count + other.count);
    }
  }

  /**
   * Where the middles go. Where there is not room enough, the last ones stand beyond the right end.
   *
   * @param wanted where they belong, by rising distance
   * @param widths of each, the gap to its neighbour included
   */
  static List<Double> middles(List<Double> wanted, List<Double> widths, double left, double right) {
    List<Double> offsets = new ArrayList<>();
    double offset = 0;
    for (int i = 0; i < widths.size(); i++) {
      offset += i == 0 ? 0 : (widths.get(i - 1) + widths.get(i)) / 2;
      offsets.add(offset);
    }
    if (wanted.isEmpty()) {
      return List.of();
    }
    double least = left + widths.getFirst() / 2;
    double most = Math.max(least, right - widths.getLast() / 2 - offset);
    List<Double> middles = new ArrayList<>();
    for (Pool pool : pools(wanted, offsets)) {
      for (int i = 0; i < pool.count(); i++) {
        middles.add(Math.clamp(pool.mean(), least, most) + offsets.get(middles.size()));
      }
    }
    return middles;
  }

  private static List<Pool> pools(List<Double> wanted, List<Double> offsets) {
    List<Pool> pools = new ArrayList<>();
    for (int i = 0; i < wanted.size(); i++) {
      Pool next = new Pool(wanted.get(i) - offsets.get(i), 1);
      while (!pools.isEmpty() && pools.getLast().mean() > next.mean()) {
        next = pools.removeLast().with(next);
      }
      pools.add(next);
    }
    return pools;
  }
}
