package daylight.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The command {@code figure ties --network}: networks by themselves, in and out. */
class FigureTiesTest {
  @TempDir private Path folder = Path.of("");

  private Path file(String text) throws IOException {
    return Files.writeString(folder.resolve("network.yaml"), text);
  }

  private Path published(String name) throws IOException {
    try (InputStream in = FigureTiesTest.class.getResourceAsStream("networks/" + name + ".yaml")) {
      Path file = folder.resolve(name + ".yaml");
      Files.write(file, Objects.requireNonNull(in, name).readAllBytes());
      return file;
    }
  }

  private static JsonNode point(JsonNode reply, String label) {
    for (JsonNode one : reply.path("points")) {
      if (one.path("point").asText().equals(label)) {
        return one;
      }
    }
    throw new AssertionError(label + " is not among " + reply);
  }

  /**
   * Reference: each file names its primary source; results computed with GNU Gama 2.33, a priori.
   * Coordinates to 0.1 mm, standard deviations and 95 % ellipses to 1 %.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          benning-82 | 1 | 0.473676 | 3 | -0.0095845 | -0.0226012 | 0.01309328 | 0.00925829 | 0.03461704 | 0.01850312
          benning-82 | 1 | 0.473676 | 4 | 999.9930160 | 0.0173987 | 0.01309292 | 0.00925813 | 0.03461584 | 0.01850332
          benning-88 | 3 | 0.758485 | 6 | 2000.0000000 | 1999.9975728 | 0.01002484 | 0.01980487 | 0.04847732 | 0.02453828
          niemeier | 8 | 7.471481 | Z108 | 40759.3769302 | 27816.1166401 | 0.00323575 | 0.00311486 | 0.00827487 | 0.00723802
          niemeier | 8 | 7.471481 | Z110 | 41373.0192660 | 27904.0042093 | 0.00322408 | 0.00298982 | 0.00819584 | 0.00697609
          strang-borre | 1 | 10.909363 | P | 170.7029254 | 170.7233566 | 0.01000094 | 0.00707073 | 0.02447978 | 0.01730737
          """)
  void aPublishedNetworkComesOutAsPublished(
      String name,
      int dof,
      double squares,
      String label,
      double east,
      double north,
      double sdEast,
      double sdNorth,
      double semiMajor,
      double semiMinor)
      throws IOException {
    JsonNode reply = Said.by("figure", "ties", "--network", published(name), "--json").json();
    assertThat(reply.path("degrees-of-freedom").asInt()).isEqualTo(dof);
    assertThat(reply.path("weighted-sum-of-squares").asDouble()).isCloseTo(squares, within(1e-4));
    JsonNode point = point(reply, label);
    assertThat(point.path("east").asDouble()).isCloseTo(east, within(1e-4));
    assertThat(point.path("north").asDouble()).isCloseTo(north, within(1e-4));
    close(point.path("sd-east"), sdEast);
    close(point.path("sd-north"), sdNorth);
    close(point.path("ellipse-95").path("semi-major"), semiMajor);
    close(point.path("ellipse-95").path("semi-minor"), semiMinor);
  }

  private static void close(JsonNode actual, double expected) {
    assertThat(actual.asDouble()).isCloseTo(expected, withPercentage(1));
  }

  @Test
  void whatDoesNotFitIsNamedAndStaysInUnlessAskedOtherwise() throws IOException {
    Path strang = published("strang-borre");
    JsonNode kept = Said.by("figure", "ties", "--network", strang, "--json").json();
    // With one reading over none can be told from the others.
    assertThat(kept.path("suspects")).hasSize(1);
    assertThat(kept.path("suspects").get(0).path("set-aside").asBoolean()).isFalse();
    assertThat(kept.path("told").get(0).path("sentence").asText())
        .startsWith("One of the readings")
        .contains("the others can’t tell which");
  }

  /** An invented network in every kind of reading, built about P (10, 5) and Q (4, 12). */
  private static final String MIXED =
      """
      daylight-network: 1
      units: {distance: m, angle: gon}
      points:
        - {point: A, east: 0, north: 0, fixed: yes}
        - {point: B, east: 20, north: 0, fixed: yes}
        - {point: Q, east: 4, north: 12}
      observations:
        - {label: a, from: A, to: P, distance: 11.180340, sd: 5 mm}
        - {label: b, from: A, to: P, azimuth: 70.483276, sd: 0.01}
        - {label: c, at: A, from: Q, to: P, angle: 50.000000, sd: 0.01}
        - {label: d1, set: s, from: P, to: A, direction: 100, sd: 0.01}
        - {label: d2, set: s, from: P, to: B, direction: 359.033447, sd: 0.01}
        - {label: d3, set: s, from: P, to: Q, direction: 184.404174, sd: 0.01}
        - {label: v, from: P, to: Q, vector: {east: -6, north: 7}, sd-east: 1 cm, sd-north: 2 cm, correlation: 0.5}
        - {label: q, point: Q, coordinates: {east: 4, north: 12}, sd: 3 cm}
        - {label: w, point: P, wall: [A, B], along: 10, out: 5, sd-along: 2 cm, sd-out: 3 cm}
        - {label: e, from: P, to: Q, distance: 9.219544}
        - {label: f, from: B, to: Q, distance: 20}
      covariances:
        - {of: [e, f], matrix: [[2.5e-05, 1e-5], [1e-5, 0.000036]]}
      """;

  @Test
  void everyKindOfReadingIsTaken() throws IOException {
    Said said = Said.by("figure", "ties", "--network", file(MIXED), "--json");
    assertThat(said.err()).isEmpty();
    JsonNode reply = said.json();
    assertThat(point(reply, "P").path("east").asDouble()).isCloseTo(10, within(1e-3));
    assertThat(point(reply, "P").path("north").asDouble()).isCloseTo(5, within(1e-3));
    assertThat(point(reply, "Q").path("east").asDouble()).isCloseTo(4, within(1e-3));
    assertThat(point(reply, "Q").path("north").asDouble()).isCloseTo(12, within(1e-3));
    assertThat(reply.path("readings")).hasSize(14);
    assertThat(reply.path("covariance").path("east-north-by-point")).hasSize(4);
    assertThat(said.code()).isEqualTo(ExitCode.DONE);
    Said sentences = Said.by("figure", "ties", "--network", file(MIXED));
    assertThat(sentences.out()).contains("Points on the site grid").doesNotContain("NaN");
  }

  /**
   * Local metres are geodesics on WGS 84 from the origin: a degree of latitude is 110.6 to 111.7
   * km.
   */
  @Test
  void fixesOnTheEarthBecomeLocalMetres() throws IOException {
    Path file =
        file(
            """
            daylight-network: 1
            origin: {latitude: 43, longitude: -80.5}
            observations:
              - {label: g1, point: P, gnss: {latitude: 43.0009, longitude: -80.5}, sd: 2 cm}
              - {label: g2, point: Q, gnss: {latitude: 43, longitude: -80.4988}, sd: 2 cm}
              - {label: t, from: P, to: Q, distance: 139.87, sd: 5 cm}
            covariances:
              - of: [g1, g2]
                matrix:
                  - [0.0004, 0, 0.0003, 0]
                  - [0, 0.0004, 0, 0.0003]
                  - [0.0003, 0, 0.0004, 0]
                  - [0, 0.0003, 0, 0.0004]
            """);
    JsonNode reply = Said.by("figure", "ties", "--network", file, "--json").json();
    assertThat(point(reply, "P").path("north").asDouble()).isBetween(99.5, 100.6);
    assertThat(point(reply, "P").path("east").asDouble()).isCloseTo(0, within(0.05));
    assertThat(point(reply, "Q").path("east").asDouble()).isBetween(97.0, 98.5);
    JsonNode covariance = reply.path("covariance").path("east-north-by-point");
    // What the two share stays, whatever the tape says of their distance.
    assertThat(covariance.get(0).get(2).asDouble()).isGreaterThan(0.00025);
  }

  /** Complaints name line and column. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          sd: 5 mm}                        | }                                    | 8:     | “sd” is missing
          distance: 11.180340, sd: 5 mm    | distance: eleven, sd: 5 mm           | 8:42   | “eleven” is not
          azimuth: 70.483276               | azimut: 70.483276                    | 9:     | did you mean
          set: s, from: P, to: A           | set: s, from: P, to: P               | 11:    | P
          [e, f]                           | [e, nobody]                          | 20:    | “nobody”
          [1e-5, 0.000036]                 | [2e-5, 0.000036]                     | 20:    | not symmetric
          [[2.5e-05, 1e-5], [1e-5, 0.000036]] | [[1e-5, 1e-5], [1e-5, 1e-5]]      | 20:    | no covariance
          [[2.5e-05, 1e-5], [1e-5, 0.000036]] | [[1e-5]]                          | 20:    | 2 rows
          0.000036]]                       | six]]                                | 20:    | “six”
          label: b,                        | label: a,                            | 9:     | twice
          correlation: 0.5                 | correlation: 1.5                     | 14:    | “1.5”
          point: B, east: 20               | point: A, east: 20                   | 5:     | twice
          """)
  void whatIsWrongIsToldWithItsPlace(String right, String wrong, String place, String words)
      throws IOException {
    assertThat(MIXED).contains(right);
    Said said = Said.by("figure", "ties", "--network", file(MIXED.replace(right, wrong)));
    assertThat(said.code()).isEqualTo(ExitCode.BOOK_REFUSED);
    assertThat(said.err()).contains("network.yaml:" + place).contains(words);
    assertThat(said.out()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "daylight-network: 2",
        "daylight-network: 1",
        "[]",
        "daylight-network: 1\nobservations: [[]]",
        "daylight-network: 1\nobservations: [{}]\npoints: [{}]\ncovariances: [{}]",
        "daylight-network: 1\nobservations: [{label: a, point: P, gnss: 3, sd: 1 m}]",
        "daylight-network: 1\nobservations: [{label: a, from: A, to: B, distance: 0, sd: 1}]",
        "daylight-network: 1\nbase: [A, A]\nobservations: [{from: A, to: B, distance: 3, sd: 1}]",
      })
  void brokenNetworksGiveASentence(String text) throws IOException {
    Said said = Said.by("figure", "ties", "--network", file(text));
    assertThat(said.code()).isIn(ExitCode.BOOK_REFUSED, ExitCode.SOMETHING_OPEN);
    assertThat(said.out() + said.err()).isNotBlank().doesNotContain("NaN");
  }

  @Test
  void aBookOrANetworkIsNeededAndNotBoth() throws IOException {
    assertThat(Said.by("figure", "ties").code()).isEqualTo(ExitCode.USAGE);
    Path file = file(MIXED);
    assertThat(Said.by("figure", "ties", file, "--network", file).code()).isEqualTo(ExitCode.USAGE);
  }
}
