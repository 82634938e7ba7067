package daylight.line.answer;

import daylight.line.measure.Key;

/** What can hurt somebody who acts on an answer. */
public enum Caution implements Key {
  NOTIFY_BEFORE_DIGGING,
  HAND_DIG,
  LOCATES_APPROXIMATE,
  TRENCH,
  /** The ground over a broken drain may give way. */
  HOLLOW_GROUND,
  SEWAGE,
  GAS,
  CONFINED_SPACE,
  ELECTRICITY,
  /** A frozen pipe is not to be thawed with a flame. */
  THAWING,
  LOCAL_CODES,
  CAMERA_PROVES_NO_TIGHTNESS;

  @Override
  public String key() {
    return "caution." + name().toLowerCase(java.util.Locale.ROOT);
  }
}
