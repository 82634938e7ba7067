package daylight.report.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import daylight.report.data.AnswersFile;
import daylight.report.page.OwnersReport;
import daylight.report.words.GradeWords;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Grades in what is handed over. Classes after Stein & Stein, Instandhaltung von Kanalisationen,
 * 2001, Table 4.7.4.3.1-1, action at once after Table 4.7.4.1.1-1 (looked up at unitracc.de).
 */
class GradesShownTest {
  private static final Subject SEEN =
      Typed.one(
          ", bore: 100",
          """
          end: {cable: 12, why: outlet-reached, node: N2}
          sight:
            - {from: 0, to: 12, clarity: clear}
          findings:
            - {label: F1, kind: crack, cable: 1, width: 3 mm}
            - {label: F2, kind: crack, cable: 2, width: 12 mm}
            - {label: F3, kind: crack, cable: 3}
            - {label: F4, kind: displaced-joint, cable: 4, offset: 12 mm}
            - {label: F5, kind: standing-water, from: 5, to: 6, depth: {is: 30 mm, sd: 5 mm}}
            - {label: F6, kind: roots, cable: 7, share: 35 %}
            - {label: F7, kind: bend, cable: 8}
            - {label: F8, kind: crack, cable: 9, width: {is: 2.1 mm, sd: 0.2 mm}}
          """);

  private static List<String> said() {
    GradeWords words = new GradeWords(SEEN.words());
    return Captions.findings(SEEN).stream()
        .map(placed -> words.grade(SEEN.rules().grade(placed, SEEN.line())).orElse("–"))
        .toList();
  }

  @Test
  void numberAndWordStructureAndOperationApart() {
    assertThat(said())
        .containsExactly(
            "Structure: class 2, short term",
            "Structure: class 1, at once; act at once",
            "Structure: can’t say without width",
            "Structure: class 3, medium term",
            "Operation: class 3, medium term; by its doubt 3 to 4",
            "Operation: can’t say without what they came in through and thickness; act at once",
            "–",
            "Structure: class 2, short term; by its doubt 2 to 3");
  }

  @Test
  void theFileOfAnswersHasThemWithTheirSource() throws IOException {
    JsonNode root = new JsonMapper().readTree(AnswersFile.write(SEEN));
    assertThat(root.at("/grades/adaptedFor").asText()).isEqualTo("small drains");
    assertThat(root.at("/grades/onLimit").asText()).isEqualTo("worse");
    assertThat(root.at("/findings/0/grade/structure/class").asInt()).isEqualTo(2);
    assertThat(root.at("/findings/0/grade/structure/word").asText()).isEqualTo("short term");
    assertThat(root.at("/findings/0/grade/structure/source").asText()).isEqualTo("stein-h5");
    assertThat(root.at("/findings/0/grade/immediate").asText()).isEqualTo("no");
    assertThat(root.at("/findings/1/grade/immediate").asText()).isEqualTo("yes");
    assertThat(root.at("/findings/2/grade/structure/missing/0").asText()).isEqualTo("width");
    assertThat(root.at("/findings/6/grade/ungraded").asText()).isEqualTo("feature");
    double sum = 0;
    for (JsonNode chance : root.at("/findings/7/grade/structure/chances")) {
      sum += chance.path("chance").asDouble();
    }
    assertThat(sum).isCloseTo(1, within(1e-5));
  }

  @Test
  void theReportHasThemAndSaysByWhichScheme() {
    String page = OwnersReport.of(SEEN).page();
    assertThat(page)
        .contains("Structure: class 2, short term")
        .contains("adapted for small drains")
        .contains("The worst for structure is class 1, at once: crack, 1.99 m from cleanout")
        .contains("calls for action at once, whatever its grade");
  }
}
