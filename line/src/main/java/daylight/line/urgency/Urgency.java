package daylight.line.urgency;

import daylight.line.measure.Key;
import java.util.Locale;

/** How soon, the soonest first. */
public enum Urgency implements Key {
  AT_ONCE,
  WITHIN_WEEKS,
  WITHIN_A_YEAR,
  WATCH;

  @Override
  public String key() {
    return "urgency." + name().toLowerCase(Locale.ROOT);
  }
}
