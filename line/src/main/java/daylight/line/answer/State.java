package daylight.line.answer;

import daylight.line.measure.Key;

/** What became of a question. */
public enum State implements Key {
  ANSWERED,
  WITHIN_LIMITS,
  NO,
  CANNOT_SAY_YET,
  DOES_NOT_APPLY;

  @Override
  public String key() {
    return "state." + name().toLowerCase(java.util.Locale.ROOT);
  }
}
