package daylight.report.paper;

import static org.assertj.core.api.Assertions.assertThat;

import com.openhtmltopdf.util.Diagnostic;
import daylight.report.Dense;
import daylight.report.Example;
import daylight.report.Filmed;
import daylight.report.Handout;
import daylight.report.page.Paper;
import daylight.report.shots.Still;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.logging.Level;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.TextPosition;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.w3c.dom.Text;

class PaperReportTest {
  /** The smallest letters that are still read on paper; common practice, no source. */
  private static final double LEGIBLE = 6.5;

  private static final int BIG_PICTURES_WIDE = 640;

  @Test
  void theStopOrderIsReadBeforeAnythingElse() throws Exception {
    try (PDDocument paper = Reading.open(written(Paper.A4, Example.deadly(), true))) {
      assertThat(Reading.lines(paper, 0)).first().isEqualTo("STOP");
      assertThat(Reading.told(paper, 0)).startsWith("STOP").contains("Do not cut");
    }
  }

  @Test
  void whatStandsOnEveryPageIsNotReadAloud() throws Exception {
    try (PDDocument paper = Reading.open(written(Paper.A4, Example.usual(), false))) {
      assertThat(Reading.lines(paper, 1)).anyMatch(line -> line.contains("Page 2 of"));
      assertThat(Reading.told(paper, 1)).doesNotContain("Page 2");
    }
  }

  @Test
  void everyWordAndNumberOfThePageIsOnPaper() throws Exception {
    Handout handout = Filmed.on(Paper.LETTER, Example.deadly(), true);
    try (PDDocument paper = Reading.open(written(handout))) {
      Set<String> page = new TreeSet<>();
      collectSeen(page(handout).getElementsByTagName("main").item(0), page);

      assertThat(tokens(Reading.text(paper))).containsAll(page).hasSizeGreaterThan(300);
    }
  }

  @Test
  void headingsAreBookmarksAndTheTitleIsTold() throws Exception {
    Handout handout = Filmed.on(Paper.LETTER, Example.usual(), true);
    try (PDDocument paper = Reading.open(written(handout))) {
      assertThat(Reading.bookmarks(paper)).isEqualTo(texts(page(handout), "h2"));
      assertThat(paper.getDocumentInformation().getTitle()).contains("Millrace Workshop");
      assertThat(paper.getDocumentCatalog().getLanguage()).isEqualTo("en");
      assertThat(paper.getDocumentCatalog().getViewerPreferences().displayDocTitle()).isTrue();
    }
  }

  @ParameterizedTest
  @EnumSource(Paper.class)
  void pagesAreOfTheSheetAskedForAndDrawingsLieOnItsSide(Paper sheet) throws Exception {
    try (PDDocument paper = Reading.open(written(sheet, Example.usual(), false))) {
      List<Boolean> wide = new ArrayList<>();
      for (var page : paper.getPages()) {
        PDRectangle box = page.getMediaBox();
        wide.add(box.getWidth() > box.getHeight());
        assertThat(Math.min(box.getWidth(), box.getHeight())).isCloseTo(f(sheet.width()), within());
        assertThat(Math.max(box.getWidth(), box.getHeight()))
            .isCloseTo(f(sheet.height()), within());
      }
      assertThat(wide.stream().filter(one -> one))
          .hasSameSizeAs(texts(page(Example.usual()), "svg"));
    }
  }

  @ParameterizedTest
  @EnumSource(Paper.class)
  void noHeadingStandsAloneAtTheFootOfAPage(Paper sheet) throws Exception {
    List<Handout> all = new ArrayList<>(List.of(Example.usual(), Example.deadly()));
    IntStream.rangeClosed(1, 12).mapToObj(Dense::handout).forEach(all::add);
    for (Handout handout : all) {
      Handout filmed = Filmed.on(sheet, handout, true);
      try (PDDocument paper = Reading.open(written(filmed))) {
        List<String> captions = texts(page(filmed), "caption");
        List<String> headings = new ArrayList<>(texts(page(filmed), "h2"));
        headings.addAll(texts(page(filmed), "h3"));
        headings.addAll(texts(page(filmed), "h4"));
        for (int i = 0; i < paper.getNumberOfPages(); i++) {
          List<String> lines = Reading.lines(paper, i);
          assertThat(lines).as("page " + (i + 1)).hasSizeGreaterThan(2);
          assertThat(lines.getLast()).startsWith("Millrace Workshop").contains("Page " + (i + 1));
          String last = lines.get(lines.size() - 2);
          assertThat(headings).doesNotContain(last);
          assertThat(captions).as("a table's head").noneMatch(caption -> caption.endsWith(last));
        }
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Paper.class)
  void everyLetterIsLargeEnoughAndOnItsPage(Paper sheet) throws Exception {
    try (PDDocument paper = Reading.open(written(sheet, Example.deadly(), true))) {
      for (int i = 0; i < paper.getNumberOfPages(); i++) {
        PDRectangle box = paper.getPage(i).getMediaBox();
        for (TextPosition letter : Reading.letters(paper, i)) {
          assertThat(letter.getYScale()).as(letter.getUnicode()).isGreaterThanOrEqualTo(f(LEGIBLE));
          assertThat(letter.getX()).isBetween(12f, box.getWidth() - 12);
          assertThat(letter.getX() + letter.getWidth()).isLessThan(box.getWidth() - 12);
          assertThat(letter.getY()).isBetween(12f, box.getHeight() - 12);
        }
      }
    }
  }

  @Test
  void everyDrawingAndPictureHasATextThatStandsForIt() throws Exception {
    Handout handout = Filmed.on(Paper.LETTER, Example.usual(), true);
    try (PDDocument paper = Reading.open(written(handout))) {
      List<String> told =
          Reading.tagged(paper, "Figure").stream()
              .map(PDStructureElement::getAlternateDescription)
              .toList();

      assertThat(told)
          .hasSize(texts(page(handout), "svg").size() + texts(page(handout), "img").size());
      assertThat(told).allSatisfy(text -> assertThat(text).hasSizeGreaterThan(20));
    }
  }

  @Test
  void tablesListsAndHeadingsAreTaggedAsWhatTheyAre() throws Exception {
    Handout handout = Filmed.on(Paper.LETTER, Example.usual(), true);
    try (PDDocument paper = Reading.open(written(handout))) {
      Document page = page(handout);
      assertThat(Reading.tagged(paper, "H1")).hasSize(1);
      assertThat(Reading.tagged(paper, "H2")).hasSameSizeAs(texts(page, "h2"));
      assertThat(Reading.tagged(paper, "Table")).hasSameSizeAs(texts(page, "table"));
      assertThat(Reading.tagged(paper, "TH")).hasSameSizeAs(texts(page, "th"));
      assertThat(Reading.tagged(paper, "TD")).hasSameSizeAs(texts(page, "td"));
      assertThat(Reading.tagged(paper, "LI")).hasSameSizeAs(texts(page, "li"));
    }
  }

  @Test
  void everyFontTravelsInsideTheFile() throws Exception {
    try (PDDocument paper = Reading.open(written(Paper.A4, Dense.handout(5), true))) {
      assertThat(Reading.fonts(paper)).isNotEmpty().allMatch(PDFont::isEmbedded);
      assertThat(Reading.fonts(paper)).extracting(PDFont::getName).allMatch(n -> n.contains("+"));
    }
  }

  @Test
  void theFileIsHardlyLargerThanItsPictures() {
    Handout handout = Filmed.with(Paper.LETTER, Example.deadly(), BIG_PICTURES_WIDE, 480);
    long pictures = 0;
    for (Still still : handout.shots().stills()) {
      pictures += still.picture().jpeg().length;
    }

    assertThat((long) written(handout).length).isBetween(pictures, pictures * 11 / 10);
  }

  @Test
  void thePageSetterHasNothingToComplainOf() {
    List<String> told = new ArrayList<>();
    Handout handout = Filmed.on(Paper.LETTER, Example.deadly(), true);
    PaperReport.write(Filmed.edition(handout), Paper.LETTER, said -> collect(said, told));

    assertThat(told).isEmpty();
  }

  @Test
  void signsThatTheTypefaceLacksAreShownAsMissingNotRefused() throws Exception {
    try (PDDocument paper =
        Reading.open(written(Paper.LETTER, Example.named("水 Workshop 🚽"), false))) {
      assertThat(Reading.text(paper)).contains("? Workshop ?");
    }
  }

  private static void collect(Diagnostic said, List<String> told) {
    if (said.getLevel().intValue() >= Level.WARNING.intValue()) {
      told.add(said.getFormattedMessage());
    }
  }

  private static byte[] written(Paper sheet, Handout handout, boolean filmed) {
    return written(Filmed.on(sheet, handout, filmed));
  }

  private static byte[] written(Handout handout) {
    return PaperReport.write(Filmed.edition(handout), handout.paper());
  }

  private static Document page(Handout handout) throws Exception {
    byte[] html = Filmed.report(handout).page().getBytes(StandardCharsets.UTF_8);
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(html));
  }

  private static List<String> texts(Document page, String name) {
    NodeList nodes = page.getElementsByTagName(name);
    return IntStream.range(0, nodes.getLength())
        .mapToObj(i -> nodes.item(i).getTextContent())
        .toList();
  }

  /** Words and numbers as they stand, without the descriptions that drawings carry unseen. */
  private static void collectSeen(Node node, Set<String> words) {
    if (node instanceof Text text) {
      words.addAll(tokens(text.getData()));
    } else if (!Set.of("title", "desc").contains(node.getNodeName()) && !isHidden(node)) {
      NodeList children = node.getChildNodes();
      IntStream.range(0, children.getLength()).forEach(i -> collectSeen(children.item(i), words));
    }
  }

  /** Whether a screen shows it only where it runs scripts. */
  private static boolean isHidden(Node node) {
    return node instanceof Element element && element.hasAttribute("hidden");
  }

  /** Runs of letters and runs of digits. */
  private static Set<String> tokens(String text) {
    return Pattern.compile("\\p{L}+|\\d+")
        .matcher(text)
        .results()
        .map(MatchResult::group)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static float f(double value) {
    return (float) value;
  }

  private static Offset<Float> within() {
    return Offset.offset(0.5f);
  }
}
