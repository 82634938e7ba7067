package daylight.app.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.WaitForSelectorState;
import daylight.app.CountedFilm;
import daylight.app.Job;
import daylight.app.OwnCache;
import daylight.app.track.Tracked;
import daylight.app.web.Window;
import daylight.archive.Sha256;
import daylight.archive.store.By;
import daylight.archive.store.Entered;
import daylight.archive.store.Entering;
import daylight.footage.Make;
import daylight.line.counter.Track;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** A push gone through with its recording: an invented one of twenty seconds, its counter in it. */
class PushFilmTest {
  private static final double FOOT = 0.3048;
  private static final Path PICTURES = Path.of("target/field-pages");

  @RegisterExtension final OwnCache cache = new OwnCache();

  @TempDir private Path folder = Path.of("");
  private Served served;
  private Window window;
  private UUID book = new UUID(0, 0);
  private Path film = Path.of("");

  @BeforeEach
  void open() throws IOException {
    served = new Served(folder.resolve("archive"));
    window = new Window();
    book = served.site("9 Sluice Walk (invented)", "It backs up.");
    film = CountedFilm.write(folder.resolve("push.webm"), Make.VP8_WEBM);
    Files.createDirectories(PICTURES);
  }

  @AfterEach
  void close() {
    window.close();
    served.close();
  }

  private List<BookNow.Row> rows(String section) {
    return BookNow.of(served.archive(), book).orElseThrow().in(section).toList();
  }

  private Page pushed(int width, int height) {
    Page page = window.page(width, height);
    BookNow now = BookNow.of(served.archive(), book).orElseThrow();
    page.navigate(
        served
            .address()
            .resolve(VisitPages.address(book, now.visits().getFirst().entry()) + "/push")
            .toString());
    page.locator("#what").fill("cleanout in the floor");
    page.locator("main button[type=submit]").click();
    page.locator("#person").fill("Kim");
    page.locator("main button[type=submit]").click();
    page.waitForSelector("[data-ready]");
    return page;
  }

  /** Puts the recording beside the book, as whoever keeps a book does. */
  private void kept() throws IOException {
    By by = new By("Kim", "laptop", Instant.parse("2026-11-27T10:00:00Z"));
    Sha256 content = served.archive().media().take(film);
    served.archive().nameMedia(book, "push.webm", content, by);
    BookNow.Row pass = rows("passes").getFirst();
    UUID media = UUID.randomUUID();
    String keys =
        "{id: %s, label: M1, kind: footage, file: push.webm, sha256: %s, pass: %s}"
            .formatted(media, content.hex(), pass.label());
    List<Entering> came =
        served
            .archive()
            .enter(book, List.of(new Entered(media, pass.parent(), "media", 0, keys)), by);
    assertThat(came).containsExactly(new Entering.Kept(1));
  }

  private static void moment(Page page, double seconds) {
    page.locator("#film-shown")
        .evaluate("(video, to) => { video.pause(); video.currentTime = to; }", seconds);
    Window.until(
        page,
        "!document.querySelector('#film-shown').seeking"
            + " && Math.abs(document.querySelector('#film-shown').currentTime - "
            + seconds
            + ") < 0.06");
  }

  @Test
  void keysTakeTheMomentShownAndItsDistanceAndWhatWasLeftIsOfferedOneByOne() throws IOException {
    try (Page page = pushed(1366, 768)) {
      kept();
      page.locator("[data-act=start]").click();
      page.waitForSelector("#told.kept");
      // The clock goes on while the camera does.
      page.waitForTimeout(4000);
      page.locator("[data-act=later]").click();
      page.locator("[data-kind=grease]").click();
      page.locator("[data-act=later]").click();
      page.waitForSelector("#told.kept");

      page.locator("#film > summary").click();
      page.locator("#film-which option[value=M1]").waitFor(attached());
      page.locator("#film-which").selectOption("M1");
      page.locator("#film-told >> text=not read yet").waitFor();
      Window.until(page, "document.querySelector('#film-shown').readyState > 1");
      moment(page, 5);
      page.locator("[data-kind=roots]").click();
      page.locator("#rows >> text=M1 at 0:05").waitFor();
      page.waitForSelector("#told.kept");
      assertThat(only().text("moment", "media")).contains("M1");
      assertThat(only().text("moment", "at")).contains("5 s");

      page.locator("#film-read").click();
      page.locator("#film-told >> text=the distance follows").waitFor();
      page.locator("#rows >> text=3 ft (M1 at 0:05)").waitFor();
      assertThat(page.locator("#distance").inputValue())
          .as("six feet in six seconds")
          .isEqualTo("3");
      page.screenshot(
          new Page.ScreenshotOptions()
              .setFullPage(true)
              .setPath(PICTURES.resolve("push-film-1366.png")));
      assertThat(Window.violations(page)).isEmpty();

      assertThat(rows("findings")).as("nothing is placed by itself").hasSize(1);
      page.locator("#film-go").click();
      page.locator("#film-take:enabled").click();
      page.locator("#film-later").waitFor(hidden());
      page.waitForSelector("#told.kept");
      BookNow.Row taken = rows("findings").getLast();
      assertThat(taken.text("kind")).contains("grease");
      assertThat(Double.parseDouble(taken.text("moment", "at").orElseThrow().replace(" s", "")))
          .isBetween(3.0, 8.0);
      assertThat(rows("passes").getFirst().text("remark")).isEmpty();
      assertThat(served.archive().book(book).orElseThrow().complaints()).isEmpty();
    }
    Tracked tracked = Job.tracks(served.archive(), book, null).orElseThrow();
    Track.Between there = tracked.of("P1", "M1").orElseThrow().counterAt(5).orElseThrow();
    assertThat(there.value()).isCloseTo(3 * FOOT, within(0.1 * FOOT));
    assertThat(window.complained()).isEmpty();
  }

  @Test
  void whatWasMisreadIsPutRightAndAFindingIsPutWhereTheRecordingShowsIt() throws IOException {
    try (Page page = pushed(1366, 768)) {
      kept();
      page.locator("#distance").fill("9");
      page.locator("[data-kind=roots]").click();
      page.waitForSelector("#told.kept");
      page.locator("#film > summary").click();
      page.locator("#film-which option[value=M1]").waitFor(attached());
      page.locator("#film-which").selectOption("M1");
      page.locator("#film-read").click();
      page.locator("#film-told >> text=the distance follows").waitFor();
      Window.until(page, "document.querySelector('#film-shown').readyState > 1");
      moment(page, 5);
      page.locator("#film-place >> text=3 ft").click();
      page.locator("#rows >> text=3 ft (M1 at 0:05)").waitFor();
      page.waitForSelector("#told.kept");
      assertThat(only().text("moment", "at")).contains("5 s");
      assertThat(only().text("cable")).isEmpty();

      page.locator("#misread summary").click();
      moment(page, 4);
      page.locator("#misread-from").click();
      moment(page, 6);
      page.locator("#misread-to").click();
      page.locator("#misread-counter").fill("2.5");
      page.locator("#misread-put").click();
      page.locator("#misread-list >> text=showed 2.5 ft").waitFor();
      page.locator("#rows >> text=2.5 ft (M1 at 0:05)").waitFor();
      BookNow.Row correction = rows("corrections").getFirst();
      assertThat(correction.text("counter")).contains("2.5 ft");
      assertThat(correction.text("from")).contains("4 s");
      assertThat(served.archive().book(book).orElseThrow().complaints()).isEmpty();
      Tracked put = Job.tracks(served.archive(), book, null).orElseThrow();
      assertThat(put.of("P1", "M1").orElseThrow().counterAt(5).orElseThrow().value())
          .isCloseTo(2.5 * FOOT, within(0.01 * FOOT));
      page.screenshot(
          new Page.ScreenshotOptions()
              .setFullPage(true)
              .setPath(PICTURES.resolve("push-misread-1366.png")));
      assertThat(Window.violations(page)).isEmpty();

      page.locator("#misread-list button").click();
      page.locator("#rows >> text=3 ft (M1 at 0:05)").waitFor();
      assertThat(rows("corrections")).isEmpty();
    }
    assertThat(window.complained()).isEmpty();
  }

  @Test
  void aRecordingOfThisDeviceIsPlayedAndIsTheOneOfTheBookByItsName() throws IOException {
    Path other = Files.copy(film, folder.resolve("other.webm"));
    try (Page page = pushed(390, 844)) {
      kept();
      page.locator("#film > summary").click();
      page.locator("#film-which option[value=M1]").waitFor(attached());
      page.locator("#film-own").setInputFiles(other);
      page.locator("#film-told >> text=“other.webm”").waitFor();
      Window.until(page, "document.querySelector('#film-shown').readyState > 1");
      page.locator("#distance").fill("7");
      page.locator("[data-kind=crack]").click();
      page.waitForSelector("#told.kept");
      assertThat(only().text("cable")).contains("7 ft");

      page.locator("#film-own").setInputFiles(film);
      Window.until(page, "document.querySelector('#film-which').value === 'M1'");
      Window.until(page, "document.querySelector('#film-shown').src.startsWith('blob:')");
      moment(page, 2);
      page.locator("[data-kind=roots]").click();
      page.waitForSelector("#told.kept");
      assertThat(rows("findings").getLast().text("moment", "at")).contains("2 s");
      page.screenshot(
          new Page.ScreenshotOptions()
              .setFullPage(true)
              .setPath(PICTURES.resolve("push-film-390.png")));
      assertThat(page.evaluate("document.documentElement.scrollWidth")).isEqualTo(390);
      assertThat(Window.violations(page)).isEmpty();
    }
  }

  private static Locator.WaitForOptions attached() {
    return new Locator.WaitForOptions().setState(WaitForSelectorState.ATTACHED);
  }

  private static Locator.WaitForOptions hidden() {
    return new Locator.WaitForOptions().setState(WaitForSelectorState.HIDDEN);
  }

  private BookNow.Row only() {
    assertThat(rows("findings")).hasSize(1);
    return rows("findings").getFirst();
  }
}
