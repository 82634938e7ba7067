package daylight.line.sonde;

/**
 * A magnetic field at a point, in whatever unit its dipole's strength over a cubic metre has.
 *
 * @param x to the right of the walk
 * @param y ahead
 * @param z up
 */
public record Field(double x, double y, double z) {
  /** The strength of the whole field, never negative. */
  public double total() {
    return StrictMath.sqrt(x * x + y * y + z * z);
  }

  /**
   * What a level antenna shows that lies at a bearing; negative where the field runs against it.
   *
   * @param bearing in radians clockwise from ahead
   */
  public double level(double bearing) {
    return x * StrictMath.sin(bearing) + y * StrictMath.cos(bearing);
  }
}
