package daylight.app.web;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.PlaywrightException;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** A browser without a screen, and everything it asked for or complained of. */
public final class Window implements AutoCloseable {
  private static final List<String> QUIET =
      List.of(
          "--no-sandbox",
          "--disable-gpu",
          "--disable-quic",
          "--no-first-run",
          "--disable-background-networking",
          "--disable-component-update",
          "--disable-sync");

  private static final int TRIES = 300;
  private static final int PAUSE = 100;

  private final Playwright playwright;
  private final Browser browser;
  private final List<String> asked = new ArrayList<>();
  private final List<String> complained = new ArrayList<>();

  public Window() {
    this(chromium(), List.of());
  }

  /**
   * A browser that is begun by a program of its own.
   *
   * @param more that it is told beside what every browser here is told
   */
  public Window(Path chromium, List<String> more) {
    List<String> told = new ArrayList<>(QUIET);
    told.addAll(more);
    playwright =
        Playwright.create(
            new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
    browser =
        playwright
            .chromium()
            .launch(new BrowserType.LaunchOptions().setExecutablePath(chromium).setArgs(told));
  }

  /** A missing browser is a missing proof, never a test to be passed over. */
  public static Path chromium() {
    return Stream.of("chromium", "chromium-browser")
        .flatMap(
            name ->
                Stream.of(System.getenv("PATH").split(Pattern.quote(File.pathSeparator), -1))
                    .map(folder -> Path.of(folder, name)))
        .filter(Files::isExecutable)
        .findFirst()
        .orElseThrow(
            () ->
                new AssertionError(
                    "these tests look at pages in Chromium, and it is not installed: ./check"
                        + " --install"));
  }

  /** What the page breaks of WCAG 2.2 AA and of good practice, by axe-core. */
  public static List<String> violations(Page page) {
    return new AxeBuilder(page)
            .withTags(
                List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"))
            .analyze()
            .getViolations()
            .stream()
            .map(
                rule ->
                    rule.getId()
                        + ": "
                        + rule.getHelp()
                        + " "
                        + rule.getNodes().stream().limit(3).map(node -> node.getHtml()).toList())
            .toList();
  }

  /** An empty page of that size. */
  public Page page(int width, int height) {
    return watched(browser.newPage(new Browser.NewPageOptions().setViewportSize(width, height)));
  }

  /** The same on a telephone, which is touched. */
  public Page phone(int width, int height) {
    return watched(
        browser.newPage(
            new Browser.NewPageOptions().setViewportSize(width, height).setHasTouch(true)));
  }

  private Page watched(Page page) {
    page.onRequest(request -> asked.add(request.url()));
    page.onConsoleMessage(
        message -> {
          if (List.of("error", "warning").contains(message.type())) {
            complained.add(message.text());
          }
        });
    page.onPageError(complained::add);
    return page;
  }

  /** The same in a browser that runs no scripts. */
  public Page plain(int width, int height) {
    return browser.newPage(
        new Browser.NewPageOptions().setViewportSize(width, height).setJavaScriptEnabled(false));
  }

  /** Every address that any page asked for. */
  public List<String> asked() {
    return List.copyOf(asked);
  }

  /**
   * Waits until something holds on a page. Playwright's own waiting evaluates text within the page
   * whenever the first look finds it not to hold, which pages without inline script forbid.
   */
  public static void until(Page page, String holds) {
    PlaywrightException last = null;
    for (int tries = 0; tries < TRIES; tries++) {
      try {
        if (Boolean.TRUE.equals(page.evaluate(holds))) {
          return;
        }
      } catch (PlaywrightException left) {
        // A page that is being left for the next one answers nothing.
        last = left;
      }
      page.waitForTimeout(PAUSE);
    }
    throw new AssertionError("never came to hold: " + holds, last);
  }

  /** What the browser had to say against the pages. */
  public List<String> complained() {
    return List.copyOf(complained);
  }

  @Override
  public void close() {
    browser.close();
    playwright.close();
  }
}
