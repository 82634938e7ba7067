package daylight.line.book;

import daylight.line.measure.Argument;
import daylight.line.measure.Reading;
import org.jspecify.annotations.Nullable;

/** A counter reading is not negative and not past the end of its pass. */
final class CableCheck {
  /** Readings are compared to the millimetre, so that feet and metres may stand side by side. */
  private static final double TOLERANCE = 0.001;

  private CableCheck() {}

  /** Asks it of one reading; null asks nothing. Across a reset readings cannot be compared. */
  static void check(
      FaultList faults, Entry entry, String field, @Nullable Reading cable, Pass pass) {
    faults.notNegative(entry, field, cable);
    Pass.End end = pass.end();
    if (cable != null
        && end != null
        && pass.resets().isEmpty()
        && cable.value() > end.cable().value() + TOLERANCE) {
      faults.add(
          BookFault.BEYOND_END,
          entry,
          field,
          new Argument.Length(cable.value()),
          new Argument.Length(end.cable().value()));
    }
  }
}
