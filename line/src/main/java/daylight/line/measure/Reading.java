package daylight.line.measure;

import org.jspecify.annotations.Nullable;

/**
 * One measured value as a person wrote it down.
 *
 * @param value the value in the SI unit of its {@link Dimension}, finite
 * @param sd its stated standard uncertainty in the same unit, positive and finite, or null where
 *     the person stated none
 * @param written the text as typed, such as {@code 4' 7"}
 */
public record Reading(double value, @Nullable Double sd, String written) {
  public Reading {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("value must be finite, was " + value);
    }
    if (sd != null && (!(sd > 0) || Double.isInfinite(sd))) {
      throw new IllegalArgumentException("sd must be positive and finite or absent, was " + sd);
    }
  }

  /** The same reading with a stated standard uncertainty in SI units, positive and finite. */
  public Reading withSd(double stated) {
    return new Reading(value, stated, written);
  }
}
