package daylight.line.flow;

import daylight.line.measure.Measured;

/**
 * A stretch of round pipe that water runs down by itself.
 *
 * @param bore inside diameter, metres
 * @param slope fall over length, positive with the water
 * @param roughness of its wall
 * @param free share of the cross-section that nothing stands in, more than 0, at most 1: less than
 *     1 only where a part of it was measured to be filled
 * @param viscosity of the water, square metres per second
 */
public record GravityPipe(
    Measured bore, Measured slope, Roughness roughness, double free, double viscosity) {
  public GravityPipe {
    if (!(bore.value() > 0)) {
      throw new IllegalArgumentException("bore must be positive, was " + bore.value());
    }
    if (!(free > 0 && free <= 1)) {
      throw new IllegalArgumentException("free must be above 0, at most 1, was " + free);
    }
    if (roughness.law() == FrictionLaw.HAZEN_WILLIAMS) {
      throw new IllegalArgumentException("Hazen and Williams is for full pipes under pressure");
    }
  }

  /** The same where nothing stands in it, with water of the usual temperature. */
  public static GravityPipe of(Measured bore, Measured slope, Roughness roughness) {
    return new GravityPipe(bore, slope, roughness, 1, Water.viscosity(Water.USUAL_CELSIUS));
  }
}
