package daylight.line.measure;

import java.util.Locale;

/** How a figure that comes with Daylight, or with a company's own file, was come by. */
public enum Mark implements Key {
  /** Read in the source itself, or in a text that quotes it. */
  LOOKED_UP,
  /** From memory of the source. */
  FROM_MEMORY,
  /** Worked out from other figures. */
  DERIVED,
  /** What the trade takes, without a source. */
  COMMON_PRACTICE;

  @Override
  public String key() {
    return "mark." + name().toLowerCase(Locale.ROOT);
  }
}
