package daylight.line.answer;

import daylight.line.measure.Key;

/** What an owner asks of a line. */
public enum Question implements Key {
  WHERE,
  CLEAR,
  SOUND,
  DRAIN,
  COPE,
  FREEZE,
  WHAT_NOW;

  @Override
  public String key() {
    return "question." + name().toLowerCase(java.util.Locale.ROOT);
  }
}
