package daylight.line.dig;

import daylight.line.measure.Key;
import java.util.Locale;

/**
 * The quality of a locate in the letters of ASCE 38-22 (asce-38-22), apart from our own figures: a
 * letter says how something was found, not how far off it is. How a locate by transmitter is
 * lettered is our reading of the standard, not its wording.
 */
public enum LocatedQuality implements Key {
  /** Laid bare and measured, tied to survey control within 0.2 ft in plan. */
  A,
  /** Found by an instrument from above, between two such finds, tied to survey control. */
  B,
  /** Found from above, or seen at its ends, but tied to nothing but what stands on the property. */
  C,
  /** Beyond the last place where anything was found, or from what people remember. */
  D;

  @Override
  public String key() {
    return "dig.quality." + name().toLowerCase(Locale.ROOT);
  }
}
