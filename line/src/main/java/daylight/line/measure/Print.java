package daylight.line.measure;

/** The door for showing quantities to people. */
public final class Print {
  private Print() {}

  public static String length(double metres, Shown shown) {
    throw new UnsupportedOperationException();
  }

  public static Printed length(Measured metres, Shown shown) {
    throw new UnsupportedOperationException();
  }

  public static String bore(double metres, Shown shown) {
    throw new UnsupportedOperationException();
  }

  public static String small(double metres, Shown shown) {
    throw new UnsupportedOperationException();
  }

  public static String slope(double slope) {
    throw new UnsupportedOperationException();
  }

  public static String slopePerFoot(double slope) {
    throw new UnsupportedOperationException();
  }

  public static String angle(double radians) {
    throw new UnsupportedOperationException();
  }

  public static String clock(double radians) {
    throw new UnsupportedOperationException();
  }

  public static String share(double share) {
    throw new UnsupportedOperationException();
  }

  public static String flow(double cubicMetresPerSecond, Shown shown) {
    throw new UnsupportedOperationException();
  }

  public static String volume(double cubicMetres, Shown shown) {
    throw new UnsupportedOperationException();
  }

  public static String duration(double seconds) {
    throw new UnsupportedOperationException();
  }

  public static String temperature(double celsius, Shown shown) {
    throw new UnsupportedOperationException();
  }
}
