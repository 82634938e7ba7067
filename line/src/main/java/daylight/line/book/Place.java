package daylight.line.book;

/**
 * A place in a pipe.
 *
 * @param reach the label of the reach
 * @param distance from its upstream node, in metres along the pipe
 */
public record Place(String reach, double distance) {
  public Place {
    if (!Double.isFinite(distance)) {
      throw new IllegalArgumentException(reach + ": distance must be finite, was " + distance);
    }
  }
}
