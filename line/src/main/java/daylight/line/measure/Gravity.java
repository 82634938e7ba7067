package daylight.line.measure;

/** How much a complaint stands in the way of an answer. */
public enum Gravity {
  /** Nothing can be answered until it is mended. */
  STOPS,
  /** Answered all the same, with or without the entry, and said so. */
  DOUBT,
  /** Worth knowing. */
  NOTE
}
