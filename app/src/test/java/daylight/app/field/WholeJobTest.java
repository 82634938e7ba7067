package daylight.app.field;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.WaitForSelectorState;
import daylight.app.Job;
import daylight.app.web.Opened;
import daylight.app.web.Window;
import daylight.app.web.Workspace;
import daylight.line.answer.Answer;
import daylight.line.answer.DigPlace;
import daylight.line.answer.Question;
import daylight.line.answer.State;
import daylight.line.dig.DigTarget;
import daylight.report.Handout;
import daylight.report.words.Words;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * From a blank archive to an answered property by what is seen on the pages alone: pressed with a
 * mouse in the office, by a thumb in basement and yard. The property is our own invention.
 *
 * <p>Its truth: a clay pipe goes straight out from the front wall, twelve feet along it, a quarter
 * of an inch down to the foot. Roots stand in it at 24 ft, a piece of wall is missing at 33 ft.
 *
 * <p>It leaves pictures of the pages; with {@code -Ddaylight.pictures=../docs/pages} those of the
 * documents are made anew.
 */
class WholeJobTest {
  private static final Path PICTURES = Path.of("target/field-pages");
  private static final double FOOT = 0.3048;
  private static final long HEAVIEST = 300_000;

  /** Everything on a page but its address and the names of files to be taken home. */
  private static final String ALL =
      "main => main.innerHTML.replaceAll(/ download=\"[^\"]*\"|\\/property\\/[^/]*/g, '')";

  private static final int[] OUT = {6, 12, 18, 24, 30, 36, 42};

  @TempDir private Path folder = Path.of("");
  private Served served;
  private Window window;

  @BeforeEach
  void open() throws IOException {
    served = new Served(folder.resolve("archive"));
    window = new Window();
    Files.createDirectories(PICTURES);
  }

  @AfterEach
  void close() {
    window.close();
    served.close();
  }

  private static void shot(Page page, String name) {
    page.screenshot(
        new Page.ScreenshotOptions()
            .setFullPage(true)
            .setPath(PICTURES.resolve("job-" + name + ".png")));
  }

  @Test
  void fromABlankArchiveToAnAnsweredPropertyByPressesOnly() throws IOException {
    Hand office = Hand.clicking(window.page(1366, 768));
    Hand thumb = Hand.tapping(window.phone(390, 844));
    office.page().navigate(served.address().toString());
    begun(office);
    thumb.page().navigate(served.address().toString());
    pushed(thumb);
    walked(thumb);

    office.press("nav a", "Sites").press("ul.sites a").press("a", "Answers and drawings");
    office.arrived("/property/site-[^/]+/");
    office.page().locator("#answers").waitFor();
    shot(office.page(), "answers-1366");
    office.press("nav a", "Site and visits").arrived("/site/[^/]+");
    office.press("a", "Answers and drawings").arrived("/property/site-[^/]+/");
    UUID book = served.archive().sites("").getFirst().book();
    asFromAFile(office.page().locator("main"), book);
    looked(book);
    // What it costs; more is a step back.
    assertThat(List.of(office.presses(), office.letters())).isEqualTo(List.of(19, 120));
    assertThat(List.of(thumb.presses(), thumb.letters())).isEqualTo(List.of(74, 99));
    assertThat(window.complained()).isEmpty();
  }

  /** Every page of it as it is seen, large and small, in the dark and in French, and its weight. */
  private void looked(UUID book) throws IOException {
    BookNow now = BookNow.of(served.archive(), book).orElseThrow();
    String visit = VisitPages.address(book, now.visits().getFirst().entry());
    Map<String, String> pages = new LinkedHashMap<>();
    pages.put("sites", "/sites");
    pages.put("new", "/sites/new");
    pages.put("site", "/site/" + book);
    pages.put("visit", visit);
    pages.put(
        "push", "/site/" + book + "/pass/" + now.in("passes").findFirst().orElseThrow().entry());
    pages.put("walk", visit + "/walk");
    pages.put("levels", visit + "/levels");
    pages.put("sheets", visit + "/sheets");
    pages.put("typed", visit + "/sheets/typed");
    pages.put("answers", "/site/" + book + "/answers");
    for (int width : new int[] {1366, 390}) {
      try (Page page = window.page(width, width == 390 ? 844 : 768)) {
        page.navigate(served.address().resolve("/who").toString());
        page.locator("#person").fill("Kim");
        page.locator("main button[type=submit]").click();
        for (Map.Entry<String, String> one : pages.entrySet()) {
          seen(page, one.getKey(), one.getValue());
          picture(page, one.getKey() + "-" + width);
        }
        if (width == 390) {
          seen(page, "push", pages.getOrDefault("push", ""));
          page.locator("button[value=basement]").click();
          seen(page, "push", pages.getOrDefault("push", ""));
          picture(page, "push-390-dark");
          page.locator("button[value=paper]").click();
          page.locator("button[value=fr]").click();
          seen(page, "walk", pages.getOrDefault("walk", ""));
          picture(page, "walk-390-french");
        }
      }
    }
  }

  private void seen(Page page, String name, String path) {
    page.navigate(served.address().resolve(path).toString());
    switch (name) {
      case "push" -> page.waitForSelector("[data-ready]");
      case "walk" -> page.waitForSelector("#spots .off, #answer-told > *");
      case "answers" -> page.waitForSelector("#answers");
      default -> {}
    }
    // The letters may still be on their way when the page is there.
    page.evaluate("document.fonts.ready.then(() => null)");
    Object parts = page.evaluate("performance.getEntriesByType('resource').map((one) => one.name)");
    Set<String> all = new TreeSet<>();
    ((List<?>) parts).forEach(one -> all.add(one.toString()));
    all.add(page.url());
    long weight = all.stream().mapToLong(served::weight).sum();
    assertThat(weight).as(name + ": all of it, without media").isBetween(20_000L, HEAVIEST);
  }

  private static void picture(Page page, String name) throws IOException {
    page.evaluate("window.scrollTo(0, 0)");
    String kept = System.getProperty("daylight.pictures", PICTURES.resolve("docs").toString());
    Paletted.write(page.screenshot(), Path.of(kept).resolve(name + ".png"));
  }

  /** Address and complaint, then what to know before one goes. */
  private void begun(Hand office) {
    office.press("a", "New site");
    office.type("#address", "8 Larch Bend, Springmouth (invented)");
    office.type("#complaint", "The basement floor drain backs up when it rains.");
    office.type("#person", "Kim").press("main button[type=submit]");
    office.arrived("/site/[^/]+");
    office.press("ul.sites a").arrived("/visit/[^/]+");
    office.press("#tickets summary").type("#number", "INVENTED-1127");
    // A field for a day takes its figures one after the other, as its browser writes days.
    office.press("#expires");
    office.page().keyboard().type("12312026");
    office.press("#tickets button[type=submit]");
    office.page().locator("#tickets >> text=INVENTED-1127").waitFor();
    office.press("#consents summary").type("#who", "The owner (invented)");
    office.press("#consents button[type=submit]");
    office.page().locator("#consents li >> text=The owner (invented)").waitFor();
    office.press("label[for=kit-gas]");
    shot(office.page(), "visit-1366");
  }

  private void pushed(Hand thumb) {
    Page page = thumb.page();
    thumb.press("ul.sites a").press("#visits a").press("a", "The push");
    thumb.type("#what", "cleanout at the front wall").type("#bore", "4 in");
    thumb.press("main button[type=submit]");
    // Nobody said on this phone yet who writes; what was typed comes along.
    thumb.type("#person", "Lou").press("main button[type=submit]").arrived("/pass/[^/]+");
    page.waitForSelector("[data-ready]");
    thumb.type("#distance", "0").press("[data-sight=clear]");
    thumb.type("#distance", "24").press("[data-kind=roots]").hour(12);
    thumb.press("[data-focus='part-share-50 %']");
    thumb.type("#distance", "33").press("[data-kind=break]");
    thumb.type("#distance", "46").press("[data-act=ended]").press("[data-why=enough]");
    page.waitForSelector("#told.kept");
    shot(page, "push-390");
  }

  private void walked(Hand thumb) {
    Page page = thumb.page();
    thumb.press("nav li:last-child a").arrived("/visit/[^/]+");
    thumb.press("a", "The walk").arrived("/walk");
    // What comes from the archive moves what stands below it, also from under a thumb.
    page.locator("#reach.kept").waitFor();
    page.locator("#answer-state >> text=Computed from everything").waitFor();
    thumb.press("#house summary").type("#w-house-front", "40").type("#w-house-side", "25");
    thumb.press("#house-form button");
    page.locator("#points li").nth(3).waitFor();
    for (int out : OUT) {
      thumb.press("#over").type("#w-cable", Integer.toString(out + 1));
      thumb.type("#w-along", "12").type("#w-out", Integer.toString(out));
      thumb.type("#w-depth", "3").type("#w-depth-inches", Integer.toString(out / 4));
      thumb.press("#keep");
      page.locator("#locate")
          .waitFor(new Locator.WaitForOptions().setState(WaitForSelectorState.HIDDEN));
    }
    page.locator("#reach.kept").waitFor();
    page.locator("#answer-state >> text=Computed from everything").waitFor();
    assertThat(page.locator("#spots .off").count()).as("a straight line fits its spots").isZero();
    shot(page, "walk-390");
  }

  /** What stands on the page is what the same book says that was handed on as a file. */
  private void asFromAFile(Locator shown, UUID book) throws IOException {
    Path file = folder.resolve("handed-on/field-book.yaml");
    Files.createDirectories(file.resolveSibling("."));
    Files.writeString(file, served.archive().written(book).orElseThrow());
    if (!(Job.answer(file, Job.Settings.USUAL) instanceof Job.Outcome.Answered answered)) {
      throw new AssertionError("the book that was handed on is refused");
    }
    Handout handout = answered.handout();
    Words words = Words.of(handout.language(), handout.shown());
    String page = shown.textContent();
    List<Answer> answers = handout.answers().lines().getFirst().answers();
    assertThat(answers).hasSize(Question.values().length);
    assertThat(answers).allSatisfy(one -> assertThat(page).contains(words.say(one.headline())));
    assertThat(shown.evaluate(ALL).equals(alone(file)))
        .as("the page of the archive and that of the file are the same")
        .isTrue();
    assertThat(handout.line().doubts())
        .allSatisfy(doubt -> assertThat(page).contains(words.say(doubt)));
    assertThat(handout.answers().lines().getFirst().to(Question.WHERE).state())
        .isEqualTo(State.ANSWERED);
    liesWhereItWasWalked(handout);
  }

  /** The page of a book that was named. */
  private Object alone(Path file) {
    Opened named = new Opened(file, Job.Settings.USUAL);
    try (Workspace.Running running = Workspace.serve(List.of(named), 0, false);
        Page page = window.page(1366, 768)) {
      page.navigate(running.address().toString());
      return page.locator("main").evaluate(ALL);
    }
  }

  /** Metres on the site grid: north along the wall, west out from it. */
  private static void liesWhereItWasWalked(Handout handout) {
    assertThat(handout.answers().digs()).hasSize(2);
    for (DigPlace place : handout.answers().digs()) {
      if (!(place.dig() instanceof DigTarget target)) {
        throw new AssertionError(place.toString());
      }
      double out = place.finding().finding().kind().equals("roots") ? 24 : 33;
      double off = Math.hypot(target.spot().y() - 12 * FOOT, target.spot().x() + out * FOOT);
      assertThat(off).isLessThan(1.5 * FOOT);
      assertThat(target.ticket().toString()).contains("INVENTED-1127");
    }
  }
}
