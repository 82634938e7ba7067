package daylight.line.proving;

import daylight.line.measure.Mark;
import org.jspecify.annotations.Nullable;

/**
 * What a published criterion lets a full pipe lose, for new work.
 *
 * @param id its id
 * @param title what it is, with edition or year where known
 * @param allows how much
 * @param hold how long it is to be held at least, seconds; null where the source does not say
 * @param headFrom the least head of water above the crown, metres; null where the source sets none
 * @param headTo the greatest; null where the source sets none
 * @param clause where in the source it stands
 * @param source id in the list of sources
 * @param mark how the figures were come by
 * @param note what a reader should know; null for nothing
 */
public record HoldLimit(
    String id,
    String title,
    Allows allows,
    @Nullable Double hold,
    @Nullable Double headFrom,
    @Nullable Double headTo,
    String clause,
    String source,
    Mark mark,
    @Nullable String note) {
  public HoldLimit {
    boolean upsideDown = headFrom != null && headTo != null && headTo < headFrom;
    if (upsideDown || (hold != null && !(hold > 0))) {
      throw new IllegalArgumentException(id + ": heads must rise and a hold must last");
    }
  }

  /** How much may be lost. */
  public sealed interface Allows {
    /**
     * So much from each square metre of wetted wall in so long.
     *
     * @param rate metres per second: cubic metres from a square metre in a second
     */
    record BySurface(double rate) implements Allows {}

    /**
     * So much for each metre of bore and metre of length in so long.
     *
     * @param rate metres per second: cubic metres for a square metre of bore times length in a
     *     second
     */
    record ByBoreAndLength(double rate) implements Allows {}

    /** Nothing: no fall of the level may be seen. */
    record NoDrop() implements Allows {}
  }

  /**
   * What may be lost for each square metre of bore times length, metres per second; null where no
   * drop may be seen. The wetted wall of a full pipe is π × bore × length.
   */
  @Nullable Double perBoreAndLength() {
    return switch (allows) {
      case Allows.BySurface(double rate) -> Double.valueOf(StrictMath.PI * rate);
      case Allows.ByBoreAndLength(double rate) -> Double.valueOf(rate);
      case Allows.NoDrop none -> null;
    };
  }
}
