package daylight.line.survey;

/** A side of a directed line, as seen by somebody looking along it. */
public enum Hand {
  LEFT,
  RIGHT
}
