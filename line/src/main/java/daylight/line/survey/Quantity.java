package daylight.line.survey;

/** Which component of a sighting a residual belongs to. */
public enum Quantity {
  DISTANCE,
  ALONG,
  OUT,
  BEARING,
  ANGLE,
  DIRECTION,
  X,
  Y,
  EAST,
  NORTH,
  RISE,
  HEIGHT,
  ROD
}
