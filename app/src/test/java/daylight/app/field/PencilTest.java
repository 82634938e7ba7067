package daylight.app.field;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import daylight.app.web.Light;
import daylight.app.web.Window;
import daylight.archive.ReadBook;
import daylight.report.words.Language;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sheets for a pencil: printed, typed afterwards by keyboard alone, kept once. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PencilTest {
  private static final Path PICTURES = Path.of("target/field-pages");

  /** What may be pressed and is too low for a finger. */
  private static final String SMALL =
      "[...document.querySelectorAll('main :is(a, button, input:not([type=hidden]), select)')]"
          + ".filter(one => one.checkVisibility() && one.offsetHeight < (one.type === 'checkbox' ? 24 : 44))"
          + ".map(one => one.outerHTML)";

  private Served served;
  private Window window;
  private UUID book = new UUID(0, 0);
  private String visit = "";

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
    book = served.site("14 Elder Row " + UUID.randomUUID() + " (invented)", "It backs up.");
    visit = Archived.lastVisit(served, "/site/" + book);
  }

  private Page at(Page page, String path) {
    page.navigate(served.address().resolve("/who").toString());
    page.locator("#person").fill("Kim");
    page.locator("main button[type=submit]").click();
    page.navigate(served.address().resolve(visit + path).toString());
    return page;
  }

  private Page typing() {
    Page page = at(window.page(1366, 900), "/sheets/typed");
    page.waitForSelector("#pencil[data-ready]");
    return page;
  }

  private List<BookNow.Row> rows(String section) {
    return BookNow.of(served.archive(), book).orElseThrow().in(section).toList();
  }

  private static void type(Page page, String... cells) {
    for (String cell : cells) {
      page.keyboard().type(cell);
      page.keyboard().press("Tab");
    }
  }

  @Test
  void aWholeSheetIsTypedByKeyboardAloneAndItsBookReadsWithoutComplaint() {
    try (Page page = typing()) {
      page.locator("#what").focus();
      page.keyboard().type("cleanout in the floor");
      page.locator("#p1-kind").focus();
      type(page, "a", "1.1");
      page.keyboard().press("Enter");
      type(page, "d", "23.6", "", "5", "25 %, sort fine", "at the joint");
      page.keyboard().press("Enter");
      type(page, "standing w", "30", "26' 6\"", "", "depth 1 in");
      page.keyboard().press("Enter");
      type(page, "c", "12", "", "", "45, left");
      page.keyboard().press("Enter");
      type(page, "grease", "", "", "", "50", "", "10:42");
      page.locator("#end-cable").focus();
      type(page, "40");
      page.keyboard().type("something");
      page.locator("#w101-label").focus();
      type(page, "", "12", "10:50", "", "8", "6", "2.5", "", "yard");
      page.keyboard().press("Enter");
      type(
          page, "", "26", "", "", "9.5", "20", "2' 9\"", "3 in", "slab", "A", "24.1", "B",
          "41' 3\"");
      page.locator("#keep").focus();
      page.keyboard().press("Enter");
      page.waitForSelector("[data-kept-visit]");

      ReadBook read = served.archive().book(book).orElseThrow();
      assertThat(read.complaints()).isEmpty();
      assertThat(rows("findings"))
          .extracting(row -> row.text("kind").orElse(""))
          .containsExactly("joint", "roots", "standing-water");
      BookNow.Row roots = rows("findings").get(1);
      assertThat(roots.text("cable")).contains("23.6 ft");
      assertThat(roots.text("clock")).contains("5");
      assertThat(roots.text("share")).contains("25 %");
      assertThat(roots.text("sort")).contains("fine");
      assertThat(roots.text("remark")).contains("at the joint");
      BookNow.Row water = rows("findings").get(2);
      assertThat(water.text("from")).as("the nearer end first").contains("26' 6\"");
      assertThat(water.text("to")).contains("30 ft");
      assertThat(rows("bends").getFirst().text("angle")).contains("45");
      assertThat(rows("bends").getFirst().text("sense")).contains("left");
      BookNow.Row pass = rows("passes").getFirst();
      assertThat(pass.text("end", "cable")).contains("40 ft");
      assertThat(pass.text("end", "why")).contains("obstruction");
      assertThat(pass.text("remark").orElseThrow())
          .containsPattern("^no distance yet, 10:42:00: .*kind grease; share 50 %");
      assertThat(rows("locates"))
          .extracting(row -> row.text("depth").orElse(""))
          .containsExactly("2.5 ft", "2' 9\"");
      BookNow.Row second = rows("locates").get(1);
      assertThat(second.text("label")).contains("L2");
      assertThat(second.text("pass")).contains("P1");
      assertThat(second.text("ties", "B")).contains("41' 3\"");
      assertThat(second.text("receiver-height")).contains("3 in");
      assertThat(rows("landmarks")).extracting(BookNow.Row::label).containsExactly("A", "B");

      // The push page reads what was typed as if a thumb had written it.
      page.navigate(served.address().resolve("/site/" + book + "/pass/" + pass.entry()).toString());
      page.waitForSelector("[data-ready]");
      assertThat(page.locator("#rows li").count()).isEqualTo(5);
      assertThat(page.locator("#rows").textContent()).contains("10:42:00", "grease");
    }
  }

  @Test
  void everythingWrongIsToldBesideItsCellAndTheRestIsKeptOnce() {
    try (Page page = typing()) {
      page.locator("#p1-kind").fill("rots");
      page.locator("#p1-at").fill("ten");
      page.locator("#p2-kind").fill("crack");
      page.locator("#p3-kind").fill("k");
      page.locator("#p3-at").fill("9");
      page.locator("#p3-clock").fill("14");
      page.locator("#p4-kind").fill("crack");
      page.locator("#p4-at").fill("12");
      page.locator("#p5-kind").fill("joint");
      page.locator("#p5-at").fill("13");
      page.locator("#p5-size").fill("big");
      page.locator("#w101-along").fill("8");
      page.locator("#w101-to1").fill("Q");
      page.locator("#w101-tie1").fill("12");
      page.locator("#w102-along").fill("8");
      page.locator("#w102-out").fill("6");
      page.locator("#w102-depth").fill("3 kg");
      page.locator("#keep").click();
      page.waitForSelector(".trouble");

      for (String cell :
          List.of(
              "p1-kind",
              "p1-at",
              "p2-at",
              "p3-clock",
              "p5-size",
              "w101-out",
              "w101-to1",
              "w102-depth")) {
        assertThat(page.locator("#" + cell + "-why").count()).as(cell).isEqualTo(1);
      }
      assertThat(page.locator(".trouble li").count()).isEqualTo(8);
      assertThat(page.locator("#p1-kind").inputValue()).isEqualTo("rots");
      assertThat(page.locator("#w102-depth").inputValue()).isEqualTo("3 kg");
      assertThat(page.locator("[data-row='4'] .done").count()).isEqualTo(1);
      assertThat(Window.violations(page)).isEmpty();
      page.screenshot(
          new Page.ScreenshotOptions()
              .setFullPage(true)
              .setPath(PICTURES.resolve("pencil-wrong.png")));
      assertThat(rows("findings")).hasSize(1);

      // What is in the browser outlives the page, with its identities.
      page.reload();
      page.waitForSelector("#pencil[data-ready]");
      assertThat(page.locator("#p1-kind").inputValue()).isEqualTo("rots");
      page.locator("#p1-kind").fill("roots");
      page.locator("#p1-at").fill("10");
      page.locator("#p2-at").fill("11");
      page.locator("#p3-clock").fill("9-3");
      page.locator("#p4-at").fill("12.5");
      page.locator("#p5-size").fill("");
      page.locator("#w101-out").fill("5");
      page.locator("#w101-to1").fill("");
      page.locator("#w101-tie1").fill("");
      page.locator("#w102-depth").fill("3");
      page.locator("#keep").click();
      page.waitForSelector("[data-kept-visit]");

      assertThat(rows("findings")).hasSize(5);
      assertThat(rows("passes")).hasSize(1);
      assertThat(rows("findings"))
          .extracting(row -> row.text("cable").orElse(""))
          .containsExactlyInAnyOrder("10 ft", "11 ft", "9 ft", "12.5 ft", "13 ft");
      assertThat(rows("locates")).hasSize(2);
      page.navigate(served.address().resolve(visit + "/sheets/typed").toString());
      page.waitForSelector("#pencil[data-ready]");
      assertThat(page.locator("#p1-kind").inputValue()).as("a kept sheet is over").isEmpty();
    }
  }

  @Test
  void outOfReachNothingIsLostAndAnAnswerThatNeverCameMakesNoDouble() {
    try (Page page = typing()) {
      page.locator("#p1-kind").fill("crack");
      page.locator("#p1-at").fill("7");
      int[] cut = {0};
      page.route(
          "**/sheets/typed",
          route -> {
            if (route.request().method().equals("POST") && cut[0]++ == 0) {
              route.fetch();
              route.abort();
            } else {
              route.resume();
            }
          });
      page.locator("#keep").click();
      page.waitForSelector("#pencil-state.unsent");
      assertThat(page.locator("#p1-at").inputValue()).isEqualTo("7");
      page.locator("#keep").click();
      page.waitForSelector("[data-kept-visit]");

      assertThat(cut[0]).isEqualTo(2);
      assertThat(rows("findings")).hasSize(1);
      assertThat(rows("passes")).hasSize(1);
      assertThat(served.archive().history(book, rows("findings").getFirst().entry())).hasSize(1);
    }
  }

  /** All fields of the form as a browser without script would send them. */
  private Map<String, String> form(String html) {
    Map<String, String> fields = new LinkedHashMap<>();
    Pattern.compile("<input[^>]*>")
        .matcher(html.substring(html.indexOf("id=\"pencil\"")))
        .results()
        .map(found -> found.group())
        .filter(input -> input.contains("name=\"") && !input.contains("checkbox"))
        .forEach(input -> fields.put(attribute(input, "name"), attribute(input, "value")));
    fields.remove("back");
    fields.put("unit", "ft");
    return fields;
  }

  private static String attribute(String tag, String name) {
    var found = Pattern.compile(" " + name + "=\"([^\"]*)\"").matcher(tag);
    return found.find() ? found.group(1) : "";
  }

  @Test
  void withoutScriptTheFormDoesTheSameAndTwiceIsOnce() {
    Map<String, String> fields = form(served.get(visit + "/sheets/typed").body());
    fields.putAll(Map.of("p1-kind", "d", "p1-at", "10", "w101-along", "3", "w101-out", "4"));
    HttpResponse<String> first = served.form(visit + "/sheets/typed", fields);
    HttpResponse<String> again = served.form(visit + "/sheets/typed", fields);

    assertThat(first.uri().getPath()).endsWith("/sheets/kept");
    assertThat(again.uri().getPath()).endsWith("/sheets/kept");
    assertThat(rows("findings")).hasSize(1);
    assertThat(rows("locates")).hasSize(1);
    assertThat(rows("passes")).hasSize(1);
    assertThat(rows("passes").getFirst().number()).isEqualTo(1);
  }

  @Test
  void moreRowsComeWithWhatWasTypedAndAKeptRowThatIsEmptiedIsWithdrawn() {
    Map<String, String> fields = form(served.get(visit + "/sheets/typed").body());
    fields.putAll(
        Map.of("p1-kind", "d", "p1-at", "10", "p2-kind", "d", "p2-at", "x", "more", "yes"));
    HttpResponse<String> more = served.form(visit + "/sheets/typed", fields);
    assertThat(more.body()).contains("p16-kind", "w111-label", "value=\"10\"");
    assertThat(rows("findings")).isEmpty();
    fields = form(more.body());
    HttpResponse<String> wrong = served.form(visit + "/sheets/typed", fields);
    assertThat(wrong.statusCode()).isEqualTo(422);
    assertThat(rows("findings")).hasSize(1);
    fields = form(wrong.body());
    fields.putAll(
        Map.of("p1-kind", "", "p1-at", "", "p2-at", "11", "p16-kind", "a", "p16-at", "12"));
    assertThat(served.form(visit + "/sheets/typed", fields).statusCode()).isEqualTo(200);
    assertThat(rows("findings"))
        .extracting(row -> row.text("cable").orElse(""))
        .containsExactly("11 ft", "12 ft");
  }

  @Test
  void whoWroteMeanwhileIsShownBeforeAnythingIsWrittenOver() {
    Map<String, String> fields = form(served.get(visit + "/sheets/typed").body());
    fields.putAll(Map.of("p1-kind", "d", "p1-at", "10", "p2-kind", "d"));
    Map<String, String> mended = form(served.form(visit + "/sheets/typed", fields).body());
    BookNow.Row row = rows("findings").getFirst();
    served.enter(
        book,
        "{\"entries\":[{\"entry\":\"%s\",\"parent\":\"%s\",\"section\":\"findings\",\"base\":1,\"keys\":{\"label\":\"F1\",\"kind\":\"roots\",\"cable\":\"99 ft\"}}]}"
            .formatted(row.entry(), row.parent()));
    mended.putAll(Map.of("p1-at", "10.5", "p2-at", "11"));
    HttpResponse<String> clash = served.form(visit + "/sheets/typed", mended);
    assertThat(clash.statusCode()).isEqualTo(422);
    assertThat(clash.body()).contains("99 ft");
    assertThat(rows("findings").getFirst().text("cable")).contains("99 ft");
    served.form(visit + "/sheets/typed", form(clash.body()));
    assertThat(rows("findings").getFirst().text("cable")).contains("10.5 ft");
  }

  @Test
  void lettersNamesAndSizesAreUnderstoodInFrenchToo() {
    PencilWords words = new PencilWords(Phrases.of(Language.FR), "m");
    assertThat(words.kind("d").orElseThrow().id()).isEqualTo("roots");
    assertThat(words.kind("RACINES").orElseThrow().id()).isEqualTo("roots");
    assertThat(words.kind("s1").orElseThrow().hazard().name()).isEqualTo("STOP");
    assertThat(words.kind("zzz")).isEmpty();
    assertThat(words.length("7,25")).contains("7.25 m");
    assertThat(words.length("4 pi 7 po")).contains("4 ft 7 in");
    assertThat(words.length("beaucoup")).isEmpty();
    assertThat(words.sizes(words.kind("c").orElseThrow(), "45°; gauche").orElseThrow())
        .containsEntry("angle", "45°")
        .containsEntry("sense", "left");
    assertThat(words.sizes(words.kind("d").orElseThrow(), "2,5 mm").orElseThrow())
        .containsEntry("thickness", "2.5 mm");
    assertThat(words.sizes(words.kind("j").orElseThrow(), "longueur 30 mm").orElseThrow())
        .containsEntry("length", "30 mm");
    assertThat(words.sizes(words.kind("a").orElseThrow(), "3")).isEmpty();
    assertThat(PencilWords.time("25:00")).isEmpty();
    assertThat(PencilWords.clock("14")).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"Letter, en", "A4, en", "Letter, fr", "A4, fr"})
  void thePrintedSheetsFitTheirPaper(String format, String tongue) throws IOException {
    try (Page page = at(window.page(1366, 900), "/sheets")) {
      page.locator("button[name=language][value=" + tongue + "]").click();
      page.waitForSelector(
          "html[lang=" + tongue + "] button[value=" + tongue + "][aria-pressed=true]");
      byte[] printed = page.pdf(new Page.PdfOptions().setFormat(format).setPreferCSSPageSize(true));
      Files.write(PICTURES.resolve("sheets-" + format + "-" + tongue + ".pdf"), printed);
      try (PDDocument pdf = Loader.loadPDF(printed)) {
        assertThat(pdf.getNumberOfPages()).isEqualTo(3);
        String text = new PDFTextStripper().getText(pdf);
        Phrases phrases = Phrases.of(tongue.equals("fr") ? Language.FR : Language.EN);
        PushKeys.large().forEach(kind -> assertThat(text).contains(phrases.kind(kind.id())));
        assertThat(text).contains(phrases.say("before.tickets.none"), "15", "110", "206");
        assertThat(text).doesNotContain(phrases.say("frame.foot"));
      }
    }
  }

  @Test
  void aTicketThatIsGoodIsNamedInsteadOfTheOrderNotToDig() throws IOException {
    Archived.fill(served, "/site/" + book);
    visit = Archived.lastVisit(served, "/site/" + book);
    String sheet = served.get(visit + "/sheets").body();
    assertThat(sheet).contains("INVENTED-1204").doesNotContain("No ticket on record");
  }

  @ParameterizedTest
  @CsvSource({
    "sheets, 390, en, SUN",
    "sheets, 1366, fr, BASEMENT",
    "sheets/typed, 390, fr, PAPER",
    "sheets/typed, 390, en, BASEMENT",
    "sheets/typed, 1366, en, SUN"
  })
  void thePagesFitAndEverybodyCanReadThem(String name, int width, String tongue, Light light)
      throws IOException {
    Archived.fill(served, "/site/" + book);
    visit = Archived.lastVisit(served, "/site/" + book);
    try (Page page = at(window.page(width, 844), "/" + name)) {
      page.locator("button[name=language][value=" + tongue + "]").click();
      page.waitForSelector("html[lang=" + tongue + "]");
      page.locator("button[value=" + light.code() + "]").click();
      page.waitForSelector("html[data-light=" + light.code() + "]");
      assertThat(page.evaluate("document.documentElement.scrollWidth")).isEqualTo(width);
      assertThat(Window.violations(page)).isEmpty();
      page.screenshot(
          new Page.ScreenshotOptions()
              .setFullPage(true)
              .setPath(
                  PICTURES.resolve(
                      "pencil-%s-%d-%s-%s.png"
                          .formatted(name.replace('/', '-'), width, tongue, light.code()))));
      assertThat(page.evaluate(SMALL)).asInstanceOf(InstanceOfAssertFactories.LIST).isEmpty();
    }
  }
}
