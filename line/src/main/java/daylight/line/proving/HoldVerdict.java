package daylight.line.proving;

import daylight.line.measure.Measured;
import org.jspecify.annotations.Nullable;

/**
 * A hold test against one criterion.
 *
 * @param limit the criterion
 * @param verdict what comes of it
 * @param allowed what the criterion lets this stretch lose, cubic metres per second; null where no
 *     drop may be seen
 * @param within the probability that the loss was within it; null where no drop may be seen
 * @param longer how long to hold so that it would be told, seconds, if it goes on losing as it did;
 *     null where it was told, or where no time that is worth waiting tells it
 */
public record HoldVerdict(
    HoldLimit limit,
    Verdict verdict,
    @Nullable Measured allowed,
    @Nullable Double within,
    @Nullable Double longer) {
  /** Standard deviations from the mean within which nine of ten lie: 19 of 20 are below it. */
  static final double Z90 = 1.6448536269514722;

  /**
   * A loss that could have gone unseen in a test, cubic metres per second: so much as the reading
   * of no loss is known to, 19 times of 20.
   */
  public static double unseen(Leak leak, Measured duration) {
    return Z90 * leak.reading() / duration.value();
  }

  /** What comes of a hold test. */
  public enum Verdict {
    /** The loss was within the limit, at 95 %. */
    PASSES,
    /** It was beyond it, at 95 %. */
    FAILS,
    /** Neither: right on the limit the chance is even. */
    TOO_CLOSE,
    /** It would pass or fail, but the head of water is not known. */
    HEAD_UNKNOWN,
    /** It would pass, but under less water than the criterion asks. */
    HEAD_TOO_LOW,
    /** It would fail, but under more water than the criterion allows. */
    HEAD_TOO_HIGH,
    /** It would pass, but was held for less time than the criterion asks. */
    TOO_SHORT,
    /** The level left the riser, so only that it was beyond the limit could have been told. */
    LEFT_THE_RISER
  }
}
