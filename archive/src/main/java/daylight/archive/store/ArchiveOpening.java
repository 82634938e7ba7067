package daylight.archive.store;

import daylight.line.measure.Statement;

/** What came of opening an archive. */
public sealed interface ArchiveOpening {
  /** It is open; nothing is lost where it is not closed. */
  record Opened(Archive archive) implements ArchiveOpening {}

  /**
   * It cannot be opened.
   *
   * @param why by an {@link ArchiveTrouble}
   */
  record Refused(Statement why) implements ArchiveOpening {}
}
