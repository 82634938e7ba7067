package daylight.line.fall;

/**
 * Draws that follow from a seed alone, so that the same book gives the same figures on every
 * machine: SplitMix64 (Steele, Lea and Flood, <em>Fast splittable pseudorandom number
 * generators</em>, 2014, from memory), made normal by Box and Muller (1958).
 *
 * @param seed where they begin; it goes along with what was computed
 * @param count how many profiles are drawn
 */
public record Draws(long seed, int count) {
  /** What answers and figures use. A share of one half is then told to within 3 per cent points. */
  public static final Draws USUAL = new Draws(20_240_229, 1000);

  private static final long GOLDEN = 0x9E3779B97F4A7C15L;
  private static final double UNIT = 0x1.0p-53;

  public Draws {
    if (count < 1) {
      throw new IllegalArgumentException("at least one profile is drawn, was " + count);
    }
  }

  /** Normal numbers, one after the other. */
  static final class Stream {
    private long state;
    private double spare;
    private boolean spared;

    Stream(Draws draws) {
      state = draws.seed();
    }

    private long bits() {
      state += GOLDEN;
      long z = state;
      z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
      z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
      return z ^ (z >>> 31);
    }

    /** Above 0 and at most 1. */
    private double share() {
      return ((bits() >>> 11) + 1) * UNIT;
    }

    /** With mean 0 and variance 1. */
    double normal() {
      if (spared) {
        spared = false;
        return spare;
      }
      double far = StrictMath.sqrt(-2 * StrictMath.log(share()));
      double turn = 2 * Math.PI * share();
      spare = far * StrictMath.sin(turn);
      spared = true;
      return far * StrictMath.cos(turn);
    }
  }
}
