package daylight.line.sonde;

import daylight.line.book.Locate;
import daylight.line.book.Material;
import daylight.line.book.Priors;
import daylight.line.measure.Measured;
import java.util.List;

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

  /** Depth below the lower of two antennas one above the other, by the cube law. */
  public static TwoHeights heights(Measured low, Measured high, Measured apart) {
    return TwoHeights.of(low, high, apart);
  }

  /** Whether the depth grew by as much as the receiver was raised. */
  public static LiftCheck lift(Measured shown, List<Lifted> lifts) {
    return LiftCheck.of(shown, lifts);
  }

  /** Place, depth, direction and strength of the sonde from readings walked all about it. */
  public static WalkReading walk(List<Walked> readings) {
    return WalkFit.of(List.copyOf(readings));
  }

  /** From a depth reading to the depths of sonde, invert and cover below the surface. */
  public static Burial buried(DepthShown reading) {
    return Burial.of(reading);
  }

  /** What one locate says by everything that was read at it, in a pipe of unknown material. */
  public static LocateReading read(Locate locate, Priors priors) {
    return new Reader(locate, priors, null).read();
  }

  /** The same where it is known what the pipe is made of. */
  public static LocateReading read(Locate locate, Priors priors, Material material) {
    return new Reader(locate, priors, material).read();
  }

  /**
   * How many skin depths thick the usual wall of an iron or steel pipe is at 512 Hz. From about one
   * the field outside is weak and bent, and depths that rest on strength are not to be relied on.
   * Refuses other materials, which let the field through.
   */
  public static double wallInSkinDepths(Material material) {
    return Wall.of(material).inSkinDepths();
  }

  /**
   * The depth in a conductor at which a field of a frequency has faded to 37 %: √(2ρ/(ωμ)).
   *
   * @param resistivity in ohm metres, more than nothing
   * @param hertz more than nothing
   */
  public static double skinDepth(double resistivity, double hertz) {
    if (!(resistivity > 0) || !(hertz > 0)) {
      throw new IllegalArgumentException(
          "resistivity and hertz must be positive, were " + resistivity + " and " + hertz);
    }
    return StrictMath.sqrt(resistivity / (StrictMath.PI * hertz * Wall.MU_0));
  }
}
