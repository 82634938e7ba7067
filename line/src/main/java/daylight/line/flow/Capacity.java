package daylight.line.flow;

import daylight.line.measure.Measured;

/** What a pipe carries by gravity when it runs full. */
public sealed interface Capacity {
  /**
   * It carries something.
   *
   * @param flow full but not under pressure, cubic metres per second, by propagation
   * @param least the lower end of the interval that holds 95 %; 0 where it may be level
   * @param most the upper end
   * @param peak the most that it carries with a free surface, at {@link #peakShare} of its depth:
   *     more than full, for a full pipe has more wall; too unsteady to count on
   * @param peakShare depth over bore at that peak
   * @param speed when full, metres per second
   * @param regime when full
   */
  record Carries(
      Propagated flow,
      double least,
      double most,
      double peak,
      double peakShare,
      Measured speed,
      Regime regime)
      implements Capacity {
    /** Whether it cleans itself where it runs at least half full: half and full run as fast. */
    public boolean cleans() {
      return speed.value() >= Gravity.SELF_CLEANSING;
    }
  }

  /**
   * It does not fall, so that nothing runs down it by itself.
   *
   * @param slope fall over length: 0 level, below 0 backward
   */
  record NotFalling(double slope) implements Capacity {}
}
