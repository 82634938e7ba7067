package daylight.archive.store;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.archive.Sha256;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A backup is the archive as it was at one moment, to the last revision. */
class BackupWhileEnteringTest {
  private static final Pages PAGES = new Pages("saved");

  @TempDir private Path folder = Path.of("");

  /** Every column of every revision up to one, as one digest. */
  private static Sha256 digest(Path home, long upTo) {
    List<String> all =
        Database.reading(
            Database.connect(Database.file(home)),
            handle ->
                handle
                    .createQuery("SELECT * FROM revision WHERE seq <= :seq ORDER BY seq")
                    .bind("seq", upTo)
                    .mapToMap()
                    .map(row -> row.toString())
                    .list());
    return Sha256.of(String.join("\n", all));
  }

  private static long newest(Path home) {
    return Database.reading(
        Database.connect(Database.file(home)), handle -> Entries.newest(handle, PAGES.book));
  }

  @Test
  void itRestoresToTheSameRevisions() throws Exception {
    Path home = folder.resolve("home");
    Archive archive = Pages.opened(home);
    archive.enter(PAGES.book, PAGES.begun(), Pages.PHONE);
    AtomicBoolean going = new AtomicBoolean(true);
    AtomicInteger entered = new AtomicInteger();
    try (ExecutorService one = Executors.newSingleThreadExecutor()) {
      Future<?> entering =
          one.submit(
              () -> {
                for (int i = 0; going.get(); i++) {
                  archive.enter(PAGES.book, List.of(PAGES.finding(i, 0, "1")), Pages.PHONE);
                  archive.enter(PAGES.book, List.of(PAGES.finding(i, 1, "2")), Pages.LAPTOP);
                  entered.incrementAndGet();
                }
              });
      try {
        for (int i = 0; i < 2; i++) {
          int before = entered.get();
          while (entered.get() == before && !entering.isDone()) {
            Thread.sleep(5);
          }
          long least = newest(home);
          assertThat(archive.backup(folder.resolve(i + ".zip"))).isEmpty();
          long most = newest(home);
          Path back = folder.resolve("back " + i);
          assertThat(Archive.restore(folder.resolve(i + ".zip"), back)).isEmpty();
          long held = newest(back);
          assertThat(held).isBetween(least, most);
          assertThat(digest(back, Long.MAX_VALUE)).isEqualTo(digest(home, held));
          assertThat(digest(back, held - 1)).isNotEqualTo(digest(home, held));
          assertThat(Pages.opened(back).rebuild()).isFalse();
          Files.delete(folder.resolve(i + ".zip"));
        }
      } finally {
        going.set(false);
      }
      entering.get();
    }
    assertThat(entered.get()).isGreaterThan(1);
  }
}
