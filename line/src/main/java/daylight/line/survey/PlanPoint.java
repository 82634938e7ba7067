package daylight.line.survey;

/**
 * A position on the site grid.
 *
 * @param x metres toward grid east
 * @param y metres toward grid north
 */
public record PlanPoint(double x, double y) {
  public PlanPoint {
    Require.finite("x", x, "m");
    Require.finite("y", y, "m");
  }

  /** The distance to another position, metres. */
  public double distanceTo(PlanPoint other) {
    return StrictMath.hypot(other.x - x, other.y - y);
  }

  /** The bearing to another position, radians clockwise from grid north, in (−π, π]. */
  public double bearingTo(PlanPoint other) {
    return StrictMath.atan2(other.x - x, other.y - y);
  }
}
