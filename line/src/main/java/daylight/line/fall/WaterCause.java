package daylight.line.fall;

import daylight.line.measure.Key;
import java.util.Locale;

/** What holds water that was seen standing. */
public enum WaterCause implements Key {
  /** The pipe itself: it dips, or rises further on. */
  GRADE,
  /** Something in the pipe, such as roots or a step at a joint. */
  DAM,
  /** Water that stands where the pipe leads to. */
  TAILWATER,
  /** Nothing: it was still running off. */
  NOT_SETTLED;

  @Override
  public String key() {
    return "water-cause." + name().toLowerCase(Locale.ROOT);
  }
}
