package daylight.line.measure;

/** Why a text was not understood as a quantity. */
public enum Refusal {
  /** Nothing but blanks. */
  EMPTY,
  /** Far longer than any quantity, so not looked into. */
  TOO_LONG,
  /** No number where one was expected, or one that is malformed, such as {@code 5.5.5}. */
  NOT_A_NUMBER,
  /** A number that must be whole is not. */
  NOT_WHOLE,
  /** A bare number of a quantity that needs a unit. */
  UNIT_MISSING,
  /** A word after the number that names no known unit. */
  UNIT_UNKNOWN,
  /** A known unit, but of another kind of quantity. */
  UNIT_OF_ANOTHER_DIMENSION,
  /** A comma in a number: it may be a decimal sign or group digits. */
  AMBIGUOUS_COMMA,
  /** A colon that could mean two things, such as {@code 0:30} for a duration. */
  AMBIGUOUS_COLON,
  /** Twelve inches or more after feet. */
  INCHES_NOT_BELOW_TWELVE,
  /** The parts of a compound are out of order, of different systems, too large, or not whole. */
  PARTS_DO_NOT_FIT,
  /** More text after a quantity that was complete. */
  TRAILING_TEXT,
  /** Understood, but outside the range of its {@link Dimension}. */
  OUT_OF_RANGE
}
