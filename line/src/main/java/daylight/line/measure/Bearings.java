package daylight.line.measure;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Directions on the plan, clockwise from grid north. */
final class Bearings {
  private static final double TURN = 2 * StrictMath.PI;
  private static final double RIGHT_ANGLE = StrictMath.PI / 2;
  private static final double ROUNDING = 1e-12;
  private static final List<String> EIGHT = List.of("n", "ne", "e", "se", "s", "sw", "w", "nw");
  private static final Pattern QUADRANT = Pattern.compile("([ns])(.*)([ew])");

  private Bearings() {}

  /**
   * Understands {@code N 30 E}, {@code SW} and angles from 0 to a full turn; from 0 to below 2π.
   */
  static Parsed<Double> radians(String plain) {
    int eighth = EIGHT.indexOf(plain);
    if (eighth >= 0) {
      return new Parsed.Value<>(eighth * TURN / 8);
    }
    Matcher quadrant = QUADRANT.matcher(plain);
    return quadrant.matches()
        ? Meaning.of(Dimension.ANGLE, quadrant.group(2).strip(), null)
            .then(angle -> turned(quadrant.group(1), angle, quadrant.group(3)))
        : Meaning.of(Dimension.ANGLE, plain, null).then(Bearings::whole);
  }

  private static Parsed<Double> turned(String from, double angle, String toward) {
    if (!(angle >= 0 && angle <= RIGHT_ANGLE + ROUNDING)) {
      return Parsed.refused(Refusal.OUT_OF_RANGE);
    }
    double start = from.equals("n") ? 0 : StrictMath.PI;
    boolean clockwise = from.equals("n") == toward.equals("e");
    return whole(clockwise ? start + angle : (start + TURN - angle) % TURN);
  }

  private static Parsed<Double> whole(double angle) {
    if (angle < 0) {
      return Parsed.refused(Refusal.OUT_OF_RANGE);
    }
    return new Parsed.Value<>(angle >= TURN - ROUNDING ? 0 : angle);
  }
}
