package daylight.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Satellite fixes of an invented book: what each errs by itself, and what a set-up shares. */
class FixesOfABookTest {
  @TempDir private Path folder = Path.of("");

  private Said book(String first, String second) throws IOException {
    Path file =
        Files.writeString(
            folder.resolve("field-book.yaml"),
            """
            daylight-book: 1
            units: {distance: m, depth: m}
            site:
              landmarks: [{label: A, base: yes}, {label: B, base: yes}, {label: C}]
            visit:
              locates: [{label: L1, depth: 1, gnss: {latitude: 43.0003, longitude: -80.4996, FIRST}}]
              ties:
                - {from: A, to: B, tape: 33.34}
                - {point: A, gnss: {latitude: 43, longitude: -80.5, FIRST}}
                - {point: B, gnss: {latitude: 43.0003, longitude: -80.5, SECOND}}
                - {point: C, gnss: {latitude: 43.0001, longitude: -80.4995, SECOND}}
            """
                .replace("FIRST", first)
                .replace("SECOND", second));
    return Said.by("figure", "ties", file, "--json");
  }

  private static double sd(Said said, String label, String key) {
    for (JsonNode point : said.json().path("points")) {
      if (point.path("point").asText().equals(label)) {
        return point.path(key).asDouble();
      }
    }
    throw new AssertionError(label + " is not in " + said.out());
  }

  @Test
  void whatAllFixesShareMovesThemAllAndChangesNothingBetweenThem() throws IOException {
    String own = "sd-east: 2 cm, sd-north: 3 cm, correlation: 0.3";
    String shared = own + ", set: base, sd-shared: 50 cm";
    Said apart = book(own, own);
    Said together = book(shared, shared);
    for (String key : new String[] {"sd-east", "sd-north"}) {
      assertThat(sd(together, "L1", key)).isCloseTo(sd(apart, "L1", key), withPercentage(0.1));
    }
  }

  @Test
  void whatOnlySomeShareMovesThemAgainstTheOthers() throws IOException {
    Said apart = book("sd: 2 cm", "sd: 2 cm");
    Said moved = book("sd: 2 cm, set: morning, sd-shared: 50 cm", "sd: 2 cm");
    assertThat(sd(moved, "C", "sd-east")).isGreaterThan(2 * sd(apart, "C", "sd-east"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          sd: 2 cm, sd-east: 2 cm, sd-north: 2 cm           | one of these is needed
          sd-east: 2 cm                                     | “sd-north” is missing
          sd-east: 2 cm, sd-north: 2 cm, correlation: 1     | “1” is not a number
          sd: 0 cm                                          | “0 cm” must be more than nothing
          sd: 2 cm, set: base                               | “sd-shared” is missing
          sd: 2 cm, sd-shared: 1 cm                         | “set” is missing
          """)
  void halfAnUncertaintyIsAComplaint(String wrong, String sentence) throws IOException {
    Said said = book(wrong, "sd: 2 cm");
    assertThat(said.code()).isEqualTo(ExitCode.BOOK_REFUSED);
    assertThat(said.out()).contains(sentence).contains("\"line\" : 6");
  }
}
