package daylight.line.measure;

/** How a person wants distances shown; other quantities follow the same system of units. */
public enum Shown {
  FEET_INCHES,
  DECIMAL_FEET,
  METRES
}
