package daylight.line.sonde;

/**
 * The walk does not tell where the sonde is.
 *
 * @param reason why
 * @param given how many figures there were
 */
public record WalkRefused(Reason reason, int given) implements WalkReading {
  /** Why a walk tells nothing. */
  public enum Reason {
    /** Six unknowns and fewer than seven figures. */
    TOO_FEW,
    /** Nothing but silence. */
    SILENT,
    /** The places walked leave something open, such as when all readings stand in one spot. */
    LEAVES_OPEN,
    /** No start came to rest. */
    NOT_SETTLED
  }
}
