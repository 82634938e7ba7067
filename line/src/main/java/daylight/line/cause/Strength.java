package daylight.line.cause;

import daylight.line.measure.Key;
import java.util.Locale;

/** How strongly a cause is held, by what is known so far; in the order in which they are told. */
public enum Strength implements Key {
  PROBABLE,
  POSSIBLE,
  /** Nothing that was done tells. */
  NOT_LOOKED_AT,
  UNLIKELY;

  @Override
  public String key() {
    return "strength." + name().toLowerCase(Locale.ROOT);
  }
}
