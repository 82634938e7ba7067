package daylight.line.measure;

/** What kind of quantity a text stands for, and the unit its value is kept in. */
public enum Dimension {
  /** Metres, signed, at most 1000 km. */
  LENGTH,
  /** Square metres, not negative. */
  AREA,
  /** Cubic metres, not negative. */
  VOLUME,
  /** Cubic metres per second, not negative. */
  FLOW,
  /** Seconds, not negative. */
  DURATION,
  /** Radians, signed, at most a full turn. A bare number is degrees. */
  ANGLE,
  /** Radians clockwise from twelve as the camera head looks, from 0 to below 2π. */
  CLOCK,
  /** Rise over run, dimensionless, signed. */
  SLOPE,
  /** A share of a whole, from 0 to 1. */
  SHARE,
  /** A whole number, not negative. */
  COUNT,
  /** Degrees Celsius. */
  TEMPERATURE,
  /** Rainfall intensity in metres per second, not negative. */
  RAINFALL,
  /** Degree days in °C·days, not negative. */
  DEGREE_DAYS,
  /** Mass in a volume, kilograms per cubic metre, not negative. */
  DENSITY,
  /** How well a material conducts heat, watts per metre and kelvin, not negative. */
  CONDUCTIVITY,
  /** Metres per second, not negative. */
  SPEED
}
