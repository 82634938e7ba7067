package daylight.line.sonde;

import daylight.line.measure.Key;
import java.util.Locale;

/** What a locate may have fallen for; {0} is always the locate's label. */
public enum Trap implements Key {
  /**
   * Both silent places lie on one side, as they do about a side peak: the transmitter is about {1}
   * {2} of the spot. A level sonde's side peaks lie 1.2247 depths off, with 20.2 % of the strength.
   */
  SIDE_PEAK,
  /** The signal stayed when the transmitter was switched off: another source. */
  OTHER_SOURCE,
  /** The pipe is of {1}: its wall is about {2} skin depths thick; strengths and depths are off. */
  IRON_PIPE,
  /** Over {1}, depths disagree or do not grow with the receiver: steel in the slab bends fields. */
  SLAB_OR_MESH,
  /** The upright antenna is silent on both sides, as over an upright sonde: {1} deep by that. */
  UPRIGHT,
  /** {1} was written; {2} would agree with the {3} of the silent places. */
  FEET_AND_INCHES,
  /** The silent places lie {1} unevenly about the spot: strongly tilted, or bent by something. */
  UNEVEN,
  /** {1} was shown, the silent places say {2}. */
  DEPTHS_DISAGREE,
  /** Raised by {1}, it showed {2} more instead. */
  LIFT_OFF;

  @Override
  public String key() {
    return "sonde." + name().toLowerCase(Locale.ROOT);
  }
}
