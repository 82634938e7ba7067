package daylight.line.survey;

/**
 * One term of a linear function of positions: wx·x + wy·y of a point.
 *
 * @param wx weight of x, without unit
 * @param wy weight of y, without unit
 */
public record CoordinateWeight(String point, double wx, double wy) {
  public CoordinateWeight {
    Require.finite("wx", wx, "");
    Require.finite("wy", wy, "");
  }
}
