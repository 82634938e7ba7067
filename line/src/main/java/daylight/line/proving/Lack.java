package daylight.line.proving;

/**
 * What must be known before a hold test says more.
 *
 * @param why what it is
 * @param reach the label of the reach it is of; empty where it is of the test itself
 */
public record Lack(Why why, String reach) {
  /** What is missing. */
  public enum Why {
    /** How far the level fell, or what was topped up. */
    LOSS,
    /** Over how long. */
    DURATION,
    /** The bore of the riser in which the level was read. */
    RISER,
    /** Which reaches were held. */
    REACHES,
    /** The bore of a reach. */
    BORE,
    /** The length of a reach. */
    LENGTH
  }
}
