package daylight.report.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import daylight.report.data.AnswersFile;
import daylight.report.draw.Subject;
import daylight.report.draw.Yards;
import java.io.IOException;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The cards that a crew takes to the dig. */
class DigCardsTest {
  private static String cards(Subject subject) {
    StringBuilder all = new StringBuilder();
    new DigCards(subject).told("h3").forEach(tag -> all.append(tag.write()));
    return all.toString();
  }

  private static List<String> lines(String html) {
    return Pattern.compile("<(?:p|li)[^>]*>([^<]*)<")
        .matcher(html)
        .results()
        .map(found -> found.group(1))
        .toList();
  }

  @Test
  void theFirstLineOfACardIsTheTicketOrDoNotDig() {
    List<String> none = lines(cards(Yards.without()));
    List<String> good = lines(cards(Yards.ticketed()));

    // The line before is the one that says what the cards are for.
    assertThat(none.get(1)).isEqualTo("No ticket on record: do not dig.");
    assertThat(good.get(1)).contains("INVENTED-9").contains("June 1, 2026");
  }

  @Test
  void aCardSaysSpotDepthBoxServicesGroundQualityAndCare() {
    String card = cards(Yards.ticketed());

    assertThat(card)
        .contains("F1 Crack")
        .contains("by level tape from A")
        .contains("by level tape from B")
        .contains("Or stand on")
        .contains("lay the box out along it")
        .contains("The top of the bore lies")
        .contains("The inside bottom lies")
        .contains("19 times of 20")
        .contains("Gas mark “U1”")
        .contains("quality level")
        .contains("Dig by hand near every mark")
        .contains("Local codes");
  }

  /** A trap that a neighbouring locate may have fallen for is said where somebody digs by it. */
  @Test
  void aCardSaysWhatIsDoubtedOfThePlacesItRestsOn() {
    assertThat(cards(Yards.doubted())).contains("L2: the signal stayed");
    assertThat(cards(Yards.ticketed())).doesNotContain("the signal stayed");
  }

  @Test
  void withoutADigThePageSaysSo() {
    assertThat(cards(Yards.sound())).contains("Nothing that was seen asks for a dig");
  }

  @Test
  void programsGetTheSameRowsAndTheShapeOfTheBox() throws IOException {
    JsonNode dig = new ObjectMapper().readTree(AnswersFile.write(Yards.ticketed())).at("/digs/0");

    assertThat(dig.at("/rows/0/about").asText()).isEqualTo("ticket");
    assertThat(dig.at("/box/corners")).hasSize(4);
    assertThat(dig.at("/invert/sd").asDouble()).isPositive();
    for (JsonNode row : dig.get("rows")) {
      assertThat(cards(Yards.ticketed()))
          .contains(row.get("sentence").asText().replace("\"", "&quot;").replace("&quot;", "\""));
    }
  }

  @Test
  void headingsAreGivenAtFindingsWithTheirDoubt() throws IOException {
    JsonNode finding =
        new ObjectMapper().readTree(AnswersFile.write(Yards.ticketed())).at("/findings/0");

    assertThat(finding.get("finding").asText()).isEqualTo("F1");
    // Out from the wall A to B, which is grid north: the pipe runs to the west.
    assertThat(Math.toDegrees(finding.at("/heading/value").asDouble())).isBetween(265.0, 275.0);
    assertThat(finding.at("/heading/sd").asDouble()).isBetween(1e-4, 0.2);
  }
}
