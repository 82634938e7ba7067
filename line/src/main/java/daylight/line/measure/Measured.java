package daylight.line.measure;

/**
 * A value with its standard uncertainty, both in SI units.
 *
 * @param value the best estimate
 * @param sd the standard uncertainty (one standard deviation), positive and finite
 */
public record Measured(double value, double sd) {
  public Measured {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("value must be finite, was " + value);
    }
    if (!(sd > 0) || Double.isInfinite(sd)) {
      throw new IllegalArgumentException("sd must be positive and finite, was " + sd);
    }
  }
}
