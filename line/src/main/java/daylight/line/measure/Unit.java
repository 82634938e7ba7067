package daylight.line.measure;

/**
 * The units of length a person may choose for bare numbers.
 *
 * <p>1 ft = 0.3048 m and 1 in = 25.4 mm exactly (NIST SP 811, from memory).
 */
public enum Unit {
  METRE(1, "m"),
  CENTIMETRE(0.01, "cm"),
  MILLIMETRE(0.001, "mm"),
  FOOT(0.3048, "ft"),
  INCH(0.0254, "in");

  private final double metres;
  private final String symbol;

  Unit(double metres, String symbol) {
    this.metres = metres;
    this.symbol = symbol;
  }

  /** The length of one of this unit in metres. */
  public double metres() {
    return metres;
  }

  /** The symbol written after a number, such as {@code ft}. */
  public String symbol() {
    return symbol;
  }
}
