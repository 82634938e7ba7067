package daylight.app.field;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.FilePayload;
import daylight.app.web.Light;
import daylight.app.web.Window;
import daylight.archive.ReadBook;
import daylight.archive.Sha256;
import daylight.report.words.Language;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A push as it is written down in a basement, by a thumb or by keys. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PushTest {
  private static final Path PICTURES = Path.of("target/field-pages");
  private static final byte[] PNG =
      Base64.getDecoder()
          .decode(
              "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNkYPhfDwAChwGA60e6kgAAAABJRU5ErkJggg==");

  private Served served;
  private Window window;
  private UUID book = new UUID(0, 0);
  private int taps;

  @BeforeAll
  void open(@TempDir Path folder) throws IOException {
    served = new Served(folder.resolve("archive"));
    window = new Window();
    Files.createDirectories(PICTURES);
  }

  @AfterAll
  void close() {
    window.close();
    served.close();
  }

  @BeforeEach
  void begin() {
    book = served.site(UUID.randomUUID() + " Elder Row (invented)", "It backs up.");
    taps = 0;
  }

  /** A new push of a new pipe, begun by its form. */
  private Page pushed(Page page) {
    BookNow now = BookNow.of(served.archive(), book).orElseThrow();
    String visit = VisitPages.address(book, now.visits().getFirst().entry());
    page.navigate(served.address().resolve("/who").toString());
    page.locator("#person").fill("Kim");
    page.locator("main button[type=submit]").click();
    page.navigate(served.address().resolve(visit).toString());
    page.locator("text=The push").first().click();
    page.locator("#what").fill("cleanout in the floor");
    page.locator("#bore").fill("4 in");
    page.locator("main button[type=submit]").click();
    page.waitForSelector("[data-ready]");
    return page;
  }

  private Page phone() {
    return pushed(window.phone(390, 844));
  }

  private void tap(Page page, String what) {
    page.locator(what).first().tap();
    taps++;
  }

  private void ring(Page page, int hour) {
    Locator ring = page.locator(".ring");
    ring.scrollIntoViewIfNeeded();
    BoundingBox box = ring.boundingBox();
    double angle = Math.PI * (hour - 3) / 6;
    double r = 0.37 * box.width;
    page.touchscreen()
        .tap(
            box.x + box.width / 2 + r * Math.cos(angle),
            box.y + box.height / 2 + r * Math.sin(angle));
    taps++;
  }

  private static void settled(Page page) {
    page.waitForSelector("#told.kept");
  }

  private List<BookNow.Row> rows(String section) {
    return BookNow.of(served.archive(), book).orElseThrow().in(section).toList();
  }

  private BookNow.Row only(String section) {
    assertThat(rows(section)).hasSize(1);
    return rows(section).getFirst();
  }

  @Test
  void aPointFindingTakesThreeTapsBesideItsDistance() {
    try (Page page = phone()) {
      page.locator("#distance").fill("23.6");
      tap(page, "[data-kind=roots]");
      ring(page, 5);
      tap(page, "[data-focus='part-share-25 %']");
      settled(page);

      assertThat(taps).isEqualTo(3);
      BookNow.Row found = only("findings");
      assertThat(found.text("kind")).contains("roots");
      assertThat(found.text("cable")).contains("23.6 ft");
      assertThat(found.text("clock")).contains("5");
      assertThat(found.text("share")).contains("25 %");
    }
  }

  @Test
  void aWholePushIsEnteredByTapsAndItsBookReadsWithoutComplaint() {
    try (Page page = phone()) {
      page.locator("#distance").fill("0");
      tap(page, "[data-sight=clear]");
      tap(page, "[data-nudge='1']");
      tap(page, "[data-nudge='0.1']");
      tap(page, "[data-kind=joint]");
      page.locator("#distance").fill("12");
      tap(page, "[data-kind=bend]");
      tap(page, "[data-focus='part-angle-45°']");
      // The card is made anew for the bend that the finding became.
      page.locator("#rows >> text=45°").waitFor();
      tap(page, "[data-focus=part-sense-left]");
      page.locator("#rows >> text=left").waitFor();
      page.locator("#distance").fill("20");
      tap(page, "[data-kind=standing-water]");
      tap(page, "[data-act=card-run]");
      page.locator("#rows >> text=runs on").waitFor();
      page.locator("#distance").fill("26.5");
      tap(page, "[data-act=card-stop]");
      tap(page, "[data-focus='part-depth-1 in']");
      tap(page, "[data-act=more]");
      tap(page, "#more-panel [data-kind=hole]");
      page.locator("#distance").fill("31");
      tap(page, "[data-kind=junction]");
      tap(page, "[data-act=card-leg]");
      tap(page, "#card .keys button");
      page.locator("#distance").fill("40");
      tap(page, "[data-act=ended]");
      tap(page, "[data-why=obstruction]");
      settled(page);

      ReadBook read = served.archive().book(book).orElseThrow();
      assertThat(read.complaints()).isEmpty();
      String written = served.archive().written(book).orElseThrow();
      assertThat(rows("findings"))
          .extracting(row -> row.text("kind").orElse(""))
          .containsExactly("joint", "standing-water", "hole", "junction");
      assertThat(rows("findings").getFirst().text("cable")).contains("1.1 ft");
      assertThat(rows("findings").get(1).text("from")).contains("20 ft");
      assertThat(rows("findings").get(1).text("to")).contains("26.5 ft");
      assertThat(rows("findings").get(1).text("remark")).isEmpty();
      assertThat(only("bends").text("sense")).contains("left");
      assertThat(only("passes").text("end", "why")).contains("obstruction");
      assertThat(only("passes").text("end", "cable")).contains("40 ft");
      assertThat(written).contains("clarity: clear", "R2");
    }
  }

  @Test
  void withoutADistanceTheTimeIsKeptUntilItIsTyped() {
    try (Page page = phone()) {
      page.locator("#distance").fill("9");
      tap(page, "[data-act=later]");
      tap(page, "[data-kind=grease]");
      tap(page, "[data-focus='part-share-50 %']");
      settled(page);
      assertThat(rows("findings")).isEmpty();
      assertThat(only("passes").text("remark").orElseThrow())
          .containsPattern("no distance yet, \\d\\d:\\d\\d:\\d\\d: .*kind grease; share 50 %");
      assertThat(served.archive().book(book).orElseThrow().complaints()).isEmpty();

      page.reload();
      page.waitForSelector("[data-ready]");
      tap(page, "#rows button");
      page.locator("#part-cable").fill("14.2");
      page.locator("#part-cable").press("Enter");
      page.locator("#rows >> text=14.2 ft").waitFor();
      settled(page);

      assertThat(only("findings").text("cable")).contains("14.2 ft");
      assertThat(only("findings").text("share")).contains("50 %");
      assertThat(only("passes").text("remark")).isEmpty();
    }
  }

  @Test
  void aCutLineLosesNothingAndDoublesNothing() {
    try (Page page = phone()) {
      page.context().setOffline(true);
      for (int i = 1; i <= 10; i++) {
        page.locator("#distance").fill(String.valueOf(i));
        tap(page, "[data-kind=crack]");
        page.locator("#rows strong >> text='" + i + " ft'").waitFor();
      }
      page.waitForSelector("#told.unsent");
      assertThat(rows("findings")).isEmpty();
      page.context().setOffline(false);
      settled(page);

      assertThat(rows("findings"))
          .extracting(row -> row.text("cable").orElse(""))
          .containsExactly(
              "1 ft", "2 ft", "3 ft", "4 ft", "5 ft", "6 ft", "7 ft", "8 ft", "9 ft", "10 ft");
      assertThat(rows("findings"))
          .allMatch(row -> served.archive().history(book, row.entry()).size() == 1);
    }
  }

  @Test
  void anAnswerThatNeverCameMakesNoDouble() {
    try (Page page = phone()) {
      int[] cut = {0};
      page.route(
          "**/enter",
          route -> {
            route.fetch();
            if (cut[0]++ == 0) {
              route.abort();
            } else {
              route.resume();
            }
          });
      page.locator("#distance").fill("7");
      tap(page, "[data-kind=crack]");
      settled(page);

      assertThat(cut[0]).isGreaterThan(1);
      assertThat(served.archive().history(book, only("findings").entry())).hasSize(1);
    }
  }

  @Test
  void undoTakesTheLastTouchBackAlsoAfterLoadingAgain() {
    try (Page page = phone()) {
      page.locator("#distance").fill("5");
      tap(page, "[data-kind=roots]");
      tap(page, "[data-focus='part-share-25 %']");
      settled(page);
      page.reload();
      page.waitForSelector("[data-ready]");
      tap(page, "[data-act=undo]");
      page.locator("#told >> text=Undone").waitFor();
      settled(page);
      assertThat(only("findings").text("share")).isEmpty();

      tap(page, "[data-act=undo]");
      page.waitForCondition(() -> rows("findings").isEmpty());
    }
  }

  @Test
  void whatIsWrongIsToldAtTheEntryAndMended() {
    try (Page page = phone()) {
      page.locator("#distance").fill("12 elephants");
      tap(page, "[data-kind=hole], [data-kind=crack]");
      page.locator("#card .trouble >> text=12 elephants").waitFor();
      assertThat(rows("findings")).isEmpty();
      page.locator("#part-cable").fill("12");
      page.locator("#part-cable").press("Enter");
      settled(page);

      assertThat(only("findings").text("cable")).contains("12 ft");
    }
  }

  @Test
  void whatIsDeadlyTakesTwoTapsAndSaysWhatToDo() {
    try (Page page = phone()) {
      page.locator("#distance").fill("31");
      tap(page, "[data-act=stop]");
      assertThat(page.locator("#stop-panel .stop").isVisible()).isTrue();
      tap(page, "[data-kind=foreign-pipe]");
      settled(page);

      assertThat(taps).isEqualTo(2);
      assertThat(only("findings").text("kind")).contains("foreign-pipe");
    }
  }

  @Test
  void aPictureLiesInTheArchiveAndIsNamedWithTheFinding() throws IOException {
    try (Page page = phone()) {
      page.locator("#distance").fill("8");
      tap(page, "[data-kind=crack]");
      page.locator("#photo").setInputFiles(new FilePayload("a.png", "image/png", PNG));
      page.locator("#told >> text=photo-1").waitFor();
      settled(page);

      String file = only("media").text("file").orElseThrow();
      Path kept =
          served
              .archive()
              .media()
              .file(Objects.requireNonNull(served.archive().mediaOf(book).get(file), file))
              .orElseThrow();
      assertThat(kept).hasBinaryContent(PNG);
      assertThat(
              page.evaluate(
                  "(path) => fetch(path, { headers: { Range: 'bytes=1-3' } }).then(async (reply) =>"
                      + " `${reply.status} ${reply.headers.get('Content-Type')} ${await reply.text()}`)",
                  "/site/" + book + "/media/" + file))
          .isEqualTo("206 image/png PNG");
      assertThat(served.archive().written(book).orElseThrow()).contains("photo-1");
      assertThat(
              page.evaluate(
                  "fetch('/field/push-media.js').then(() => import('/field/push-media.js'))"
                      + ".then((m) => m.sha256(new TextEncoder().encode('abc')))"))
          .as("FIPS 180-4, the worked example \"abc\" (from memory)")
          .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    }
  }

  @Test
  void allOfItGoesByKeyboard() {
    try (Page page = pushed(window.page(1366, 768))) {
      page.locator("#letters").setChecked(true);
      page.keyboard().press("Tab");
      page.keyboard().type("23.6");
      page.keyboard().press("Enter");
      page.keyboard().press("ArrowUp");
      page.keyboard().press("d");
      page.locator("#rows >> text=23.7 ft").waitFor();
      page.locator(".ring").focus();
      page.keyboard().press("ArrowRight");
      page.waitForSelector(".ring[aria-valuetext='12']");
      page.keyboard().press("ArrowRight");
      page.waitForSelector(".ring[aria-valuetext='1']");
      page.locator("#part-share").focus();
      page.keyboard().type("15 %");
      page.keyboard().press("Enter");
      settled(page);

      assertThat(only("findings").text("kind")).contains("roots");
      assertThat(only("findings").text("cable")).contains("23.7 ft");
      assertThat(only("findings").text("clock")).contains("1");
      assertThat(only("findings").text("share")).contains("15 %");
      page.locator("[data-focus='rest-summary']").focus();
      page.keyboard().press("u");
      page.locator("#told >> text=Undone").waitFor();
    }
  }

  @ParameterizedTest
  @CsvSource({"390, en", "1366, en", "390, fr"})
  void thePageFitsAndEverybodyCanReadItInAnyLight(int width, String tongue) {
    try (Page page = pushed(window.page(width, width == 390 ? 844 : 768))) {
      page.locator("#distance").fill("23.6");
      page.locator("[data-kind=roots]").click();
      settled(page);
      page.locator("button[value=" + tongue + "]").click();
      for (Light light : List.of(Light.values())) {
        page.locator("button[value=" + light.code() + "]").click();
        page.waitForSelector("[data-ready]");
        page.locator("#rows button").first().click();
        shot(page, "push-" + width + "-" + tongue + "-" + light.code());
        for (String panel : List.of("stop", "more", "ended")) {
          page.locator("[data-act=" + panel + "]").click();
          shot(page, "push-" + panel + "-" + width + "-" + tongue + "-" + light.code());
        }
      }
      for (Locator one : page.locator("#push button:visible").all()) {
        assertThat(one.boundingBox().height).isGreaterThanOrEqualTo(44);
        assertThat(one.boundingBox().width).isGreaterThanOrEqualTo(44);
      }
    }
  }

  private static void shot(Page page, String name) {
    assertThat(page.evaluate("document.documentElement.scrollWidth"))
        .isEqualTo(page.viewportSize().width);
    page.screenshot(
        new Page.ScreenshotOptions().setFullPage(true).setPath(PICTURES.resolve(name + ".png")));
    assertThat(Window.violations(page)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "../../x.png, 0, 8, 400",
    "photo-1.png, 0, 8, 400",
    "photo-11111111-1111-1111-1111-111111111111.html, 0, 8, 400",
    "photo-11111111-1111-1111-1111-111111111111.png, -1, 8, 400",
    "photo-11111111-1111-1111-1111-111111111111.png, 0, 9e9, 400",
    "photo-11111111-1111-1111-1111-111111111111.png, 0, 999999999999, 413",
    "photo-11111111-1111-1111-1111-111111111111.jpg, 0, 26, 415",
  })
  void aFileThatIsNoneIsRefused(String name, String from, String length, int status) {
    String path = "/site/" + book + "/media/" + "a".repeat(64) + "?name=" + Forms.encoded(name);
    var reply =
        served.post(
            path + "&from=" + from + "&length=" + length,
            "application/octet-stream",
            "<script>alert(1)</script>\n",
            "Daylight-Token",
            served.token());

    assertThat(reply.statusCode()).as(reply.body()).isEqualTo(status);
    assertThat(served.archive().mediaOf(book)).isEmpty();
    assertThat(served.post(path, "application/octet-stream", "x").statusCode()).isEqualTo(403);
  }

  @Test
  void whatWasCutOffGoesOnWhereItStopped() throws IOException {
    String text = "OggS" + "x".repeat(1000);
    String path =
        "/site/"
            + book
            + "/media/"
            + Sha256.of(text).hex()
            + "?name=voice-"
            + UUID.randomUUID()
            + ".ogg&length=1004&from=";
    assertThat(piece(path + 0, text.substring(0, 600))).contains("\"bytes\":600");
    assertThat(piece(path + 0, "")).contains("\"bytes\":600");
    assertThat(piece(path + 600, text.substring(600))).contains("whole");
    assertThat(piece(path + 0, "")).contains("whole");
    assertThat(served.archive().media().file(Sha256.of(text)).orElseThrow()).hasContent(text);
  }

  private String piece(String path, String body) {
    return served
        .post(path, "application/octet-stream", body, "Daylight-Token", served.token())
        .body();
  }

  @Test
  void everyParticularOfTheCatalogueHasAName() {
    for (Language tongue : Language.values()) {
      assertThat(PushBoard.parts())
          .hasSizeGreaterThan(20)
          .allMatch(part -> Phrases.of(tongue).messages().containsKey("push.part." + part));
    }
    assertThat(PushKeys.large()).hasSize(12);
  }
}
