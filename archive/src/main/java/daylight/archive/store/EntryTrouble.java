package daylight.archive.store;

import daylight.line.measure.ComplaintCode;
import daylight.line.measure.Gravity;
import java.util.Locale;

/** What can be wrong with how an entry stands among the others of its book. */
public enum EntryTrouble implements ComplaintCode {
  /** What it should stand in is not there. */
  NO_PARENT,
  /** No entries stand at these keys: the keys. */
  NO_SECTION,
  /** One entry stands there already, and there is room for one only: the keys. */
  ONE_ALREADY,
  /** It should be withdrawn while others stand in it: how many. */
  HOLDS_OTHERS,
  /** Entries with an identity of their own are written in it, not beside it. */
  OTHERS_WITHIN,
  /** It says another identity than its own: what it says. */
  OTHER_ID;

  @Override
  public String key() {
    return "entry." + name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  @Override
  public Gravity gravity() {
    return Gravity.STOPS;
  }
}
