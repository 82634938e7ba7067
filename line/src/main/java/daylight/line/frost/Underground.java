package daylight.line.frost;

import daylight.line.measure.Measured;
import org.jspecify.annotations.Nullable;

/**
 * Water in a buried pipe over a winter.
 *
 * <p>Frost goes down with the square root of time, X·√(t'/t), and the ground behind it is as cold
 * as a straight line from the surface to the front has it. So the cold that ground at depth z gets
 * by the end is v_s·t·(1 − z/X)², and water there is ice when that, through the pipe's resistance,
 * has taken the heat of its freezing: (√t' − √t_z)² ≥ q/v_s with q = ρ·L·A·R (derived, Stefan's
 * ground). What {@link Freezing} leaves out is left out here as well, and the warmth that comes
 * from the ground below: the water takes no less than that.
 *
 * @param margin of the water's surface
 * @param solid the probability that it is all ice by the winter's end
 * @param time from when frost is at the pipe until the water is ice, seconds, if winter lasted;
 *     null where frost as it is expected does not get to the middle of the pipe
 */
public record Underground(Margin margin, double solid, @Nullable Double time) {

  /**
   * Over one winter.
   *
   * @param surface of the water, below the ground, metres
   * @param axis of the pipe, below the ground, metres
   * @param radius of the pipe, metres
   */
  static Underground of(
      FrostDepth.Reaches frost,
      double season,
      Measured surface,
      Measured axis,
      double radius,
      double section) {
    FrostDepth.Terms terms = frost.terms();
    double depth = Math.max(axis.value(), 2 * radius);
    Measured conductivity =
        new Measured(terms.conductivity(), Kersten.DOUBT * terms.conductivity());
    double resistance =
        new Around.Buried(new Measured(depth, axis.sd()), radius, conductivity)
            .resistance()
            .value();
    double heat = Freezing.DENSITY * Berggren.LATENT * section * resistance;
    double cold = terms.surfaceCold();
    double share = StrictMath.sqrt(heat / (cold * season));
    double gone = frost.depth().value() - depth;
    Double time = null;
    if (gone > 0) {
      double arrives = StrictMath.sqrt(season) * depth / frost.depth().value();
      double ice = arrives + StrictMath.sqrt(heat / cold);
      time = ice * ice - arrives * arrives;
    }
    return new Underground(
        Margin.of(surface, frost), solid(frost.depth(), depth, axis.sd(), share), time);
  }

  /** Frost must go beyond the pipe by so much that the cold there does it before the end. */
  private static double solid(Measured frost, double depth, double depthSd, double share) {
    if (share >= 1) {
      return 0;
    }
    Measured needed = new Measured(depth / (1 - share), depthSd / (1 - share));
    return needed.minus(frost).probabilityBelow(0);
  }
}
