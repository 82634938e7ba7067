package daylight.line.frost;

import daylight.line.measure.Filled;
import daylight.line.measure.Measured;
import org.jspecify.annotations.Nullable;

/**
 * Water that stands in a pipe.
 *
 * @param section what it takes of the pipe's section, square metres
 * @param temperature in °C, above freezing
 */
public record StandingWater(Measured section, Measured temperature) {
  public StandingWater {
    if (!(section.value() > 0) || !(temperature.value() > 0)) {
      throw new IllegalArgumentException(
          "water takes room and is not frozen yet, were "
              + section.value()
              + " m² and "
              + temperature.value()
              + " °C");
    }
  }

  /**
   * Water of a depth in a round pipe.
   *
   * @param bore inside diameter, metres
   * @param depth of the water, metres; null for a full pipe
   */
  public static StandingWater in(Measured bore, @Nullable Measured depth, Measured temperature) {
    double d = bore.value();
    if (depth == null || depth.value() >= d) {
      double full = StrictMath.PI / 4 * d * d;
      return new StandingWater(new Measured(full, 2 * full * bore.sd() / d), temperature);
    }
    double y = depth.value();
    Filled water = new Filled(d, y);
    double area = water.area();
    double byDepth = water.width() * depth.sd();
    // At one share of the bore the area goes with its square.
    double byBore = (2 * area - water.width() * y) / d * bore.sd();
    return new StandingWater(new Measured(area, StrictMath.hypot(byDepth, byBore)), temperature);
  }
}
