package daylight.line.frost;

import daylight.line.measure.Measured;
import org.jspecify.annotations.Nullable;

/**
 * What lies between the air and the ground.
 *
 * @param factor what share of the air's freezing index the surface gets
 * @param snow that lies on it all winter; null for none
 */
public record Surface(Measured factor, @Nullable Snow snow) {
  public Surface {
    if (!(factor.value() > 0)) {
      throw new IllegalArgumentException("factor must be positive, was " + factor.value());
    }
  }

  /**
   * Snow that lies all winter. The factor is then that of its top.
   *
   * @param depth metres
   * @param conductivity watts per metre and kelvin
   */
  public record Snow(Measured depth, Measured conductivity) {
    public Snow {
      if (!(depth.value() >= 0) || !(conductivity.value() > 0)) {
        throw new IllegalArgumentException(
            "snow has no less than no depth and conducts, were "
                + depth.value()
                + " m and "
                + conductivity.value()
                + " W/m·K");
      }
    }
  }
}
