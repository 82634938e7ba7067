package daylight.line.book;

import daylight.line.measure.Reading;

/**
 * A turn of the pipe as the camera saw it.
 *
 * @param cable counter reading where it turns
 * @param angle how far it turns, in radians, positive
 * @param sense which way, as the head looks in the direction of the push
 */
public record Bend(Id id, Reading cable, Reading angle, Sense sense) implements Entry {
  /** Which way a bend turns. */
  public enum Sense {
    LEFT,
    RIGHT,
    UP,
    DOWN,
    /** The plane of the bend is not known, as when the head had rolled. */
    UNKNOWN
  }
}
