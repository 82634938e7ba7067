package daylight.line.measure;

/**
 * Prints a length to the place its uncertainty supports, as the Guide to the Expression of
 * Uncertainty in Measurement asks (7.2.6, from memory): at most two digits of the half-width, the
 * value to the same place. The half-width is rounded up.
 */
final class LengthWithDoubt {
  /** A half-width of more than so many steps would show digits it does not support. */
  private static final double MOST_STEPS = 30;

  private LengthWithDoubt() {}

  static Printed print(Measured metres, Shown shown) {
    double halfWidth = Measured.Z95 * metres.sd();
    return switch (shown) {
      case FEET_INCHES -> feetInches(metres.value(), halfWidth);
      case DECIMAL_FEET -> decimal(metres.value(), halfWidth, Unit.FOOT, 2);
      case METRES -> decimal(metres.value(), halfWidth, Unit.METRE, 3);
    };
  }

  private static Printed feetInches(double value, double halfWidth) {
    double inch = Unit.INCH.metres();
    if (halfWidth > MOST_STEPS * inch) {
      return decimal(value, halfWidth, Unit.FOOT, 0);
    }
    long inches = Math.round(value / inch);
    long doubt = (long) StrictMath.ceil(halfWidth / inch);
    return new Printed(Digits.feetInches(inches), "± " + Digits.feetInches(doubt));
  }

  private static Printed decimal(double value, double halfWidth, Unit unit, int mostDecimals) {
    double doubt = halfWidth / unit.metres();
    int decimals = mostDecimals;
    double step = StrictMath.pow(10, -mostDecimals);
    while (doubt > MOST_STEPS * step) {
      step *= 10;
      decimals--;
    }
    String symbol = " " + unit.symbol();
    return new Printed(
        Digits.fixed(value / unit.metres(), decimals) + symbol,
        "± " + Digits.ceiling(doubt, decimals) + symbol);
  }
}
