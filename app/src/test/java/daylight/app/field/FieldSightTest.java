package daylight.app.field;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import daylight.app.web.Light;
import daylight.app.web.Window;
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

/** The pages of an archive as a person meets them; pictures of each are left in {@code target}. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class FieldSightTest {
  private static final int HIGH = 844;
  private static final double TARGET = 44;
  private static final int HEAVIEST = 300_000;
  private static final Path PICTURES = Path.of("target/field-pages");

  private Served served;
  private Window window;
  private String site = "";
  private String visit = "";

  @BeforeAll
  void open(@TempDir Path folder) throws IOException {
    served = new Served(folder.resolve("archive"));
    window = new Window();
    site =
        "/site/"
            + served.site(
                "14 Elder Row, Springmouth (invented)", "The floor drain backs up in rain.");
    Archived.fill(served, site);
    visit = Archived.lastVisit(served, site);
    Files.createDirectories(PICTURES);
  }

  @AfterAll
  void close() {
    window.close();
    served.close();
  }

  private String path(String name) {
    return switch (name) {
      case "site" -> site;
      case "visit" -> visit;
      default -> "/" + name;
    };
  }

  private Page at(String name, int width) {
    Page page = window.page(width, HIGH);
    page.navigate(served.address().resolve(path(name)).toString());
    return page;
  }

  @ParameterizedTest
  @CsvSource({
    "sites, 390",
    "sites, 1366",
    "sites/new, 390",
    "sites/new, 1366",
    "site, 390",
    "site, 1366",
    "visit, 390",
    "visit, 1366",
    "who, 390",
    "site/nobody, 390",
  })
  void aPageFitsAndEverybodyCanReadItInAnyLight(String name, int width) {
    int before = window.complained().size();
    try (Page page = at(name, width)) {
      for (Light light : Light.values()) {
        page.locator("button[value=" + light.code() + "]").click();
        // Not before the new page is there with its style: until then it is as wide as it likes.
        Window.until(
            page,
            "document.readyState === 'complete' && document.documentElement.dataset.light === '"
                + light.code()
                + "'");
        page.evaluate("document.querySelectorAll('details').forEach(one => { one.open = true; })");
        assertThat(page.evaluate("document.documentElement.scrollWidth"))
            .as("no page scrolls sideways")
            .isEqualTo(width);
        assertThat(Window.violations(page)).as(light.code()).isEmpty();
        page.screenshot(
            new Page.ScreenshotOptions()
                .setFullPage(true)
                .setPath(
                    PICTURES.resolve(
                        name.replace('/', '-') + "-" + width + "-" + light.code() + ".png")));
      }
      for (Locator one :
          page.locator(
                  "a:visible, button:visible, summary:visible, main :is(input, select, textarea):visible")
              .all()) {
        BoundingBox box = one.boundingBox();
        boolean ticked = "checkbox".equals(one.getAttribute("type"));
        assertThat(box.height)
            .as(one.evaluate("one => one.outerHTML").toString())
            .isGreaterThanOrEqualTo(ticked ? 24 : TARGET);
      }
    }
    List<String> complained = window.complained();
    assertThat(complained.subList(before, complained.size()))
        .allMatch(one -> name.contains("nobody") && one.contains("404"));
    assertThat(window.asked()).allMatch(url -> url.startsWith(served.address().toString()));
  }

  /** French is the longer language, and metres have other words. */
  @ParameterizedTest
  @CsvSource({"sites", "sites/new", "site", "visit"})
  void frenchFitsToo(String name) {
    try (Page page = at(name, 390)) {
      page.locator("button[value=fr]").click();
      page.locator("button[value=metres]").click();
      page.evaluate("document.querySelectorAll('details').forEach(one => { one.open = true; })");
      assertThat(page.locator("html").getAttribute("lang")).isEqualTo("fr");
      assertThat(page.evaluate("document.documentElement.scrollWidth")).isEqualTo(390);
      assertThat(Window.violations(page)).isEmpty();
      page.screenshot(
          new Page.ScreenshotOptions()
              .setFullPage(true)
              .setPath(PICTURES.resolve(name.replace('/', '-') + "-390-french.png")));
    }
  }

  @ParameterizedTest
  @CsvSource({"390", "1366"})
  void aSiteIsBegunFoundAndSwitchedByHand(int width) {
    String address = width + " Weir Walk (invented)";
    try (Page page = at("sites", width)) {
      page.locator("text=New site").click();
      page.locator("#address").fill(address);
      page.locator("#complaint").fill("Smells in the laundry.");
      if (page.locator("#person").count() > 0) {
        page.locator("#person").fill("Kim");
      }
      page.locator("main button[type=submit]").click();
      assertThat(page.locator("h1").textContent()).isEqualTo(address);

      page.locator("nav a >> text=Sites").click();
      page.locator("#q").fill(width + " weir");
      page.locator("form[role=search] button").click();
      assertThat(page.locator("ul.sites li").count()).isEqualTo(1);

      page.locator("button[value=fr]").click();
      assertThat(page.locator("html").getAttribute("lang")).isEqualTo("fr");
      assertThat(page.locator("#q").inputValue()).isEqualTo(width + " weir");
      page.locator("button[value=basement]").click();
      assertThat(page.locator("html").getAttribute("data-light")).isEqualTo("basement");
      assertThat(page.locator("button[value=basement]").getAttribute("aria-pressed"))
          .isEqualTo("true");
    }
  }

  @Test
  void allOfItWorksWithoutScript() {
    try (Page page = window.plain(390, HIGH)) {
      page.navigate(served.address().resolve("/sites/new").toString());
      page.locator("#address").fill("77 Plain Road (invented)");
      page.locator("#person").fill("Kim");
      page.locator("main button[type=submit]").click();
      page.locator("ul.sites a").first().click();
      page.locator("#tickets summary").click();
      page.locator("#number").fill("T-77");
      page.locator("#tickets button").click();

      assertThat(page.locator("#tickets").textContent()).contains("T-77");
      assertThat(page.locator("[data-pad]").isVisible()).isFalse();
    }
  }

  @Test
  void whoAllowsTheWorkSignsOnTheScreen() {
    try (Page page = at("visit", 390)) {
      page.locator("footer .who a").click();
      page.locator("#person").fill("Kim");
      page.locator("main button[type=submit]").click();
      page.locator("#consents summary").click();
      page.locator("#who").fill("The owner (invented)");
      Locator canvas = page.locator("#consents canvas");
      canvas.scrollIntoViewIfNeeded();
      BoundingBox box = canvas.boundingBox();
      page.mouse().move(box.x + 30, box.y + 40);
      page.mouse().down();
      page.mouse().move(box.x + 120, box.y + 80);
      page.mouse().move(box.x + 200, box.y + 30);
      page.mouse().up();
      page.locator("#consents button[type=submit]").click();

      Locator picture = page.locator("#consents img.signature").first();
      assertThat(page.locator("#consents").textContent()).contains("The owner (invented)");
      picture.scrollIntoViewIfNeeded();
      page.waitForCondition(
          () -> picture.evaluate("img => img.complete && img.naturalWidth").equals(800));
    }
  }

  @Test
  void ticksStayInTheBrowser() {
    try (Page page = at("visit", 390)) {
      page.locator("#kit-gas").check();
      page.reload();

      assertThat(page.locator("#kit-gas").isChecked()).isTrue();
      assertThat(page.locator("#kit-dye").isChecked()).isFalse();
    }
  }

  @Test
  void theFocusIsSeenAndGoesAllTheWayByKeyboard() {
    try (Page page = at("sites", 1366)) {
      page.keyboard().press("Tab");
      assertThat(page.evaluate("document.activeElement.className")).isEqualTo("skip");
      page.keyboard().press("Tab");
      page.keyboard().press("Tab");
      page.keyboard().press("Enter");
      page.waitForURL("**/sites/new");
    }
  }

  @ParameterizedTest
  @CsvSource({"sites", "sites/new", "site", "visit"})
  void aPageIsLightEnoughForAPhone(String name) {
    long all =
        List.of(
                path(name),
                "/field/field.css",
                "/field/enter.js",
                "/field/before.js",
                "/assets/mark.svg",
                "/assets/DaylightSans-Regular.woff2",
                "/assets/DaylightSans-Bold.woff2")
            .stream()
            .mapToLong(served::weight)
            .sum();

    assertThat(all).isGreaterThan(20_000).isLessThan(HEAVIEST);
  }

  @Test
  void theModuleEntersAndTellsWhatBecameOfIt() {
    try (Page page = at("site", 390)) {
      page.locator("footer .who a").click();
      page.locator("#person").fill("Kim");
      page.locator("main button[type=submit]").click();
      Object states =
          page.evaluate(
              """
              async () => {
                const { enter, uuid, book, entries } = await import('/field/enter.js');
                const [site] = await entries(book(), 'site');
                const one = { entry: uuid(), parent: site.entry, section: 'nodes', base: 0,
                  keys: { label: 'J9', kind: 'junction' } };
                const bad = { entry: uuid(), parent: site.entry, section: 'nodes', base: 0,
                  keys: { label: 'J8', kind: 'nonsense' } };
                const first = await enter(book(), [one, bad]);
                const second = await enter(book(), [one]);
                return [...first, ...second].map((outcome) => outcome.state).join(' ');
              }
              """);

      assertThat(states).isEqualTo("kept wrong same");
    }
  }
}
