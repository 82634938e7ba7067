package daylight.app.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import daylight.app.Job;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The pages as a person meets them, on a phone (390 px wide) and on a laptop (1366 px). */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class LookingTest {
  private static final int PHONE = 390;
  private static final int LAPTOP = 1366;
  private static final int HIGH = 768;

  /** Web Content Accessibility Guidelines 2.2, 2.5.5 (enhanced), which the design asks for. */
  private static final double TARGET = 44;

  private Workspace.Running running;
  private Window window;

  @BeforeAll
  void open(@TempDir Path folder) throws IOException {
    Path filmed = Filmed.in(folder.resolve("filmed"));
    Path deadly = folder.resolve("deadly.yaml");
    Files.writeString(
        deadly,
        Files.readString(Filmed.unfilmed(folder.resolve("other"), "media: []"))
            .replace(
                "kind: roots, cable: 23.6 ft, share: 15 %", "kind: foreign-pipe, cable: 23.6 ft"));
    Path refused = folder.resolve("refused.yaml");
    Files.writeString(refused, Files.readString(deadly).replace("cable: 12.2 ft", "cable: 12.2"));
    running =
        Workspace.start(
            List.of(
                Filmed.property("filmed", filmed),
                new Property("deadly", new Opened(deadly, Job.Settings.USUAL), Job::answer),
                new Property("refused", new Opened(refused, Job.Settings.USUAL), Job::answer)),
            0);
    window = new Window();
  }

  @AfterAll
  void close() {
    window.close();
    running.close();
  }

  private Page at(String path, int width) {
    Page page = window.page(width, HIGH);
    page.navigate(running.address().resolve(path).toString());
    return page;
  }

  @ParameterizedTest
  @CsvSource({
    "/, 390",
    "/, 1366",
    "/property/filmed/, 390",
    "/property/filmed/, 1366",
    "/property/deadly/, 390",
    "/property/deadly/, 1366",
    "/property/refused/, 390",
    "/property/refused/, 1366",
    "/property/nobody/, 390",
    "/property/filmed/report.html, 390",
    "/property/deadly/report.html, 1366"
  })
  void aPageFitsAndEverybodyCanReadIt(String path, int width) {
    int before = window.complained().size();
    try (Page page = at(path, width)) {
      openAll(page);
      assertThat(page.evaluate("document.documentElement.scrollWidth"))
          .as("no page scrolls sideways")
          .isEqualTo(width);
      assertThat(Window.violations(page)).isEmpty();
    }
    assertThat(window.complained())
        .as("what the browser complained of")
        .hasSize(path.contains("nobody") ? before + 1 : before);
    assertThat(window.asked())
        .allMatch(url -> url.startsWith(running.address().toString()) || url.startsWith("data:"));
  }

  /** What folds out is read, too. */
  private static void openAll(Page page) {
    page.evaluate("document.querySelectorAll('details').forEach(one => { one.open = true; })");
  }

  @ParameterizedTest
  @CsvSource({"390", "1366"})
  void whatIsPressedIsLargeEnoughForAGlove(int width) {
    try (Page page = at("/property/filmed/", width)) {
      for (Locator one : page.locator("a:visible, button:visible, summary:visible").all()) {
        assertThat(one.boundingBox().height)
            .as(String.valueOf(one.textContent()))
            .isGreaterThanOrEqualTo(TARGET);
      }
    }
  }

  @Test
  void stopOrdersComeFirst() {
    try (Page page = at("/property/deadly/", PHONE)) {
      assertThat(page.locator("main > *").first().textContent())
          .startsWith("STOP")
          .contains("Do not cut");
    }
  }

  /** Whatever the device says of itself, and on every page from then on. */
  @ParameterizedTest
  @CsvSource({"basement, dark", "sun, light", "paper, light"})
  void theLightThatWasChosenHolds(String light, String scheme) {
    try (Window other = new Window();
        Page page = other.page(LAPTOP, HIGH)) {
      page.emulateMedia(
          new Page.EmulateMediaOptions()
              .setColorScheme(scheme.equals("dark") ? ColorScheme.LIGHT : ColorScheme.DARK));
      page.navigate(running.address().resolve("/property/filmed/").toString());
      page.locator(".switch a[href$='light=" + light + "']").click();
      Window.until(page, "document.documentElement.dataset.light === '" + light + "'");
      assertThat(brightness(page) > 128).isEqualTo(scheme.equals("light"));
      assertThat(Window.violations(page)).isEmpty();
      page.navigate(running.address().resolve("/property/").toString());
      assertThat(brightness(page) > 128).isEqualTo(scheme.equals("light"));

      page.locator(".switch a[href$='light=device']").click();
      Window.until(page, "document.documentElement.dataset.light === undefined");
      assertThat(brightness(page) > 128).isNotEqualTo(scheme.equals("light"));
    }
  }

  private static int brightness(Page page) {
    return ((Number)
            page.evaluate(
                "Number(getComputedStyle(document.body).backgroundColor.match(/\\d+/g)[1])"))
        .intValue();
  }

  @Test
  void anAnswerFoldsOutByKeyboard() {
    try (Page page = at("/property/filmed/", LAPTOP)) {
      Locator first = page.locator("details.answer").first();
      first.locator("> summary").focus();
      page.keyboard().press("Enter");

      assertThat(first.getAttribute("open")).isNotNull();
      assertThat(first.locator(".grounds").isVisible()).isTrue();
    }
  }

  @ParameterizedTest
  @CsvSource({"390", "1366"})
  void aStillLeadsToItsMoment(int width) {
    try (Page page = at("/property/filmed/", width)) {
      page.locator("a.still[data-media]").nth(1).click();
      page.waitForCondition(() -> seconds(page) > 0 && at(page, "!video.seeking"));

      assertThat(seconds(page)).isEqualTo(5.2, within(0.05));
      assertThat(at(page, "video.muted")).isTrue();
      assertThat(page.locator(".now").textContent()).startsWith("At 0:05: Roots");
      assertThat(page.locator(".back:visible").getAttribute("href")).startsWith("#finding-");
      assertThat(grey(page)).isEqualTo(40 + 2 * 52, within(4.0));
      page.waitForCondition(
          () ->
              at(page, "video.getBoundingClientRect().top >= -1")
                  && at(page, "video.getBoundingClientRect().bottom <= innerHeight + 1"));
    }
  }

  /** Where in the recording the player is. */
  private static double seconds(Page page) {
    return ((Number) page.locator("video").evaluate("video => video.currentTime")).doubleValue();
  }

  private static boolean at(Page page, String holds) {
    return (boolean) page.locator("video").evaluate("video => " + holds);
  }

  /** How light the picture is that the browser shows; every picture of the film has its own. */
  private static double grey(Page page) {
    return ((Number)
            page.locator("video")
                .evaluate(
                    """
                video => {
                  const pen = new OffscreenCanvas(8, 8).getContext('2d');
                  pen.drawImage(video, 0, 0, 8, 8);
                  return pen.getImageData(4, 4, 1, 1).data[1];
                }
                """))
        .doubleValue();
  }

  @Test
  void aRowOfTheTableLeadsToItsMoment() {
    try (Page page = at("/property/filmed/", LAPTOP)) {
      page.locator("tr:has-text('Joint out of line') td").last().click();
      page.waitForCondition(() -> seconds(page) > 0);

      assertThat(seconds(page)).isEqualTo(1.5, within(0.05));
    }
  }

  @Test
  void aFindingIsShownOnTheDrawingsByPointerAndByKeyboard() {
    try (Page page = at("/property/filmed/", LAPTOP)) {
      Locator row = page.locator("#findings tr:has-text('Roots')");
      assertThat(page.locator(".ring").count()).isZero();

      row.hover();
      assertThat(page.locator("#plan .ring").count()).isPositive();
      assertThat(page.locator("#profile .ring").count()).isPositive();
      assertThat(page.locator("#strip .ring").count()).isPositive();
      assertThat(page.locator(".ring[x^='-']").count()).as("rings about nothing").isZero();

      page.mouse().move(0, 0);
      row.locator("button").focus();
      assertThat(page.locator("#plan .ring").count()).isPositive();

      page.keyboard().press("Enter");
      page.locator("#files a").first().focus();
      assertThat(row.locator("button").getAttribute("aria-pressed")).isEqualTo("true");
      assertThat(page.locator("#plan .ring").count()).isPositive();
    }
  }

  @Test
  void aMarkOnADrawingShowsItsRow() {
    try (Page page = at("/property/filmed/", LAPTOP)) {
      page.locator("#plan .known").first().click();

      assertThat(page.locator("tr.lit").count()).isEqualTo(1);
    }
  }

  @Test
  void withoutScriptEverythingIsStillThere() {
    try (Page page = window.plain(LAPTOP, HIGH)) {
      page.navigate(running.address().resolve("/property/filmed/").toString());

      assertThat(page.locator("details.answer").count()).isPositive();
      assertThat(page.locator("a.still").first().getAttribute("href")).contains("#t=1.5");
      assertThat(page.locator("video").getAttribute("controls")).isNotNull();
    }
  }
}
