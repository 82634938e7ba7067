package daylight.line.sonde;

import daylight.line.measure.Measured;

/**
 * The door of the room: where the sonde is and how deep, from what the receiver showed. Lengths in
 * metres, angles in radians, every depth below the receiver's antenna unless another is named.
 */
public final class Sonde {
  private Sonde() {}

  /** Depth of a level sonde from the spacing of its nulls along the pipe: spacing over √2. */
  public static Measured level(Measured spacing) {
    return spacing.times(1 / StrictMath.sqrt(2));
  }

  /**
   * How many times too deep the level rule reads a sonde that is tilted: √(1 + 9/8 tan²), from 1.
   *
   * @param tilt in radians, of less than a right angle
   */
  public static double overReadByTilt(double tilt) {
    if (!(StrictMath.abs(tilt) < StrictMath.PI / 2)) {
      throw new IllegalArgumentException(
          "tilt must be less than a right angle, was " + tilt + " rad");
    }
    double t = StrictMath.tan(tilt);
    return StrictMath.sqrt(1 + 9 * t * t / 8);
  }

  /**
   * How many times too deep the level rule reads when the walk runs beside the pipe: √(1 + y²/d²).
   *
   * @param depth in metres, more than nothing
   * @param beside in metres, either side
   */
  public static double overReadBeside(double depth, double beside) {
    if (!(depth > 0)) {
      throw new IllegalArgumentException("depth must be more than 0 m, was " + depth + " m");
    }
    return StrictMath.hypot(1, beside / depth);
  }

  /**
   * Where the nulls place the sonde, with what is believed of its tilt. Refused as an answer: marks
   * that no dipole makes.
   *
   * @param tilt positive with the nose up the way that was walked
   */
  public static NullReading nulls(NullMarks marks, Measured tilt) {
    return Nulls.with(marks, tilt);
  }

  /**
   * The same when nothing is believed of the tilt; needs the null of the upright antenna. The tilt
   * hangs on a few centimetres between that null and the middle of the others, so that it is mostly
   * very unsure.
   */
  public static NullReading nullsAlone(NullMarks marks) {
    return Nulls.alone(marks);
  }
}
