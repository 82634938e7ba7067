package daylight.line.sonde;

/**
 * Where the nulls of a sonde lie along a walk over it, in metres from the point over the sonde,
 * positive toward the side on which its nose is up. Derived from the dipole field (griffiths-5.89):
 * the component along the pipe vanishes where 2x² + 3txd = d² + y², the vertical one where tx² −
 * 3xd = t(2d² − y²), with t the tangent of the tilt and y the distance beside the pipe.
 */
final class NullModel {
  private NullModel() {}

  /** The null on the side where the nose is down: negative. */
  static double behind(double depth, double tilt, double beside) {
    return (-3 * StrictMath.tan(tilt) * depth - root(depth, tilt, beside)) / 4;
  }

  /** The null on the side where the nose is up: positive. */
  static double ahead(double depth, double tilt, double beside) {
    return (-3 * StrictMath.tan(tilt) * depth + root(depth, tilt, beside)) / 4;
  }

  private static double root(double depth, double tilt, double beside) {
    double t = StrictMath.tan(tilt);
    return StrictMath.sqrt(9 * t * t * depth * depth + 8 * (depth * depth + beside * beside));
  }

  /** The null of the upright antenna that lies between the two others. */
  static double over(double depth, double tilt, double beside) {
    double t = StrictMath.tan(tilt);
    double rest = 2 * depth * depth - beside * beside;
    double under = StrictMath.max(0, 9 * depth * depth + 4 * t * t * rest);
    return -2 * t * rest / (3 * depth + StrictMath.sqrt(under));
  }
}
