package daylight.app.field;

import daylight.line.measure.Print;
import daylight.line.measure.Shown;

/**
 * Which camera head and which skid fit a bore. Common practice, no source: a head wider than about
 * six tenths of the bore catches at bends and joints; a skid of about three quarters brings the
 * lens near the middle; in a bore below three inches there is no room for one.
 */
final class HeadAdvice {
  private static final double HEAD = 0.6;
  private static final double SKID = 0.75;
  private static final double NO_SKID_BELOW = 0.07;

  private HeadAdvice() {}

  /** In words, with figures rounded to what a rule of thumb allows. */
  static String told(double bore, Shown shown, Phrases phrases) {
    String head = phrases.figure(size(HEAD * bore, shown));
    return bore < NO_SKID_BELOW
        ? phrases.say("before.head.bare", head)
        : phrases.say("before.head.skid", head, phrases.figure(size(SKID * bore, shown)));
  }

  /** To the half inch or to five millimetres, never more than the rule says. */
  private static String size(double metres, Shown shown) {
    double step = shown == Shown.METRES ? 0.005 : 0.0254 / 2;
    return Print.bore(StrictMath.floor(metres / step + 1e-9) * step, shown);
  }
}
