package daylight.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import daylight.app.web.Window;
import daylight.line.measure.Shown;
import daylight.report.Handout;
import daylight.report.page.OwnersReport;
import daylight.report.page.Sender;
import daylight.report.shots.Picture;
import daylight.report.shots.Reel;
import daylight.report.shots.Shots;
import daylight.report.shots.Still;
import daylight.report.words.Language;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The report as whoever gets it opens it: one file, from a folder, in Chromium. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ReportLineTest {
  private static final int PHONE = 390;
  private static final int LAPTOP = 1280;
  private static final int HIGH = 800;

  private Path folder;
  private Window window;

  @BeforeAll
  void write(@TempDir Path into) throws IOException {
    folder = into;
    Path book = into.resolve("field-book.yaml");
    try (InputStream in = Window.class.getResourceAsStream("shop.yaml")) {
      Files.copy(Objects.requireNonNull(in), book);
    }
    Job.Outcome outcome = Job.answerWithoutFootage(book, Job.Settings.USUAL);
    Handout handout = pictured(((Job.Outcome.Answered) outcome).handout());
    report("report", handout);
    report("metres", handout.in(Language.EN, Shown.METRES));
    report("rapport", handout.in(Language.FR, Shown.METRES));
    window = new Window();
  }

  private void report(String name, Handout handout) throws IOException {
    Path own = Files.createDirectory(folder.resolve(name));
    Files.writeString(
        own.resolve("report.html"), OwnersReport.of(handout.subject(), Sender.NOBODY).page());
  }

  private static Handout pictured(Handout bare) throws IOException {
    ByteArrayOutputStream jpeg = new ByteArrayOutputStream();
    ImageIO.write(new BufferedImage(320, 180, BufferedImage.TYPE_INT_RGB), "jpg", jpeg);
    Picture picture = new Picture(320, 180, jpeg.toByteArray());
    Shots shots =
        new Shots(
            List.of(new Reel("M1", "film.webm", "P1", 8, 320, 180, "VP8", true)),
            List.of(
                new Still("stills/F1.jpg", "F1", "M1", 1.5, picture),
                new Still("stills/F2.jpg", "F2", "M1", 5.2, picture)));
    return new Handout(
        bare.book(),
        bare.line(),
        bare.answers(),
        bare.rules(),
        shots,
        bare.complaints(),
        bare.language(),
        bare.shown(),
        bare.paper());
  }

  @AfterAll
  void close() {
    window.close();
  }

  private String address(String name) {
    return folder.resolve(name).resolve("report.html").toUri().toString();
  }

  private Page page(String name, int width) {
    Page page = width == PHONE ? window.phone(width, 844) : window.page(width, HIGH);
    page.navigate(address(name));
    page.locator("[data-cursor=mover]").waitFor();
    settle(page);
    return page;
  }

  /** The cursor is painted in the next frame. */
  private static void settle(Page page) {
    page.evaluate(
        "() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)))");
  }

  private static String told(Page page, String what) {
    return String.valueOf(page.locator("[data-cursor=" + what + "]").textContent());
  }

  private static int row(Page page) {
    return Integer.parseInt(page.locator("[data-cursor=slider]").inputValue());
  }

  private static double knob(Page page, String drawing, String attribute) {
    return Double.parseDouble(
        page.locator("[data-drawing=" + drawing + "] .knob").getAttribute(attribute));
  }

  /** What the axis of the profile says where its cursor is: read from its ticks, not its table. */
  private static double onTheAxis(Page page) {
    return ((Number)
            page.evaluate(
                """
                () => {
                  const sheet = document.querySelector('[data-drawing=profile] svg');
                  const ticks = [...sheet.querySelectorAll(':scope > text')]
                    .filter((one) => /^\\d+\\sm$/.test(one.textContent))
                    .map((one) => ({ at: parseFloat(one.textContent),
                      x: one.getBBox().x + one.getBBox().width / 2,
                      y: Number(one.getAttribute('y')) }));
                  const rows = new Map();
                  for (const one of ticks) rows.set(one.y, [...(rows.get(one.y) ?? []), one]);
                  const axis = [...rows.values()].sort((a, b) => b.length - a.length)[0];
                  const x = Number(sheet.querySelector('.knob').getAttribute('cx'));
                  const [a, b] = [axis[0], axis.at(-1)];
                  return a.at + ((x - a.x) * (b.at - a.at)) / (b.x - a.x);
                }
                """))
        .doubleValue();
  }

  @Test
  void arrowKeysMoveAllThreeToTheSamePlace() {
    try (Page page = page("metres", LAPTOP)) {
      page.locator("[data-cursor=slider]").focus();
      page.keyboard().press("Home");
      for (int i = 0; i < 30; i++) {
        page.keyboard().press("ArrowRight");
      }
      settle(page);

      assertThat(row(page)).isEqualTo(30);
      double said = metres(told(page, "where"));
      assertThat(said).isGreaterThan(5);
      assertThat(onTheAxis(page)).isEqualTo(said, within(0.06));
      assertThat(told(page, "depth")).contains("±");
      for (String drawing : List.of("plan", "profile", "strip")) {
        assertThat(placesUnder(page, drawing))
            .as(drawing)
            .anySatisfy(one -> assertThat(one).isEqualTo(said, within(0.05)));
      }
      double before = knob(page, "strip", "cx");

      page.locator("[data-drawing=plan]").focus();
      page.keyboard().press("ArrowRight");
      page.keyboard().press("ArrowRight");
      settle(page);
      assertThat(row(page)).isEqualTo(32);
      assertThat(knob(page, "strip", "cx")).isGreaterThan(before);
      assertThat(told(page, "told")).startsWith(told(page, "where"));
    }
  }

  private static double metres(String said) {
    return Double.parseDouble(said.replace('\u00a0', ' ').replace(" m", "").replace(',', '.'));
  }

  /** The distances of all rows of the table that lie where the cursor of a drawing is, metres. */
  private static List<Double> placesUnder(Page page, String drawing) {
    List<?> found =
        (List<?>)
            page.evaluate(
                """
                (name) => {
                  const table = JSON.parse(document.querySelector('#line-table').textContent);
                  const knob = document.querySelector(`[data-drawing=${name}] .knob`);
                  const [x, y] = ['cx', 'cy'].map((one) => Number(knob.getAttribute(one)));
                  const columns = table[name];
                  const of = (what, i) => (columns[what].length === 1 ? columns[what][0] : columns[what][i]);
                  return table.distance.filter((_, row) => of('x', row - columns.first) === x
                    && of('y', row - columns.first) === y);
                }
                """,
                drawing);
    return found.stream().map(one -> ((Number) one).doubleValue()).toList();
  }

  /** Marks carry the place that they are of, which the cursor's table knows nothing of. */
  @ParameterizedTest
  @ValueSource(strings = {"report", "rapport"})
  void aMarkOfTheStripTakesTheCursorToItsPlaceOnEveryDrawing(String name) {
    try (Page page = page(name, LAPTOP)) {
      Locator marks = page.locator("[data-drawing=strip] [data-place][data-distance]");
      int tried = 0;
      for (Locator mark : marks.all()) {
        double distance = Double.parseDouble(mark.getAttribute("data-distance"));
        mark.dispatchEvent("click");
        settle(page);
        for (String drawing : List.of("strip", "plan")) {
          assertThat(placesUnder(page, drawing))
              .as(drawing)
              .anySatisfy(one -> assertThat(one).isEqualTo(distance, within(0.011)));
        }
        tried++;
      }
      assertThat(tried).isGreaterThan(3);
    }
  }

  /** On which sheet of the strip the cursor is, and where; there is one. */
  private static String onTheStrip(Page page) {
    Locator seen = page.locator("[data-drawing^=strip] .cursor[visibility=visible] .knob");
    assertThat(seen.count()).isEqualTo(1);
    return (String)
        seen.evaluate(
            "one => one.closest('[data-drawing]').dataset.drawing + one.getAttribute('cx')");
  }

  @Test
  void aPressOnThePlanMovesTheStripAndSaysThePlace() {
    try (Page page = page("report", LAPTOP)) {
      String strip = onTheStrip(page);
      page.locator("[data-drawing=plan]").scrollIntoViewIfNeeded();
      List<?> at =
          (List<?>)
              page.evaluate(
                  """
                  () => {
                    const { plan } = JSON.parse(document.querySelector('#line-table').textContent);
                    const rect = document.querySelector('[data-drawing=plan] svg').getBoundingClientRect();
                    return [rect.x + plan.x[60] * rect.width / 792, rect.y + plan.y[60] * rect.width / 792];
                  }
                  """);
      page.mouse()
          .click(((Number) at.getFirst()).doubleValue(), ((Number) at.getLast()).doubleValue());
      settle(page);

      assertThat(row(page)).isBetween(57, 63);
      assertThat(onTheStrip(page)).isNotEqualTo(strip);
      assertThat(told(page, "held")).contains("press again");
      assertThat(told(page, "told")).contains(told(page, "depth"));
    }
  }

  @Test
  void theNearestPictureIsTheOneThatThePageBringsAlong() {
    try (Page page = page("report", LAPTOP)) {
      Locator link = page.locator("[data-cursor=picture] a");
      page.locator("#findings a.to-place:has-text('F2')").click();
      settle(page);
      assertThat(told(page, "there")).contains("F2 Roots");
      assertThat(page.locator("#findings tr:has-text('Roots')").first().textContent())
          .contains(told(page, "where"));
      assertThat(link.getAttribute("href")).isEqualTo("#still-2");
      assertThat(link.textContent()).isEqualTo(page.locator("#still-2 figcaption").textContent());
      assertThat(link.locator("svg.marked path").count()).isEqualTo(2);
      assertThat(link.locator("svg image").getAttribute("xlink:href"))
          .startsWith("data:image/jpeg;base64,")
          .isEqualTo(page.locator("#still-2 image").getAttribute("xlink:href"));

      page.locator("#findings a.to-place:has-text('F1')").click();
      settle(page);
      assertThat(link.getAttribute("href")).isEqualTo("#still-1");
      page.locator("[data-cursor=there] a:has-text('F1')").click();
      assertThat(page.url()).contains("#finding-");
    }
  }

  @ParameterizedTest
  @CsvSource({"report, 390", "report, 1280", "rapport, 390", "rapport, 1280"})
  void itAsksForNothingComplainsOfNothingAndEverybodyCanReadIt(String name, int width) {
    int asked = window.asked().size();
    try (Page page = page(name, width)) {
      page.locator("[data-cursor=next]").click();
      page.locator("[data-cursor=slider]").fill("50");
      settle(page);

      assertThat(page.evaluate("document.documentElement.scrollWidth")).isEqualTo(width);
      assertThat(Window.violations(page)).isEmpty();
      assertThat(window.asked().subList(asked, window.asked().size()))
          .filteredOn(url -> !url.startsWith("data:"))
          .containsExactly(address(name));
      assertThat(window.complained()).isEmpty();
    }
  }

  @Test
  void aFingerPutsTheCursorThere() {
    try (Page page = page("report", PHONE)) {
      Locator box = page.locator("[data-drawing=profile]");
      box.scrollIntoViewIfNeeded();
      BoundingBox seen = box.boundingBox();
      int before = row(page);
      page.touchscreen().tap(seen.x + seen.width * 0.6, seen.y + seen.height * 0.4);
      settle(page);

      assertThat(row(page)).isNotEqualTo(before);
      assertThat(page.locator("[data-cursor=short]").isVisible()).isTrue();
      assertThat(told(page, "short")).startsWith(told(page, "where"));
    }
  }

  @Test
  void withoutScriptItIsWholeAndNothingWaitsForOne() {
    try (Page page = window.plain(LAPTOP, HIGH)) {
      page.navigate(address("report"));
      for (String side : List.of("plan", "profile", "strip")) {
        assertThat(page.locator("#" + side + " svg").first().isVisible()).isTrue();
      }
      assertThat(page.locator("#findings table").isVisible()).isTrue();
      for (String part : List.of("[data-cursor]", ".zoom", ".beside button", ".knob")) {
        assertThat(page.locator(part).all()).noneMatch(Locator::isVisible);
      }
      assertThat(page.locator("#plan .drawing").boundingBox().width).isEqualTo(1032, within(1.0));
    }
  }

  /** What comes from the printer of a browser is the same with and without the cursor. */
  @Test
  void printedItIsAsItWas() throws IOException {
    try (Page live = page("report", LAPTOP);
        Page plain = window.plain(LAPTOP, HIGH)) {
      plain.navigate(address("report"));
      live.locator("[data-drawing=plan]").focus();
      live.keyboard().press("+");
      live.keyboard().press("+");
      live.locator("[data-cursor=slider]").fill("40");
      settle(live);

      assertThat(sheets(live.pdf())).isEqualTo(sheets(plain.pdf()));
    }
  }

  /** What stands on which sheet of a document. */
  private static List<String> sheets(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PDFTextStripper reader = new PDFTextStripper();
      List<String> sheets = new ArrayList<>();
      for (int i = 1; i <= document.getNumberOfPages(); i++) {
        reader.setStartPage(i);
        reader.setEndPage(i);
        sheets.add(reader.getText(document));
      }
      assertThat(sheets).hasSizeGreaterThan(3);
      return sheets;
    }
  }
}
