package daylight.line.frost;

import daylight.line.measure.Key;
import java.util.Locale;

/** What frost and its margin are unsure by. */
public enum Input implements Key {
  /** How cold the winter is. */
  FREEZING_INDEX,
  /** How warm the year is. */
  MEAN_TEMPERATURE,
  /** How long it freezes. */
  SEASON,
  /** How heavy the dry ground is. */
  DRY_DENSITY,
  /** How much water is in it. */
  MOISTURE,
  /** How well it conducts, beyond what density and water tell. */
  CONDUCTIVITY,
  /** What the surface makes of the air's cold. */
  SURFACE,
  /** How deep the snow lies. */
  SNOW,
  /** How well the snow conducts. */
  SNOW_CONDUCTIVITY,
  /** How well the formula holds. */
  FORMULA,
  /** How deep the pipe lies. */
  COVER;

  @Override
  public String key() {
    return "frost-input." + name().toLowerCase(Locale.ROOT);
  }
}
