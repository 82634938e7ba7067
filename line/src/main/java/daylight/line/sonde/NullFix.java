package daylight.line.sonde;

import daylight.line.measure.Measured;

/**
 * The sonde as its nulls place it, with the covariance of everything with everything.
 *
 * @param position the point over the sonde along the walk, in metres from the zero of the marks
 * @param depth of the sonde below the receiver's antenna, in metres
 * @param tilt in radians, positive with the nose up the way that was walked
 * @param positionDepth covariance, m²
 * @param positionTilt covariance, m rad
 * @param depthTilt covariance, m rad
 * @param misfit weighted sum of squares that is left, the belief in the tilt included; null marks
 *     without the upright null leave none
 */
public record NullFix(
    Measured position,
    Measured depth,
    Measured tilt,
    double positionDepth,
    double positionTilt,
    double depthTilt,
    double misfit)
    implements NullReading {
  /**
   * @param at position, depth and tilt
   * @param spread their covariance
   */
  static NullFix of(double[] at, double[][] spread, double misfit) {
    return new NullFix(
        new Measured(at[0], StrictMath.sqrt(spread[0][0])),
        new Measured(at[1], StrictMath.sqrt(spread[1][1])),
        new Measured(at[2], StrictMath.sqrt(spread[2][2])),
        spread[0][1],
        spread[0][2],
        spread[1][2],
        misfit);
  }
}
