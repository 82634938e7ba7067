package daylight.line.sonde;

import daylight.line.measure.Measured;

/**
 * One reading of the walk. Places in metres: x to the right, y ahead, height of the antenna above
 * the plane that depths are counted from.
 */
public sealed interface Walked {
  /** To the right, in metres. */
  double x();

  /** Ahead, in metres. */
  double y();

  /** Of the antenna, in metres. */
  double height();

  /** The strength one antenna showed, zero or more, in any unit that stays the same. */
  record Strength(double x, double y, double height, Antenna antenna, Measured value)
      implements Walked {
    public Strength {
      requirePlace(x, y, height);
      if (!(value.value() >= 0)) {
        throw new IllegalArgumentException("value must not be negative, was " + value.value());
      }
    }
  }

  /**
   * All three parts at once, right against each other in sign; the sign they share means nothing,
   * for a receiver does not know the phase.
   */
  record Parts(double x, double y, double height, Measured right, Measured ahead, Measured up)
      implements Walked {
    public Parts {
      requirePlace(x, y, height);
    }
  }

  private static void requirePlace(double x, double y, double height) {
    if (!Double.isFinite(x + y + height)) {
      throw new IllegalArgumentException(
          "place must be finite, was " + x + " m, " + y + " m, " + height + " m");
    }
  }
}
