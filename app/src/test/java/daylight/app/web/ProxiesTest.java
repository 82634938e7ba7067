package daylight.app.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import daylight.footage.Make;
import daylight.line.measure.Shown;
import daylight.report.words.Language;
import daylight.report.words.Words;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Recordings that no browser plays, played by one: copies of them, made beside the book. */
class ProxiesTest {
  @TempDir private Path folder = Path.of("");

  private static String address(Workspace.Running running) {
    return running.address().resolve("/property/filmed/").toString();
  }

  private static double number(Locator video, String of) {
    return ((Number) video.evaluate("video => " + of)).doubleValue();
  }

  @ParameterizedTest
  @EnumSource(names = {"MPEG4_AVI", "MPEG2_MPG"})
  void theCopyPlaysAndSeeksInTheBrowser(Make make) throws IOException {
    Path book = Filmed.in(folder);
    // The second recording under its own name, whatever it is inside.
    Filmed.record(folder.resolve("old.avi"), make);
    try (Copied shown = new Copied(book)) {
      Page page = shown.page;
      Locator video = page.locator("video").nth(1);
      page.waitForCondition(() -> number(video, "video.readyState") >= 1);
      assertThat(number(video, "video.duration")).isEqualTo(Filmed.SECONDS, within(0.11));
      // A picture of the second recording leads to its moment, as of any other.
      page.locator("a.still[data-media]").last().click();
      page.waitForCondition(
          () -> number(video, "video.currentTime") > 2 && number(video, "+video.seeking") == 0);
      assertThat(number(video, "video.currentTime")).isEqualTo(3, within(0.05));
      assertThat(grey(video)).isEqualTo(40 + 2 * 30, within(4.0));

      video.evaluate("video => video.play()");
      page.waitForCondition(() -> number(video, "video.currentTime") > 3.8);
      video.evaluate("video => { video.pause(); video.currentTime = 1; }");
      page.waitForCondition(() -> number(video, "+video.seeking") == 0);
      assertThat(grey(video)).isEqualTo(40 + 2 * 10, within(4.0));
      assertThat(shown.window.complained()).isEmpty();
    }
    try (Stream<Path> made = Files.list(folder.resolve("field-book-proxies"))) {
      assertThat(made).hasSize(1);
    }
  }

  /** The page of a book in a browser, with copies of what that cannot play. */
  private static final class Copied implements AutoCloseable {
    private final Proxies proxies = new Proxies();
    private final Workspace.Running running;
    private final Window window = new Window();
    private final Page page = window.page(1366, 768);

    Copied(Path book) {
      running = Workspace.start(List.of(Filmed.property("filmed", book, proxies)), 0, proxies);
      page.navigate(address(running));
      page.waitForCondition(
          () ->
              page.locator(".making").all().stream()
                  .allMatch(line -> String.valueOf(line.textContent()).contains("is ready")),
          new Page.WaitForConditionOptions().setTimeout(120_000));
      page.reload();
    }

    @Override
    public void close() {
      window.close();
      running.close();
    }
  }

  /** In all the kinds of recording that the examples come with. */
  @ParameterizedTest
  @EnumSource(names = {"H264_MP4", "MPEG4_AVI", "MPEG2_MPG", "MJPEG_MOV", "VP8_WEBM"})
  void everyKindOfRecordingFollowsTheCursorAndLeadsIt(Make make) throws IOException {
    Path book = Filmed.counted(folder);
    Filmed.record(folder.resolve("old.avi"), make);
    // Of the two recordings it is the one that no browser plays whose counter is known.
    Files.writeString(
        book,
        Files.readString(book)
            .replace("film.webm, pass: P1", "film.webm, pass: P2")
            .replace("old.avi, pass: P2", "old.avi, pass: P1")
            .replace("media: M1, at", "media: M2, at"));
    try (Copied shown = new Copied(book)) {
      Page page = shown.page;
      Locator video = page.locator("video").nth(1);
      Locator slider = page.locator("[data-cursor=slider]");
      page.locator("[data-cursor=mover]").waitFor();
      page.waitForCondition(() -> number(video, "video.readyState") >= 1);

      // The counter ran evenly over 7.9 s, a little more than the pipe, which has 100 stations.
      slider.fill("50");
      page.waitForCondition(
          () -> number(video, "video.currentTime") > 1 && number(video, "+video.seeking") == 0);
      double there = number(video, "video.currentTime");
      assertThat(there).isEqualTo(7.9 * 50 / 100, within(0.35));
      assertThat(grey(video)).isEqualTo(40 + 2 * Math.floor(there * 10 + 0.01), within(4.0));

      video.evaluate("video => { video.currentTime = 1; video.play(); }");
      page.waitForCondition(() -> number(video, "video.currentTime") > 2.5);
      video.evaluate("video => video.pause()");
      page.waitForTimeout(200);
      double now = number(video, "video.currentTime");
      assertThat(Double.parseDouble(slider.inputValue())).isEqualTo(now / 7.9 * 100, within(5.0));
      assertThat(shown.window.complained()).isEmpty();
    }
  }

  private static double grey(Locator video) {
    return ((Number)
            video.evaluate(
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
  void aRecordingThatChangedGetsANewCopyInPlaceOfTheOld() throws Exception {
    Path book = Filmed.in(folder);
    try (Proxies proxies = new Proxies()) {
      Property property = Filmed.property("filmed", book, proxies);
      Path first = made(property);
      Filmed.record(folder.resolve("old.avi"), Make.MJPEG_AVI);
      Path second = made(property);

      assertThat(second).isNotEqualTo(first).isRegularFile();
      assertThat(first).doesNotExist();
    }
  }

  private static Path made(Property property) throws InterruptedException {
    Recording recording = Recording.of(property, (Reading.Answered) property.read()).getLast();
    for (int i = 0; i < 600; i++) {
      if (property.proxy(recording).orElseThrow() instanceof Proxies.State.Ready(Path file)) {
        return file;
      }
      Thread.sleep(100);
    }
    throw new AssertionError("no copy after a minute");
  }

  @Test
  void whatCannotBeCopiedIsTold() throws Exception {
    Path book = Filmed.in(folder);
    Files.writeString(folder.resolve("old.avi"), "no recording at all");
    try (Proxies proxies = new Proxies()) {
      Property property = Filmed.property("filmed", book, proxies);
      Recording recording = Recording.of(property, (Reading.Answered) property.read()).getLast();
      Proxies.State state = property.proxy(recording).orElseThrow();
      for (int i = 0; i < 100 && state instanceof Proxies.State.Making; i++) {
        Thread.sleep(100);
        state = property.proxy(recording).orElseThrow();
      }

      assertThat(state).isInstanceOf(Proxies.State.Failed.class);
      assertThat(ProxyWords.told(state, Words.of(Language.EN, Shown.METRES)))
          .startsWith("No copy that the browser plays");
      assertThat(folder.resolve("field-book-proxies")).isEmptyDirectory();
    }
  }

  @Test
  void closedInTheMiddleNothingIsLeft() throws Exception {
    Path book = Filmed.in(folder);
    Property property;
    try (Proxies proxies = new Proxies()) {
      property = Filmed.property("filmed", book, proxies);
      property.proxy(Recording.of(property, (Reading.Answered) property.read()).getLast());
    }
    Path copies = folder.resolve("field-book-proxies");
    if (Files.isDirectory(copies)) {
      try (Stream<Path> files = Files.list(copies)) {
        assertThat(files.map(Path::toString)).noneMatch(name -> name.endsWith(".part"));
      }
    }
  }
}
