package daylight.report.draw;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import daylight.report.data.AnswersFile;
import daylight.report.data.LineFile;
import daylight.report.markup.Tag;
import daylight.report.page.OwnersReport;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Marks of other services, wherever somebody may dig by what is handed over. */
class ServicesTest {
  /** A pipe straight out from a wall, a gas mark across it, another with no place. */
  static final String YARD =
      """
      daylight-book: 1
      units: {distance: m, depth: m, bore: mm, level: m}
      site:
        name: Yard
        zone: UTC
        landmarks:
          - {label: A, what: corner, kind: corner, base: yes}
          - {label: B, what: corner, kind: corner, base: yes}
        nodes:
          - {label: N1, kind: access, what: cleanout}
          - {label: N2, kind: outlet}
        reaches:
          - {label: R1, line: main, from: N1, to: N2, water: forward, use: sanitary, material: pvc, bore: 100 mm}
      visits:
        - label: V1
          date: 2026-05-06
          kit: {sonde-behind-lens: 0.3 m, sonde-above-invert: 20 mm}
          passes:
            - label: P1
              entry: N1
              head: self-righting
              walk: [R1]
              zero: {reads: 0}
              end: {cable: 20, why: outlet-reached, node: N2}
              sight: [{from: 0, to: 20, clarity: clear}]
              findings:
                - {label: F1, kind: crack, cable: 9, width: 2 mm}
          locates:
            - {label: L1, pass: P1, cable: 4.3, along: 3, out: 6, depth: 1.1}
            - {label: L2, pass: P1, cable: 10.3, along: 3.05, out: 12, depth: 1.15}
            - {label: L3, pass: P1, cable: 18.3, along: 3, out: 20, depth: 1.2}
          spots:
            - {of: K1, along: -2, out: 11}
            - {of: K2, along: 8, out: 11.5}
            - {of: K3, along: 6, out: 16}
          ties:
            - {label: T1, from: A, to: B, tape: 10}
          services:
            - {label: U1, service: gas, points: [K1, K2]}
            - {label: U2, service: electric, points: [K3]}
            - {label: U3, service: water, points: []}
      """;

  private final Subject subject = Typed.of(YARD);

  @Test
  void thePlanDrawsEachWithItsWordAndItsPaint() {
    Tag plan = PlanDrawing.draw(subject);
    String said = String.join(" ", LabelOverlaps.words(plan));

    assertThat(plan.write()).contains("#ffd400").contains("#d8262c");
    assertThat(said).contains("gas U1").contains("electric U2");
    assertThat(said).contains("yellow paint").contains("red paint");
    assertThat(said).contains("water U3: its place was not measured");
    assertThat(LabelOverlaps.of(plan)).isEmpty();
  }

  @Test
  void fromTheSideItMayBeAtAnyDepth() {
    Tag profile = ProfileDrawing.draw(subject);

    assertThat(LabelOverlaps.words(profile)).contains("gas U1, any depth");
    assertThat(String.join(" ", LabelOverlaps.words(profile))).doesNotContain("electric U2");
    assertThat(LabelOverlaps.of(profile)).isEmpty();
  }

  @Test
  void theReportListsThemWithTheCautionAndWhatNobodyMarked() {
    String page = OwnersReport.of(subject).page();

    assertThat(page)
        .contains("Marks of other services")
        .contains("Gas, oil or steam, yellow paint")
        .contains("Dig by hand near every mark")
        .contains("No paint tells how deep")
        .contains("it may be anywhere");
  }

  @Test
  void mapsAndProgramsGetThemToo() throws IOException {
    JsonNode line = new ObjectMapper().readTree(LineFile.write(subject));
    JsonNode answers = new ObjectMapper().readTree(AnswersFile.write(subject));
    List<JsonNode> services =
        line.get("features").findParents("role").stream()
            .filter(one -> one.get("role").asText().equals("service"))
            .toList();

    assertThat(services).hasSize(3);
    assertThat(services.get(0).get("service").asText()).isEqualTo("gas");
    assertThat(services.get(0).get("crossings")).hasSize(1);
    assertThat(services.get(0).get("depth").isNull()).isTrue();
    assertThat(services.get(0).get("caution").asText()).contains("how deep");
    assertThat(services.get(2).get("placed").asBoolean()).isFalse();
    assertThat(answers.get("services")).hasSize(3);
    assertThat(answers.at("/services/1/nearest/distance").asDouble()).isBetween(13.0, 15.0);
  }
}
