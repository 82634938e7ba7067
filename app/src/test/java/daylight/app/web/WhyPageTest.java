package daylight.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import daylight.app.Job;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** From an answer back to the reading: every link of every demo's pages leads somewhere. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class WhyPageTest {
  private static final int PHONE = 390;
  private static final int LAPTOP = 1366;

  /** A page without its media weighs no more than this, bytes. */
  private static final int MOST = 300_000;

  private final List<String> names = new ArrayList<>();
  private Workspace.Running running;
  private Window window;

  @BeforeAll
  void open(@TempDir Path folder) throws IOException, URISyntaxException {
    // The demos themselves: there is a folder of that name among the tests' own files, too.
    Path sewer =
        Path.of(
            Objects.requireNonNull(Job.class.getResource("/daylight/app/demo/house-sewer.yaml"))
                .toURI());
    Path demos = Objects.requireNonNull(sewer.getParent());
    List<Property> properties = new ArrayList<>();
    try (Stream<Path> files = Files.list(demos)) {
      for (Path file : files.filter(one -> one.toString().endsWith(".yaml")).sorted().toList()) {
        String name = Property.nameOf(file);
        names.add(name);
        properties.add(
            new Property(
                name,
                new Opened(file, Job.Settings.USUAL),
                (book, settings, _) -> Job.answerWithoutFootage(book, settings)));
      }
    }
    names.add("filmed");
    properties.add(Filmed.property("filmed", Filmed.in(folder.resolve("filmed"))));
    running = Workspace.start(properties, 0);
    window = new Window();
  }

  @AfterAll
  void close() {
    window.close();
    running.close();
  }

  List<String> names() {
    return names;
  }

  private Page page(String name, int width) {
    Page page = width == PHONE ? window.phone(width, 844) : window.page(width, 768);
    page.navigate(running.address().resolve("/property/" + name + "/").toString());
    return page;
  }

  /** The page that stands behind the answers. */
  private Page behind(String name, int width) {
    Page page = page(name, width);
    page.locator("#why a.button").click();
    page.waitForURL("**/why");
    return page;
  }

  private static final String LOST =
      """
      async () => {
        const pages = new Map([[location.pathname, document]]);
        const lost = [];
        for (const link of document.querySelectorAll('main a[href*="#"]')) {
          if (link.dataset.media || link.getAttribute('href') === '#') continue;
          const path = link.pathname;
          if (!pages.has(path)) {
            const text = await (await fetch(path)).text();
            pages.set(path, new DOMParser().parseFromString(text, 'text/html'));
          }
          const id = decodeURIComponent(link.hash.slice(1));
          if (!pages.get(path).getElementById(id)) lost.push(link.outerHTML);
        }
        return lost;
      }
      """;

  @ParameterizedTest
  @MethodSource("names")
  void everyLinkLeadsToSomething(String name) {
    both(
        name,
        one -> {
          assertThat((List<?>) one.evaluate(LOST)).isEmpty();
          Object twice =
              one.evaluate(
                  "() => { const ids = [...document.querySelectorAll('[id]')].map((one) => one.id);"
                      + " return ids.filter((id, at) => ids.indexOf(id) !== at); }");
          assertThat((List<?>) twice).isEmpty();
          String places =
              "() => [...document.querySelectorAll('a.to-place')].every((link) =>"
                  + " link.dataset.place && Number.isFinite(Number(link.dataset.distance)))";
          assertThat((Boolean) one.evaluate(places)).isTrue();
          String why = one.url().endsWith("/why") ? ".why .shares a" : "#answers a[href*='/why#']";
          assertThat(one.locator(why).count()).isGreaterThan(5);
        });
    assertThat(window.complained()).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("names")
  void bothPagesWeighLittle(String name) {
    both(
        name,
        one -> {
          String content = one.content().replaceAll("data:image/[^\"]*", "");
          int bytes = content.getBytes(StandardCharsets.UTF_8).length;
          System.out.printf("%s: %d bytes%n", one.url().replaceFirst(".*/property/", ""), bytes);
          assertThat(bytes).isLessThanOrEqualTo(MOST);
        });
  }

  /** Looks at the page of the answers and at the one behind it. */
  private void both(String name, Consumer<Page> look) {
    try (Page page = page(name, LAPTOP);
        Page behind = behind(name, LAPTOP)) {
      look.accept(page);
      look.accept(behind);
    }
  }

  @ParameterizedTest
  @MethodSource("names")
  void foldedOutItBreaksNoRuleAndNeverScrollsSideways(String name) {
    // Each width and each light once: what differs by light does not hang on the width.
    for (ColorScheme scheme : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
      int width = scheme == ColorScheme.LIGHT ? PHONE : LAPTOP;
      try (Page page = behind(name, width)) {
        page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(scheme));
        page.evaluate(
            "() => document.querySelectorAll('details').forEach((one) => { one.open = true; })");
        assertThat((Integer) page.evaluate("() => document.documentElement.scrollWidth"))
            .isLessThanOrEqualTo(width);
        picture(page, name + "-" + width + "-" + scheme.name().toLowerCase(Locale.ROOT));
        assertThat(Window.violations(page)).isEmpty();
      }
    }
  }

  /** Kept where somebody wants to look at them. */
  private static void picture(Page page, String name) {
    String folder = System.getProperty("daylight.pictures");
    if (folder != null) {
      page.screenshot(
          new Page.ScreenshotOptions().setFullPage(true).setPath(Path.of(folder, name + ".png")));
    }
  }

  @Test
  void byKeyboardFromAnAnswerToItsReading() {
    try (Page page = page(names.getFirst(), LAPTOP)) {
      Locator answer = page.locator("#answers details.answer:has(.why)").first();
      answer.locator("> summary").focus();
      page.keyboard().press("Enter");
      Locator why = answer.locator(".why > summary");
      why.focus();
      page.keyboard().press("Enter");
      page.keyboard().press("Tab");
      String to = (String) page.evaluate("() => document.activeElement.hash.slice(1)");
      page.keyboard().press("Enter");
      page.waitForURL("**/why#" + to);
      assertThat(page.locator("[id='" + to + "']").isVisible()).isTrue();
    }
  }

  @Test
  void evidenceLeadsToItsPlaceOnTheDrawings() {
    try (Page page = page("filmed", LAPTOP)) {
      page.locator("[data-cursor=mover]").waitFor();
      page.evaluate(
          "() => document.querySelectorAll('#answers details').forEach((one) => { one.open = true; })");
      Locator link = page.locator("#answers a.to-place").last();
      String before = page.locator("[data-cursor=slider]").inputValue();
      link.click();
      Window.until(
          page, "() => document.querySelector('[data-cursor=slider]').value !== '" + before + "'");
      page.locator("#answers a[data-media]").first().click();
      Window.until(page, "() => document.activeElement.tagName === 'VIDEO'");
      assertThat(window.complained()).isEmpty();
    }
  }
}
