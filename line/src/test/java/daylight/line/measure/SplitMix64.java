package daylight.line.measure;

/** A seeded generator for laws: the same numbers everywhere and for ever. */
final class SplitMix64 {
  private long state;

  SplitMix64(long seed) {
    state = seed;
  }

  long next() {
    state += 0x9E3779B97F4A7C15L;
    long z = state;
    z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return z ^ (z >>> 31);
  }

  /** From least to below most. */
  double between(double least, double most) {
    return least + (most - least) * (next() >>> 11) * 0x1p-53;
  }

  /** From 0 to below bound. */
  int below(int bound) {
    return (int) Long.remainderUnsigned(next(), bound);
  }
}
