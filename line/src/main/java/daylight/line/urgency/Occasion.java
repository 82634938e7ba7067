package daylight.line.urgency;

import daylight.line.measure.Key;
import java.util.Locale;

/** Why a line is looked at again, beside what is to be watched. */
public enum Occasion implements Key {
  /** Some of it was not seen, or not clearly. */
  NOT_SEEN_WHOLE,
  /** It was cleaned, and what was taken away may come back. */
  CLEANED,
  /** Something is to be done, and it is to be seen whether that was done and holds. */
  WORK_DUE,
  /** Nothing was found that asks for anything. */
  NOTHING_FOUND;

  @Override
  public String key() {
    return "occasion." + name().toLowerCase(Locale.ROOT);
  }
}
