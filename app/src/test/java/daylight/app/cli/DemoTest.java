package daylight.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command {@code demo}. */
class DemoTest {
  @TempDir private Path folder = Path.of("");

  @Test
  void writesABookAndItsFiveResults() {
    Said said = Said.by("demo", "--to", folder.resolve("demo"));
    assertThat(said.code()).isEqualTo(ExitCode.DONE);
    assertThat(said.err()).isEmpty();
    assertThat(said.out()).contains("invented").contains("report.html");
    assertThat(Books.below(folder.resolve("demo")).keySet())
        .containsExactly(
            "shop-roof-drain/answered/answers.json",
            "shop-roof-drain/answered/line.geojson",
            "shop-roof-drain/answered/plan.svg",
            "shop-roof-drain/answered/profile.svg",
            "shop-roof-drain/answered/report.html",
            "shop-roof-drain/answered/results.list",
            "shop-roof-drain/field-book.yaml");
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
