package daylight.report.page;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.report.Example;
import daylight.report.Handout;
import daylight.report.draw.Subject;
import daylight.report.words.Words;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class OwnersReportTest {

  @Test
  void stopOrdersComeBeforeAnythingElse() throws Exception {
    Element main = first(parsed(Example.deadly()), "main");
    Element opening = (Element) main.getFirstChild();

    assertThat(opening.getAttribute("class")).isEqualTo("stop");
    assertThat(opening.getTextContent())
        .startsWith("STOP")
        .contains("26' 11\"")
        .contains("Do not cut");
  }

  @Test
  void theComplaintComesBeforeTheAnswersAndTheAnswersBeforeTheDrawings() throws Exception {
    List<String> ids = attributes(parsed(Example.usual()), "section", "id");

    assertThat(ids)
        .containsExactly(
            "complaint",
            "answers",
            "plan",
            "profile",
            "findings",
            "locates",
            "fall",
            "doubts",
            "book",
            "cautions",
            "method");
  }

  @Test
  void allSevenQuestionsAreAnsweredWithAStateInWords() throws Exception {
    Document page = parsed(Example.usual());
    NodeList cards = page.getElementsByTagName("article");

    assertThat(cards.getLength()).isEqualTo(7);
    assertThat(((Element) cards.item(3)).getTextContent())
        .contains("Does it drain?")
        .contains("can’t say yet")
        .contains("Level the ground at L3 and L4");
  }

  @Test
  void thePageNeedsNothingBesideIt() {
    String page = written(Example.usual());

    assertThat(page).doesNotContain("<script").doesNotContain("<link").doesNotContain("@import");
    assertThat(
            Pattern.compile("(?:src|href)=\"(?!#)|url\\((?!data:|#)")
                .matcher(page)
                .results()
                .toList())
        .isEmpty();
    assertThat(Pattern.compile("@font-face").matcher(page).results()).hasSize(2);
  }

  @Test
  void noIdIsGivenTwice() throws Exception {
    assertThat(attributes(parsed(Example.deadly()), "*", "id")).doesNotHaveDuplicates();
  }

  @Test
  void everyHeadOfATableSaysWhatItHeads() throws Exception {
    List<String> scopes = attributes(parsed(Example.usual()), "th", "scope");

    assertThat(scopes).isNotEmpty().containsOnly("col", "row");
  }

  @Test
  void wordsOfPeopleAreShownAndNeverRun() throws Exception {
    Handout usual = Example.named("Fish & <script>alert(1)</script>");

    assertThat(written(usual)).doesNotContain("<script");
    assertThat(first(parsed(usual), "h1").getTextContent()).contains("Fish & <script>");
  }

  private static String written(Handout handout) {
    return OwnersReport.write(
        new Subject(
            handout.book(),
            handout.line(),
            handout.answers(),
            handout.rules(),
            handout.shots(),
            handout.complaints(),
            Words.of(handout.language(), handout.shown())));
  }

  private static Document parsed(Handout handout) throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(written(handout).getBytes(StandardCharsets.UTF_8)));
  }

  private static Element first(Document page, String name) {
    return (Element) page.getElementsByTagName(name).item(0);
  }

  private static List<String> attributes(Document page, String name, String attribute) {
    NodeList nodes = page.getElementsByTagName(name);
    List<String> values = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      String value = ((Element) nodes.item(i)).getAttribute(attribute);
      if (!value.isEmpty()) {
        values.add(value);
      }
    }
    return values;
  }
}
