package daylight.footage.scene;

/**
 * How a counter writes its reading. Rounded to the last place shown, halves up.
 *
 * @param unit what one unit is, in metres
 * @param places decimals
 * @param digits whole digits at least, filled up with zeros
 * @param signed whether a plus stands before what is not negative
 * @param suffix what follows, with its space
 * @param inches whether what is over after whole feet is written in inches; then {@code places} and
 *     {@code suffix} do not count
 */
public record CounterFormat(
    double unit, int places, int digits, boolean signed, String suffix, boolean inches) {
  private static final double FOOT = 0.3048;
  private static final double INCH = 0.0254;
  private static final int INCHES = 12;

  public CounterFormat {
    if (!(unit > 0) || Double.isInfinite(unit)) {
      throw new IllegalArgumentException("unit in metres must be positive, was " + unit);
    }
    if (places < 0 || places > 3 || digits < 1 || digits > 6) {
      throw new IllegalArgumentException(
          "0 to 3 decimals and 1 to 6 digits, were " + places + " and " + digits);
    }
  }

  /** Feet with decimals, such as {@code 12.4 ft} or {@code 052.8 FT}. */
  public static CounterFormat feet(int places, int digits, String suffix) {
    return new CounterFormat(FOOT, places, digits, false, suffix, false);
  }

  /** Metres with decimals, such as {@code 06.09 m} or {@code 14.2m}. */
  public static CounterFormat metres(int places, int digits, String suffix) {
    return new CounterFormat(1, places, digits, false, suffix, false);
  }

  /** Feet and whole inches, such as {@code 12' 07"}. */
  public static CounterFormat feetInches(int digits) {
    return new CounterFormat(FOOT, 0, digits, false, "", true);
  }

  /** The same with a sign always, such as {@code +0012.3}. */
  public CounterFormat withSign() {
    return new CounterFormat(unit, places, digits, true, suffix, inches);
  }

  /** What is shown at a reading in metres. */
  public String text(double reading) {
    long steps = (long) StrictMath.floor(Math.abs(reading) / step() + 0.5 + 1e-9);
    String sign = reading < 0 && steps > 0 ? "-" : signed ? "+" : "";
    if (inches) {
      return sign + filled(steps / INCHES, digits) + "' " + filled(steps % INCHES, 2) + "\"";
    }
    long whole = steps / tens();
    String text = sign + filled(whole, digits);
    return places == 0 ? text + suffix : text + "." + filled(steps % tens(), places) + suffix;
  }

  /** The smallest change that shows, in metres. */
  public double step() {
    return inches ? INCH : unit / tens();
  }

  private long tens() {
    long tens = 1;
    for (int i = 0; i < places; i++) {
      tens *= 10;
    }
    return tens;
  }

  private static String filled(long number, int digits) {
    String text = Long.toString(number);
    return "0".repeat(Math.max(0, digits - text.length())) + text;
  }
}
