package daylight.line.flow;

/** How a flow runs down a pipe by gravity, steadily. */
public sealed interface Running {
  /** Nothing runs. */
  record NoFlow() implements Running {}

  /**
   * The pipe does not fall.
   *
   * @param slope fall over length: 0 level, below 0 backward
   */
  record NotFalling(double slope) implements Running {}

  /**
   * It runs with a free surface.
   *
   * @param depth of the water, metres
   * @param filled depth over bore
   * @param speed metres per second
   * @param regime how it moves
   * @param outletDrowned whether water stands above this at the outlet and holds it up
   */
  record PartFull(
      Propagated depth, double filled, Propagated speed, Regime regime, boolean outletDrowned)
      implements Running {
    /** Whether it runs fast enough to carry grit along. */
    public boolean cleans() {
      return speed.value().value() >= Gravity.SELF_CLEANSING;
    }
  }

  /**
   * More comes than the pipe carries when full: it runs under pressure and water rises upstream.
   *
   * @param capacity full, cubic metres per second
   * @param slope at which the water's head must fall to press it through
   * @param rise by how much the head grows along each metre upstream beyond the pipe's own fall
   */
  record Surcharged(double capacity, double slope, double rise) implements Running {}
}
