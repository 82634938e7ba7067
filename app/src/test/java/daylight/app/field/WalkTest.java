package daylight.app.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.WaitForSelectorState;
import daylight.app.web.Light;
import daylight.app.web.Window;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The walk with a phone: 390 by 844, by taps. */
class WalkTest {
  private static final double FOOT = 0.3048;
  private static final JsonMapper JSON = new JsonMapper();
  private static final Path PICTURES = Path.of("target/field-pages");
  private static final int WIDE = 390;
  private static final int HIGH = 844;
  private static final double GLOVE = 56;

  @TempDir private Path folder = Path.of("");
  private Served served;
  private Window window;
  private UUID book = new UUID(0, 0);
  private String walk = "";
  private int taps;

  @BeforeEach
  void open() throws IOException {
    served = new Served(folder.resolve("archive"));
    window = new Window();
    book = served.site("14 Elder Row (invented)", "It backs up.");
    walk = Archived.lastVisit(served, "/site/" + book) + "/walk";
    Files.createDirectories(PICTURES);
  }

  @AfterEach
  void close() {
    window.close();
    served.close();
  }

  private Page phone() {
    Page page = window.phone(WIDE, HIGH);
    page.navigate(served.address().resolve("/who").toString());
    page.locator("#person").fill("Kim");
    page.locator("main button[type=submit]").click();
    page.navigate(served.address().resolve(walk).toString());
    page.locator("#over").waitFor();
    return page;
  }

  private void tap(Page page, String what) {
    page.locator(what).tap();
    taps++;
  }

  /** A number by the keypad, the field tapped first. */
  private void number(Page page, String field, String digits) {
    tap(page, "#w-" + field);
    page.keyboard().type(digits);
  }

  private void locate(Page page, int number) {
    tap(page, "#over");
    number(page, "cable", Integer.toString(10 + 5 * number));
    number(page, "along", "8");
    number(page, "out", Integer.toString(4 + 5 * number));
    number(page, "depth", "3");
    tap(page, "#keep");
    page.locator("#locate")
        .waitFor(new Locator.WaitForOptions().setState(WaitForSelectorState.HIDDEN));
  }

  private List<BookNow.Row> locates() {
    return BookNow.of(served.archive(), book).orElseThrow().in("locates").toList();
  }

  private static void kept(Page page) {
    page.locator("#reach.kept").waitFor();
  }

  @Test
  void aSpotAlongAndOutTakesNoMoreThanEightTapsAndItsNumbers() {
    try (Page page = phone()) {
      locate(page, 1);
      kept(page);

      assertThat(taps).isEqualTo(6).isLessThanOrEqualTo(8);
      BookNow.Row row = locates().getFirst();
      assertThat(row.text("label")).contains("L1");
      assertThat(row.text("cable")).contains("15 ft");
      assertThat(row.text("along")).contains("8 ft");
      assertThat(row.text("out")).contains("9 ft");
      assertThat(row.text("depth")).contains("3 ft");
      assertThat(row.text("time")).isPresent();
      assertThat(BookNow.of(served.archive(), book).orElseThrow().in("landmarks"))
          .as("the wall at one's back has two ends that stay its ends")
          .extracting(BookNow.Row::label)
          .containsExactly("A", "B");
    }
  }

  @Test
  void tenSpotsOutOfReachAreTenAfterwardsEvenWhenThePageWasLoadedAgainTwice() {
    try (Page page = phone()) {
      kept(page);
      Window.until(page, "navigator.serviceWorker.controller !== null");
      Window.until(page, "async () => (await caches.match(location.href)) !== undefined");
      BrowserContext context = page.context();
      context.setOffline(true);
      for (int i = 1; i <= 10; i++) {
        locate(page, i);
        if (i == 4 || i == 8) {
          page.reload();
          page.locator("#over").waitFor();
        }
      }
      assertThat(locates()).isEmpty();
      assertThat(page.locator("#reach").textContent()).contains("Out of reach");
      context.setOffline(false);
      kept(page);

      assertThat(locates())
          .extracting(row -> row.text("cable").orElse(""))
          .containsExactly(
              "15 ft", "20 ft", "25 ft", "30 ft", "35 ft", "40 ft", "45 ft", "50 ft", "55 ft",
              "60 ft");
      assertThat(labels()).hasSize(10);
    }
  }

  /**
   * Feet with inches below nought: 6 ft 6 in are 1.9812 m, as the inch is 25.4 mm (by definition).
   */
  @Test
  void aSpotBehindTheWallIsReadWithItsInches() throws IOException {
    try (Page page = phone()) {
      tap(page, "#over");
      number(page, "cable", "15");
      number(page, "along", "8");
      tap(page, ".length[data-key=out] .sign");
      number(page, "out", "6");
      number(page, "out-inches", "6");
      tap(page, "#keep");
      kept(page);

      assertThat(locates().getFirst().text("out")).contains("-6' 6\"");
      lies("L1", 1.9812, 8 * FOOT);
    }
  }

  /**
   * A rectangle: its corners lie where its sides say, the house behind the wall. Its letters are
   * those by which nothing else is usually called: C is an access point.
   */
  @Test
  void aHouseIsDrawnByTwoOfItsSidesAndASpotByATouchOnItsSketch() throws IOException {
    try (Page page = phone()) {
      page.evaluate("document.querySelectorAll('details').forEach(one => { one.open = true; })");
      page.locator("#w-house-front").fill("40");
      page.locator("#w-house-side").fill("25");
      tap(page, "#house-form > button");
      page.locator("#points li").nth(3).waitFor();
      kept(page);
      locate(page, 1);
      kept(page);
      page.locator("#drawing svg >> text=E").first().waitFor();

      lies("B", 0, 40 * FOOT);
      lies("D", 25 * FOOT, 40 * FOOT);
      lies("E", 25 * FOOT, 0);

      tap(page, "#over");
      number(page, "cable", "20");
      tap(page, "#drop");
      tap(page, "#drawing");
      page.locator("#drop-told:not(:empty)").waitFor();
      tap(page, "#keep");
      page.locator("#locate")
          .waitFor(new Locator.WaitForOptions().setState(WaitForSelectorState.HIDDEN));
      kept(page);
      assertThat(locates().getLast().text("sketch", "east")).isPresent();
      assertThat(served.archive().book(book).orElseThrow().complaints()).isEmpty();
    }
  }

  /** Where the whole record puts a point, metres east and north. */
  private void lies(String label, double east, double north) throws IOException {
    JsonNode fit = JSON.readTree(served.get(walk + "/fit").body());
    JsonNode point =
        StreamSupport.stream(fit.get("points").spliterator(), false)
            .filter(one -> one.get("label").asText().equals(label))
            .findFirst()
            .orElseThrow(() -> new AssertionError(fit.toString()));
    assertThat(point.get("x").asDouble()).as(label).isCloseTo(east, within(0.0005));
    assertThat(point.get("y").asDouble()).as(label).isCloseTo(north, within(0.0005));
  }

  private Set<String> labels() {
    return locates().stream().map(BookNow.Row::label).collect(Collectors.toSet());
  }

  @Test
  void twoPhonesAtOnceLoseNothingAndSayWhichSpotGotAnotherName() {
    try (Page one = phone();
        Page other = phone()) {
      kept(one);
      kept(other);
      one.context().setOffline(true);
      other.context().setOffline(true);
      locate(one, 1);
      locate(other, 2);
      locate(one, 3);
      one.context().setOffline(false);
      kept(one);
      other.context().setOffline(false);
      // Both named the two ends of the wall at their back; whether they are the same is asked.
      for (int i = 0; i < 2; i++) {
        other.locator("[data-act='taken.same']").first().click();
      }
      kept(other);

      assertThat(locates()).hasSize(3);
      assertThat(labels()).containsExactlyInAnyOrder("L1", "L2", "L3");
      assertThat(other.locator("main").textContent()).contains("was taken by another phone");
    }
  }

  @Test
  void whatTwoChangedIsShownInBothStatesAndChosen() {
    try (Page one = phone();
        Page other = phone()) {
      locate(one, 1);
      kept(one);
      other.reload();
      other.locator("#spots button").waitFor();
      kept(other);
      other.context().setOffline(true);
      change(other, "4");
      change(one, "5");
      // That all is kept may still be said of what was there before.
      one.waitForCondition(() -> stands("5 ft"));
      kept(one);
      other.context().setOffline(false);
      Locator clash = other.locator("[data-clash]");
      clash.waitFor();
      assertThat(clash.textContent()).contains("4 ft").contains("5 ft");
      assertThat(locates().getFirst().text("depth")).contains("5 ft");
      clash.locator("[data-act='clash.keep_mine']").click();
      other.waitForCondition(() -> stands("4 ft"));
      kept(other);

      assertThat(locates().getFirst().text("depth")).contains("4 ft");
      assertThat(served.archive().history(book, locates().getFirst().entry()))
          .as("both states stay in its history")
          .hasSizeGreaterThanOrEqualTo(4);
    }
  }

  private boolean stands(String depth) {
    return locates().getFirst().text("depth").filter(depth::equals).isPresent();
  }

  private static void change(Page page, String depth) {
    page.locator("#spots button").first().click();
    page.locator("#w-depth").fill(depth);
    page.locator("#keep").click();
  }

  @Test
  void theAnswerComesFromTheWholeRecordAndNamesWhatCannotBe() {
    try (Page page = phone()) {
      for (int i = 1; i <= 4; i++) {
        locate(page, i);
      }
      // The third is ten feet beside the others.
      page.locator("#spots li").nth(1).locator("button").click();
      page.locator("#w-along").fill("18");
      page.locator("#keep").click();
      page.locator("#spots .off").first().waitFor();

      assertThat(page.locator("#spots").textContent()).contains("within").contains("95 %");
      assertThat(page.locator("#doubts").textContent()).contains("L3");
      assertThat(page.locator("#next li").count()).isPositive();
    }
  }

  @Test
  void outOfReachOnlyArithmeticIsChecked() {
    try (Page page = phone()) {
      page.locator("#house summary").click();
      page.locator("#w-house-front").fill("40");
      page.locator("#w-house-side").fill("25");
      page.locator("#house-form button[type=submit], #house-form button.button").last().click();
      page.locator("#points li").nth(3).waitFor();
      kept(page);
      page.context().setOffline(true);
      tap(page, "#over");
      page.locator("#tapes summary").click();
      page.locator("#w-tie-A").fill("5");
      page.locator("#w-tie-B").fill("10");
      page.locator("#w-depth").fill("80");
      page.locator("#w-depth").blur();

      page.locator("#checks >> text=That tie cannot be").waitFor();
      assertThat(page.locator("#checks").textContent()).contains("A and B").contains("33 ft");
      assertThat(page.locator("#answer-state").textContent()).contains("on return");
    }
  }

  @Test
  void aPageThatIsNotSecureSaysNotToLoadItAgain() {
    try (Page page = phone()) {
      assertThat(page.locator("#insecure").isVisible()).isFalse();
      page.addInitScript("Object.defineProperty(window, 'isSecureContext', { value: false })");
      page.reload();
      page.locator("#insecure").waitFor();
      assertThat(page.locator("#insecure").textContent()).contains("do not load it again");
      tap(page, "#over");
      page.locator("#locate").waitFor();
      assertThat(page.locator("#gnss").isDisabled()).isTrue();
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {WIDE, 1366})
  void everybodyCanReadItAndPressItWithGloves(int width) {
    try (Page page = phone()) {
      locate(page, 1);
      locate(page, 2);
      kept(page);
      page.setViewportSize(width, HIGH);
      for (Light light : Light.values()) {
        page.locator("button[value=" + light.code() + "]").click();
        page.locator("#spots button").first().click();
        page.evaluate("document.querySelectorAll('details').forEach(one => { one.open = true; })");
        assertThat(page.evaluate("document.documentElement.scrollWidth")).isEqualTo(width);
        assertThat(Window.violations(page)).as(light.code()).isEmpty();
        page.screenshot(
            new Page.ScreenshotOptions()
                .setFullPage(true)
                .setPath(PICTURES.resolve("walk-" + width + "-" + light.code() + ".png")));
      }
      for (Locator one :
          page.locator(
                  "#walk :is(button, summary, select, .chips label, input:not([type=radio])):visible")
              .all()) {
        BoundingBox box = one.boundingBox();
        assertThat(box.height)
            .as(one.evaluate("one => one.outerHTML").toString())
            .isGreaterThanOrEqualTo(GLOVE);
      }
    }
  }

  @Test
  void whatIsHostileIsShownAsTextAndNothingElseHasAnAddress() throws IOException {
    String script = "<script>alert(1)</script>\"'><img src=x onerror=alert(2)>";
    try (Page page = phone()) {
      page.onDialog(dialog -> assertThat(dialog.message()).as("no script runs").isNull());
      page.locator("#over").click();
      page.locator("label[for=w-surface-other]").first().click();
      page.locator("#more summary").click();
      page.locator("#w-remark").fill(script);
      page.locator("#keep").click();
      kept(page);
      assertThat(locates().getFirst().text("remark")).contains(script);
      assertThat(page.locator("#walk script, #walk img").count()).isZero();
    }
    for (String path :
        List.of(
            "/site/nobody/walk-worker.js",
            "/site/" + book + "/visit/" + book + "/walk",
            "/site/" + book + "/visit/../../etc/walk/fit",
            "/site/" + UUID.randomUUID() + "/visit/" + UUID.randomUUID() + "/walk/fit")) {
      assertThat(served.get(path).statusCode()).as(path).isBetween(400, 499);
    }
    JsonNode fit = JSON.readTree(served.get(walk + "/fit").body());
    assertThat(fit.get("state").asText()).isIn("fitted", "refused");
    assertThat(served.post(walk, "text/plain", "x").statusCode()).isEqualTo(403);
  }
}
