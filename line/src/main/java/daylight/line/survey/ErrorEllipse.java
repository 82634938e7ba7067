package daylight.line.survey;

/**
 * The region that holds a position with a given probability, its standard deviations being known.
 *
 * @param semiMajor metres
 * @param semiMinor metres
 * @param azimuth of the major axis, radians clockwise from grid north, in [0, π)
 * @param probability that the region holds the true position
 */
public record ErrorEllipse(double semiMajor, double semiMinor, double azimuth, double probability) {

  /**
   * The ellipse of a covariance. The factor on the standard ellipse is √(−2 ln(1−p)), the quantile
   * of χ² with two degrees of freedom: 2.4477 for 95 % (Ghilani, Adjustment Computations, ch. 19).
   *
   * @param covariance symmetric, of one position or of a difference of two
   * @param probability between 0 and 1
   */
  public static ErrorEllipse of(Covariance2 covariance, double probability) {
    Require.between("probability", probability, 0, 1);
    double cross = (covariance.xy() + covariance.yx()) / 2;
    double mean = (covariance.xx() + covariance.yy()) / 2;
    double spread = StrictMath.hypot((covariance.xx() - covariance.yy()) / 2, cross);
    double factor = StrictMath.sqrt(-2 * StrictMath.log1p(-probability));
    double azimuth = StrictMath.atan2(2 * cross, covariance.yy() - covariance.xx()) / 2;
    return new ErrorEllipse(
        factor * StrictMath.sqrt(Math.max(0, mean + spread)),
        factor * StrictMath.sqrt(Math.max(0, mean - spread)),
        azimuth < 0 ? azimuth + Math.PI : azimuth,
        probability);
  }
}
