package daylight.app.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.google.gson.JsonObject;
import com.microsoft.playwright.CDPSession;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.ColorScheme;
import daylight.app.Job;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One cursor through plan, profile, strip and footage. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class LineTest {
  private static final int PHONE = 390;
  private static final int LAPTOP = 1366;
  private static final int HIGH = 768;

  /** Whatever makes a browser lay out a page before it would have done so by itself. */
  private static final String COUNT_READS =
      """
      () => {
        window.reads = [];
        const count = (of, name) => {
          const was = Object.getOwnPropertyDescriptor(of, name);
          const note = () => window.counting && window.reads.push(name);
          Object.defineProperty(of, name, was.get
            ? { ...was, get() { note(); return was.get.call(this); } }
            : { ...was, value(...given) { note(); return was.value.apply(this, given); } });
        };
        for (const name of ['getBoundingClientRect', 'getClientRects', 'clientWidth', 'clientHeight',
          'scrollLeft', 'scrollTop', 'scrollWidth', 'scrollHeight', 'scrollIntoView', 'scrollTo'])
          count(Element.prototype, name);
        for (const name of ['offsetWidth', 'offsetHeight', 'offsetLeft', 'offsetTop', 'innerText'])
          count(HTMLElement.prototype, name);
        for (const name of ['getBBox', 'getScreenCTM', 'getCTM']) count(SVGGraphicsElement.prototype, name);
        for (const name of ['offsetX', 'offsetY']) count(MouseEvent.prototype, name);
        const styles = window.getComputedStyle;
        window.getComputedStyle = (...given) => {
          if (window.counting) window.reads.push('getComputedStyle');
          return styles(...given);
        };
      }
      """;

  private Workspace.Running running;
  private Window window;

  @BeforeAll
  void open(@TempDir Path folder) throws IOException {
    Path book = Filmed.counted(folder.resolve("filmed"));
    Path empty = folder.resolve("empty.yaml");
    Files.writeString(
        empty,
        """
        daylight-book: 1
        units: {distance: ft, depth: ft, bore: in, level: ft}
        site: {name: A yard of which nothing is known, invented: yes}
        visit: {date: 2026-05-02, complaint: Where does it go?}
        """);
    running =
        Workspace.start(
            List.of(
                Filmed.property("filmed", book),
                new Property("empty", new Opened(empty, Job.Settings.USUAL), Job::answer)),
            0);
    window = new Window();
  }

  @AfterAll
  void close() {
    window.close();
    running.close();
  }

  private Page page(int width) {
    Page page = width == PHONE ? window.phone(width, 844) : window.page(width, HIGH);
    return opened(page);
  }

  private Page opened(Page page) {
    page.navigate(running.address().resolve("/property/filmed/").toString());
    page.locator("[data-cursor=mover]").waitFor();
    page.evaluate("document.documentElement.style.scrollBehavior = 'auto'");
    return page;
  }

  private static int row(Page page) {
    return Integer.parseInt(page.locator("[data-cursor=slider]").inputValue());
  }

  private static String told(Page page, String what) {
    return String.valueOf(page.locator("[data-cursor=" + what + "]").textContent());
  }

  /** Where the table says that a row lies on a drawing, and where its cursor is. */
  private static boolean agrees(Page page, String drawing) {
    return (boolean)
        page.evaluate(
            """
            (drawing) => {
              const table = JSON.parse(document.querySelector('#line').dataset.table)[drawing];
              const row = Number(document.querySelector('[data-cursor=slider]').value);
              const knob = document.querySelector(`#${drawing} .knob`);
              const at = row - table.first;
              const of = (name) => (table[name].length === 1 ? table[name][0] : table[name][at]);
              return at < 0 || at >= table.rows || of('x') === null
                ? knob.parentNode.getAttribute('visibility') === 'hidden'
                : Number(knob.getAttribute('cx')) === of('x') && Number(knob.getAttribute('cy')) === of('y');
            }
            """,
            drawing);
  }

  @Test
  void allViewsFollowInOneFrameWithoutRequestOrLayoutRead() {
    try (Page page = page(LAPTOP)) {
      page.evaluate(COUNT_READS);
      page.locator("#plan").scrollIntoViewIfNeeded();
      BoundingBox box = page.locator("#plan svg").boundingBox();
      page.mouse().move(box.x + box.width * 0.3, box.y + box.height * 0.5);
      page.waitForTimeout(300);
      int asked = window.asked().size();

      @SuppressWarnings("unchecked")
      Map<String, Object> seen =
          (Map<String, Object>)
              page.evaluate(
                  """
                  async () => {
                    const drawing = document.querySelector('#plan .drawing');
                    const sheet = drawing.querySelector('svg');
                    const rect = sheet.getBoundingClientRect();
                    const table = JSON.parse(document.querySelector('#line').dataset.table);
                    const slider = document.querySelector('[data-cursor=slider]');
                    const knob = (id) => Number(document.querySelector(`#${id} .knob`).getAttribute('cx'));
                    const film = document.querySelector('video');
                    let late = 0;
                    let wrong = 0;
                    let moved = 0;
                    for (let row = 0; row <= table.routes[0].to; row += 2) {
                      const before = slider.value;
                      window.counting = true;
                      drawing.dispatchEvent(new PointerEvent('pointermove', {
                        bubbles: true, pointerType: 'mouse',
                        clientX: rect.left + table.plan.x[row] * rect.width / 792,
                        clientY: rect.top + table.plan.y[row] * rect.width / 792 }));
                      const kept = slider.value;
                      await new Promise(requestAnimationFrame);
                      window.counting = false;
                      const now = Number(slider.value);
                      if (kept !== before) late++;
                      if (Math.abs(now - row) > 1) wrong++;
                      if (knob('plan') !== table.plan.x[now] || knob('profile') !== table.profile.x[now]
                        || knob('strip') !== table.strip.x[now]) late++;
                      moved++;
                    }
                    return { late, wrong, moved, reads: window.reads, film: film.currentTime };
                  }
                  """);

      assertThat(seen.get("moved")).isEqualTo(51);
      assertThat(seen.get("late")).isEqualTo(0);
      assertThat(seen.get("wrong")).isEqualTo(0);
      assertThat((List<?>) seen.get("reads")).isEmpty();
      assertThat(window.asked().subList(asked, window.asked().size()))
          .as("requests other than of the recording itself")
          .allMatch(url -> url.contains("/media/"));
    }
  }

  @Test
  void theRecordingFollowsTheCursorAndLeadsItWhilePlaying() {
    try (Page page = page(LAPTOP)) {
      Locator slider = page.locator("[data-cursor=slider]");
      slider.fill("50");
      Window.until(page, "document.querySelector('video').currentTime > 1");
      Window.until(page, "!document.querySelector('video').seeking");
      double there = seconds(page);
      // The counter ran evenly, a little more than the pipe: half way is half the time.
      assertThat(there).isEqualTo(7.9 * 50 / 100, within(0.35));

      page.evaluate(
          "() => { const film = document.querySelector('video'); film.currentTime = 1; film.play(); }");
      Window.until(page, "document.querySelector('video').currentTime > 2.5");
      page.evaluate("document.querySelector('video').pause()");
      Window.until(page, "document.querySelector('video').paused");
      page.waitForTimeout(200);
      double now = seconds(page);
      assertThat(row(page)).isCloseTo((int) Math.round(now / 7.9 * 100), within(4));
      assertThat(List.of("plan", "profile", "strip")).allMatch(one -> agrees(page, one));

      page.evaluate("document.querySelector('video').currentTime = 6");
      Window.until(page, "Number(document.querySelector('[data-cursor=slider]').value) > 65");
      assertThat(row(page)).isCloseTo((int) Math.round(6 / 7.9 * 100), within(4));
    }
  }

  private static double seconds(Page page) {
    return ((Number) page.locator("video").evaluate("video => video.currentTime")).doubleValue();
  }

  @Test
  void whatWasSeenTakesTheCursorToItsPlaceAndHoldsItThere() {
    try (Page page = page(LAPTOP)) {
      page.locator("#findings tr:has-text('Roots') td").last().click();
      Window.until(
          page, "document.querySelector('[data-cursor=there]').textContent.includes('Roots')");
      assertThat(told(page, "held")).contains("press again");
      String where = told(page, "where");
      assertThat(page.locator("#findings tr:has-text('Roots')").textContent()).contains(where);

      BoundingBox box = page.locator("#profile svg").boundingBox();
      page.mouse().move(box.x + box.width * 0.5, box.y + box.height * 0.5);
      page.waitForTimeout(200);
      assertThat(told(page, "where")).isEqualTo(where);

      page.locator("[data-cursor=next]").focus();
      page.keyboard().press("Escape");
      Window.until(page, "document.querySelector('[data-cursor=held]').textContent === ''");

      page.locator("#plan .known").first().click();
      Window.until(page, "document.querySelector('[data-cursor=held]').textContent !== ''");
      assertThat(told(page, "there")).isNotEmpty();
    }
  }

  @Test
  void everythingGoesByKeyboard() {
    try (Page page = page(LAPTOP)) {
      Locator slider = page.locator("[data-cursor=slider]");
      slider.focus();
      page.keyboard().press("End");
      page.waitForTimeout(100);
      int last = row(page);
      page.keyboard().press("Home");
      page.keyboard().press("ArrowRight");
      page.waitForTimeout(100);
      assertThat(row(page)).isEqualTo(1);
      assertThat(last).isGreaterThan(100);
      assertThat(slider.getAttribute("aria-valuetext")).contains("±").contains("clear");

      page.locator("[data-cursor=next]").focus();
      page.keyboard().press("Enter");
      page.waitForTimeout(100);
      assertThat(told(page, "there")).contains("L1, found from the ground");
      page.locator("[data-cursor=before]").press("Enter");
      page.waitForTimeout(100);
      assertThat(told(page, "there")).contains("C1");

      Locator drawing = page.locator("#plan .drawing");
      drawing.focus();
      double small = page.locator("#plan svg").boundingBox().width;
      page.keyboard().press("+");
      page.keyboard().press("+");
      assertThat(page.locator("#plan svg").boundingBox().width)
          .isEqualTo(small * 2.25, within(20.0));
      page.keyboard().press("0");
      assertThat(page.locator("#plan svg").boundingBox().width).isEqualTo(small, within(1.0));
      assertThat(page.evaluate("document.documentElement.scrollWidth")).isEqualTo(LAPTOP);
    }
  }

  @Test
  void twoFingersMakeItLargerAndOneDragsIt() {
    try (Page page = page(PHONE)) {
      page.evaluate("document.querySelector('#plan').scrollIntoView()");
      BoundingBox box = page.locator("#plan .drawing").boundingBox();
      double before = page.locator("#plan svg").boundingBox().width;
      CDPSession hand = page.context().newCDPSession(page);
      double x = box.x + box.width / 2;
      double y = box.y + 200;
      touch(hand, "touchStart", x - 30, y, x + 30, y);
      for (int step = 1; step <= 6; step++) {
        touch(hand, "touchMove", x - 30 - 10 * step, y, x + 30 + 10 * step, y);
      }
      touch(hand, "touchEnd");
      double larger = page.locator("#plan svg").boundingBox().width;
      assertThat(larger).isGreaterThan(before * 2);
      assertThat(page.evaluate("document.documentElement.scrollWidth"))
          .as("the page itself stays as it is")
          .isEqualTo(PHONE);

      Number left = (Number) page.locator("#plan .drawing").evaluate("box => box.scrollLeft");
      touch(hand, "touchStart", x + 100, y);
      for (int step = 1; step <= 8; step++) {
        touch(hand, "touchMove", x + 100 - 20 * step, y);
      }
      touch(hand, "touchEnd");
      page.waitForTimeout(500);
      Number then = (Number) page.locator("#plan .drawing").evaluate("box => box.scrollLeft");
      assertThat(then.doubleValue()).isGreaterThan(left.doubleValue() + 50);
    }
  }

  private static void touch(CDPSession hand, String type, double... points) {
    JsonObject told = new JsonObject();
    told.addProperty("type", type);
    com.google.gson.JsonArray fingers = new com.google.gson.JsonArray();
    for (int i = 0; i < points.length; i += 2) {
      JsonObject finger = new JsonObject();
      finger.addProperty("x", points[i]);
      finger.addProperty("y", points[i + 1]);
      finger.addProperty("id", i / 2);
      fingers.add(finger);
    }
    told.add("touchPoints", fingers);
    hand.send("Input.dispatchTouchEvent", told);
  }

  @Test
  void aFingerPutsTheCursorWhereItPresses() {
    try (Page page = page(PHONE)) {
      page.evaluate("document.querySelector('#strip').scrollIntoView()");
      page.locator("#strip [data-place]").nth(3).dispatchEvent("click");
      Window.until(page, "document.querySelector('[data-cursor=there]').children.length > 0");
      assertThat(page.locator("[data-cursor=short]").isVisible()).isTrue();
      assertThat(agrees(page, "plan")).isTrue();
      assertThat(agrees(page, "profile")).isTrue();
    }
  }

  @Test
  void theLineReadsAsATableInTheOrderInWhichTheWaterRuns() {
    try (Page page = window.plain(LAPTOP, HIGH)) {
      page.navigate(running.address().resolve("/property/filmed/").toString());
      Locator tables = page.locator("#line table.along");
      assertThat(tables.count()).as("a table for each way").isEqualTo(2);
      List<String> rows = tables.first().locator("tbody tr").allTextContents();

      assertThat(rows.size()).isGreaterThan(28);
      assertThat(rows.getFirst()).contains("0\"").contains("C1 cleanout by the shop door");
      assertThat(rows.getLast()).contains("O1 pipe end at the ditch");
      String all = String.join("\n", rows);
      assertThat(all.indexOf("F1 Joint out of line"))
          .isPositive()
          .isLessThan(all.indexOf("F2 Roots"));
      assertThat(all.indexOf("L3, found from the ground"))
          .isGreaterThan(all.indexOf("L2, found from the ground"));
      assertThat(all).contains("F5 Standing water").contains("end of F5 Standing water");
      List<Double> distances =
          tables.first().locator("a").all().stream()
              .filter(link -> "R1".equals(link.getAttribute("data-place")))
              .map(link -> Double.valueOf(link.getAttribute("data-distance")))
              .toList();
      assertThat(distances).isSorted();
    }
  }

  @Test
  void aRowOfThatTableMovesTheCursor() {
    try (Page page = page(LAPTOP)) {
      page.locator(".as-table summary").click();
      Locator link = page.locator("tr:has-text('O1 pipe end') a.to-place").first();
      link.click();
      Window.until(
          page, "document.querySelector('[data-cursor=there]').textContent.includes('O1')");
      assertThat(told(page, "where")).isEqualTo(link.textContent());
      assertThat(agrees(page, "strip")).isTrue();
    }
  }

  @ParameterizedTest
  @CsvSource({"390, LIGHT", "390, DARK", "1366, LIGHT", "1366, DARK"})
  void everybodyCanReadIt(int width, ColorScheme light) {
    try (Page page = page(width)) {
      page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(light));
      page.evaluate("document.querySelectorAll('details').forEach(one => { one.open = true; })");
      page.locator("[data-cursor=next]").click();
      assertThat(page.evaluate("document.documentElement.scrollWidth")).isEqualTo(width);
      assertThat(Window.violations(page)).isEmpty();
    }
  }

  @Test
  void thePlanLiesNorthUpOrAlongTheLineAsItIsAskedFor() {
    try (Page page = page(LAPTOP)) {
      page.locator("#plan .turns a:has-text('North up')").click();
      page.locator("#plan svg >> text=grid north is up").waitFor();
      page.locator("#plan .turns a:has-text('Along the drain')").click();
      page.locator("#plan svg >> text=the arrow points to grid north").waitFor();

      assertThat(page.locator("#plan .turns [aria-current]").textContent())
          .isEqualTo("Along the drain");
      page.locator("[data-cursor=slider]").fill("50");
      Window.until(page, "document.querySelector('[data-cursor=where]').textContent !== ''");
      assertThat(agrees(page, "plan")).isTrue();
    }
  }

  @Test
  void aLineOfWhichNothingIsKnownHasDrawingsAndNoCursor() {
    try (Page page = window.page(LAPTOP, HIGH)) {
      page.navigate(running.address().resolve("/property/empty/").toString());
      assertThat(page.locator("#plan svg").isVisible()).isTrue();
      assertThat(page.locator("[data-cursor=mover]").count()).isZero();
      assertThat(window.complained()).isEmpty();
    }
  }
}
