package daylight.line.measure;

import org.hipparchus.special.Erf;

/**
 * A value with its standard uncertainty, both in SI units; a normal distribution where one is
 * needed.
 *
 * @param value the best estimate
 * @param sd the standard uncertainty (one standard deviation), positive and finite
 */
public record Measured(double value, double sd) {
  /** Standard deviations from the mean to either end of the interval that holds 95 %. */
  public static final double Z95 = 1.959963985;

  public Measured {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("value must be finite, was " + value);
    }
    if (!(sd > 0) || Double.isInfinite(sd)) {
      throw new IllegalArgumentException("sd must be positive and finite, was " + sd);
    }
  }

  /** This moved by an exactly known amount in the same unit. */
  public Measured plus(double exact) {
    return new Measured(value + exact, sd);
  }

  /** This less another that shares no error with it: the variances add. */
  public Measured minus(Measured independent) {
    return new Measured(value - independent.value, StrictMath.hypot(sd, independent.sd));
  }

  /** This times an exactly known factor other than zero. */
  public Measured times(double exact) {
    if (exact == 0) {
      throw new IllegalArgumentException("factor must not be 0: the result would be certain");
    }
    return new Measured(value * exact, sd * Math.abs(exact));
  }

  /** The lower end of the interval that holds 95 %. */
  public double lower95() {
    return value - Z95 * sd;
  }

  /** The upper end of the interval that holds 95 %. */
  public double upper95() {
    return value + Z95 * sd;
  }

  /** The probability, from 0 to 1, that the quantity lies below a limit in the same unit. */
  public double probabilityBelow(double limit) {
    return Erf.erfc((value - limit) / (sd * StrictMath.sqrt(2))) / 2;
  }
}
