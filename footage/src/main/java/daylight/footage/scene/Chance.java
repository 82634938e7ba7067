package daylight.footage.scene;

/**
 * Chance that has no memory: a number follows from where it is asked for, so that frames can be
 * painted in any order. The mixing is the finaliser of SplitMix64.
 */
final class Chance {
  private Chance() {}

  /** From 0 to below 1. */
  static double at(long seed, long x, long y) {
    return (mix(mix(mix(seed) + x) + y) >>> 11) * 0x1p-53;
  }

  /** From least to below most. */
  static double between(double least, double most, long seed, long x, long y) {
    return least + (most - least) * at(seed, x, y);
  }

  private static long mix(long value) {
    long z = value + 0x9E3779B97F4A7C15L;
    z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return z ^ (z >>> 31);
  }
}
