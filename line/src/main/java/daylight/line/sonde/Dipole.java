package daylight.line.sonde;

/**
 * A sonde in the ground and the field it makes: {@code K (3 (m·r) r − m) / r³} with unit vectors m
 * and r (griffiths-5.89). Ground and air do not change a static field; soil losses are left out.
 *
 * @param x to the right, in metres
 * @param y ahead, in metres
 * @param depth below the plane of zero height, in metres, more than nothing
 * @param bearing of its nose in radians, clockwise from ahead
 * @param tilt of its nose above level in radians, from −π/2 to π/2
 * @param strength K, what the field is times the cube of the distance; more than nothing
 */
public record Dipole(
    double x, double y, double depth, double bearing, double tilt, double strength) {
  public Dipole {
    if (!Double.isFinite(x) || !Double.isFinite(y) || !Double.isFinite(bearing)) {
      throw new IllegalArgumentException(
          "x, y and bearing must be finite, were " + x + " m, " + y + " m, " + bearing + " rad");
    }
    if (!(depth > 0) || Double.isInfinite(depth)) {
      throw new IllegalArgumentException("depth must be positive and finite, was " + depth + " m");
    }
    if (!(StrictMath.abs(tilt) <= StrictMath.PI / 2 + 1e-12)) {
      throw new IllegalArgumentException("tilt must be in −π/2..π/2, was " + tilt + " rad");
    }
    if (!(strength > 0) || Double.isInfinite(strength)) {
      throw new IllegalArgumentException("strength must be positive and finite, was " + strength);
    }
  }

  /**
   * The field above a place.
   *
   * @param height of the antenna above the plane of zero height, in metres
   */
  public Field at(double atX, double atY, double height) {
    double[] moment = moment();
    double[] b = Moment.field(moment, atX - x, atY - y, height + depth);
    return new Field(b[0], b[1], b[2]);
  }

  /** The moment in units of strength: to the right, ahead, up. */
  double[] moment() {
    double level = strength * StrictMath.cos(tilt);
    return new double[] {
      level * StrictMath.sin(bearing),
      level * StrictMath.cos(bearing),
      strength * StrictMath.sin(tilt)
    };
  }

  /** The angle between the axes of two sondes, from 0 to π/2; which end is the nose is left out. */
  double angleTo(Dipole other) {
    double[] a = moment();
    double[] b = other.moment();
    double dot = a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    double cosine = StrictMath.abs(dot) / (strength * other.strength);
    return StrictMath.acos(StrictMath.min(1, cosine));
  }
}
