package daylight.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The commands {@code figure frost} and {@code figure freeze}. */
class FigureFrostTest {
  @TempDir private Path folder = Path.of("");

  private static Said figure(String which, Object... more) {
    Object[] all = new Object[more.length + 2];
    all[0] = "figure";
    all[1] = which;
    System.arraycopy(more, 0, all, 2, more.length);
    return Said.by(all);
  }

  private static JsonNode of(JsonNode reply, String name) {
    for (JsonNode one : reply.path("figures")) {
      if (one.path("name").asText().equals(name)) {
        return one;
      }
    }
    throw new AssertionError(name + " is not among " + reply);
  }

  /**
   * ufc-3-130-06, ¶3-3, from memory: 5.8 ft by the chart's λ of 0.89; 5.819 ft by the exact one,
   * recomputed apart from this program.
   */
  @Test
  void workedExampleOfTheManual() {
    JsonNode reply =
        figure(
                "frost",
                "--freezing-index",
                "2500 F-days",
                "--mean-temperature",
                "37.2 °F",
                "--season",
                "160 d",
                "--dry-density",
                "100 lb/ft3",
                "--moisture",
                "15 %",
                "--conductivity",
                "0.76 Btu/h·ft·°F",
                "--n-factor",
                "1",
                "--json")
            .json();
    assertThat(of(reply, "depth").path("value").asDouble())
        .isCloseTo(5.819 * 0.3048, within(0.002));
    assertThat(of(reply, "lambda").path("value").asDouble()).isCloseTo(0.896, within(0.001));
    assertThat(of(reply, "stefan").path("value").asDouble())
        .isCloseTo(6.498 * 0.3048, within(0.001));
  }

  @Test
  void tellsDepthMarginAndWhatItRestsOn() {
    Said said =
        figure(
            "frost",
            "--climate",
            "madison",
            "--soil",
            "silty clay",
            "--surface",
            "lawn",
            "--cover",
            "6 ft");
    assertThat(said.err()).isEmpty();
    assertThat(said.code()).isEqualTo(ExitCode.DONE);
    assertThat(said.out())
        .contains("Frost goes ")
        .contains("Factor λ ")
        .contains("That frost gets there: very unlikely")
        .contains("Most of the doubt comes from ")
        .contains("The mean winter of Madison, Wisconsin")
        .contains("Source: normals-madison, looked up.")
        .contains("Surface turf: it gets 50 %")
        .contains("Kersten")
        .contains("No open flame");
  }

  @Test
  void tooCloseAndBeyondTheFormulaLeaveWithOne() {
    Said close =
        figure(
            "frost",
            "--climate",
            "winnipeg",
            "--soil",
            "clay",
            "--surface",
            "asphalt",
            "--cover",
            "1.5 m");
    assertThat(close.code()).isEqualTo(ExitCode.SOMETHING_OPEN);
    Said frozen = figure("frost", "--climate", "fairbanks", "--soil", "silt");
    assertThat(frozen.code()).isEqualTo(ExitCode.SOMETHING_OPEN);
    assertThat(frozen.out())
        .contains("The formula does not hold here: the year is at or below freezing on average");
    Said dry = figure("frost", "--climate", "madison", "--soil", "sand", "--moisture", "0 %");
    assertThat(dry.out()).contains("ground without water has no heat of freezing");
    Said warm =
        figure(
            "frost",
            "--freezing-index",
            "0 C-days",
            "--mean-temperature",
            "18 °C",
            "--season",
            "1 d",
            "--soil",
            "sand");
    assertThat(warm.code()).isEqualTo(ExitCode.DONE);
    assertThat(warm.out())
        .contains("The ground does not freeze: it does not freeze over the winter.");
    Said deepSnow = figure("frost", "--climate", "chicago", "--soil", "clay", "--snow", "5 ft");
    assertThat(deepSnow.out())
        .contains("the warmth of the ground holds the cold off under the snow");
  }

  @Test
  void whatIsWrongIsToldAtOnce() {
    Said said =
        figure(
            "frost",
            "--freezing-index",
            "very cold",
            "--season",
            "0 d",
            "--soil",
            "cley",
            "--moisture",
            "-5 %",
            "--surface",
            "asfalt",
            "--n-factor",
            "many",
            "--cover",
            "-1 ft");
    assertThat(said.code()).isEqualTo(ExitCode.USAGE);
    assertThat(said.err())
        .contains("--freezing-index: ")
        .contains("--mean-temperature: ")
        .contains("--season: ")
        .contains("--soil: “cley” is not known; did you mean clay?")
        .contains("--moisture: ")
        .contains("--surface: “asfalt” is not known; did you mean asphalt?")
        .contains("--n-factor: ")
        .contains("--cover: ");
    assertThat(said.out()).isEmpty();
    assertThat(figure("frost").err())
        .contains("--freezing-index: ")
        .contains("--soil: give --soil, or all");
    assertThat(figure("frost", "--climate", "madisson", "--soil", "clay").err())
        .contains("did you mean madison?");
  }

  /** ashrae-23.1 by warren-freeze, looked up: 1.4 h to the freezing point. */
  @Test
  void freezesAsTheHandbookSays() {
    JsonNode reply =
        figure(
                "freeze",
                "--bore",
                "2.067 in",
                "--outside-diameter",
                "2.375 in",
                "--insulation",
                "1.5 in",
                "--conductivity",
                "0.025 Btu/hftF",
                "--water-temperature",
                "42 °F",
                "--outside",
                "-18 °F",
                "--json")
            .json();
    assertThat(of(reply, "cooling").path("value").asDouble() / 3600).isCloseTo(1.4, within(0.05));
    assertThat(of(reply, "solid").path("value").asDouble() / 3600).isCloseTo(21.8, within(0.1));
  }

  @Test
  void freezingTellsWhatItLeavesOut() {
    Said said =
        figure(
            "freeze",
            "--bore",
            "100 mm",
            "--water",
            "30 mm",
            "--depth",
            "0.6 m",
            "--conductivity",
            "1.3 W/mK",
            "--water-temperature",
            "4 °C",
            "--outside",
            "-3 °C");
    assertThat(said.code()).isEqualTo(ExitCode.DONE);
    assertThat(said.out())
        .contains("To the freezing point: ")
        .contains("From there to ice: ")
        .contains("Left out: the ice’s own resistance")
        .contains("not the air’s")
        .contains("No open flame");
    assertThat(
            figure(
                    "freeze",
                    "--bore",
                    "100 mm",
                    "--depth",
                    "0.6 m",
                    "--conductivity",
                    "1.3 W/mK",
                    "--water-temperature",
                    "4 °C",
                    "--outside",
                    "1 °C")
                .out())
        .contains("It does not freeze: it is not below freezing around it.");
  }

  @Test
  void whatIsWrongWithFreezingIsToldAtOnce() {
    Said said =
        figure(
            "freeze",
            "--bore",
            "100 mm",
            "--outside-diameter",
            "90 mm",
            "--water-temperature",
            "-2 °C",
            "--outside",
            "cold",
            "--conductivity",
            "0 W/mK");
    assertThat(said.code()).isEqualTo(ExitCode.USAGE);
    assertThat(said.err())
        .contains("--outside-diameter: ")
        .contains("--water-temperature: water at “-2 °C”")
        .contains("--outside: ")
        .contains("--conductivity: ")
        .contains("--insulation: give --insulation or --depth");
    assertThat(
            figure(
                    "freeze",
                    "--bore",
                    "100 mm",
                    "--depth",
                    "4 cm",
                    "--conductivity",
                    "1 W/mK",
                    "--water-temperature",
                    "4 °C",
                    "--outside",
                    "-3 °C")
                .err())
        .contains("--depth: a pipe in the ground lies deeper than its radius");
  }

  @Test
  void takesTablesOfOnesOwn() throws IOException {
    Path ours =
        Files.writeString(
            folder.resolve("ours.yaml"),
            """
            daylight-frost: 1
            soils:
              - {id: marl, grain: fine, dry-density: 100 lb/ft3, density-give-or-take: 5 lb/ft3, water: 18 %, water-give-or-take: 4 %, source: ours, mark: derived}
            surfaces:
              - {id: unknown, factor: 70 %, give-or-take: 20 %, source: ours, mark: derived}
              - {id: snow, factor: 100 %, give-or-take: 10 %, source: ours, mark: derived}
            snow: {conductivity: 0.2 W/mK, give-or-take: 0.05 W/mK, source: ours, mark: derived}
            formula: {factor: 100 %, give-or-take: 10 %, source: ours, mark: derived}
            climates:
              - {id: here, place: Here, months: [-9 °C, -7 °C, -1 °C, 6 °C, 12 °C, 17 °C, 19 °C, 18 °C, 13 °C, 7 °C, 0 °C, -6 °C], source: ours, mark: derived}
            """);
    Said said = figure("frost", "--climate", "here", "--soil", "marl", "--frost-data", ours);
    assertThat(said.err()).isEmpty();
    assertThat(said.out()).contains("Source: ours, derived.");
    Path wrong =
        Files.writeString(
            folder.resolve("wrong.yaml"),
            """
            daylight-frost: 1
            soils:
              - {id: a, grain: lumpy, dry-density: 0 lb/ft3, density-give-or-take: 5 lb/ft3, water: 18, water-give-or-take: 4 %, source: x, mark: derived}
            surfaces:
              - {id: unknown, factor: 70 %, give-or-take: 20 %, source: x, mark: seen}
            snow: {conductivity: 0.2 W/mK, source: x, mark: derived}
            climates:
              - {id: here, place: Here, months: [-9 °C, warm], source: x, mark: derived}
            """);
    Said refused = figure("frost", "--climate", "madison", "--soil", "clay", "--frost-data", wrong);
    assertThat(refused.code()).isEqualTo(ExitCode.USAGE);
    assertThat(refused.err().lines().filter(line -> line.contains("--frost-data")).count())
        .isGreaterThanOrEqualTo(6);
  }
}
