package daylight.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SourceTreeTest {
  private final SourceTree ours = SourceTree.ofThisProject();

  @Test
  void sourcesAndDocumentsAreFound() throws IOException {
    assertThat(ours.mainSources()).hasSizeGreaterThan(10);
    assertThat(ours.documents()).anyMatch(path -> path.endsWith("ARCHITECTURE.md"));
  }

  @Test
  void noSourceIsLongerThanCanBeReadInOneSitting() throws IOException {
    assertThat(ours.tooLong()).isEmpty();
  }

  @Test
  void nothingIsLeftForLaterInTheSources() throws IOException {
    assertThat(ours.leftForLater()).isEmpty();
  }

  @Test
  void everyPackageExplainsItself() throws IOException {
    assertThat(ours.unexplainedPackages()).isEmpty();
  }

  @Test
  void documentsLinkToWhatExists() throws IOException {
    assertThat(ours.brokenLinks()).isEmpty();
  }

  @Test
  void everySourceThatAPackageCitesIsListed() throws IOException {
    assertThat(ours.unlistedSources()).isEmpty();
  }

  @Test
  void aSourceThatIsNotListedIsSeen(@TempDir Path root) throws IOException {
    Path room = Files.createDirectories(root.resolve("line/src/main/java/room"));
    Files.writeString(
        room.resolve("package-info.java"), "/** Sources: ipc-704.1,\n * old-book-3.\n */\n");
    Files.writeString(root.resolve("SOURCES.md"), "| `ipc-704.1` |");

    assertThat(new SourceTree(root).unlistedSources())
        .containsExactly("line/src/main/java/room: old-book-3");
  }

  @Test
  void eachFaultIsSeen(@TempDir Path root) throws IOException {
    Path room = Files.createDirectories(root.resolve("line/src/main/java/room"));
    Files.writeString(room.resolve("Long.java"), "//\n".repeat(SourceTree.LONGEST_FILE + 1));
    Files.writeString(room.resolve("Later.java"), "// TODO think\n");
    Files.writeString(
        room.resolve("package-info.java"), "/** Room. */\n@NullMarked\npackage room;\n");
    Files.writeString(
        root.resolve("README.md"),
        "[here](README.md) [gone](docs/gone.md#part) [web](https://example.org)");
    SourceTree wrong = new SourceTree(root);

    assertThat(wrong.tooLong()).containsExactly("line/src/main/java/room/Long.java");
    assertThat(wrong.leftForLater()).containsExactly("line/src/main/java/room/Later.java");
    assertThat(wrong.unexplainedPackages()).containsExactly("line/src/main/java/room");
    assertThat(wrong.brokenLinks()).containsExactly("README.md: docs/gone.md");
  }

  @Test
  void builtFilesAreNotSources(@TempDir Path root) throws IOException {
    Path built = Files.createDirectories(root.resolve("line/target/src/main/java/room"));
    Files.writeString(built.resolve("Later.java"), "// FIXME\n");

    assertThat(new SourceTree(root).mainSources()).isEmpty();
  }
}
