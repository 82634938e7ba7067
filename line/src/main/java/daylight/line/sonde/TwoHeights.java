package daylight.line.sonde;

import daylight.line.measure.Measured;
import java.util.OptionalDouble;

/** What two strengths, one above the other, tell. */
public sealed interface TwoHeights {
  /**
   * The depth by the cube law.
   *
   * @param depth below the lower antenna, in metres
   * @param lower95 lower end of its 95 % interval, which is not even about the depth
   * @param upper95 upper end; empty where the strengths are too alike to set one
   * @param asCable what a receiver would show that takes the source for a long cable; far too
   *     shallow over a sonde
   */
  record Depth(Measured depth, double lower95, OptionalDouble upper95, double asCable)
      implements TwoHeights {}

  /**
   * The upper antenna showed no less than the lower: no sonde is below them.
   *
   * @param ratio of the lower strength to the upper
   */
  record NotBelow(double ratio) implements TwoHeights {}

  /**
   * The cube law over the sonde holds for any tilt (pease-1997): R = ((d + s)/d)³.
   *
   * @param low strength at the lower antenna, any unit
   * @param high strength at the upper antenna, same unit
   * @param apart how far one is above the other, in metres
   */
  static TwoHeights of(Measured low, Measured high, Measured apart) {
    requirePositive("low", low);
    requirePositive("high", high);
    requirePositive("apart", apart);
    double ratio = low.value() / high.value();
    if (!(ratio > 1)) {
      return new NotBelow(ratio);
    }
    double relative = StrictMath.hypot(low.sd() / low.value(), high.sd() / high.value());
    double s = apart.value();
    double d = depth(ratio, s);
    double byRatio = d * (d + s) / (3 * s) * relative;
    double bySpacing = d / s * apart.sd();
    double factor = StrictMath.exp(Measured.Z95 * relative);
    double most = ratio / factor;
    double spare = Measured.Z95 * bySpacing;
    double below = d - StrictMath.hypot(d - depth(ratio * factor, s), spare);
    OptionalDouble above =
        most > 1
            ? OptionalDouble.of(d + StrictMath.hypot(depth(most, s) - d, spare))
            : OptionalDouble.empty();
    return new Depth(
        new Measured(d, StrictMath.hypot(byRatio, bySpacing)),
        StrictMath.max(0, below),
        above,
        s / (ratio - 1));
  }

  private static double depth(double ratio, double apart) {
    return apart / (StrictMath.cbrt(ratio) - 1);
  }

  private static void requirePositive(String name, Measured value) {
    if (!(value.value() > 0)) {
      throw new IllegalArgumentException(name + " must be positive, was " + value.value());
    }
  }
}
