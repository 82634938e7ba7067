package daylight.line.sonde;

/** Which part of the field a strength is of. Strengths have no sign. */
public sealed interface Antenna {
  /** All of it, however the receiver is held. */
  record Whole() implements Antenna {}

  /** The upright part. */
  record Upright() implements Antenna {}

  /**
   * The level part at a bearing.
   *
   * @param bearing in radians clockwise from ahead
   */
  record Level(double bearing) implements Antenna {}
}
