package daylight.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command {@code demo}. */
class DemoTest {
  private static final List<String> FILES =
      List.of(
          "answered/answers.json",
          "answered/line.geojson",
          "answered/plan.svg",
          "answered/profile.svg",
          "answered/report.html",
          "answered/results.list",
          "field-book.yaml");

  @TempDir private Path folder = Path.of("");

  @Test
  void writesTheBookOfEachPropertyAndItsFiveResults() {
    Said said = Said.by("demo", "--to", folder.resolve("demo"));
    assertThat(said.code()).isEqualTo(ExitCode.DONE);
    assertThat(said.err()).isEmpty();
    assertThat(said.out().split("An invented scenario", -1)).hasSize(4);
    assertThat(Books.below(folder.resolve("demo")).keySet())
        .containsExactlyElementsOf(
            Stream.of("house-sewer", "shop-roof-drain", "wash-down-pit")
                .flatMap(property -> FILES.stream().map(file -> property + "/" + file))
                .toList());
  }

  @Test
  void givesTheSameBytesAgainAndElsewhere() {
    Path here = folder.resolve("here");
    Path there = folder.resolve("quite/another place");
    Said.by("demo", "--to", here);
    Map<String, String> first = Books.below(here);
    Said.by("demo", "--to", here);
    Said.by("demo", "--to", there);
    assertThat(Books.below(here)).isEqualTo(first);
    assertThat(Books.below(there)).isEqualTo(first);
    assertThat(first.values()).noneMatch(text -> text.contains(folder.toString()));
  }

  @Test
  void isNotWrittenWhereAFileStands() throws java.io.IOException {
    Path file = Files.writeString(folder.resolve("file"), "mine");
    Said said = Said.by("demo", "--to", file);
    assertThat(said.code()).isEqualTo(ExitCode.NOT_WRITTEN);
    assertThat(said.err()).startsWith("daylight: " + file);
    assertThat(file).hasContent("mine");
  }
}
