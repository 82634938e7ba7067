package daylight.archive;

import daylight.line.measure.ComplaintCode;
import daylight.line.measure.Gravity;
import java.util.Locale;

/** What can be wrong with a table of causes or of urgency, beyond its form. */
public enum RuleTrouble implements ComplaintCode {
  /** A kind that the catalogue does not know: the kind, and what was probably meant. */
  KIND_UNKNOWN,
  /** A key that this sign does not have: the key, the sign. */
  NOT_OF_SIGN,
  /** A row for what an earlier row is for: what. */
  ROW_TWICE,
  /** A case that has no row: the class, the consequence. */
  ROW_MISSING,
  /** A worse case that is less urgent than a better one: its word, the better case's word. */
  MILDER_THOUGH_WORSE,
  /** A figure that must be less than another: the two as written. */
  NOT_LESS,
  /** A text that is no whole number up to a largest: the text, the largest. */
  NOT_WHOLE,
  /** A word that leaves less time than a more urgent one: the word, the more urgent one. */
  SHORTER_THOUGH_MILDER;

  @Override
  public String key() {
    return "rules." + name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  @Override
  public Gravity gravity() {
    return Gravity.STOPS;
  }
}
