package daylight.archive;

import daylight.line.measure.ComplaintCode;
import daylight.line.measure.Gravity;
import java.util.Locale;

/** What can be wrong with a table of codes, beyond its form. */
public enum CodeTrouble implements ComplaintCode {
  /** A code that an earlier row has: the code, the line of that row. */
  CODE_TWICE,
  /** A row all of whose findings an earlier row has: the code, the line of that row. */
  NEVER_REACHED;

  @Override
  public String key() {
    return "codes." + name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  @Override
  public Gravity gravity() {
    return Gravity.STOPS;
  }
}
