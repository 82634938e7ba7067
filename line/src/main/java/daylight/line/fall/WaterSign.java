package daylight.line.fall;

import daylight.line.measure.Key;
import java.util.Locale;

/**
 * What may be noted of standing water, and how often each of its causes looks so. The shares are
 * common practice, no source: what crews say they see, in round figures. Of two signs that tell the
 * same the stronger is taken alone.
 */
public enum WaterSign implements Key {
  /** It was noted as still. */
  STILL(0.95, 0.95, 0.95, 0.30),
  /** It was noted as moving. */
  MOVING(0.05, 0.05, 0.05, 0.70),
  /** Nothing had run for half an hour or longer, and it stood still. */
  LONG_UNUSED(0.90, 0.90, 0.90, 0.05),
  /** Water had run less than ten minutes before. */
  JUST_USED(0.30, 0.30, 0.30, 0.80),
  /** It was there after some waiting. */
  STAYED_AFTER_WAITING(0.97, 0.90, 0.90, 0.03),
  /** It was gone after some waiting. */
  GONE_AFTER_WAITING(0.03, 0.10, 0.10, 0.97),
  /** It was there when what lay in the pipe had been taken out. */
  STAYED_AFTER_CLEANING(0.97, 0.03, 0.97, 0.40),
  /** It was gone when what lay in the pipe had been taken out. */
  GONE_AFTER_CLEANING(0.03, 0.97, 0.03, 0.60),
  /** Somebody noted what holds it. */
  HOLDER_NOTED(0.05, 0.90, 0.05, 0.05),
  /** Where it ends something was seen that may dam it. */
  DAM_AT_ITS_END(0.15, 0.80, 0.15, 0.15),
  /** Where it ends the pipe was seen clearly, and nothing in it. */
  CLEAR_AT_ITS_END(0.85, 0.10, 0.85, 0.85),
  /** It stands to where the line ends. */
  TO_THE_END(0.15, 0.15, 0.95, 0.20),
  /** It ends before the line does. */
  ENDS_BEFORE(0.85, 0.85, 0.05, 0.80),
  /** Where the line leads to, water stood as high as the pipe. */
  OUTLET_DROWNED(0.05, 0.05, 0.95, 0.05),
  /** Where the line leads to, the pipe lay free. */
  OUTLET_FREE(0.95, 0.95, 0.05, 0.95);

  private final double grade;
  private final double dam;
  private final double tailwater;
  private final double notSettled;

  WaterSign(double grade, double dam, double tailwater, double notSettled) {
    this.grade = grade;
    this.dam = dam;
    this.tailwater = tailwater;
    this.notSettled = notSettled;
  }

  /** The share of waters of a cause that look so. */
  public double of(WaterCause cause) {
    return switch (cause) {
      case GRADE -> grade;
      case DAM -> dam;
      case TAILWATER -> tailwater;
      case NOT_SETTLED -> notSettled;
    };
  }

  @Override
  public String key() {
    return "water-sign." + name().toLowerCase(Locale.ROOT);
  }
}
