package daylight.line.measure;

/**
 * The part of a pipe's wall from one clock position clockwise to another, as the camera head looks.
 *
 * @param from where it begins, radians clockwise from twelve, from 0 to below 2π
 * @param to where it ends, likewise; the range runs clockwise, so 9 to 3 passes twelve
 * @param written the text as typed, such as {@code 9-3}
 */
public record ClockRange(double from, double to, String written) {
  private static final double TURN = 2 * StrictMath.PI;

  public ClockRange {
    if (!(from >= 0 && from < TURN)) {
      throw new IllegalArgumentException("from must be in [0, 2π) rad, was " + from);
    }
    if (!(to >= 0 && to < TURN)) {
      throw new IllegalArgumentException("to must be in [0, 2π) rad, was " + to);
    }
  }

  /** How far the range reaches clockwise, radians, from 0 to below 2π. */
  public double width() {
    return to >= from ? to - from : to - from + TURN;
  }
}
