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
  ROD;

  /** Whether it goes round the circle: radians, not metres. */
  public boolean angular() {
    return this == BEARING || this == ANGLE || this == DIRECTION;
  }
}
