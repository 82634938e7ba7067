package daylight.archive;

import daylight.line.measure.ComplaintCode;
import daylight.line.measure.Gravity;
import java.util.Locale;

/** What can be wrong with a table of grades, beyond its form. */
public enum GradeTrouble implements ComplaintCode {
  /** A kind that the catalogue does not know: the kind, and what was probably meant. */
  KIND_UNKNOWN,
  /** A kind that outranks every grade: the kind. */
  KIND_OUTRANKS,
  /** A size or particular that the kind does not have: the name, those it has. */
  NOT_OF_KIND,
  /** What a share is worked out from must be a length of the kind: the name. */
  NOT_A_HEIGHT,
  /** A limit that is not less than that of the worse class before it: the two as written. */
  NOT_FALLING,
  /** The class of what reaches no limit is not milder than the others: the class. */
  BELOW_NOT_MILDER,
  /** A row for the very findings of an earlier row: the kind. */
  ROW_TWICE,
  /** A row for some findings that an earlier row is for too: the kind. */
  ROWS_OVERLAP;

  @Override
  public String key() {
    return "grades." + name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  @Override
  public Gravity gravity() {
    return Gravity.STOPS;
  }
}
