package daylight.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The commands {@code figure fall} and {@code figure ponding}. */
class FigureFallTest {
  @TempDir private Path folder = Path.of("");

  @Test
  void aFallIsToldWithItsDoubtAndTheRule() {
    Said said =
        Said.by(
            "figure", "fall", Books.copied("S07", folder), "--at", "R1:1 ft", "--to", "R1:30 ft");
    assertThat(said.code()).isEqualTo(ExitCode.DONE);
    assertThat(said.out())
        .startsWith("It falls by ")
        .contains("That is a slope of ")
        .contains("The rule is for new work.")
        .contains("It runs against the water: ");
  }

  @Test
  void aFallEndsDownstreamOnTheSameReach() {
    Said said =
        Said.by(
            "figure", "fall", Books.copied("S07", folder), "--at", "R1:30 ft", "--to", "R1:1 ft");
    assertThat(said.code()).isEqualTo(ExitCode.USAGE);
    assertThat(said.err()).contains("“R1:1 ft” does not lie downstream on the same reach");
  }

  @Test
  void pondingIsAProbabilityWithItsSeed() {
    Path book = Books.copied("S07", folder);
    Said said = Said.by("figure", "ponding", book, "--at", "R1:20 ft");
    assertThat(said.code()).isEqualTo(ExitCode.DONE);
    assertThat(said.out()).startsWith("Water stands deeper than ").contains("seed 20240229");

    JsonNode reply = Said.by("figure", "ponding", book, "--at", "R1:20 ft", "--json").json();
    assertThat(reply.path("figures").get(0).path("name").asText()).isEqualTo("deeper");
    assertThat(reply.path("figures").get(0).path("value").asDouble()).isBetween(0.0, 1.0);
  }

  @Test
  void aPlaceThatIsNowhereIsRefused() {
    Said said = Said.by("figure", "ponding", Books.copied("S07", folder), "--at", "somewhere");
    assertThat(said.code()).isEqualTo(ExitCode.USAGE);
    assertThat(said.err()).contains("“somewhere”");
  }
}
