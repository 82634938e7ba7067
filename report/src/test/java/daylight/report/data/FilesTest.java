package daylight.report.data;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import daylight.report.Example;
import daylight.report.Handout;
import daylight.report.Report;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import net.sf.geographiclib.Geodesic;
import org.junit.jupiter.api.Test;

class FilesTest {

  @Test
  void answersNameTheirSchemaAndGiveStopOrdersFirst() throws IOException {
    JsonNode answers = read(Example.deadly(), "answers.json");
    List<String> keys = new ArrayList<>();
    answers.fieldNames().forEachRemaining(keys::add);

    assertThat(keys).startsWith("schema", "version", "stops");
    assertThat(answers.get("schema").asText()).isEqualTo("daylight-answers");
    assertThat(answers.get("version").asInt()).isEqualTo(1);
    assertThat(answers.at("/stops/0/kind").asText()).isEqualTo("foreign-pipe");
  }

  @Test
  void everyAnswerHasItsFiguresInSiAndItsSentence() throws IOException {
    JsonNode where = read(Example.usual(), "answers.json").at("/lines/0/answers/0");

    assertThat(where.at("/headline/figures/0/value").asDouble()).isEqualTo(25.7);
    assertThat(where.at("/headline/figures/0/sd").asDouble()).isEqualTo(0.08);
    assertThat(where.at("/headline/sentence").asText()).startsWith("The drain runs 84' 4\"");
    assertThat(where.get("evidence")).isNotEmpty();
    assertThat(where.at("/contributions/0/source").asText()).isEqualTo("L5");
  }

  /** RFC 7946, section 3.2: an unlocated feature has a null geometry. */
  @Test
  void withoutASatelliteFixNothingIsPutOnTheGlobe() throws IOException {
    JsonNode line = read(Example.usual(), "line.geojson");

    int digs = Example.usual().answers().digs().size();

    assertThat(line.get("type").asText()).isEqualTo("FeatureCollection");
    assertThat(line.get("note").asText()).contains("satellite fix");
    assertThat(line.get("features")).hasSize(29 + 3 + digs);
    assertThat(line.get("features"))
        .allSatisfy(feature -> assertThat(feature.get("geometry").isNull()).isTrue())
        .allSatisfy(feature -> assertThat(feature.at("/properties/grid")).isNotEmpty());
  }

  /** RFC 7946, section 3.1.1: longitude first; the geodesic by Karney's GeographicLib. */
  @Test
  void withSatelliteFixesDistancesOnTheGlobeAreThoseOnTheGround() throws IOException {
    JsonNode line = read(Example.deadly(), "line.geojson");
    JsonNode a = feature(line, "landmark/A").at("/geometry/coordinates");
    JsonNode c = feature(line, "landmark/C").at("/geometry/coordinates");
    double metres =
        Geodesic.WGS84.Inverse(
                a.get(1).asDouble(), a.get(0).asDouble(), c.get(1).asDouble(), c.get(0).asDouble())
            .s12;

    assertThat(a.get(0).asDouble()).isCloseTo(-93.26, within(0.001));
    assertThat(a.get(1).asDouble()).isCloseTo(44.97, within(0.001));
    assertThat(metres).isCloseTo(Math.hypot(6.4, 0.1), within(0.002));
    assertThat(feature(line, "reach/R1").at("/geometry/type").asText()).isEqualTo("LineString");
  }

  @Test
  void numbersAreWrittenPlain() {
    assertThat(Json.number(2e7).toPlainString()).isEqualTo("20000000");
    assertThat(
            new String(
                Json.bytes(Json.object().put("x", Json.number(1e7))),
                java.nio.charset.StandardCharsets.UTF_8))
        .contains("10000000");
  }

  private static JsonNode feature(JsonNode line, String id) {
    for (JsonNode feature : line.get("features")) {
      if (feature.get("id").asText().equals(id)) {
        return feature;
      }
    }
    throw new AssertionError("no feature " + id);
  }

  private static JsonNode read(Handout handout, String file) throws IOException {
    byte[] bytes = Report.files(handout).get(file);
    return new ObjectMapper().readTree(java.util.Objects.requireNonNull(bytes));
  }
}
