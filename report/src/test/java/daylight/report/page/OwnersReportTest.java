package daylight.report.page;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.report.Example;
import daylight.report.Filmed;
import daylight.report.Handout;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class OwnersReportTest {
  private static final Pattern POLICY =
      Pattern.compile("http-equiv=\"Content-Security-Policy\" content=\"([^\"]*)\"");

  /** What lies before the contents. */
  private static final List<String> FIRST_PAGE = List.of("complaint", "glance", "todo", "mind");

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
            "glance",
            "todo",
            "mind",
            "causes",
            "answers",
            "unsaid",
            "dates",
            "digs",
            "services",
            "plan",
            "profile",
            "strip",
            "findings",
            "locates",
            "fall",
            "connections",
            "footage",
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

    assertThat(page).doesNotContain("<link").doesNotContain("@import");
    assertThat(Pattern.compile("<script[^>]*>").matcher(page).results().map(MatchResult::group))
        .containsExactly(
            "<script type=\"application/json\" id=\"line-table\">", "<script type=\"module\">");
    assertThat(
            Pattern.compile("(?:src|href)=\"(?!#)|url\\((?!data:|#)")
                .matcher(page)
                .results()
                .toList())
        .isEmpty();
    assertThat(Pattern.compile("@font-face").matcher(page).results()).hasSize(2);
  }

  @Test
  void everySectionIsInTheContentsAndEveryLinkLeadsSomewhere() throws Exception {
    Document page = parsed(Filmed.on(Paper.LETTER, Example.usual(), true));
    List<String> ids = attributes(page, "*", "id");
    List<String> links = attributes(page, "a", "href");

    assertThat(links).allSatisfy(link -> assertThat(ids).contains(link.substring(1)));
    assertThat(links)
        .containsAll(
            attributes(page, "section", "id").stream()
                .filter(id -> !FIRST_PAGE.contains(id))
                .map(id -> "#" + id)
                .toList());
  }

  @Test
  void everyPictureSaysWhatItShowsWhereAndWhen() throws Exception {
    Document page = parsed(Filmed.on(Paper.LETTER, Example.usual(), true));
    Element still = (Element) page.getElementsByTagName("figure").item(3 + 3);
    Element picture = (Element) still.getElementsByTagName("svg").item(0);
    Element image = (Element) picture.getElementsByTagName("image").item(0);

    assertThat(still.getElementsByTagName("figcaption").item(0).getTextContent())
        .isEqualTo("Figure 7: F4 roots, 32' 0\" along the pipe. Recording V1 at 1:34.");
    assertThat(picture.getAttribute("aria-label"))
        .isEqualTo("Inside the pipe, 32' 0\" along: roots. An arc marks it at 3:00 on the clock.");
    assertThat(image.getAttribute("xlink:href")).startsWith("data:image/jpeg;base64,");
  }

  @Test
  void aPictureIsPointedAtFromTheLogAndFromTheAnswer() throws Exception {
    Document page = parsed(Filmed.on(Paper.LETTER, Example.usual(), true));

    assertThat(texts(page, "tr"))
        .anySatisfy(row -> assertThat(row).startsWith("F4Roots").endsWith("Figure 7"));
    assertThat(texts(page, "li"))
        .anySatisfy(item -> assertThat(item).startsWith("Roots (F4)").endsWith("Figure 7"));
  }

  @Test
  void recordingsAreListedWithWhatTheyAre() throws Exception {
    Document page = parsed(Filmed.on(Paper.LETTER, Example.usual(), true));

    assertThat(texts(page, "tr")).contains("V1footage/push.mp4P112:34640 × 480H.264");
    assertThat(texts(page, "tr")).contains("V2footage/second push.mp4–1:02:34704 × 576MPEG-2");
    assertThat(texts(parsed(Example.usual()), "p")).anyMatch(p -> p.startsWith("No footage"));
  }

  @Test
  void headingsGoDownOneStepAtATime() throws Exception {
    Document page = parsed(Filmed.on(Paper.LETTER, Example.deadly(), true));
    NodeList all = page.getElementsByTagName("*");
    int before = 0;
    for (int i = 0; i < all.getLength(); i++) {
      if (all.item(i).getNodeName().matches("h[1-6]")) {
        int level = all.item(i).getNodeName().charAt(1) - '0';
        assertThat(level).as(all.item(i).getTextContent()).isBetween(1, before + 1);
        before = level;
      }
    }
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

    assertThat(written(usual)).doesNotContain("<script>alert");
    assertThat(first(parsed(usual), "h1").getTextContent()).contains("Fish & <script>");
  }

  /** The policy's digest is that of a script and of a style sheet as HTML reads them (CSP 3). */
  @Test
  void nothingRunsAndNothingIsAskedForButWhatThePageKnowsByItsDigest() throws Exception {
    String page = written(Example.usual());
    Matcher policy = POLICY.matcher(page);

    assertThat(policy.find()).isTrue();
    assertThat(policy.group(1).replace("&apos;", "'"))
        .startsWith("default-src 'none'; script-src 'sha256-")
        .contains("script-src '" + digest(page, "<script type=\"module\">", "</script>") + "';")
        .contains("style-src '" + digest(page, "<style>", "</style>") + "';")
        .doesNotContain("unsafe", "http", "self", "*");
    assertThat(OwnersReport.script())
        .isEqualTo("'" + digest(page, "<script type=\"module\">", "</script>") + "'");
  }

  private static String digest(String page, String opens, String closes) throws Exception {
    int from = page.indexOf(opens) + opens.length();
    byte[] text = page.substring(from, page.indexOf(closes, from)).getBytes(StandardCharsets.UTF_8);
    return "sha256-"
        + Base64.getEncoder().encodeToString(MessageDigest.getInstance("SHA-256").digest(text));
  }

  @Test
  void paperIsToldWhatAScreenIsTold() throws Exception {
    OwnersReport report = Filmed.report(Filmed.on(Paper.LETTER, Example.usual(), true));
    String paper = report.main().write();
    String screen = report.page();

    assertThat(paper).doesNotContain("data-cursor", "to-place", "id=\"line\"", "data-drawing");
    assertThat(screen).contains("data-cursor", "id=\"line\"");
    Pattern sheet = Pattern.compile("<svg .*?</svg>", Pattern.DOTALL);
    assertThat(sheet.matcher(screen).results().map(MatchResult::group))
        .containsExactlyElementsOf(sheet.matcher(paper).results().map(MatchResult::group).toList());
    Pattern picture = Pattern.compile("data:image");
    assertThat(picture.matcher(screen).results().count())
        .as("no picture is embedded twice")
        .isEqualTo(picture.matcher(paper).results().count())
        .isPositive();
  }

  @Test
  void oneSliderMovesThroughAllThree() throws Exception {
    Document page = parsed(Example.usual());
    assertThat(attributes(page, "input", "data-cursor")).containsExactly("slider");
    assertThat(attributes(page, "div", "data-drawing")).contains("plan", "profile", "strip");
    assertThat(attributes(page, "section", "id")).doesNotHaveDuplicates();
  }

  private static String written(Handout handout) {
    return Filmed.report(handout).page();
  }

  private static Document parsed(Handout handout) throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(written(handout).getBytes(StandardCharsets.UTF_8)));
  }

  private static Element first(Document page, String name) {
    return (Element) page.getElementsByTagName(name).item(0);
  }

  private static List<String> texts(Document page, String name) {
    NodeList nodes = page.getElementsByTagName(name);
    List<String> texts = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      texts.add(nodes.item(i).getTextContent());
    }
    return texts;
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
