package daylight.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command {@code figure next}. */
class FigureNextTest {
  @TempDir private Path folder = Path.of("");

  @Test
  void tellsWhatIsKnownAndWhatAMeasurementWouldMakeOfIt() {
    Said said = Said.by("figure", "next", Books.copied("S07", folder), "--at", "L1");
    assertThat(said.code()).isEqualTo(ExitCode.DONE);
    assertThat(said.out()).startsWith("The bottom of the pipe is known now to lie ");
    assertThat(said.out()).contains("A locate at R1, ").contains("Notify before you dig");
  }

  @Test
  void noMeasurementMakesAFigureLessSure() {
    JsonNode reply =
        Said.by("figure", "next", Books.copied("S07", folder), "--at", "R1:30 ft", "--json").json();
    double now = sd(reply, "depth");
    assertThat(now).isPositive();
    for (String kind : new String[] {"locate", "probe"}) {
      assertThat(sd(reply, kind)).as(kind).isPositive().isLessThan(now);
    }
  }

  private static double sd(JsonNode reply, String name) {
    for (JsonNode figure : reply.path("figures")) {
      if (figure.path("name").asText().equals(name)) {
        return figure.path("sd").asDouble();
      }
    }
    return Double.NaN;
  }

  @Test
  void aFallNeedsItsOtherEnd() {
    Said said =
        Said.by("figure", "next", Books.copied("S07", folder), "--about", "fall", "--at", "L1");
    assertThat(said.code()).isEqualTo(ExitCode.USAGE);
    assertThat(said.err()).contains("--to");
  }

  @Test
  void aPlaceThatIsNowhereIsRefused() {
    Said said = Said.by("figure", "next", Books.copied("S07", folder), "--at", "somewhere");
    assertThat(said.code()).isEqualTo(ExitCode.USAGE);
    assertThat(said.err()).contains("“somewhere”");
  }
}
