package daylight.line.proving;

import daylight.line.measure.Measured;
import org.jspecify.annotations.Nullable;

/**
 * One hold test: a stretch plugged off, filled, and left.
 *
 * @param loss what was measured of the water that went
 * @param duration over how long, seconds
 * @param boreTimesLength sum of bore × length of what was held, square metres; null when not known
 * @param head water above the crown of the highest pipe at the start, metres; null when not known
 */
public record Hold(
    Loss loss, Measured duration, @Nullable Measured boreTimesLength, @Nullable Double head) {

  /** What was measured of the water that went. */
  public sealed interface Loss {
    /**
     * The level fell in a riser that was the only free surface.
     *
     * @param drop by how much, metres
     * @param riser inside diameter of the riser, metres
     */
    record Drop(Measured drop, Measured riser) implements Loss {}

    /**
     * It was topped up to the mark.
     *
     * @param volume with how much, cubic metres
     */
    record ToppedUp(Measured volume) implements Loss {}
  }
}
