package daylight.line.frost;

import daylight.line.measure.Measured;

/**
 * What is left between the frost of a winter and something in the ground.
 *
 * @param below how deep it lies below the ground, metres
 * @param frost how deep the frost goes
 * @param left the one less the other, metres; negative where frost goes deeper
 */
public record Margin(Measured below, FrostDepth.Reaches frost, Measured left) {

  /** Of something that lies so deep; its depth and the frost's err apart from each other. */
  public static Margin of(Measured below, FrostDepth.Reaches frost) {
    return new Margin(below, frost, below.minus(frost.depth()));
  }

  /** The probability that frost gets there. */
  public double reached() {
    return left.probabilityBelow(0);
  }

  /** The input that makes it most unsure. */
  public Input deciding() {
    Share first = frost.shares().getFirst();
    return below.sd() * below.sd() > first.variance() ? Input.COVER : first.input();
  }
}
