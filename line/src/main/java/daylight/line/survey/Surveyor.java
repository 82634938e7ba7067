package daylight.line.survey;

/** The door of the room: adjusts a network by least squares. */
public final class Surveyor {
  private Surveyor() {}

  /** The positions of the points of a plane network, or why there are none. */
  public static Adjustment adjust(PlaneNetwork network) {
    return new PlaneAdjuster(network).adjust();
  }

  /** The heights of the points of a level network, or why there are none. */
  public static LevelAdjustment adjust(LevelNetwork network) {
    return new LevelAdjuster(network).adjust();
  }
}
