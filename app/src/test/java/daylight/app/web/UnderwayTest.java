package daylight.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import daylight.app.CountedFilm;
import daylight.app.Job;
import daylight.app.OneDrain;
import daylight.app.OwnCache;
import daylight.app.Progress;
import daylight.footage.Make;
import daylight.footage.Watch;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Books whose footage takes its time: what the page says meanwhile, and how that is stopped. */
class UnderwayTest {
  private static final String PAGE = "/property/slow/";

  @TempDir private Path folder = Path.of("");

  @RegisterExtension final OwnCache cache = new OwnCache();

  private final Semaphore turns = new Semaphore(1);

  /** Answers a book after a recording of which 43 % are read and no more, until it is stopped. */
  private static Job.Outcome slowly(Path book, Job.Settings settings, Progress progress) {
    progress.begin(Progress.Step.READING, "push.mp4").done(1);
    Watch watch = progress.begin(Progress.Step.COUNTING, "push.mp4");
    watch.done(0.43);
    while (!watch.stopped()) {
      LockSupport.parkNanos(1_000_000);
    }
    return Job.answerWithoutFootage(book, settings);
  }

  private Property slow(String name) {
    Path book = Filmed.unfilmed(folder.resolve(name), "media: []");
    return new Property(
        name, new Opened(book, Job.Settings.USUAL), UnderwayTest::slowly, null, turns);
  }

  private static String origin(Workspace.Running running) {
    String address = running.address().toString();
    return address.substring(0, address.length() - 1);
  }

  @Test
  void thePageSaysWhatIsBeingReadAndHowFarItIs() {
    try (Workspace.Running running = Workspace.start(List.of(slow("slow")), 0)) {
      HttpResponse<byte[]> page = Asked.get(running, PAGE);
      HttpResponse<byte[]> progress = Asked.get(running, PAGE + "progress");

      assertThat(page.statusCode()).isEqualTo(202);
      assertThat(Asked.text(page))
          .contains("Reading the counter in push.mp4", "43 % done", "Stop reading");
      assertThat(progress.statusCode()).isEqualTo(202);
      assertThat(Asked.text(progress))
          .contains("Reading the counter in push.mp4", "\"percent\":43", "43 % done");
    }
  }

  @Test
  void onlyOurOwnPagesMayStopIt() {
    try (Workspace.Running running = Workspace.start(List.of(slow("slow")), 0)) {
      assertThat(Asked.get(running, PAGE).statusCode()).isEqualTo(202);

      assertThat(Asked.of(running, "POST", PAGE + "stop").statusCode()).isEqualTo(403);
      assertThat(
              Asked.of(running, "POST", PAGE + "stop", "Origin", "http://evil.example")
                  .statusCode())
          .isEqualTo(403);
      assertThat(Asked.get(running, PAGE + "stop").statusCode()).isEqualTo(404);
      assertThat(Asked.get(running, PAGE + "progress").statusCode()).isEqualTo(202);
      assertThat(Asked.of(running, "POST", PAGE, "Origin", origin(running)).statusCode())
          .isEqualTo(405);

      assertThat(Asked.of(running, "POST", PAGE + "stop", "Origin", origin(running)).statusCode())
          .isEqualTo(204);
      HttpResponse<byte[]> page = Asked.get(running, PAGE);
      assertThat(page.statusCode()).isEqualTo(200);
      assertThat(Asked.text(page)).contains("Reading the counters was stopped");
      assertThat(Asked.get(running, PAGE + "progress").statusCode()).isEqualTo(200);
    }
  }

  @Test
  void booksWithFootageTakeTurnsAndOthersDoNotWait() {
    Path plain = Filmed.unfilmed(folder.resolve("plain"), "media: []");
    Property other =
        new Property("plain", new Opened(plain, Job.Settings.USUAL), Job::answer, null, turns);
    try (Workspace.Running running =
        Workspace.start(List.of(slow("slow"), slow("second"), other), 0)) {
      assertThat(Asked.get(running, PAGE).statusCode()).isEqualTo(202);
      HttpResponse<byte[]> second = Asked.get(running, "/property/second/");

      assertThat(Asked.text(second)).contains("Another book’s footage comes first");
      assertThat(Asked.get(running, "/property/plain/").statusCode()).isEqualTo(200);
      assertThat(Asked.text(Asked.get(running, "/")))
          .contains("Reading the counter in push.mp4", "Another book’s footage comes first");
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {390, 1366})
  void inABrowserItGoesOnByItselfAndAButtonStopsIt(int width) {
    try (Workspace.Running running = Workspace.start(List.of(slow("slow")), 0);
        Window window = new Window();
        Page page = window.page(width, 768)) {
      page.navigate(running.address().resolve(PAGE).toString());
      page.waitForCondition(() -> page.locator(".share").textContent().contains("43 %"));

      assertThat(page.locator("progress").evaluate("bar => bar.value")).isEqualTo(43);
      assertThat(page.evaluate("document.documentElement.scrollWidth")).isEqualTo(width);
      assertThat(Window.violations(page)).isEmpty();
      // Keys alone will do, and a glove.
      assertThat(page.locator("button:visible").boundingBox().height).isGreaterThanOrEqualTo(44);
      page.locator("button:visible").focus();
      page.keyboard().press("Enter");

      page.locator("text=Reading the counters was stopped").waitFor();
      assertThat(page.locator("#answers").count()).isEqualTo(1);
      assertThat(Window.violations(page)).isEmpty();
      page.locator("button:has-text('Read the counters now')").click();
      page.locator("text=Reading the counter in push.mp4").waitFor();
      assertThat(window.complained()).isEmpty();
    }
  }

  private Path filmed() throws IOException {
    CountedFilm.write(folder.resolve("push.mp4"), Make.H264_MP4);
    return OneDrain.empty()
        .found(
            "{label: F1, kind: crack, cable: 6, clock: 12}",
            "{label: F2, kind: roots, cable: 4, moving: pulling}")
        .filmed("push.mp4")
        .write(folder.resolve("slow.yaml"));
  }

  /** What is told of a recording is shown by the browser's own player, at its time. */
  @Test
  void thePlayerHasCaptionsAndChapters() throws IOException {
    Path book = filmed();
    try (Workspace.Running running =
            Workspace.serve(List.of(new Opened(book, Job.Settings.USUAL)), 0, false);
        Window window = new Window();
        Page page = window.page(1366, 768)) {
      page.navigate(running.address().toString());
      page.locator("video").waitFor();
      page.waitForCondition(
          () ->
              page.evaluate(
                      """
                      () => {
                        const tracks = [...document.querySelector('video').textTracks];
                        tracks.forEach(track => { track.mode = 'hidden'; });
                        return tracks.length === 2 && tracks.every(track => track.cues?.length > 0);
                      }
                      """)
                  .equals(true));

      assertThat(page.evaluate(CUES, List.of("captions", 10)).toString())
          .contains("6' 0\"", "F1 Crack, 6' 0\", 12:00");
      assertThat(page.evaluate(CUES, List.of("captions", 15.9))).hasToString("[9' 0\"]");
      assertThat(page.evaluate(CUES, List.of("chapters", 1))).hasToString("[Entry at C1]");
      assertThat(page.evaluate(CUES, List.of("chapters", 12)).toString()).contains("F1 Crack");
      assertThat(page.evaluate(CUES, List.of("chapters", 19.9)).toString()).contains("F2 Roots");
      assertThat(Window.violations(page)).isEmpty();
      assertThat(window.complained()).isEmpty();
    }
  }

  private static final String CUES =
      """
      ([kind, at]) =>
        [...document.querySelector('video').textTracks]
          .filter(track => track.kind === kind)
          .flatMap(track => [...track.cues])
          .filter(cue => cue.startTime <= at && at < cue.endTime)
          .map(cue => cue.text)
      """;

  @Test
  void theTextsAreThoseThatChaptersWrites() throws IOException {
    Path book = filmed();
    Path chapters = folder.resolve("chapters.vtt");
    Path captions = folder.resolve("captions.vtt");
    daylight.app.cli.Commands.run(
        "chapters",
        folder.resolve("push.mp4"),
        "--book",
        book,
        "--to",
        chapters,
        "--captions",
        captions);
    try (Workspace.Running running =
        Workspace.serve(List.of(new Opened(book, Job.Settings.USUAL)), 0, false)) {
      HttpResponse<byte[]> page = Asked.get(running, PAGE);
      for (int i = 0; i < 60 && page.statusCode() == 202; i++) {
        page = Asked.get(running, PAGE);
      }
      var link =
          java.util.regex.Pattern.compile("src=\"([^\"]*/)captions.vtt\"")
              .matcher(Asked.text(page));
      assertThat(link.find()).isTrue();
      HttpResponse<byte[]> served = Asked.get(running, link.group(1) + "captions.vtt");

      assertThat(Asked.header(served, "Content-Type")).startsWith("text/vtt");
      assertThat(Asked.text(served)).isEqualTo(Files.readString(captions));
      assertThat(Asked.text(Asked.get(running, link.group(1) + "chapters.vtt")))
          .isEqualTo(Files.readString(chapters));
      assertThat(Asked.get(running, link.group(1) + "other.vtt").statusCode()).isEqualTo(404);
    }
  }

  @Test
  void closedInTheMiddleNothingIsKept() throws Exception {
    Path book = filmed();
    Semaphore begun = new Semaphore(0);
    Property property =
        new Property(
            "slow",
            new Opened(book, Job.Settings.USUAL),
            (file, settings, progress) ->
                Job.answer(
                    file,
                    settings,
                    (step, what) -> {
                      Watch watch = progress.begin(step, what);
                      if (step == Progress.Step.COUNTING) {
                        begun.release();
                        while (!watch.stopped()) {
                          LockSupport.parkNanos(1_000_000);
                        }
                      }
                      return watch;
                    }));
    try (Workspace.Running running = Workspace.start(List.of(property), 0)) {
      assertThat(Asked.get(running, PAGE).statusCode()).isEqualTo(202);
      assertThat(begun.tryAcquire(30, TimeUnit.SECONDS)).isTrue();
    }
    Path cache = folder.resolve("cache");
    try (Stream<Path> kept = Files.isDirectory(cache) ? Files.list(cache) : Stream.of()) {
      assertThat(kept).isEmpty();
    }
  }
}
