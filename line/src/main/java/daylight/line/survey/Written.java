package daylight.line.survey;

import daylight.line.measure.Dimension;
import daylight.line.measure.Reading;
import daylight.line.measure.Unit;
import org.jspecify.annotations.Nullable;

/**
 * A reading as somebody wrote it, from which a slip of the pen can be told.
 *
 * @param reading with its text
 * @param dimension a length or an angle
 * @param bare what a bare number means; null where it says nothing
 */
public record Written(Reading reading, Dimension dimension, @Nullable Unit bare) {
  /** The text with the unit that goes without saying. */
  String shown() {
    return shown(reading.written());
  }

  /** Another text in the same words. */
  String shown(String text) {
    boolean isBare =
        !text.isEmpty() && text.chars().allMatch(c -> "0123456789.,-−+".indexOf(c) >= 0);
    if (!isBare) {
      return text;
    }
    return switch (dimension) {
      case ANGLE -> text + "°";
      default -> bare == null ? text : text + " " + bare.symbol();
    };
  }
}
