package daylight.line.measure;

/** What values a dimension may take: wide enough for any site, narrow enough to stop nonsense. */
final class Ranges {
  private static final double TURN = 2 * StrictMath.PI;
  private static final double ROUNDING = 1e-12;

  private Ranges() {}

  /** Whether a value in SI is within its dimension's range; never so for NaN. */
  static boolean allow(Dimension dimension, double value) {
    return switch (dimension) {
      case LENGTH -> within(value, -1e6, 1e6);
      case AREA -> within(value, 0, 1e9);
      case VOLUME -> within(value, 0, 1e6);
      case FLOW -> within(value, 0, 1e3);
      case DURATION -> within(value, 0, 1e10);
      case ANGLE -> within(value, -TURN - ROUNDING, TURN + ROUNDING);
      case CLOCK -> within(value, 0, TURN);
      case SLOPE -> within(value, -10, 10);
      case SHARE -> within(value, 0, 1);
      case COUNT -> within(value, 0, 1e9);
      case TEMPERATURE -> within(value, -273.15, 1000);
      case RAINFALL -> within(value, 0, 1e-3);
      case DEGREE_DAYS -> within(value, 0, 1e5);
      case DENSITY -> within(value, 0, 1e5);
      case CONDUCTIVITY -> within(value, 0, 1e3);
      case SPEED -> within(value, 0, 100);
    };
  }

  private static boolean within(double value, double least, double most) {
    return value >= least && value <= most;
  }
}
