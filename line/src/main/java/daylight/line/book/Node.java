package daylight.line.book;

import org.jspecify.annotations.Nullable;

/**
 * An end of a reach.
 *
 * @param what it in words; null when not recorded
 */
public record Node(Id id, Kind kind, @Nullable String what) implements Entry {
  /** The sort of place where reaches begin, meet or end. */
  public enum Kind {
    /** A cleanout, inspection chamber, trap or pulled fixture: a place to enter. */
    ACCESS,
    /** Where pipes meet under ground. */
    JUNCTION,
    /** Where water comes out into the open or into somebody's main. */
    OUTLET,
    /** Where water comes in: a roof leader, a floor drain, a fixture. */
    INLET,
    /** A pit that collects water. */
    PIT,
    /** Where the pipe was lost or simply ends, as far as is known. */
    END
  }
}
