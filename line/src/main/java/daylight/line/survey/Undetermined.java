package daylight.line.survey;

import java.util.List;

/** A point of the network whose position the sightings do not give. */
public sealed interface Undetermined {
  String point();

  /** The entries that do speak of the point, in order. */
  List<String> entries();

  /** Too little is known of the point. */
  record Untied(String point, Reason reason, List<String> entries) implements Undetermined {
    public Untied {
      entries = List.copyOf(entries);
    }
  }

  /**
   * Two positions (or more, where one mirror hangs on another) fit alike. To be asked, not guessed:
   * a side, or a third tie, decides.
   *
   * @param candidates where it may be, by x, then by y
   */
  record Mirror(String point, List<PlanPoint> candidates, List<String> entries)
      implements Undetermined {
    public Mirror {
      candidates = List.copyOf(candidates);
      entries = List.copyOf(entries);
    }
  }

  /** What is missing. */
  enum Reason {
    /** No sighting leads to it from any determined point. */
    NOT_REACHED,
    /** One tie only: it lies somewhere on a circle or a line. */
    ONE_TIE_ONLY,
    /** A base landmark whose direction is the grid north but whose distance nobody measured. */
    DISTANCE_UNKNOWN,
    /** Tied, but the lines of sight meet so flat that they leave a direction open. */
    TOO_FLAT,
    /** Satellite fixes at fewer than two determined points do not tie it to the grid. */
    FIX_NOT_TIED
  }
}
