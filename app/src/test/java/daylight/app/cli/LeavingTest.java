package daylight.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command {@code leaving}. */
class LeavingTest {
  @TempDir private Path folder = Path.of("");

  @Test
  void tellsWhatContradictsWhatAndWhatIsMissing() {
    Path book = Books.copied("S11", folder);
    Said said = Said.by("leaving", book);
    assertThat(said.code()).isEqualTo(ExitCode.SOMETHING_OPEN);
    assertThat(said.out()).contains("A–L2").contains("Does it drain?");
    assertThat(Books.below(folder)).hasSize(1);
  }

  @Test
  void asksForThreeThingsAtMostTheQuickestFirst() {
    Path book = Books.copied("S08", folder);
    Said said = Said.by("leaving", book);
    assertThat(said.out()).contains("Before you leave, the quickest first:");
    JsonNode asks = Said.by("leaving", book, "--json").json().path("asks");
    assertThat(asks).isNotEmpty().hasSizeLessThanOrEqualTo(3);
    for (int i = 1; i < asks.size(); i++) {
      assertThat(asks.path(i).path("minutes").asDouble())
          .isGreaterThanOrEqualTo(asks.path(i - 1).path("minutes").asDouble());
    }
  }

  @Test
  void repliesInJson() {
    JsonNode reply = Said.by("leaving", Books.copied("S08", folder), "--json").json();
    assertThat(reply.path("schema").asText()).isEqualTo("daylight-reply");
    assertThat(reply.path("version").asInt()).isEqualTo(1);
    assertThat(reply.path("outcome").asText()).isEqualTo("leaving");
    assertThat(reply.path("contradictions")).hasSize(1);
    assertThat(reply.path("lines").path(0).path("answers").path(0).has("missing")).isTrue();
  }

  @Test
  void refusesABookThatIsNotThere() {
    Said said = Said.by("leaving", folder.resolve("none.yaml"));
    assertThat(said.code()).isEqualTo(ExitCode.BOOK_REFUSED);
    assertThat(said.err()).startsWith(folder.resolve("none.yaml") + ": ");
    assertThat(said.out()).isEmpty();
  }

  @Test
  void doesNotTakeAFolderForResults() {
    Said said = Said.by("leaving", Books.copied("S01", folder), "-o", folder);
    assertThat(said.code()).isEqualTo(ExitCode.USAGE);
  }
}
