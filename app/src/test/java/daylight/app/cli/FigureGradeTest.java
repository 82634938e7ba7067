package daylight.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The command {@code figure grade}. Figures from the tables named in GradesReferenceTest. */
class FigureGradeTest {
  @TempDir private Path folder = Path.of("");

  private static JsonNode figure(JsonNode reply, String name) {
    for (JsonNode one : reply.path("figures")) {
      if (one.path("name").asText().equals(name)) {
        return one;
      }
    }
    throw new AssertionError(name + " is not among " + reply);
  }

  private static boolean tells(JsonNode reply, String key) {
    for (JsonNode one : reply.path("told")) {
      if (one.path("key").asText().equals("figure.grade." + key)) {
        return true;
      }
    }
    return false;
  }

  @Test
  void saysNumberAndWordTheLimitAndItsSource() {
    Said said = Said.by("figure", "grade", "crack", "--width", "3mm");
    assertThat(said.err()).isEmpty();
    assertThat(said.code()).isEqualTo(ExitCode.DONE);
    assertThat(said.out())
        .contains("Structure: class 2, short term.")
        .contains("Its width, 3mm, is 2 mm or more, where class 2 begins.")
        .contains("From 5 mm on it would be class 1.")
        .contains("Source: stein-h5, Table 4.7.4.3.1-1, looked up.")
        .contains("Source: atv-m-149")
        .contains("adapted for small drains")
        .contains("How good that size is was not said")
        .contains("local codes and licensed practice decide");
  }

  @ParameterizedTest
  @CsvSource({"joint-offset", "displaced-joint", "Offset joint", "joint out of line"})
  void aKindMayBeWrittenInItsWords(String kind) {
    Said said = Said.by("figure", "grade", kind, "--offset", "12mm", "--bore", "100mm");
    assertThat(said.err()).isEmpty();
    assertThat(said.code()).isEqualTo(ExitCode.DONE);
    assertThat(said.out()).contains("Structure: class 3, medium term.").contains("DN < 300");
  }

  @Test
  void repliesInJson() {
    JsonNode reply = Said.by("figure", "grade", "crack", "--width", "12 mm", "--json").json();
    assertThat(reply.path("outcome").asText()).isEqualTo("figured");
    assertThat(figure(reply, "structure").path("value").asInt()).isEqualTo(1);
    assertThat(figure(reply, "structure").path("sentence").asText())
        .isEqualTo("Structure: class 1, at once.");
    assertThat(figure(reply, "limit").path("value").asDouble()).isCloseTo(0.005, within(1e-12));
    assertThat(figure(reply, "immediate-limit").path("value").asDouble())
        .isCloseTo(0.01, within(1e-12));
    assertThat(tells(reply, "source")).isTrue();
  }

  @Test
  void aValueOnALimitIsSaidToBe() {
    Said said = Said.by("figure", "grade", "crack", "--width", "2 mm");
    assertThat(said.out()).contains("class 2, short term").contains("counts for the worse class");
  }

  /** 1.8 mm, give or take 0.392 mm, is a standard deviation of 0.2 mm: Φ(1) = 84 %. */
  @Test
  void nearALimitEachClassHasItsChance() {
    Said said =
        Said.by("figure", "grade", "crack", "--width", "1.8 mm", "--give-or-take", "0.392 mm");
    assertThat(said.out())
        .contains("Structure: class 3, medium term.")
        .contains("Class 2, short term: unlikely (16 %).")
        .contains("Class 3, medium term: likely (84 %).")
        .contains("it lies in class 2 to class 3, 19 times of 20");
  }

  @Test
  void waterIsGradedByItsDepthInTheBoreAsWellAsDepthsAreUsuallyJudged() throws IOException {
    Said said =
        Said.by("figure", "grade", "standing-water", "--depth", "40 mm", "--bore", "100 mm");
    assertThat(said.code()).isEqualTo(ExitCode.DONE);
    assertThat(said.out())
        .contains("With a depth of 40 mm in a bore of 100 mm the share of the height is 40 %.")
        .contains("Operation: class 3, medium term.")
        .contains("what is usual was taken");
    Path ours =
        Files.writeString(
            folder.resolve("priors.yaml"),
            """
            daylight-priors: 1
            priors:
              - {kind: water-depth, a: 1 mm, source: ours, mark: derived}
            """);
    Said surer =
        Said.by(
            "figure",
            "grade",
            "standing-water",
            "--depth",
            "40 mm",
            "--bore",
            "100 mm",
            "--priors",
            ours);
    assertThat(said.out()).contains("it lies in class 2 to class 4");
    assertThat(surer.out()).contains("it stays in that class");
  }

  @Test
  void whatIsMissingIsAskedFor() {
    Said crack = Said.by("figure", "grade", "crack");
    assertThat(crack.code()).isEqualTo(ExitCode.SOMETHING_OPEN);
    assertThat(crack.out())
        .contains("Structure: can’t say yet without --width.")
        .contains("Action at once: can’t say yet without --width.");
    Said roots = Said.by("figure", "grade", "roots", "--share", "35 %");
    assertThat(roots.code()).isEqualTo(ExitCode.SOMETHING_OPEN);
    assertThat(roots.out())
        .contains("Operation: can’t say yet without --through: joint or crack.")
        .contains("Operation: can’t say yet without --thickness.")
        .contains(
            "Act at once, whatever its grade: its share of the section, 35 %, is 30 % or more.");
    Said joint = Said.by("figure", "grade", "displaced-joint", "--offset", "12 mm");
    assertThat(joint.out()).contains("Structure: can’t say yet without --bore.");
    Said dirt = Said.by("figure", "grade", "deposit-loose");
    assertThat(dirt.out()).contains("without --share, or --height together with --bore.");
  }

  @Test
  void whatHasNoGradeSaysSo() {
    assertThat(Said.by("figure", "grade", "bend").out()).contains("has no grade");
    assertThat(Said.by("figure", "grade", "vermin").out()).contains("the table has no row for it");
    assertThat(Said.by("figure", "grade", "break", "--missing", "no", "--length", "1 cm").out())
        .contains("Structure: the table has no class for such a one, by its “missing”");
    assertThat(
            Said.by(
                    "figure",
                    "grade",
                    "standing-water",
                    "--share",
                    "30 %",
                    "--with",
                    "held-by=roots")
                .out())
        .contains("Operation: the table has no class for such a one, by its “held-by”.");
    assertThat(Said.by("figure", "grade", "foreign-pipe", "--share", "1 %").out())
        .startsWith("Stop: another pipe through the bore outranks every grade.")
        .doesNotContain("class");
  }

  @Test
  void complainsOfEveryOptionThatIsWrongAtOnce() {
    Said said =
        Said.by(
            "figure",
            "grade",
            "crack",
            "--width",
            "3",
            "--offset",
            "12 mm",
            "--with",
            "length=-1 m",
            "--bore",
            "0 mm",
            "--units",
            "ells",
            "--give-or-take",
            "1 mm");
    assertThat(said.code()).isEqualTo(ExitCode.USAGE);
    assertThat(said.out()).isEmpty();
    assertThat(said.err().lines())
        .hasSize(6)
        .anyMatch(line -> line.startsWith("daylight: --width: “3” is not a length: its unit"))
        .anyMatch(
            line ->
                line.equals(
                    "daylight: --offset: Crack has no such size or particular; it has --width,"
                        + " --length and --with direction"))
        .anyMatch(line -> line.startsWith("daylight: --with length: “-1 m” must not be less"))
        .anyMatch(line -> line.startsWith("daylight: --bore: “0 mm” must be more than"))
        .anyMatch(line -> line.startsWith("daylight: --units: “ells”"))
        .anyMatch(
            line -> line.equals("daylight: --give-or-take: it goes with one size; there are 0"));
  }

  @Test
  void complainsOfAKindThatIsNoneAndOfWaterAboveTheBore() {
    Said kind = Said.by("figure", "grade", "crck", "--width", "3 mm");
    assertThat(kind.code()).isEqualTo(ExitCode.USAGE);
    assertThat(kind.err())
        .isEqualTo(
            "daylight: KIND: “crck” is no kind of finding that the catalogue knows; did you mean"
                + " crack?\n");
    Said water = Said.by("figure", "grade", "standing-water", "--depth", "5 in", "--bore", "4 in");
    assertThat(water.code()).isEqualTo(ExitCode.USAGE);
    assertThat(water.err())
        .isEqualTo("daylight: --depth: it must not be more than the bore of 4 in\n");
  }

  @Test
  void aTableOfOnesOwnSaysWhatIsFromMemory() throws IOException {
    Path ours =
        Files.writeString(
            folder.resolve("ours.yaml"),
            """
            daylight-grades: 1
            id: ours
            title: What we go by
            on-limit: better
            rows:
              - {kind: open-joint, aspect: structure, quantity: gap, from: {short-term: 1 in}, below: long-term, clause: page 3, source: our-book, mark: from-memory}
            """);
    Said said = Said.by("figure", "grade", "open-joint", "--with", "gap=1 in", "--grades", ours);
    assertThat(said.err()).isEmpty();
    assertThat(said.out())
        .contains("Structure: class 4, long term.")
        .contains("counts for the better class")
        .contains("Source: our-book, page 3, from memory.")
        .contains("Look it up before you rely on it.")
        .doesNotContain("adapted");
  }

  @Test
  void whatIsWrongInATableOfOnesOwnIsTold() throws IOException {
    Path ours =
        Files.writeString(
            folder.resolve("ours.yaml"),
            """
            daylight-grades: 1
            id: ours
            title: What we go by
            on-limit: worse
            rows:
              - {kind: crak, aspect: structure, class: at-once, clause: x, source: x, mark: derived}
              - {kind: crack, aspect: structure, quantity: offset, from: {at-once: 1 mm}, below: long-term, clause: x, source: x, mark: derived}
            """);
    Said said = Said.by("figure", "grade", "crack", "--width", "1 mm", "--grades", ours);
    assertThat(said.code()).isEqualTo(ExitCode.USAGE);
    assertThat(said.out()).isEmpty();
    assertThat(said.err().lines())
        .hasSize(2)
        .anyMatch(
            line -> line.endsWith("line 6: “crak” is not in the catalogue; did you mean crack?"))
        .anyMatch(
            line -> line.endsWith("line 7: this kind has no “offset”; it has width or length"));
  }
}
