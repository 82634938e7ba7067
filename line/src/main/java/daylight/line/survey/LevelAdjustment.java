package daylight.line.survey;

import java.util.List;

/** What became of a {@link LevelNetwork}. */
public sealed interface LevelAdjustment permits LevelAdjusted, LevelAdjustment.Unadjustable {

  /**
   * No height could be determined.
   *
   * @param points the points concerned, in order
   */
  record Unadjustable(Reason reason, List<String> points) implements LevelAdjustment {
    public Unadjustable {
      points = List.copyOf(points);
    }
  }

  /** Why. */
  enum Reason {
    /** There is no sighting. */
    NOTHING_TO_ADJUST,
    /** The datum point asked for is not in the network. */
    DATUM_MISSING
  }
}
