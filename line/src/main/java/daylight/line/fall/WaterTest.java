package daylight.line.fall;

import daylight.line.measure.Key;
import java.util.Locale;

/** What tells the causes of standing water apart. */
public enum WaterTest implements Key {
  /** Let nothing run for half an hour and look again. */
  WAIT,
  /** See whether the pipe lies free of water where the line leads to. */
  SEE_OUTLET,
  /** Take out what lies in the pipe and look again. */
  CLEAN,
  /** Level the bottom of the pipe on both sides of it. */
  LEVEL;

  @Override
  public String key() {
    return "water-test." + name().toLowerCase(Locale.ROOT);
  }
}
