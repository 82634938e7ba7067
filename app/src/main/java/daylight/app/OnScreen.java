package daylight.app;

import daylight.line.measure.Unit;

/** What the unit on a screen is, told from what the last place of the counter is worth. */
public final class OnScreen {
  private static final double EXACT = 1e-6;

  private OnScreen() {}

  /** Whether a counter whose last place is worth so many metres counts in metres. */
  public static boolean metric(double metresPerStep) {
    double places = StrictMath.log10(metresPerStep);
    return Math.abs(places - StrictMath.rint(places)) < EXACT;
  }

  /** The unit that a counter counts in. */
  public static Unit unit(double metresPerStep) {
    return metric(metresPerStep) ? Unit.METRE : Unit.FOOT;
  }

  /** What a counter counts in for people who write in a unit. */
  public static Unit likeliest(Unit written) {
    return switch (written) {
      case METRE, CENTIMETRE, MILLIMETRE -> Unit.METRE;
      case FOOT, INCH -> Unit.FOOT;
    };
  }
}
