package daylight.line.course;

/** Angles on the circle. */
final class Angles {
  private Angles() {}

  /** The same direction within half a turn of zero. */
  static double wrap(double angle) {
    return StrictMath.IEEEremainder(angle, 2 * Math.PI);
  }
}
