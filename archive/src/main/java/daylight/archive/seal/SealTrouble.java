package daylight.archive.seal;

import daylight.line.measure.Key;
import java.util.Locale;

/** Why nothing was sealed, and what differs from what was sealed. */
public enum SealTrouble implements Key {
  /** The file that should be written is there already: the file. */
  THERE_ALREADY,
  /** It cannot be written: the file, why. */
  NOT_WRITTEN,
  /** A file cannot be called so in a bundle: its name. */
  NAME,
  /** A content changed while it was sealed: its name. */
  MOVING,
  /** The file cannot be read: the file, why. */
  UNREADABLE,
  /** It holds no list of what was sealed: the file. */
  NO_SEAL,
  /** The list of what was sealed is not as it was written. */
  LIST_CHANGED,
  /** A file has other bytes than those that were sealed: its name. */
  CHANGED,
  /** A file is missing: its name. */
  MISSING,
  /** A file was not sealed: its name. */
  ADDED,
  /** The files are as they were, but something between or around them is not: the file. */
  WRAPPING,
  /** The seal is another than the one that was noted: the one found, the one noted. */
  OTHER_SEAL;

  @Override
  public String key() {
    return "seal." + name().toLowerCase(Locale.ROOT);
  }
}
