package daylight.line.course;

import java.util.ArrayList;
import java.util.List;

/**
 * The generator of G. Steele, D. Lea and C. Flood, Fast splittable pseudorandom number generators,
 * 2014: seeded, so that a failing law can be run again.
 */
public final class SplitMix64 {
  private long state;

  public SplitMix64(long seed) {
    state = seed;
  }

  private long next() {
    state += 0x9E3779B97F4A7C15L;
    long z = state;
    z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return z ^ (z >>> 31);
  }

  /** Uniform in [0, 1). */
  public double uniform() {
    return (next() >>> 11) * 0x1.0p-53;
  }

  public double between(double low, double high) {
    return low + (high - low) * uniform();
  }

  public int below(int bound) {
    return (int) (uniform() * bound);
  }

  public boolean chance(double probability) {
    return uniform() < probability;
  }

  /** Standard normal (Box and Muller 1958). */
  public double normal() {
    return StrictMath.sqrt(-2 * StrictMath.log1p(-uniform()))
        * StrictMath.cos(2 * Math.PI * uniform());
  }

  /** The same items in another order (Fisher and Yates). */
  public <T> List<T> shuffled(List<T> items) {
    List<T> all = new ArrayList<>(items);
    for (int i = all.size() - 1; i > 0; i--) {
      int j = below(i + 1);
      T kept = all.get(i);
      all.set(i, all.get(j));
      all.set(j, kept);
    }
    return all;
  }
}
