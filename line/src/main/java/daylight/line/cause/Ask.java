package daylight.line.cause;

import daylight.line.measure.Key;
import java.util.Locale;

/** What can be measured to learn whether a cause is one. */
public enum Ask implements Key {
  CAMERA,
  WATER_RUN,
  HOLD_TEST,
  SMOKE_TEST,
  LEVELS,
  DEPTH,
  /** What the vents do. */
  VENTS,
  /** How much rain comes and how much the pipe takes. */
  RAIN,
  /** Whether the water meter turns with everything shut. */
  METER,
  /** Whether it is wet only after rain. */
  DRY_SPELL,
  /** How high the water stands in the main or ditch when it happens. */
  OUTLET_WATER,
  /** What the ground there was filled with. */
  FILL;

  @Override
  public String key() {
    return "ask." + name().toLowerCase(Locale.ROOT);
  }
}
