package daylight.line.book;

import daylight.line.measure.Reading;
import org.jspecify.annotations.Nullable;

/**
 * One measurement in plan. It names points by label: landmarks, locates, exposures, nodes and the
 * points of service marks share one set of names. Lengths are in metres, angles in radians.
 */
public sealed interface Tie extends Entry {
  /** A tape between two points. */
  record Tape(Id id, String from, String to, Reading length) implements Tie {}

  /**
   * So far along a wall and so far out from it: stand with your back to the wall at its zero
   * corner, then along runs to your right and out straight ahead.
   *
   * @param zero the landmark at which the tape along the wall starts
   * @param toward the landmark toward which it runs
   */
  record AlongOut(Id id, String point, String zero, String toward, Reading along, Reading out)
      implements Tie {}

  /** A bearing clockwise from grid north. */
  record Bearing(Id id, String from, String to, Reading bearing) implements Tie {}

  /** An angle at one point, clockwise from a second to a third. */
  record Angle(Id id, String at, String from, String to, Reading angle) implements Tie {}

  /** A reading of a horizontal circle; all of one set share an unknown orientation. */
  record Direction(Id id, String set, String from, String to, Reading direction) implements Tie {}

  /**
   * A satellite fix on WGS 84.
   *
   * @param latitude in degrees, north positive
   * @param longitude in degrees, east positive
   * @param spread how far it may be off by itself; null when not stated
   * @param shared what it has in common with other fixes of the visit; null for nothing
   */
  record Gnss(
      Id id,
      String point,
      double latitude,
      double longitude,
      @Nullable Spread spread,
      @Nullable Shared shared)
      implements Tie {}

  /**
   * How far a satellite fix may be off by itself.
   *
   * @param east standard uncertainty in metres, positive
   * @param north standard uncertainty in metres, positive
   * @param correlation of the two, within ±0.999
   */
  record Spread(double east, double north, double correlation) {
    /** As much in every direction. */
    public static Spread round(double sd) {
      return new Spread(sd, sd, 0);
    }

    public Spread {
      if (!(east > 0 && north > 0) || Double.isInfinite(east) || Double.isInfinite(north)) {
        throw new IllegalArgumentException(
            "east and north must be positive and finite, in m, were " + east + " and " + north);
      }
      if (!(Math.abs(correlation) <= 0.999)) {
        throw new IllegalArgumentException("correlation must be within ±0.999, was " + correlation);
      }
    }
  }

  /**
   * An error that all satellite fixes of one set-up of the receiver share: an unknown shift east
   * and another north.
   *
   * @param set names the set-up within its visit
   * @param sd standard uncertainty of either shift in metres, zero or more
   */
  record Shared(String set, double sd) {
    public Shared {
      if (!(sd >= 0) || Double.isInfinite(sd)) {
        throw new IllegalArgumentException("sd must be zero or more, in m, was " + sd);
      }
    }
  }

  /** A spot dropped on the sketch, in metres of the site grid; coarse. */
  record Sketched(Id id, String point, Reading east, Reading north) implements Tie {}

  /** On which side of a wall or line a point lies, looking from one landmark to another. */
  record Side(Id id, String point, String from, String to, boolean left) implements Tie {}
}
