package daylight.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The command {@code figure}: what every calculation by itself has in common, and the nulls. */
class FigureTest {
  private static JsonNode figure(JsonNode reply, String name) {
    for (JsonNode one : reply.path("figures")) {
      if (one.path("name").asText().equals(name)) {
        return one;
      }
    }
    throw new AssertionError(name + " is not among " + reply);
  }

  @Test
  void listsItsCalculations() {
    Said said = Said.by("figure");
    assertThat(said.code()).isEqualTo(ExitCode.DONE);
    assertThat(said.out()).contains("nulls");
  }

  /** 4 ft 7 in over √2 is 38.9 in. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
          4' 7"      |             | below the receiver
          4 ft 7 in  | feet-inches | 3' 3"
          4.583 ft   |             | 3.24 ft
          1.397 m    |             | 0.99 m
          1397 mm    | metres      | 0.99 m
          55 in      | feet        | 3.24 ft
          """)
  void showsTheUnitsWrittenOrAskedFor(String spacing, String units, String shown) {
    Said said =
        units == null
            ? Said.by("figure", "nulls", "--spacing", spacing, "--tilt-give-or-take", "0.01")
            : Said.by(
                "figure",
                "nulls",
                "--spacing",
                spacing,
                "--units",
                units,
                "--tilt-give-or-take",
                "0.01");
    assertThat(said.err()).isEmpty();
    assertThat(said.code()).isEqualTo(ExitCode.DONE);
    assertThat(said.out()).contains(shown).contains("give or take");
  }

  @Test
  void repliesInJson() {
    JsonNode reply =
        Said.by("figure", "nulls", "--spacing", "2 m", "--give-or-take", "2 cm", "--json").json();
    assertThat(reply.path("schema").asText()).isEqualTo("daylight-reply");
    assertThat(reply.path("outcome").asText()).isEqualTo("figured");
    assertThat(figure(reply, "level").path("value").asDouble()).isCloseTo(1.414214, within(1e-6));
    assertThat(figure(reply, "level").path("sd").asDouble()).isCloseTo(0.0102, within(1e-4));
    assertThat(figure(reply, "depth").path("sentence").asText()).contains("m (give or take");
    assertThat(reply.path("told")).hasSize(1);
  }

  @Test
  void tellsTiltAndPlaceFromTheMark() {
    JsonNode reply =
        Said.by(
                "figure",
                "nulls",
                "--before",
                "1.1023 m",
                "--after",
                "1.0558 m",
                "--json",
                "--give-or-take",
                "0.1 mm",
                "--tilt-give-or-take",
                "60")
            .json();
    // The row of 10° at 1.5 m, seen from its upright null.
    assertThat(figure(reply, "depth").path("value").asDouble()).isCloseTo(1.5, within(5e-3));
    assertThat(figure(reply, "tilt").path("value").asDouble())
        .isCloseTo(StrictMath.toRadians(10), within(0.01));
    assertThat(figure(reply, "position").path("value").asDouble()).isCloseTo(0.175, within(0.01));
  }

  @Test
  void complainsOfEveryOptionThatIsWrongAtOnce() {
    Said said =
        Said.by(
            "figure",
            "nulls",
            "--before",
            "4.5",
            "--beside",
            "x",
            "--tilt",
            "3 ft",
            "--units",
            "ells",
            "--give-or-take",
            "-1 in");
    assertThat(said.code()).isEqualTo(ExitCode.USAGE);
    assertThat(said.out()).isEmpty();
    assertThat(said.err().lines())
        .hasSize(6)
        .anyMatch(line -> line.startsWith("daylight: --before: “4.5” is not a length: its unit"))
        .anyMatch(line -> line.startsWith("daylight: --after: it is needed"))
        .anyMatch(line -> line.startsWith("daylight: --beside: “x”"))
        .anyMatch(line -> line.startsWith("daylight: --tilt: “3 ft” is not an angle"))
        .anyMatch(line -> line.startsWith("daylight: --units: “ells”"))
        .anyMatch(line -> line.startsWith("daylight: --give-or-take: “-1 in” must be more"));
  }

  @Test
  void complainsInJson() {
    Said said = Said.by("figure", "nulls", "--json");
    assertThat(said.code()).isEqualTo(ExitCode.USAGE);
    assertThat(said.json().path("outcome").asText()).isEqualTo("refused");
    assertThat(said.json().path("complaints").path(0).path("option").asText())
        .isEqualTo("--spacing");
  }

  @Test
  void saysWhenNoTransmitterMakesSuchMarks() {
    Said said = Said.by("figure", "nulls", "--spacing", "3 ft", "--beside", "4 ft");
    assertThat(said.code()).isEqualTo(ExitCode.SOMETHING_OPEN);
    assertThat(said.out()).contains("No transmitter makes such marks");
  }
}
