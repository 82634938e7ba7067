package daylight.line.frost;

import daylight.line.measure.Measured;

/**
 * How long water that stands in a pipe takes to freeze.
 *
 * <p>To its freezing point: ρ·c·A·R·ln((tᵢ − tₐ)/(t_f − tₐ)), ashrae-23.1, with what is there of
 * the section in place of the whole. From there to ice: ρ·L·A·R/(t_f − tₐ), the heat of freezing
 * through the same resistance (derived). Left out: the ice's own resistance, the pipe's wall, the
 * air above water that does not fill it, heat that comes along the pipe or with water that trickles
 * in, and water that cools below its freezing point before it freezes.
 */
public final class Freezing {
  /** Water at its freezing point, kilograms per cubic metre: 62.4 lb/ft³. */
  static final double DENSITY = 62.4 * 16.018463373960138;

  /** Joules per kilogram and kelvin: 1 Btu/lb·°F. */
  static final double SPECIFIC = 4186.8;

  private Freezing() {}

  /**
   * In a steady cold.
   *
   * @param outside in °C: the air round a pipe in the open, or the ground at the depth of a buried
   *     one
   */
  public static FreezeTime time(StandingWater water, Around around, Measured outside) {
    if (outside.value() >= 0) {
      return new FreezeTime.Never();
    }
    Measured section = water.section();
    Measured resistance = around.resistance();
    double through = DENSITY * section.value() * resistance.value();
    double cold = -outside.value();
    double warm = water.temperature().value();
    double log = StrictMath.log((warm + cold) / cold);
    double cooling = through * SPECIFIC * log;
    double solid = through * Berggren.LATENT / cold;
    double scale =
        StrictMath.hypot(section.sd() / section.value(), resistance.sd() / resistance.value());
    double coolingByCold = through * SPECIFIC * (1 / (warm + cold) - 1 / cold) * outside.sd();
    double solidByCold = -solid / cold * outside.sd();
    double coolingByWarm = through * SPECIFIC / (warm + cold) * water.temperature().sd();
    return new FreezeTime.Freezes(
        new Measured(cooling, hypot(cooling * scale, coolingByCold, coolingByWarm)),
        new Measured(solid, hypot(solid * scale, solidByCold, 0)),
        new Measured(
            cooling + solid,
            hypot((cooling + solid) * scale, coolingByCold + solidByCold, coolingByWarm)));
  }

  private static double hypot(double a, double b, double c) {
    return StrictMath.hypot(StrictMath.hypot(a, b), c);
  }
}
