package daylight.line.survey;

import java.util.List;

/** Adjusts one level network. */
final class LevelAdjuster {
  private final LevelNetwork network;

  LevelAdjuster(LevelNetwork network) {
    this.network = network;
  }

  LevelAdjustment adjust() {
    if (network.sightings().isEmpty()) {
      return new LevelAdjustment.Unadjustable(LevelAdjustment.Reason.NOTHING_TO_ADJUST, List.of());
    }
    throw new UnsupportedOperationException("not built");
  }
}
