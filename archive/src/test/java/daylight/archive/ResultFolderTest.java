package daylight.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.NavigableSet;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Results lie in a folder whole or not at all, and nothing of anybody else's is touched. */
class ResultFolderTest {
  @TempDir private Path parent = Path.of("");

  private static SortedMap<String, byte[]> files(String... names) {
    SortedMap<String, byte[]> files = new TreeMap<>();
    for (String name : names) {
      files.put(name, name.getBytes(StandardCharsets.UTF_8));
    }
    return files;
  }

  /** Every file below the parent with its content, and every empty folder. */
  private NavigableSet<String> everything() throws IOException {
    NavigableSet<String> found = new TreeSet<>();
    try (Stream<Path> walk = Files.walk(parent)) {
      for (Path path : (Iterable<Path>) walk::iterator) {
        if (Files.isRegularFile(path)) {
          found.add(parent.relativize(path) + " = " + Files.readString(path).strip());
        }
      }
    }
    return found;
  }

  private static ResultFolder.Refusal reason(ResultFolder.Outcome outcome) {
    return ((ResultFolder.Outcome.Refused) outcome).reason();
  }

  @Test
  void resultsAreWrittenWithTheirList() throws IOException {
    Path folder = parent.resolve("results");
    assertThat(ResultFolder.write(folder, files("a.txt", "sub/b.txt")))
        .isEqualTo(new ResultFolder.Outcome.Written(folder));
    assertThat(everything())
        .containsExactly(
            "results/a.txt = a.txt",
            "results/results.list = a.txt\nsub/b.txt",
            "results/sub/b.txt = sub/b.txt");
  }

  @Test
  void anEmptyFolderAndEarlierResultsAreReplaced() throws IOException {
    Path folder = Files.createDirectory(parent.resolve("results"));
    ResultFolder.write(folder, files("a.txt", "sub/b.txt"));
    ResultFolder.write(folder, files("c.txt"));
    assertThat(everything())
        .containsExactly("results/c.txt = c.txt", "results/results.list = c.txt");
  }

  @Test
  void aFillerWritesBesideTheRestAndWhatItTookBackIsNotOfTheResults() throws IOException {
    Path folder = parent.resolve("results");
    ResultFolder.Filler filler =
        room -> {
          Files.writeString(room.place("film/a.mp4"), "long");
          Files.deleteIfExists(room.place("film/b.mp4"));
          assertThatIllegalArgumentException().isThrownBy(() -> room.place("film/a.mp4"));
          assertThatIllegalArgumentException().isThrownBy(() -> room.place("../out.mp4"));
          return true;
        };
    assertThat(ResultFolder.write(folder, files("a.txt"), filler))
        .isEqualTo(new ResultFolder.Outcome.Written(folder));
    assertThat(everything())
        .containsExactly(
            "results/a.txt = a.txt",
            "results/film/a.mp4 = long",
            "results/results.list = a.txt\nfilm/a.mp4");
  }

  @Test
  void aFillerThatStopsOrFailsLeavesEarlierResultsAsTheyWere() throws IOException {
    Path folder = parent.resolve("results");
    ResultFolder.write(folder, files("a.txt"));
    NavigableSet<String> before = everything();
    assertThat(
            ResultFolder.write(
                folder,
                files("c.txt"),
                room -> {
                  room.write("half.mp4", new byte[9]);
                  return false;
                }))
        .isEqualTo(new ResultFolder.Outcome.NotWanted());
    assertThat(
            reason(
                ResultFolder.write(
                    folder,
                    files("c.txt"),
                    room -> {
                      throw new IOException("the disk is full");
                    })))
        .isEqualTo(ResultFolder.Refusal.NOT_WRITABLE);
    assertThat(everything()).isEqualTo(before);
  }

  @ParameterizedTest
  @ValueSource(strings = {"clip.mp4", "sub/clip.mp4", "empty/"})
  void whatIsOfSomebodyElseIsLeftAlone(String foreign) throws IOException {
    Path folder = parent.resolve("results");
    ResultFolder.write(folder, files("a.txt", "sub/b.txt"));
    if (foreign.endsWith("/")) {
      Files.createDirectory(folder.resolve(foreign));
    } else {
      Files.writeString(folder.resolve(foreign), "footage");
    }
    NavigableSet<String> before = everything();
    ResultFolder.Outcome outcome = ResultFolder.write(folder, files("c.txt"));
    assertThat(outcome)
        .isEqualTo(
            new ResultFolder.Outcome.Refused(
                ResultFolder.Refusal.HOLDS_OTHER_FILES, foreign.replaceFirst("/$", "")));
    assertThat(everything()).isEqualTo(before);
  }

  @Test
  void aLinkInsideIsOfSomebodyElse() throws IOException {
    Path folder = parent.resolve("results");
    ResultFolder.write(folder, files("a.txt"));
    Path elsewhere = Files.createDirectory(parent.resolve("elsewhere"));
    Files.createSymbolicLink(folder.resolve("link"), elsewhere);
    assertThat(reason(ResultFolder.write(folder, files("c.txt"))))
        .isEqualTo(ResultFolder.Refusal.HOLDS_OTHER_FILES);
  }

  @Test
  void aFolderThatNeverHeldResultsIsLeftAlone() throws IOException {
    Path folder = Files.createDirectory(parent.resolve("photos"));
    Files.writeString(folder.resolve("one.jpg"), "one");
    assertThat(reason(ResultFolder.write(folder, files("c.txt"))))
        .isEqualTo(ResultFolder.Refusal.HOLDS_OTHER_FILES);
    assertThat(everything()).containsExactly("photos/one.jpg = one");
  }

  @Test
  void aFileIsNoFolder() throws IOException {
    Path file = Files.writeString(parent.resolve("file"), "mine");
    assertThat(reason(ResultFolder.write(file, files("c.txt"))))
        .isEqualTo(ResultFolder.Refusal.NOT_A_FOLDER);
    assertThat(everything()).containsExactly("file = mine");
  }

  @Test
  void writingThatFailsHalfWayLeavesTheOldResultsAndNothingElse() throws IOException {
    Path folder = parent.resolve("results");
    ResultFolder.write(folder, files("a.txt"));
    NavigableSet<String> before = everything();
    // A file and a folder of one name: the first is written, the second cannot be.
    SortedMap<String, byte[]> impossible = files("a", "b", "b/c");
    assertThat(reason(ResultFolder.write(folder, impossible)))
        .isEqualTo(ResultFolder.Refusal.NOT_WRITABLE);
    assertThat(everything()).isEqualTo(before);
    try (Stream<Path> left = Files.list(parent)) {
      assertThat(left).containsExactly(folder);
    }
  }

  @Test
  void aParentThatCannotBeWrittenToIsRefused() throws IOException {
    Path file = Files.writeString(parent.resolve("file"), "mine");
    assertThat(reason(ResultFolder.write(file.resolve("results"), files("c.txt"))))
        .isEqualTo(ResultFolder.Refusal.NOT_WRITABLE);
    assertThat(everything()).containsExactly("file = mine");
  }

  @Test
  void aReadOnlyFileSystemIsRefused() {
    Path readOnly = Path.of("/proc");
    assumeTrue(Files.isDirectory(readOnly), "a system with a read-only /proc");
    assertThat(reason(ResultFolder.write(readOnly.resolve("results"), files("c.txt"))))
        .isEqualTo(ResultFolder.Refusal.NOT_WRITABLE);
  }

  @Test
  void resultsLeftAsideByAKilledProcessAreTakenUpAgain() throws IOException {
    Path folder = parent.resolve("results");
    ResultFolder.write(folder, files("a.txt"));
    Files.move(folder, parent.resolve(".results.old"));
    // This write fails, and what was left aside is back in its place.
    ResultFolder.write(folder, files("b", "b/c"));
    assertThat(everything())
        .containsExactly("results/a.txt = a.txt", "results/results.list = a.txt");
  }

  @ParameterizedTest
  @ValueSource(strings = {"../x", "/x", "a/../../x", "a\\b", "C:x", "results.list", "", "a//b"})
  void aNameThatLeadsOutIsOurMistake(String name) {
    SortedMap<String, byte[]> files = new TreeMap<>(Map.of(name, new byte[0]));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> ResultFolder.write(parent.resolve("results"), files))
        .withMessageContaining(name);
  }
}
