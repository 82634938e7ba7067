package daylight.line.survey;

import java.util.List;

/** Adjusts one plane network. */
final class PlaneAdjuster {
  private final PlaneNetwork network;

  PlaneAdjuster(PlaneNetwork network) {
    this.network = network;
  }

  Adjustment adjust() {
    if (network.sightings().isEmpty()) {
      return new Unadjustable(Unadjustable.Reason.NOTHING_TO_ADJUST, List.of());
    }
    throw new UnsupportedOperationException("not built");
  }
}
