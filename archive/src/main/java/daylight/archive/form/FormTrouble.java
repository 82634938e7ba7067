package daylight.archive.form;

import daylight.line.measure.ComplaintCode;
import daylight.line.measure.Gravity;
import java.util.Locale;

/** What can be wrong with a form as a text, whatever it is about. */
public enum FormTrouble implements ComplaintCode {
  /** There is no such file. */
  FILE_MISSING,
  /** It is a folder, a device or the like. */
  NOT_A_FILE,
  /** It could not be read: what the system said. */
  UNREADABLE,
  /** Larger than so many bytes. */
  TOO_LARGE,
  /** Nothing in it. */
  EMPTY,
  /** Not in UTF-8. */
  NOT_UTF8,
  /** A character that no text holds: its code. */
  CONTROL_CHARACTER,
  /** A tab where YAML wants blanks. */
  TAB,
  /** Not YAML: what the reader of YAML said. */
  NOT_YAML,
  /** Not a table of comma-separated values: what the reader of it said. */
  NOT_CSV,
  /** A row of so many cells under so many heads. */
  ROW_LENGTH,
  /** An anchor or alias. */
  ALIAS,
  /** A tag. */
  TAG,
  /** Nested deeper than so many levels. */
  TOO_DEEP,
  /** A second document in one file. */
  SEVERAL_DOCUMENTS,
  /** A list or keys where a key should be. */
  KEY_NOT_TEXT,
  /** The same key again: the key. The first one counts. */
  DUPLICATE_KEY,
  /** A text longer than so many characters. */
  TEXT_TOO_LONG,
  /** A key that is not known here: the key, and what was probably meant. */
  UNKNOWN_KEY,
  /** Not of the shape expected: a term for the shape expected. */
  WRONG_SHAPE,
  /** Nothing stands at a key that is needed: the key. */
  MISSING,
  /** Not one of the words known here: the word, and the words known, the likeliest first. */
  NOT_A_CHOICE,
  /** Not a quantity: the text, a term for its dimension, the reason, what would be accepted. */
  NOT_A_QUANTITY,
  /** A quantity that must be above zero: the text. */
  NOT_POSITIVE,
  /** Not a number between two others: the text, the smallest, the largest. */
  NOT_A_NUMBER,
  /** Not a day as in 2026-04-18: the text. */
  NOT_A_DATE,
  /** Not an identity: the text. */
  NOT_AN_ID,
  /** An empty text where words are needed. */
  BLANK,
  /** Words after a blank and # are lost to a comment: what is left. */
  CUT_BY_COMMENT(Gravity.DOUBT),
  /** More complaints than so many; the rest are not listed. */
  TOO_MANY;

  private final Gravity gravity;

  FormTrouble() {
    this(Gravity.STOPS);
  }

  FormTrouble(Gravity gravity) {
    this.gravity = gravity;
  }

  @Override
  public String key() {
    return "form." + name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  @Override
  public Gravity gravity() {
    return gravity;
  }
}
