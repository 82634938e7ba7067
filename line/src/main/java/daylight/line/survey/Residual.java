package daylight.line.survey;

import org.jspecify.annotations.Nullable;

/**
 * How one component of one sighting fits.
 *
 * @param entry the book entry
 * @param quantity which component of it
 * @param read the reading as written, metres or radians
 * @param readSd its standard deviation, metres or radians
 * @param residual computed minus observed, metres or radians
 * @param sd standard deviation of the residual, metres or radians
 * @param redundancy share of the reading that the others check, 0 (not at all) to 1
 * @param standardised residual over its standard deviation; null where nothing checks the reading
 * @param detectable the smallest blunder that would be found, metres or radians; null where nothing
 *     checks the reading
 */
public record Residual(
    String entry,
    Quantity quantity,
    double read,
    double readSd,
    double residual,
    double sd,
    double redundancy,
    @Nullable Double standardised,
    @Nullable Double detectable) {

  /** Below this redundancy number nothing checks a reading (common practice, no source). */
  public static final double UNCHECKED_BELOW = 0.01;

  /** Whether other readings would show a blunder in this one. */
  public boolean checked() {
    return redundancy >= UNCHECKED_BELOW;
  }
}
