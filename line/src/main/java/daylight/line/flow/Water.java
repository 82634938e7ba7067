package daylight.line.flow;

/** What of water decides how it flows. Drain water is taken as clean water. */
public final class Water {
  /** Standard gravity, metres per second squared (from memory: exact by definition). */
  static final double GRAVITY = 9.80665;

  /** Taken where nobody measured: water in the ground, degrees Celsius; common practice. */
  public static final double USUAL_CELSIUS = 10;

  private Water() {}

  /**
   * Kinematic viscosity in square metres per second, within about 1 % of tables from 0 to 60 °C
   * (engineersedge-water).
   *
   * @param celsius temperature, 0 to 100 °C; anything else is refused
   */
  public static double viscosity(double celsius) {
    if (!(celsius >= 0 && celsius <= 100)) {
      throw new IllegalArgumentException("water must be 0 to 100 °C, was " + celsius);
    }
    double dynamic = 2.414e-5 * StrictMath.pow(10, 247.8 / (celsius + 273.15 - 140));
    return dynamic / density(celsius);
  }

  /** Kilograms in a cubic metre; a parabola about 4 °C, within 0.1 % from 0 to 40 °C. */
  static double density(double celsius) {
    double off = celsius - 4;
    return 1000 - 0.0065 * off * off + 1.5e-5 * off * off * off;
  }
}
