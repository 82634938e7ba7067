package daylight.bench;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import daylight.app.field.FieldPages;
import daylight.app.web.Workspace;
import daylight.archive.FieldBookReader;
import daylight.archive.Folders;
import daylight.archive.ReadBook;
import daylight.archive.store.Archive;
import daylight.archive.store.ArchiveOpening;
import daylight.archive.store.By;
import daylight.archive.store.Entered;
import daylight.archive.store.KeptEntry;
import daylight.line.book.FieldBook;
import io.javalin.Javalin;
import java.io.File;
import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Stream;

/**
 * The page of a long line, 150 m with 100 locates and 200 findings: how long it takes when the line
 * is known, beside the same bytes ready at hand; how long after an entry was changed; and in
 * Chromium what a move of the cursor costs in script, beside writing as many attributes without
 * looking anything up. Of the times read the ratios.
 *
 * <p>Arguments: times the page is asked for (100 if none).
 */
public final class LineBench {
  private static final double METRES = 150;
  private static final int LOCATES = 100;
  private static final int FINDINGS = 200;
  private static final int WARM = 20;
  private static final int CHANGES = 9;
  private static final double SLOW = 0.95;
  private static final By BY = new By("Kim", "bench", Instant.parse("2026-11-27T12:00:00Z"));

  private final HttpClient client =
      HttpClient.newBuilder()
          .cookieHandler(new CookieManager())
          .followRedirects(HttpClient.Redirect.ALWAYS)
          .build();
  private final Archive archive;
  private final UUID book;

  private LineBench(Archive archive, UUID book) {
    this.archive = archive;
    this.book = book;
  }

  /** Runs it. */
  public static void main(String[] words) throws Exception {
    int times = words.length > 0 ? Integer.parseInt(words[0]) : 100;
    Path folder = Files.createTempDirectory("line-bench");
    try {
      if (!(Archive.open(folder.resolve("archive"))
          instanceof ArchiveOpening.Opened(Archive archive))) {
        throw new IllegalStateException("no archive could be begun");
      }
      Path file = folder.resolve("field-book.yaml");
      Files.writeString(file, LongDrain.book(METRES, LOCATES, FINDINGS));
      ReadBook read = FieldBookReader.read(file);
      FieldBook whole = Objects.requireNonNull(read.book(), () -> read.complaints().toString());
      archive.keep(whole, BY, false);
      try (Workspace.Running running =
          Workspace.serve(List.of(), 0, false, FieldPages.of(archive)::addTo)) {
        LineBench bench = new LineBench(archive, archive.sites("").getFirst().book());
        bench.page(running.address(), times);
        bench.changed(running.address());
        bench.cursor(running.address());
      }
      archive.close();
    } finally {
      Folders.delete(folder);
    }
  }

  private String answers() {
    return "/site/" + book + "/answers";
  }

  private HttpResponse<String> get(URI uri) throws IOException, InterruptedException {
    HttpResponse<String> reply =
        client.send(HttpRequest.newBuilder(uri).build(), HttpResponse.BodyHandlers.ofString());
    if (reply.statusCode() != 200) {
      throw new IllegalStateException(uri + " was answered with " + reply.statusCode());
    }
    return reply;
  }

  /** The page whose line is known, as often as wanted. */
  private void page(URI address, int times) throws Exception {
    HttpResponse<String> first = get(address.resolve(answers()));
    URI page = first.uri();
    Javalin bare = BareServer.started(first.body().getBytes(StandardCharsets.UTF_8), 0);
    try {
      URI yardstick = URI.create("http://127.0.0.1:" + bare.port() + "/");
      double[] ours = new double[times];
      double[] ready = new double[times];
      for (int i = -WARM; i < times; i++) {
        int at = Math.max(i, 0);
        ours[at] = timed(page);
        ready[at] = timed(yardstick);
      }
      System.out.printf(
          Locale.ROOT,
          "answer page of %d bytes: median %.1f ms, p95 %.1f ms; ready at hand %.1f ms; ratio %.1f%n",
          first.body().length(),
          at(ours, 0.5),
          at(ours, SLOW),
          at(ready, 0.5),
          at(ours, 0.5) / at(ready, 0.5));
    } finally {
      bare.stop();
    }
  }

  private double timed(URI uri) throws IOException, InterruptedException {
    long begun = System.nanoTime();
    get(uri);
    return (System.nanoTime() - begun) / 1e6;
  }

  /** From a depth put right to the page that answers with it. */
  private void changed(URI address) throws Exception {
    double[] taken = new double[CHANGES];
    for (int i = 0; i < CHANGES; i++) {
      KeptEntry entry =
          archive.entries(book).stream()
              .filter(one -> one.section().equals("locates"))
              .skip(40 + i)
              .findFirst()
              .orElseThrow();
      String content = entry.content().replaceFirst("depth: *\"?[0-9.]+", "depth: 1." + (70 + i));
      if (content.equals(entry.content())) {
        throw new IllegalStateException("nothing to change in " + content);
      }
      long begun = System.nanoTime();
      archive.enter(
          book,
          List.of(
              new Entered(entry.entry(), entry.parent(), entry.section(), entry.number(), content)),
          BY);
      String page = get(address.resolve(answers())).body();
      taken[i] = (System.nanoTime() - begun) / 1e6;
      if (!page.contains("data-table")) {
        throw new IllegalStateException("no page of the line came");
      }
    }
    System.out.printf(
        Locale.ROOT,
        "answered after an entry was changed: median %.0f ms, slowest %.0f ms%n",
        at(taken, 0.5),
        at(taken, 1));
  }

  private void cursor(URI address) {
    try (Playwright playwright =
            Playwright.create(
                new Playwright.CreateOptions()
                    .setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        Browser browser =
            playwright
                .chromium()
                .launch(
                    new BrowserType.LaunchOptions()
                        .setExecutablePath(chromium())
                        .setArgs(List.of("--no-sandbox", "--disable-gpu")))) {
      Page page = browser.newPage(new Browser.NewPageOptions().setViewportSize(1366, 768));
      page.navigate(address.resolve(answers()).toString());
      page.locator("[data-cursor=mover]").waitFor();
      Object told = page.evaluate(MOVE);
      System.out.println(told);
    }
  }

  private static Path chromium() {
    return Stream.of("chromium", "chromium-browser")
        .flatMap(
            name ->
                Stream.of(System.getenv("PATH").split(File.pathSeparator, -1))
                    .map(folder -> Path.of(folder, name)))
        .filter(Files::isExecutable)
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("Chromium is not installed"));
  }

  /** Script from a pointer's move to the end of the frame's own work, and of bare writing. */
  private static final String MOVE =
      """
      async () => {
        const drawing = document.querySelector('#plan .drawing');
        const sheet = drawing.querySelector('svg');
        drawing.dispatchEvent(new PointerEvent('pointerenter', { pointerType: 'mouse' }));
        const rect = sheet.getBoundingClientRect();
        const { plan } = JSON.parse(document.querySelector('#line').dataset.table);
        const marks = [...document.querySelectorAll('.cursor > *')];
        const script = [];
        const bare = [];
        for (let i = 0; i < 600; i++) {
          const row = (i * 7) % plan.rows;
          let began;
          requestAnimationFrame(() => (began = performance.now()));
          const from = performance.now();
          drawing.dispatchEvent(new PointerEvent('pointermove', { bubbles: true, pointerType: 'mouse',
            clientX: rect.left + plan.x[row] * rect.width / 792,
            clientY: rect.top + plan.y[row] * rect.width / 792 }));
          const handled = performance.now() - from;
          const ended = await new Promise((done) => requestAnimationFrame(() => done(performance.now())));
          script.push(handled + ended - began);
          const start = performance.now();
          for (const mark of marks) for (const name of ['x1', 'x2', 'y1', 'y2']) mark.setAttribute(name, row);
          bare.push(performance.now() - start);
        }
        const of = (all, share) => all.slice(60).sort((a, b) => a - b)[Math.floor(share * (all.length - 61))];
        const text = (value) => value.toFixed(2);
        return `cursor, script for a move: median ${text(of(script, 0.5))} ms, p95 ${text(of(script, 0.95))} ms, `
          + `most ${text(of(script, 1))} ms; bare writing ${text(of(bare, 0.5))} ms`;
      }
      """;

  private static double at(double[] all, double share) {
    double[] sorted = all.clone();
    Arrays.sort(sorted);
    return sorted[(int) Math.min(sorted.length - 1, Math.floor(share * sorted.length))];
  }
}
