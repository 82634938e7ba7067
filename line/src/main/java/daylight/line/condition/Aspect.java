package daylight.line.condition;

import daylight.line.measure.Key;
import java.util.Locale;

/** What a grade is about; the two are never mixed into one figure. */
public enum Aspect implements Key {
  /** The pipe itself: its strength, its tightness, how it lies. */
  STRUCTURE,
  /** What is in its way. */
  OPERATION;

  @Override
  public String key() {
    return "aspect." + name().toLowerCase(Locale.ROOT);
  }
}
