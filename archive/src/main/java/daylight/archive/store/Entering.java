package daylight.archive.store;

import daylight.line.measure.Complaint;
import daylight.line.measure.Statement;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What came of entering one state of an entry. */
public sealed interface Entering {
  /**
   * It is on the disk.
   *
   * @param number of its revision
   */
  record Kept(int number) implements Entering {}

  /**
   * It was so already, as where it is sent twice; nothing was written.
   *
   * @param number of the revision that says so
   */
  record Same(int number) implements Entering {}

  /**
   * Somebody wrote upon it since; nothing was written.
   *
   * @param number of its last revision; 0 where there is none
   * @param now what it says now; null where it is withdrawn or was never there
   */
  record Clash(int number, @Nullable String now) implements Entering {}

  /**
   * Its book would not make sense with it; nothing was written.
   *
   * @param complaints what would be wrong; where it is within the entry, the path of a place begins
   *     there, otherwise at the book
   */
  record Wrong(List<Complaint> complaints) implements Entering {
    public Wrong {
      complaints = List.copyOf(complaints);
    }
  }

  /**
   * Nothing was written, because it could not be: a full disk, one that only reads.
   *
   * @param why by an {@link ArchiveTrouble}
   */
  record NotWritten(Statement why) implements Entering {}
}
