package daylight.line.dig;

import daylight.line.book.Boundary;

/**
 * On which side of a boundary a place lies.
 *
 * @param left the probability that it is on the left when walking along the boundary's points, from
 *     0 to 1; beyond its last points the boundary is taken to run on straight
 */
public record GroundSide(Boundary boundary, double left) {
  public double right() {
    return 1 - left;
  }
}
