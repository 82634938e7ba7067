package daylight.line.survey;

import java.util.List;

/**
 * A network in which no point could be determined.
 *
 * @param reason what is missing
 * @param undetermined every point with its own reason, in order of label; empty when the reason is
 *     about the network as a whole
 */
public record Unadjustable(Reason reason, List<Undetermined> undetermined) implements Adjustment {

  /** Why nothing can be computed. */
  public enum Reason {
    /** There is no sighting. */
    NOTHING_TO_ADJUST,
    /** Nothing fixed and too few base landmarks, or nothing that gives north. */
    DATUM_MISSING,
    /** The two base landmarks are one spot. */
    BASE_COINCIDENT,
    /** No sighting leads from the datum to any point. */
    POINT_NOT_REACHED,
    /** Every point that is reached has two mirror positions and nothing says which. */
    MIRROR_UNRESOLVED,
    /** The iteration did not settle. */
    NOT_CONVERGED
  }

  public Unadjustable {
    undetermined = List.copyOf(undetermined);
  }
}
