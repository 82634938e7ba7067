package daylight.line.condition;

import daylight.line.measure.Key;
import java.util.Locale;

/** What a share is a share of. */
public enum ShareOf implements Key {
  /** The area of the bore. */
  SECTION,
  /** The height of the bore. */
  HEIGHT,
  /** The bore as it was made. */
  DIAMETER;

  @Override
  public String key() {
    return "share_of." + name().toLowerCase(Locale.ROOT);
  }
}
