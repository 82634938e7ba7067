package daylight.archive.form;

import daylight.line.book.Units;
import daylight.line.measure.Unit;
import org.jspecify.annotations.Nullable;

/** Which of a book's units a bare number is meant in. */
public enum Bare {
  /** None: the unit must be written. */
  NONE,
  DISTANCE,
  DEPTH,
  BORE,
  LEVEL;

  /** The unit in a book of these units; null where a bare number is a complaint. */
  public @Nullable Unit in(Units units) {
    return switch (this) {
      case NONE -> null;
      case DISTANCE -> units.distance();
      case DEPTH -> units.depth();
      case BORE -> units.bore();
      case LEVEL -> units.level();
    };
  }
}
