package daylight.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;

class ReportTest {

  @Test
  void theSameHandoutGivesTheSameBytes() {
    Map<String, byte[]> once = Report.files(Example.deadly());
    Map<String, byte[]> again = Report.files(Example.deadly());

    assertThat(once.keySet())
        .filteredOn(name -> !name.startsWith("maps/"))
        .containsExactly(
            "answers.json",
            "crew-cards.pdf",
            "follow-ups.ics",
            "line.geojson",
            "plan.svg",
            "profile.svg",
            "report-short.pdf",
            "report.html",
            "report.pdf",
            "strip.svg");
    once.forEach((name, bytes) -> assertThat(bytes).as(name).isEqualTo(again.get(name)));
  }
}
