package daylight.archive.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.jdbi.v3.core.Handle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Power is lost: of the log is left what the disk had, and behind it whatever.
 *
 * <p>With {@code synchronous=FULL} SQLite waits for the disk to have the log at each commit (its
 * page on write-ahead logging, quoted at
 * https://kiwix.lema.org/stackoverflow.com_en_all_2023-11/questions/44755268/wal-synchronization-normal-vs-off,
 * looked up). So what the disk has when an entry is acknowledged is the log as long as it is then.
 */
class TornLogTest {
  private static final Pages PAGES = new Pages("torn");

  @TempDir private Path folder = Path.of("");

  /** The log's first bytes tell whether it was begun anew (SQLite's file format, from memory). */
  private static final int HEAD = 32;

  private Path log(Path home) {
    return home.resolve("archive.db-wal");
  }

  @Test
  void whatWasAcknowledgedIsThereWhereverTheLogIsTorn() throws IOException {
    Path home = folder.resolve("home");
    Archive archive = Pages.opened(home);
    List<Integer> lengths = new ArrayList<>();
    byte[] database;
    byte[] whole;
    // While somebody has it open, the log is not put into the database at each closing.
    try (Handle open = Database.connect(Database.file(home)).open()) {
      assertThat(Entries.newest(open, PAGES.book)).isZero();
      archive.enter(PAGES.book, PAGES.begun(), Pages.PHONE);
      database = Files.readAllBytes(Database.file(home));
      byte[] head = Arrays.copyOf(Files.readAllBytes(log(home)), HEAD);
      for (int i = 0; i < 40; i++) {
        assertThat(archive.enter(PAGES.book, List.of(PAGES.finding(i, 0, "1")), Pages.PHONE))
            .containsExactly(new Entering.Kept(1));
        lengths.add((int) Files.size(log(home)));
      }
      whole = Files.readAllBytes(log(home));
      assertThat(Arrays.copyOf(whole, HEAD)).isEqualTo(head);
      assertThat(Files.readAllBytes(Database.file(home))).isEqualTo(database);
    }
    assertThat(lengths).isSorted().doesNotHaveDuplicates();
    SplittableRandom random = new SplittableRandom(1);
    for (int i = 0; i < lengths.size(); i++) {
      int synced = lengths.get(i);
      reopened(database, Arrays.copyOf(whole, synced), i + 1);
      if (i % 4 != 3) {
        continue;
      }
      byte[] garbage = Arrays.copyOf(whole, synced + 1 + random.nextInt(20_000));
      for (int at = synced; at < garbage.length; at++) {
        garbage[at] = (byte) random.nextInt();
      }
      reopened(database, garbage, i + 1);
      int half = random.nextInt(lengths.get(i - 1), synced);
      reopened(database, Arrays.copyOf(whole, half), i);
    }
  }

  private void reopened(byte[] database, byte[] log, int entered) throws IOException {
    Path home = Files.createTempDirectory(folder, "torn");
    Files.write(Database.file(home), database);
    Files.write(log(home), log);
    Archive archive = Pages.opened(home);
    List<KeptEntry> entries = archive.entries(PAGES.book);
    assertThat(entries).hasSize(PAGES.begun().size() + entered);
    for (int i = 0; i < entered; i++) {
      assertThat(archive.history(PAGES.book, PAGES.findingId(i))).hasSize(1);
    }
    assertThat(archive.rebuild()).isFalse();
  }
}
