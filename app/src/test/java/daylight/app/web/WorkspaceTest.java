package daylight.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.app.Job;
import daylight.report.Report;
import java.io.IOException;
import java.net.ConnectException;
import java.net.Socket;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is served, asked for over HTTP. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class WorkspaceTest {
  private static final Pattern LINK = Pattern.compile("(?:href|src)=\"([^\"]*)\"");

  private Path book;
  private Workspace.Running running;

  @BeforeAll
  void serve(@TempDir Path folder) throws IOException {
    book = Filmed.in(folder.resolve("filmed"));
    Path refused = folder.resolve("refused.yaml");
    Files.writeString(
        refused, Files.readString(book).replace("cable: 12.2 ft", "cable: 12.2 oxen"));
    Opened faulty = new Opened(book, Job.Settings.USUAL);
    running =
        Workspace.start(
            List.of(
                Filmed.property("filmed", book),
                new Property("refused", new Opened(refused, Job.Settings.USUAL), Job::answer),
                new Property(
                    "faulty",
                    faulty,
                    (file, settings, progress) -> {
                      throw new IllegalStateException("a fault made for the test");
                    })),
            0);
  }

  @AfterAll
  void close() {
    running.close();
  }

  /** Without its footage: a counter that is read here would change what the pages say. */
  private String media(String label) {
    return Job.answerWithoutFootage(book, Job.Settings.USUAL)
            instanceof Job.Outcome.Answered answered
        ? answered.handout().book().visits().getLast().papers().media().stream()
            .filter(one -> one.label().equals(label))
            .map(one -> "/property/filmed/media/" + one.id().uuid())
            .findFirst()
            .orElseThrow()
        : "";
  }

  @ParameterizedTest
  @CsvSource({
    "/, 200",
    "/property/filmed/, 200",
    "/property/refused/, 200",
    "/property/faulty/, 500",
    "/property/filmed/report.html, 200",
    "/property/filmed/stills/F2.jpg, 200",
    "/property/nobody/, 404",
    "/property/filmed/nothing.html, 404",
    "/property/filmed/field-book.yaml, 404",
    "/property/filmed/film.webm, 404",
    "/property/filmed/media/M1, 404",
    "/property/refused/report.html, 404",
    "/assets/nothing.css, 404",
    "/assets/package-info.class, 404",
    "/nothing, 404"
  })
  void everyAddressHasItsReply(String path, int status) {
    HttpResponse<byte[]> reply = Asked.get(running, path);

    assertThat(reply.statusCode()).isEqualTo(status);
    assertThat(Asked.header(reply, "X-Content-Type-Options")).isEqualTo("nosniff");
  }

  @ParameterizedTest
  @CsvSource({
    "report.html, text/html",
    "line.geojson, application/geo+json",
    "answers.json, application/json",
    "plan.svg, image/svg+xml",
    "maps/site.gpkg, application/geopackage+sqlite3",
    "maps/site.dxf, image/vnd.dxf",
    "maps/csv/reach.csv, text/csv",
    "stills/F2.jpg, image/jpeg"
  })
  void everyFileSaysWhatItIs(String file, String type) {
    HttpResponse<byte[]> reply = Asked.get(running, "/property/filmed/" + file);

    assertThat(Asked.header(reply, "Content-Type")).startsWith(type);
  }

  @Test
  void everyFileIsTheSameBytesAsInTheHandOver() {
    Reading.Answered read = (Reading.Answered) Filmed.property("again", book).read();
    Map<String, byte[]> files = Report.files(read.handout());

    assertThat(files).containsKeys("report.html", "stills/F2.jpg");
    files.forEach(
        (name, bytes) ->
            assertThat(Asked.get(running, "/property/filmed/" + name).body())
                .as(name)
                .isEqualTo(bytes));
  }

  /** What the hand-over has and the page does not name would never be found. */
  @Test
  void everyResultFileButStillsAndSingleTablesIsNamed() {
    // The second is tied to the earth by satellite fixes.
    for (Path one : List.of(book, Path.of("..", "corpus", "S25-gnss.yaml"))) {
      assertThat(Job.answerWithoutFootage(one, Job.Settings.USUAL))
          .isInstanceOfSatisfying(
              Job.Outcome.Answered.class,
              answered ->
                  assertThat(answered.files().keySet())
                      .filteredOn(name -> !name.startsWith("stills/"))
                      .filteredOn(name -> !name.startsWith("maps/csv/"))
                      .containsExactlyInAnyOrderElementsOf(
                          HandOver.files(answered.handout().subject())));
    }
  }

  @Test
  void everyLinkLeadsSomewhereHere() {
    Set<String> seen = new TreeSet<>(List.of("/"));
    Deque<String> open = new ArrayDeque<>(seen);
    while (!open.isEmpty()) {
      String path = open.removeFirst();
      HttpResponse<byte[]> reply = Asked.get(running, path);
      // What chooses a language or units leads back to its page.
      int other = path.contains("?") ? 303 : path.contains("faulty") ? 500 : 200;
      assertThat(reply.statusCode()).as(path).isIn(200, other);
      if (path.endsWith("/")) {
        LINK.matcher(Asked.text(reply))
            .results()
            .map(link -> link.group(1).replaceFirst("#.*", ""))
            .filter(link -> !link.isEmpty() && !link.startsWith("data:image/jpeg"))
            .peek(link -> assertThat(link).startsWith("/").doesNotStartWith("//"))
            .filter(seen::add)
            .forEach(open::add);
      }
    }

    assertThat(seen)
        .contains("/property/filmed/stills/F2.jpg", "/property/filmed/line.geojson", media("M1"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"POST", "PUT", "DELETE", "PATCH", "OPTIONS", "QUERY"})
  void nothingButReadingIsAllowed(String method) {
    HttpResponse<byte[]> reply = Asked.of(running, method, "/property/filmed/");

    assertThat(reply.statusCode()).isEqualTo(405);
    assertThat(Asked.header(reply, "Allow")).isEqualTo("GET, HEAD");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"/", "/property/filmed/", "/assets/look.css", "/property/filmed/line.geojson"})
  void headSaysTheSameWithoutTheBody(String path) {
    HttpResponse<byte[]> head = Asked.of(running, "HEAD", path);
    HttpResponse<byte[]> get = Asked.get(running, path);

    assertThat(head.statusCode()).isEqualTo(200);
    assertThat(head.body()).isEmpty();
    for (String name :
        List.of("Content-Type", "ETag", "Cache-Control", "Content-Security-Policy")) {
      assertThat(Asked.header(head, name)).as(name).isEqualTo(Asked.header(get, name));
    }
  }

  @Test
  void pagesMayLoadNothingFromElsewhereAndRunNothingInline() {
    String policy =
        Asked.header(Asked.get(running, "/property/filmed/"), "Content-Security-Policy");

    assertThat(policy)
        .contains("default-src 'self'", "object-src 'none'", "form-action 'none'")
        .contains("frame-ancestors 'none'")
        .doesNotContain("unsafe")
        .doesNotContain("http")
        .doesNotContain("*");
  }

  @Test
  void filesToHandOverMayRunNothing() {
    String policy =
        Asked.header(Asked.get(running, "/property/filmed/report.html"), "Content-Security-Policy");

    assertThat(policy).startsWith("default-src 'none'").doesNotContain("script");
  }

  @ParameterizedTest
  @ValueSource(strings = {"evil.example", "evil.example:80", "127.0.0.1", "127.0.0.1.evil.example"})
  void anotherHostNameIsTurnedAway(String host) {
    String reply = Asked.raw(running.address(), "GET /property/filmed/ HTTP/1.1", "Host: " + host);

    assertThat(reply).startsWith("HTTP/1.1 421").doesNotContain("Invented Lane");
  }

  @Test
  void anAddressWithAnotherHostNameIsTurnedAway() {
    int port = running.address().getPort();
    String reply =
        Asked.raw(
            running.address(),
            "GET http://evil.example:" + port + "/property/filmed/ HTTP/1.1",
            "Host: 127.0.0.1:" + port);

    assertThat(reply).doesNotStartWith("HTTP/1.1 200").doesNotContain("Invented Lane");
  }

  @Test
  void thisMachineIsKnownByBothItsNames() {
    int port = running.address().getPort();
    for (String host : List.of("127.0.0.1", "localhost")) {
      assertThat(Asked.raw(running.address(), "GET / HTTP/1.1", "Host: " + host + ":" + port))
          .startsWith("HTTP/1.1 200");
    }
  }

  /** A server on every address would answer at 127.0.0.2, too. */
  @Test
  void noOtherAddressOfTheMachineIsListenedOn() {
    int port = running.address().getPort();

    assertThat(running.address().getHost()).isEqualTo("127.0.0.1");
    org.assertj.core.api.Assertions.assertThatThrownBy(() -> new Socket("127.0.0.2", port).close())
        .isInstanceOf(ConnectException.class);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/property/filmed/../../../../etc/passwd",
        "/property/filmed/..%2f..%2f..%2fetc%2fpasswd",
        "/property/filmed/media/../field-book.yaml",
        "/property/filmed/media/..%2ffield-book.yaml",
        "/property/filmed/media/%2e%2e/field-book.yaml",
        "/property/filmed/stills/..\\..\\field-book.yaml",
        "/property/filmed/media//etc/passwd",
        "/assets/../../../field-book.yaml",
        "/assets/..%5c..%5cfield-book.yaml"
      })
  void noPathLeadsOut(String path) {
    String reply =
        Asked.raw(
            running.address(),
            "GET " + path + " HTTP/1.1",
            "Host: 127.0.0.1:" + running.address().getPort());

    assertThat(reply)
        .containsPattern("^HTTP/1.1 40[04]")
        .doesNotContain("daylight-book")
        .doesNotContain("root:");
  }

  @Test
  void aRecordingIsSentWholeOrInParts() throws IOException {
    byte[] film = Files.readAllBytes(book.resolveSibling("film.webm"));
    String path = media("M1");
    HttpResponse<byte[]> whole = Asked.get(running, path);
    HttpResponse<byte[]> part = Asked.get(running, path, "Range", "bytes=100-299");
    HttpResponse<byte[]> end = Asked.get(running, path, "Range", "bytes=-7");
    HttpResponse<byte[]> head = Asked.of(running, "HEAD", path);

    assertThat(whole.statusCode()).isEqualTo(200);
    assertThat(whole.body()).isEqualTo(film);
    assertThat(Asked.header(whole, "Content-Type")).isEqualTo("video/webm");
    assertThat(Asked.header(whole, "Accept-Ranges")).isEqualTo("bytes");
    assertThat(part.statusCode()).isEqualTo(206);
    assertThat(part.body()).isEqualTo(java.util.Arrays.copyOfRange(film, 100, 300));
    assertThat(Asked.header(part, "Content-Range")).isEqualTo("bytes 100-299/" + film.length);
    assertThat(Asked.header(part, "Content-Length")).isEqualTo("200");
    assertThat(end.body())
        .isEqualTo(java.util.Arrays.copyOfRange(film, film.length - 7, film.length));
    assertThat(Asked.header(head, "Content-Length")).isEqualTo(Integer.toString(film.length));
    assertThat(head.body()).isEmpty();
  }

  @Test
  void aPartThatIsNotThereIsRefusedAndAnOldOneSentWhole() {
    String path = media("M1");
    HttpResponse<byte[]> outside = Asked.get(running, path, "Range", "bytes=99999999-");
    HttpResponse<byte[]> old =
        Asked.get(running, path, "Range", "bytes=0-9", "If-Range", "\"another\"");
    String tag = Asked.header(old, "ETag");

    assertThat(outside.statusCode()).isEqualTo(416);
    assertThat(Asked.header(outside, "Content-Range")).startsWith("bytes */");
    assertThat(old.statusCode()).isEqualTo(200);
    assertThat(Asked.get(running, path, "Range", "bytes=0-9", "If-Range", tag).body()).hasSize(10);
  }

  @Test
  void whatDidNotChangeIsNotSentAgain() {
    HttpResponse<byte[]> first = Asked.get(running, "/assets/look.css");
    HttpResponse<byte[]> again =
        Asked.get(running, "/assets/look.css", "If-None-Match", Asked.header(first, "ETag"));

    assertThat(again.statusCode()).isEqualTo(304);
    assertThat(again.body()).isEmpty();
    assertThat(Asked.header(Asked.get(running, "/property/filmed/"), "Cache-Control"))
        .isEqualTo("no-store");
  }

  @Test
  void aRefusedBookShowsWhatIsWrongAndWhere() {
    assertThat(Asked.text(Asked.get(running, "/property/refused/")))
        .contains("One thing must be mended")
        .contains("refused.yaml:")
        .contains("12.2 oxen");
  }

  @Test
  void aFaultWithOneBookIsToldAndLeavesTheOthersAlone() {
    assertThat(Asked.text(Asked.get(running, "/property/faulty/")))
        .contains("A fault of Daylight’s own")
        .contains("a fault made for the test");
    assertThat(Asked.text(Asked.get(running, "/"))).contains("A fault of Daylight’s own");
  }

  @Test
  void anUnplayableRecordingIsNamedAndItsPicturesShown() {
    String page = Asked.text(Asked.get(running, "/property/filmed/"));

    assertThat(page)
        .contains("A browser can’t play this kind of recording (MPEG-4 in AVI).")
        .contains("href=\"/property/filmed/stills/F7.jpg\"")
        .doesNotContain("src=\"" + media("M2"));
  }
}
