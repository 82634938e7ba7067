package daylight.line.condition;

import daylight.line.measure.Measured;
import daylight.line.measure.Reading;
import org.jspecify.annotations.Nullable;

/**
 * The size by which a finding is judged.
 *
 * @param sized which size it is
 * @param from the name of the quantity it was read from: its own, or a height
 * @param reading what was read
 * @param value the size itself in its SI unit
 * @param doubt the same with its standard uncertainty; null where nobody said how good it is
 */
public record Size(
    Sized sized, String from, Reading reading, double value, @Nullable Measured doubt) {
  /** Whether it was worked out from a height and the bore. */
  public boolean workedOut() {
    return !from.equals(sized.quantity());
  }
}
