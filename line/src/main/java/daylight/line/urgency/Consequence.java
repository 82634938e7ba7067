package daylight.line.urgency;

import daylight.line.measure.Key;
import java.util.Locale;

/** What may come of it, the worst first. */
public enum Consequence implements Key {
  /** Sewage comes up inside a building. */
  SEWAGE_INSIDE,
  /** A building or a road stands above or right beside it. */
  BUILDING_OR_ROAD,
  /** Water, though no sewage, comes up inside a building. */
  WATER_INSIDE,
  /** Garden or yard alone. */
  GROUND;

  @Override
  public String key() {
    return "consequence." + name().toLowerCase(Locale.ROOT);
  }
}
