package daylight.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Codes beside our words: a company's own, or the letters of a standard. */
class CodesTest {
  private static final Path EXAMPLE = Path.of("..", "docs", "codes-example.csv");

  @TempDir private Path folder = Path.of("");

  private JsonNode answers() throws IOException {
    return new ObjectMapper().readTree(Files.readString(folder.resolve("out/answers.json")));
  }

  private String report() throws IOException {
    return Files.readString(folder.resolve("out/report.html"));
  }

  private Said answer(Object... more) {
    Path book = Books.copied("S33", folder.resolve("books"));
    Object[] all = new Object[more.length + 4];
    all[0] = "answer";
    all[1] = book;
    all[2] = "-o";
    all[3] = folder.resolve("out");
    System.arraycopy(more, 0, all, 4, more.length);
    return Said.by(all);
  }

  @Test
  void aCompanysCodesStandBesideTheWords() throws IOException {
    assertThat(answer("--codes", EXAMPLE).code()).isEqualTo(ExitCode.DONE);
    assertThat(answers().path("codes").path("title").asText()).contains("Otter Lane");
    assertThat(answers().findValuesAsText("code")).anyMatch(code -> code.startsWith("W0"));
    assertThat(report()).contains("Otter Lane Drains").contains(">Code<");
  }

  @Test
  void lettersAreOffUntilAskedForAndSaidToBeUnchecked() throws IOException {
    assertThat(answer().code()).isEqualTo(ExitCode.DONE);
    assertThat(answers().has("codes")).isFalse();
    assertThat(report()).doesNotContain(">Code<");
  }

  @Test
  void lettersAreSaidToBeUnchecked() throws IOException {
    assertThat(answer("--en-letters").code()).isEqualTo(ExitCode.DONE);
    assertThat(answers().findValuesAsText("code")).contains("BBA");
    assertThat(report()).contains("not checked against a bought copy");
  }

  @Test
  void aWrongTableAndAWrongBookAreToldTogetherAndNothingIsWritten() throws IOException {
    Path codes = folder.resolve("codes.csv");
    Files.writeString(codes, "code,kinds\nA,roots\nA,grease\n");
    Path book = Books.copied("S33", folder.resolve("books"));
    Files.writeString(book, Files.readString(book).replace("share: 35 %", "share: much"));
    Said said = Said.by("answer", book, "-o", folder.resolve("out"), "--codes", codes);
    assertThat(said.code()).isNotEqualTo(ExitCode.DONE);
    assertThat(said.err())
        .contains("codes.csv:3")
        .contains("stands in line 2 already")
        .contains(book.getFileName() + ":")
        .contains("much");
    assertThat(folder.resolve("out")).doesNotExist();
  }

  @Test
  void everyWrongChoiceIsToldAtOnce() {
    Said said = answer("--rules", "nobodys", "--en-letters", "--codes", EXAMPLE);
    assertThat(said.code()).isEqualTo(ExitCode.USAGE);
    assertThat(said.err())
        .contains("--rules: no table 'nobodys'")
        .contains("--en-letters, --codes");
  }
}
