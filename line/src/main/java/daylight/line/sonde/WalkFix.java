package daylight.line.sonde;

import daylight.line.measure.Measured;
import java.util.List;
import org.hipparchus.special.Gamma;
import org.jspecify.annotations.Nullable;

/**
 * The sonde as the walked readings place it. Strengths do not tell which end is the nose: bearing
 * and tilt may both be turned round together.
 *
 * @param sonde the best fit, its bearing from 0 to below π
 * @param covariance of x, y, depth, bearing, tilt and strength, row by row; where the readings fit
 *     worse than their uncertainties allow, it is widened by as much
 * @param chiSquare weighted sum of squares of what is left
 * @param freedom readings more than unknowns
 * @param other another sonde that fits about as well; null when there is none
 * @param otherExcess by how much its sum of squares is larger
 */
public record WalkFix(
    Dipole sonde,
    List<Double> covariance,
    double chiSquare,
    int freedom,
    @Nullable Dipole other,
    double otherExcess)
    implements WalkReading {
  private static final int UNKNOWNS = 6;

  public WalkFix {
    covariance = List.copyOf(covariance);
  }

  /** Ratio of what is left to what the uncertainties make expect; about 1 where all is well. */
  public double sigmaNought() {
    return StrictMath.sqrt(chiSquare / freedom);
  }

  /** The probability of so much being left by chance. */
  public double chance() {
    return Gamma.regularizedGammaQ(freedom / 2.0, chiSquare / 2);
  }

  /** Position to the right. */
  public Measured x() {
    return of(sonde.x(), 0);
  }

  /** Position ahead. */
  public Measured y() {
    return of(sonde.y(), 1);
  }

  /** Depth below the plane of zero height. */
  public Measured depth() {
    return of(sonde.depth(), 2);
  }

  /** Bearing of the axis, radians clockwise from ahead. */
  public Measured bearing() {
    return of(sonde.bearing(), 3);
  }

  /** Tilt, radians, nose up positive. */
  public Measured tilt() {
    return of(sonde.tilt(), 4);
  }

  /** Strength. */
  public Measured strength() {
    return of(sonde.strength(), 5);
  }

  /** Covariance of two of x, y, depth, bearing, tilt, strength, counted from 0. */
  public double covariance(int one, int other) {
    return covariance.get(one * UNKNOWNS + other);
  }

  private Measured of(double value, int at) {
    return new Measured(value, StrictMath.sqrt(covariance(at, at)));
  }
}
