package daylight.archive;

import java.util.List;

/**
 * Numbers that look random and are the same in every run: SplitMix64 (Steele, Lea and Flood, OOPSLA
 * 2014; constants from memory).
 */
final class Dice {
  private long state;

  Dice(long seed) {
    this.state = seed;
  }

  long next() {
    state += 0x9E3779B97F4A7C15L;
    long z = state;
    z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return z ^ (z >>> 31);
  }

  /** From 0 to below a bound. */
  int below(int bound) {
    return (int) Long.remainderUnsigned(next(), bound);
  }

  boolean maybe() {
    return below(2) == 0;
  }

  <T> T oneOf(List<T> choices) {
    return choices.get(below(choices.size()));
  }

  <T> T oneOf(T[] choices) {
    return choices[below(choices.length)];
  }
}
