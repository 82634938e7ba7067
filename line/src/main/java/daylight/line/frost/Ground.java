package daylight.line.frost;

import daylight.line.measure.Measured;
import org.jspecify.annotations.Nullable;

/**
 * The ground that the frost goes into, alike all the way down.
 *
 * @param grain by which its conductivity follows from density and water, where it was not given
 * @param dryDensity without its water, kilograms per cubic metre
 * @param moisture its water by dry weight, a share; 0 for dry ground
 * @param conductivity the mean of frozen and thawed, watts per metre and kelvin; null where it is
 *     to follow from density and water
 */
public record Ground(
    Grain grain, Measured dryDensity, Measured moisture, @Nullable Measured conductivity) {
  public Ground {
    if (!(dryDensity.value() > 0) || !(moisture.value() >= 0)) {
      throw new IllegalArgumentException(
          "ground has a density and no less than no water, were "
              + dryDensity.value()
              + " kg/m³ and "
              + moisture.value());
    }
    if (conductivity != null && !(conductivity.value() > 0)) {
      throw new IllegalArgumentException(
          "conductivity must be positive, was " + conductivity.value());
    }
  }

  /** How coarse it is: water and ice lie otherwise between coarse grains than between fine ones. */
  public enum Grain {
    /** Sand and gravel. */
    COARSE,
    /** Silt and clay. */
    FINE
  }
}
