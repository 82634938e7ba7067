package daylight.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import daylight.archive.Bundled;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The command {@code answer}. */
class AnswerTest {
  @TempDir private Path folder = Path.of("");

  private Path out() {
    return folder.resolve("out");
  }

  private Path good() {
    return Books.copied("S01", folder.resolve("books"));
  }

  @Test
  void writesIntoTheFolderNamed() {
    Said said = Said.by("answer", good(), "-o", out());
    assertThat(said.code()).isEqualTo(ExitCode.DONE);
    assertThat(said.err()).isEmpty();
    assertThat(said.out()).contains("Where does it run?").contains(out().toString());
    assertThat(Books.below(out())).hasSize(27);
  }

  @Test
  void writesBesideTheBookWhereNoFolderIsNamed() {
    Path book = good();
    assertThat(Said.by("answer", book).code()).isEqualTo(ExitCode.DONE);
    assertThat(book.resolveSibling("S01-straight-two-locates-answered")).isDirectory();
  }

  @Test
  void takesAFolderThatHoldsAFieldBook() throws IOException {
    Path book = good();
    Files.move(book, book.resolveSibling("field-book.yaml"));
    Said said = Said.by("answer", folder.resolve("books"));
    assertThat(said.code()).isEqualTo(ExitCode.DONE);
    assertThat(book.resolveSibling("field-book-answered")).isDirectory();
  }

  @Test
  void doesNotHandOverTheFolderThatADoubtedBookLayIn() throws IOException {
    Path book = good();
    String media = "visit:\n  media: [{kind: footage, file: gone.mp4}]\n";
    Files.writeString(book, Files.readString(book).replace("visit:\n", media));
    Said said = Said.by("answer", book, "-o", out());
    assertThat(said.out()).contains(book.toString()).contains("gone.mp4");
    assertThat(Books.below(out()).get("report.html")).contains("gone.mp4");
    assertThat(Books.below(out()).values()).noneMatch(text -> text.contains(folder.toString()));
  }

  @Test
  void givesTheSameBytesFromAnotherFolder() {
    Path elsewhere = Books.copied("S01", folder.resolve("else where"));
    Said.by("answer", good(), "-o", out());
    Said.by("answer", elsewhere, "-o", folder.resolve("out2"));
    assertThat(Books.below(folder.resolve("out2"))).isEqualTo(Books.below(out()));
  }

  @Test
  void repliesInJson() {
    JsonNode reply = Said.by("answer", good(), "-o", out(), "--json").json();
    assertThat(reply.path("schema").asText()).isEqualTo("daylight-reply");
    assertThat(reply.path("version").asInt()).isEqualTo(1);
    assertThat(reply.path("outcome").asText()).isEqualTo("answered");
    assertThat(reply.path("files")).hasSize(26);
    assertThat(reply.path("lines").path(0).path("answers")).hasSize(7);
  }

  @Test
  void refusesInJson() throws IOException {
    Path book = Files.writeString(folder.resolve("bad.yaml"), "daylight-book: 1\nsitte: {}\n");
    Said said = Said.by("answer", book, "-o", out(), "--json");
    assertThat(said.code()).isEqualTo(ExitCode.BOOK_REFUSED);
    JsonNode reply = said.json();
    assertThat(reply.path("schema").asText()).isEqualTo("daylight-reply");
    assertThat(reply.path("version").asInt()).isEqualTo(1);
    assertThat(reply.path("outcome").asText()).isEqualTo("refused");
    assertThat(reply.path("complaints").path(0).path("line").asInt()).isEqualTo(2);
    assertThat(out()).doesNotExist();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          feet-inches | 50' 2"
          feet        | 50.2 ft
          metres      | 15.30 m
          """)
  void showsTheUnitsAskedFor(String units, String length) {
    Said said = Said.by("answer", good(), "-o", out(), "--units", units);
    assertThat(said.code()).isEqualTo(ExitCode.DONE);
    assertThat(said.out()).contains("runs " + length + " from");
  }

  @Test
  void doesNotKnowOtherUnits() {
    Said said = Said.by("answer", good(), "-o", out(), "--units", "furlongs");
    assertThat(said.code()).isEqualTo(ExitCode.USAGE);
    assertThat(said.err()).contains("furlongs").contains("metres");
    assertThat(out()).doesNotExist();
  }

  @Test
  void speaksTheLanguageAskedFor() {
    Path book = good();
    Said said = Said.by("answer", book, "-o", out(), "--language", "fr", "--units", "metres");
    assertThat(said.code()).isEqualTo(ExitCode.DONE);
    assertThat(said.out())
        .contains("Où passe-t-il\u00a0?")
        .contains("court sur 15,30\u00a0m de")
        .doesNotContain("runs");
    assertThat(Books.below(out()).get("report.html"))
        .contains("lang=\"fr\"", "Vos questions")
        .doesNotContain("Your questions", "give or take");
    assertThat(Books.below(out()).get("plan.svg")).contains("lang=\"fr\"", "vu de dessus");
    // Before the command it says the same.
    assertThat(Said.by("--language=FR", "leaving", book).out()).contains("Conduite\u00a0: ");
    assertThat(Said.by("leaving", book).out()).contains("Line: ");
  }

  @Test
  void doesNotKnowOtherLanguages() {
    Said said = Said.by("answer", good(), "-o", out(), "--language", "tlh");
    assertThat(said.code()).isEqualTo(ExitCode.USAGE);
    assertThat(said.err()).contains("--language", "tlh", "en or fr");
    assertThat(out()).doesNotExist();
  }

  static List<String> tables() {
    return Bundled.fallRulesIds();
  }

  /** The book is flatter than any table asks, in a bore that the table has. */
  @ParameterizedTest
  @MethodSource("tables")
  void judgesByEveryTableOfSlopes(String id) throws IOException {
    String bore = id.startsWith("obc") ? "3 in" : id.startsWith("ten-states") ? "8 in" : "4 in";
    Path book = Books.copied("S14", folder.resolve("books"));
    Files.writeString(book, Files.readString(book).replace("bore: 4 in", "bore: " + bore));
    assertThat(Said.by("answer", book, "-o", out(), "--rules", id).code()).isEqualTo(ExitCode.DONE);
    String answers = Files.readString(out().resolve("answers.json"));
    assertThat(answers).contains("\"" + id + "\"").contains("answer.drain_");
  }

  @Test
  void doesNotKnowAnotherTable() {
    Said said = Said.by("answer", good(), "-o", out(), "--rules", "nowhere-1");
    assertThat(said.code()).isEqualTo(ExitCode.USAGE);
    assertThat(said.err()).contains("nowhere-1").contains("ipc-704.1");
  }

  @Test
  void judgesTheVisitAskedFor() {
    Path book = Books.copied("S27", folder.resolve("books"));
    Said last = Said.by("answer", book, "-o", out());
    Said first = Said.by("answer", book, "-o", out(), "--visit", "V1");
    assertThat(last.out()).doesNotContain("broken wall");
    assertThat(first.out()).contains("broken wall");
  }

  @Test
  void refusesAVisitThatTheBookHasNot() {
    Said said = Said.by("answer", good(), "-o", out(), "--visit", "V9");
    assertThat(said.code()).isEqualTo(ExitCode.BOOK_REFUSED);
    assertThat(said.err()).contains("V9").contains("V1");
    assertThat(out()).doesNotExist();
  }

  @Test
  void namesTheNearestOption() {
    Said said = Said.by("answer", good(), "--unit", "feet");
    assertThat(said.code()).isEqualTo(ExitCode.USAGE);
    assertThat(said.err()).contains("--units");
  }

  @Test
  void namesTheNearestCommand() {
    Said said = Said.by("anwser", good());
    assertThat(said.code()).isEqualTo(ExitCode.USAGE);
    assertThat(said.err()).contains("answer");
  }

  @Test
  void isNotWrittenOverTheFilesOfOthers() throws IOException {
    Files.createDirectories(out());
    Path mine = Files.writeString(out().resolve("letter.txt"), "mine");
    Said said = Said.by("answer", good(), "-o", out());
    assertThat(said.code()).isEqualTo(ExitCode.NOT_WRITTEN);
    assertThat(said.err()).contains("letter.txt");
    assertThat(Books.below(out())).containsOnlyKeys("letter.txt");
    assertThat(mine).hasContent("mine");
  }

  @Test
  void isNotWrittenBelowAFile() throws IOException {
    Path file = Files.writeString(folder.resolve("file"), "mine");
    Said said = Said.by("answer", good(), "-o", file.resolve("out"));
    assertThat(said.code()).isEqualTo(ExitCode.NOT_WRITTEN);
    assertThat(said.err()).startsWith("daylight: " + file);
    assertThat(file).hasContent("mine");
  }
}
