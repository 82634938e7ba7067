package daylight.line.sonde;

/**
 * The marks are not those of one transmitter.
 *
 * @param reason why not
 * @param excess by how much, in metres
 */
public record NoDipole(Reason reason, double excess) implements NullReading {
  /** Why no dipole makes such marks. */
  public enum Reason {
    /** The upright antenna fell silent outside the two nulls, by more than the marks are off. */
    OVER_OUTSIDE,
    /** So far beside the pipe the nulls would lie further apart than they do. */
    TOO_FAR_BESIDE,
    /** Only a sonde tilted quite otherwise than is believed could make them. */
    OTHER_TILT
  }
}
