package daylight.archive.store;

import daylight.line.measure.Statement;

/** What came of keeping a book. */
public sealed interface Keeping {
  /**
   * It is kept.
   *
   * @param added entries that were not there
   * @param changed entries that say something else now
   * @param withdrawn entries that the book no longer has
   * @param same entries that stayed as they were
   */
  record Kept(int added, int changed, int withdrawn, int same) implements Keeping {
    /** Whether anything was written. */
    public boolean any() {
      return added + changed + withdrawn > 0;
    }
  }

  /**
   * Nothing was written: most of what is kept under its identity would be other than it was, so
   * that it may well be another site of the same name. Whoever means it says so.
   *
   * @param other entries that would change or be withdrawn
   * @param of entries that are kept
   */
  record LikelyAnother(int other, int of) implements Keeping {}

  /**
   * Nothing was written, because it could not be: a full disk, one that only reads.
   *
   * @param why by an {@link ArchiveTrouble}
   */
  record NotWritten(Statement why) implements Keeping {}
}
