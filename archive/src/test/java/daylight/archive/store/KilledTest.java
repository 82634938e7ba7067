package daylight.archive.store;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.archive.FieldBookReader;
import daylight.archive.FieldBookWriter;
import daylight.archive.GeneratedBook;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import java.util.UUID;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What was acknowledged is there, whenever the program is killed. */
class KilledTest {
  private static final int LONGEST = 1500;

  @TempDir private Path folder = Path.of("");

  /** Keeps one book after the other, and says of each that it is kept. */
  static final class Keeper {
    private Keeper() {}

    /**
     * Begins.
     *
     * @param words the folder, and the seed of the first book
     */
    public static void main(String[] words) {
      By by = new By("Someone", "laptop", Instant.parse("2026-04-18T08:00:00Z"));
      Archive archive = opened(Path.of(words[0]));
      for (long seed = Long.parseLong(words[1]); true; seed++) {
        archive.keep(new GeneratedBook(seed).book(), by, true);
        System.out.println(seed);
        System.out.flush();
      }
    }
  }

  private static Archive opened(Path where) {
    return switch (Archive.open(where)) {
      case ArchiveOpening.Opened(Archive archive) -> archive;
      case ArchiveOpening.Refused(var why) -> throw new AssertionError(why);
    };
  }

  @Test
  void whatWasAcknowledgedIsThere() throws Exception {
    killed(3);
  }

  @Test
  @Tag("long")
  void whateverTheMoment() throws Exception {
    killed(50);
  }

  private void killed(int times) throws Exception {
    SplittableRandom random = new SplittableRandom(times);
    List<Long> all = new ArrayList<>();
    for (int i = 0; i < times; i++) {
      List<Long> acknowledged = run(1000L * i, random.nextInt(LONGEST));
      all.addAll(acknowledged);
      Archive archive = opened(folder);
      assertThat(archive.rebuild()).as("what is derived, kill %d", i).isFalse();
      for (long seed : acknowledged) {
        isThere(archive, seed);
      }
    }
    Archive archive = opened(folder);
    for (long seed : all) {
      isThere(archive, seed);
    }
    assertThat(all).hasSizeGreaterThan(times);
    assertThat(archive.sites("")).hasSizeBetween(all.size(), all.size() + times);
  }

  private static void isThere(Archive archive, long seed) {
    var book = new GeneratedBook(seed).book();
    UUID id = book.id().uuid();
    byte[] out = archive.written(id).orElseThrow().getBytes(StandardCharsets.UTF_8);
    var again = Objects.requireNonNull(FieldBookReader.read("out.yaml", out, null).book());
    assertThat(FieldBookWriter.write(again))
        .as("seed %d", seed)
        .isEqualTo(FieldBookWriter.write(read(FieldBookWriter.write(book))));
  }

  private static daylight.line.book.FieldBook read(String text) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    return Objects.requireNonNull(FieldBookReader.read("in.yaml", bytes, null).book());
  }

  private List<Long> run(long first, int milliseconds) throws IOException, InterruptedException {
    Path said = folder.resolveSibling("said-" + folder.getFileName() + "-" + first);
    return Child.killed(said, milliseconds, Keeper.class, folder.toString(), Long.toString(first))
        .stream()
        .map(Long::parseLong)
        .toList();
  }
}
