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
   * @param sd standard uncertainty of each horizontal component in metres; null when not stated
   */
  record Gnss(Id id, String point, double latitude, double longitude, @Nullable Double sd)
      implements Tie {}

  /** A spot dropped on the sketch, in metres of the site grid; coarse. */
  record Sketched(Id id, String point, Reading east, Reading north) implements Tie {}

  /** On which side of a wall or line a point lies, looking from one landmark to another. */
  record Side(Id id, String point, String from, String to, boolean left) implements Tie {}
}
