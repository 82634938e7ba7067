package daylight.archive.store;

import daylight.line.measure.Key;
import java.util.Locale;

/** Why an archive cannot be opened, written, saved or brought back. */
public enum ArchiveTrouble implements Key {
  /** Something else lies where it should be: the folder. */
  NOT_AN_ARCHIVE,
  /** There is none: the folder. */
  MISSING,
  /** Its own check finds it damaged: the folder, what was found. */
  DAMAGED,
  /** A newer Daylight wrote it: the folder. */
  NEWER,
  /** It cannot be read or written: the folder, why. */
  UNREACHABLE,
  /** There is no more room on the disk: the folder or file. */
  FULL,
  /** The disk only reads, or the folder does: the folder or file. */
  READ_ONLY,
  /** The folder that it should be brought back into is not empty: the folder. */
  NOT_EMPTY,
  /** The file is no backup of an archive: the file, why. */
  NOT_A_BACKUP,
  /** The file that should be written is there already: the file. */
  THERE_ALREADY;

  @Override
  public String key() {
    return "archive." + name().toLowerCase(Locale.ROOT);
  }
}
