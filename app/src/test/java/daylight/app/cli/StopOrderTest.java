package daylight.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A foreign pipe through the bore comes before everything else, wherever it is told. */
class StopOrderTest {
  @TempDir private Path folder = Path.of("");
  private Path book = Path.of("");
  private Path results = Path.of("");
  private Said answered = new Said(0, "", "");

  @BeforeEach
  void answer() {
    book = Books.copied("S21", folder);
    results = folder.resolve("out");
    answered = Said.by("answer", book, "-o", results);
  }

  private String result(String name) throws IOException {
    return Files.readString(results.resolve(name));
  }

  private static List<String> keys(JsonNode object) {
    List<String> keys = new ArrayList<>();
    object.fieldNames().forEachRemaining(keys::add);
    return keys;
  }

  @Test
  void inTheAnswerAsText() {
    assertThat(answered.code()).isEqualTo(ExitCode.DONE);
    assertThat(answered.out()).startsWith("STOP").contains("Do not cut");
  }

  @Test
  void inTheReplyToAnswer() {
    JsonNode reply = Said.by("answer", book, "-o", results, "--json").json();
    assertThat(keys(reply)).startsWith("schema", "version", "outcome", "stops");
    assertThat(reply.path("stops")).hasSize(1);
  }

  @Test
  void beforeTheVanDoorsClose() {
    assertThat(Said.by("leaving", book).out()).startsWith("STOP");
    JsonNode reply = Said.by("leaving", book, "--json").json();
    assertThat(keys(reply)).startsWith("schema", "version", "outcome", "stops");
    assertThat(reply.path("stops")).hasSize(1);
  }

  @Test
  void inTheFileOfAnswers() throws IOException {
    JsonNode answers = new JsonMapper().readTree(result("answers.json"));
    assertThat(keys(answers)).startsWith("schema", "version", "stops");
    assertThat(answers.path("stops").path(0).path("finding").asText()).isEqualTo("F2");
  }

  @Test
  void inTheOwnersReport() throws IOException {
    String report = result("report.html");
    String body = report.substring(report.indexOf("<body"));
    String words = Pattern.compile("<[^>]*>").matcher(body).replaceAll(" ").strip();
    assertThat(words).startsWith("STOP");
  }

  @ParameterizedTest
  @ValueSource(strings = {"plan.svg", "profile.svg", "strip.svg"})
  void inTheDrawings(String name) throws IOException {
    String drawing = result(name);
    String first = drawing.substring(drawing.indexOf("<text"));
    assertThat(first.substring(first.indexOf('>') + 1)).startsWith("STOP");
  }

  @Test
  void inTheLineForMaps() throws IOException {
    JsonNode line = new JsonMapper().readTree(result("line.geojson"));
    assertThat(keys(line)).containsSubsequence("stops", "features");
    assertThat(line.path("stops")).hasSize(1);
  }

  @Test
  void aBookWithoutOneHasNone() {
    Said said = Said.by("answer", Books.copied("S01", folder), "-o", results);
    assertThat(said.out()).doesNotContain("STOP");
  }
}
