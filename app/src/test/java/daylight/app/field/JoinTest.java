package daylight.app.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import daylight.app.door.Ticking;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** The door for phones from outside, by hand: who may pass, and what the hostile get. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class JoinTest {
  private static final String SECRET = "14 Elder Row";
  private static final String FORM = "application/x-www-form-urlencoded";

  @TempDir private Path folder = Path.of("");
  private int archives;
  private Yard yard;
  private Ticking clock = new Ticking(Instant.now());
  private Served served;
  private String origin = "";
  private UUID book = new UUID(0, 0);
  private final List<Visitor> visitors = new ArrayList<>();

  @BeforeAll
  void network(@TempDir Path scripts) throws IOException {
    yard = new Yard(scripts);
  }

  @AfterAll
  void noNetwork() {
    yard.close();
  }

  @BeforeEach
  void open() throws IOException {
    clock = new Ticking(Instant.now());
    served = new Served(archive(true), clock);
    book = served.site(SECRET + " (invented)", "It backs up.");
    origin = served.open(yard.machine().text(), false);
  }

  private Path archive(boolean fresh) {
    return folder.resolve("archive-" + (fresh ? ++archives : archives));
  }

  @AfterEach
  void close() {
    visitors.forEach(Visitor::close);
    visitors.clear();
    served.close();
  }

  private Visitor visitor() {
    visitors.add(new Visitor(origin));
    return visitors.getLast();
  }

  private Visitor joined(String name) {
    Visitor phone = visitor();
    assertThat(phone.join(served.code(), name).statusCode()).isEqualTo(303);
    return phone;
  }

  private Stream<String> everything() {
    String site = "/site/" + book;
    String visit = Archived.lastVisit(served, site);
    return Stream.of(
        "/sites",
        "/sites/new",
        "/sites?q=elder",
        site,
        site + "/entries",
        site + "/answers",
        site + "/media/photo-11111111-1111-1111-1111-111111111111.jpg",
        site + "/walk-worker.js",
        visit,
        visit + "/walk",
        visit + "/walk/fit",
        visit + "/push",
        "/who",
        "/phones",
        "/property/",
        "/property/site-" + book + "/",
        "/property/site-" + book + "/report.pdf",
        "/assets/look.css",
        "/field/walk.js",
        "/field/phones.js",
        "/nowhere");
  }

  @Test
  void aStrangerSeesThePageForJoiningAndNothingElse() {
    served.get("/site/" + book + "/answers");
    Visitor stranger = visitor();

    assertThat(stranger.get("/").headers().firstValue("Location").orElse("")).endsWith("/join");
    assertThat(stranger.get("/join").statusCode()).isEqualTo(200);
    assertThat(stranger.get("/join").body())
        .contains("name=\"code\"")
        .doesNotContain("/sites", "/who", SECRET);
    for (String path : everything().toList()) {
      HttpResponse<String> page = stranger.get(path, "Accept", "text/html");
      HttpResponse<String> data = stranger.get(path);
      assertThat(page.statusCode()).as(path).isEqualTo(403);
      assertThat(page.body()).as(path).contains("href=\"/join\"").doesNotContain(SECRET);
      assertThat(data.statusCode()).as(path).isEqualTo(403);
      assertThat(data.body()).as(path).contains("\"error\":\"This phone has not joined.");
      assertThat(
              stranger
                  .send(
                      stranger
                          .request(path)
                          .method("HEAD", HttpRequest.BodyPublishers.noBody())
                          .build())
                  .statusCode())
          .as(path)
          .isEqualTo(403);
    }
    String token = stranger.token("/join");
    for (String path :
        List.of(
            "/site/" + book + "/enter",
            "/site/" + book + "/media/" + "a".repeat(64),
            "/site/" + book + "/visits",
            "/sites/new",
            "/who",
            "/phones/open",
            "/phones/code",
            "/phones/revoke",
            "/property/site-" + book + "/stop")) {
      assertThat(
              stranger.post(path, "application/json", "{}", "Daylight-Token", token).statusCode())
          .as(path)
          .isEqualTo(403);
      assertThat(stranger.post(path, FORM, "token=" + token).statusCode()).as(path).isEqualTo(403);
    }
    assertThat(stranger.form("/look", look(token)).statusCode()).isEqualTo(303);
    assertThat(stranger.get("/join").body()).contains("lang=\"fr\"");
  }

  private static Map<String, String> look(String token) {
    return Map.of("token", token, "language", "fr", "back", "/join");
  }

  @Test
  void noWayOfWritingAPathLeadsPastTheDoor() {
    Visitor stranger = visitor();
    String host = "Host: " + URI.create(origin).getAuthority();
    for (String path :
        List.of(
            "/join/../sites",
            "/join/..%2fsites",
            "/join/%2e%2e/sites",
            "/join;/../sites",
            "/join/..;/sites",
            "//sites",
            "/./sites",
            "/%73ites",
            "/sites;x=/join",
            "/sites%00",
            "/join%2f..%2fsites",
            "/join\\..\\sites",
            "/field/field.css/../../sites",
            "/sites?/join",
            "/SITES",
            origin + "/sites",
            "http://127.0.0.1/sites")) {
      String reply = stranger.raw("GET " + path + " HTTP/1.1", host);
      assertThat(reply).as(path).doesNotStartWith("HTTP/1.1 200").doesNotContain(SECRET);
    }
  }

  @Test
  void aPhoneJoinsByACodeAndWritesByItsName() {
    Visitor phone = visitor();
    HttpResponse<String> reply = phone.join(served.code(), " Kim’s \n phone ");
    String cookie =
        reply.headers().allValues("Set-Cookie").stream()
            .filter(one -> one.startsWith(Cookies.DEVICE))
            .findFirst()
            .orElseThrow();

    assertThat(reply.statusCode()).isEqualTo(303);
    assertThat(cookie).contains("HttpOnly", "SameSite=Strict", "Path=/").doesNotContain("Secure");
    assertThat(phone.get("/sites").body()).contains(SECRET).doesNotContain("href=\"/phones\"");
    assertThat(phone.get("/join").body()).contains("Kim’s phone");
    Map<String, String> who = phone.hidden("/who");
    assertThat(phone.get("/who").body()).doesNotContain("name=\"device\"");
    who.putAll(Map.of("person", "Kim", "device", "the office"));
    phone.form("/who", who);
    Map<String, String> visit = phone.hidden("/site/" + book);
    visit.putAll(Map.of("date", "2026-12-01", "complaint", "Again."));
    assertThat(phone.form("/site/" + book + "/visits", visit).statusCode()).isEqualTo(303);
    assertThat(
            served
                .archive()
                .history(book, UUID.fromString(visit.getOrDefault("visit", "")))
                .getFirst()
                .by()
                .device())
        .isEqualTo("Kim’s phone");
    assertThat(served.get("/phones").body()).contains("<strong>Kim’s phone</strong>");
  }

  @Test
  void aPhoneOrdersNothingAboutTheDoor() {
    Visitor phone = joined("Kim");
    String token = phone.token("/sites");

    assertThat(phone.get("/phones").statusCode()).isEqualTo(403);
    for (String order : List.of("open", "shut", "code", "secure", "revoke")) {
      assertThat(phone.form("/phones/" + order, Map.of("token", token)).statusCode())
          .as(order)
          .isEqualTo(403);
    }
    assertThat(phone.get("/sites").statusCode()).isEqualTo(200);
  }

  @Test
  void aKeyThatWasGivenBeforeIsOfNoUseAfterwards() {
    Visitor phone = visitor();
    phone.get("/join");
    String before = phone.cookies();
    phone.join(served.code(), "Kim");
    assertThat(phone.get("/sites").statusCode()).isEqualTo(200);

    assertThat(visitor().get("/sites", "Cookie", before).statusCode()).isEqualTo(403);
    String own = served.get("/sites").headers().firstValue("Set-Cookie").orElse("");
    assertThat(visitor().get("/sites", "Cookie", own).statusCode())
        .as("a browser at the machine has not joined")
        .isEqualTo(403);
  }

  @Test
  void aCodeThatIsNotGoodSaysWhy() {
    String code = served.code();
    assertThat(visitor().join(code, "Kim").statusCode()).isEqualTo(303);
    HttpResponse<String> replayed = visitor().join(code, "Lou");
    assertThat(replayed.statusCode()).isEqualTo(422);
    assertThat(replayed.body()).contains("used already");
    String late = served.code();
    clock.passes(Duration.ofMinutes(6));
    assertThat(visitor().join(late, "Lou").body()).contains("too late");
    assertThat(visitor().join("BCDFBCDF", "Lou").body()).contains("No such code");
    assertThat(visitor().join(" ", "").body()).contains("code is wanted", "name for this phone");
    assertThat(served.get("/phones").body()).doesNotContain("<strong>Lou</strong>");
  }

  @Test
  void whoGuessesCodesWaits() {
    String code = served.code();
    Visitor stranger = visitor();
    for (int i = 0; i < 5; i++) {
      // What it says of where it comes from makes no difference.
      String elsewhere = "10.9.9." + i;
      assertThat(
              stranger
                  .join(
                      "BCDFBCDF",
                      "x",
                      "X-Forwarded-For",
                      elsewhere,
                      "Forwarded",
                      "for=" + elsewhere)
                  .statusCode())
          .isEqualTo(422);
    }
    HttpResponse<String> reply = stranger.join(code, "x", "X-Forwarded-For", "10.9.9.99");

    assertThat(reply.statusCode()).isEqualTo(429);
    assertThat(reply.headers().firstValue("Retry-After")).contains("60");
    assertThat(reply.body()).contains("Wait 60 seconds");
    clock.passes(Duration.ofSeconds(61));
    assertThat(stranger.join(code, "x").statusCode()).isEqualTo(303);
  }

  @Test
  void aPhoneThatIsTakenOffTheListIsRefusedAtOnceOnEverything() {
    Visitor phone = joined("Lost");
    Visitor other = joined("Kept");
    String token = phone.token("/sites");
    served.revoke("Lost");

    for (String path : everything().toList()) {
      assertThat(phone.get(path).statusCode()).as(path).isEqualTo(403);
    }
    HttpResponse<String> reply =
        phone.post("/site/" + book + "/enter", "application/json", "{}", "Daylight-Token", token);
    assertThat(reply.statusCode()).isEqualTo(403);
    assertThat(reply.body()).contains("taken off the list", "stays here");
    assertThat(phone.get("/sites", "Accept", "text/html").body()).contains("taken off the list");
    assertThat(other.get("/sites").statusCode()).isEqualTo(200);
    assertThat(served.get("/phones").body()).doesNotContain("<strong>Lost</strong>");
    assertThat(phone.join(served.code(), "Found").statusCode()).isEqualTo(303);
    assertThat(phone.get("/sites").statusCode()).isEqualTo(200);
  }

  @Test
  void whoJoinedHasJoinedAfterARestartAndTheDoorIsShut() throws IOException {
    Visitor phone = joined("Kim");
    Visitor lost = joined("Lost");
    served.revoke("Lost");
    String before = origin;
    served.close();
    served = new Served(archive(false), clock);
    assertThatThrownBy(() -> phone.get("/sites")).hasRootCauseInstanceOf(IOException.class);
    origin = served.open(yard.machine().text(), false);

    assertThat(origin).as("the port is the one that phones know").isEqualTo(before);
    assertThat(phone.get("/sites").statusCode()).isEqualTo(200);
    assertThat(lost.get("/sites").body()).contains("taken off the list");
  }

  @Test
  void aDoorThatIsShutIsShutForThoseWithinToo() {
    Visitor phone = joined("Kim");
    assertThat(phone.get("/sites").statusCode()).isEqualTo(200);
    served.shut();

    assertThatThrownBy(() -> phone.get("/sites")).hasRootCauseInstanceOf(IOException.class);
    assertThat(served.get("/sites").statusCode()).isEqualTo(200);
    assertThat(served.form("/phones/code", served.hidden("/phones")).statusCode()).isEqualTo(409);
    assertThat(served.open(yard.machineText(), false)).isEqualTo(origin);
    assertThat(phone.get("/sites").statusCode()).isEqualTo(200);
  }

  @Test
  void itIsOpenedOnlyAtAnAddressOfThisMachine() {
    for (String address : List.of("", "0.0.0.0", "127.0.0.1", "8.8.8.8", "::", "<script>")) {
      Map<String, String> form = served.hidden("/phones");
      form.put("address", address);
      HttpResponse<String> reply = served.form("/phones/open", form);
      assertThat(reply.statusCode()).as(address).isEqualTo(409);
      assertThat(reply.body()).contains("has no address").doesNotContain("<script>");
    }
    assertThat(visitor().get("/join").statusCode()).as("and stays as it was").isEqualTo(200);
  }

  @Test
  void itAnswersOnlyToTheNameOfThePlaceWhereItIsAsked() {
    Visitor phone = joined("Kim");
    URI here = served.address();
    URI there = URI.create(origin);
    for (String host :
        List.of(
            "elsewhere.example",
            "elsewhere.example:" + there.getPort(),
            "127.0.0.1:" + there.getPort(),
            "localhost:" + there.getPort(),
            here.getAuthority(),
            there.getHost(),
            "user@" + there.getAuthority(),
            there.getAuthority() + ".elsewhere.example")) {
      String reply =
          phone.raw("GET /sites HTTP/1.1", "Host: " + host, "Cookie: " + phone.cookies());
      assertThat(reply).as(host).containsPattern("^HTTP/1.1 4(?:00|21)").doesNotContain(SECRET);
    }
    try (Visitor local = new Visitor("http://" + here.getAuthority())) {
      assertThat(local.raw("GET /sites HTTP/1.1", "Host: " + there.getAuthority()))
          .startsWith("HTTP/1.1 421");
    }
    assertThat(
            phone.raw(
                "GET /sites HTTP/1.1",
                "Host: " + there.getAuthority(),
                "Cookie: " + phone.cookies()))
        .startsWith("HTTP/1.1 200");
  }

  @Test
  void anOrderFromAnotherPageIsRefusedAlsoWithACookie() {
    Visitor phone = joined("Kim");
    String token = phone.token("/sites");
    for (String from :
        List.of("http://elsewhere.example", "http://" + served.address().getAuthority(), "null")) {
      HttpRequest forged =
          phone
              .request("/look", "Origin", from, "Content-Type", FORM)
              .POST(HttpRequest.BodyPublishers.ofString("language=fr&token=" + token))
              .build();
      assertThat(phone.send(forged).statusCode()).as(from).isEqualTo(403);
    }
    assertThat(phone.form("/look", Map.of("language", "fr")).statusCode()).isEqualTo(403);
  }

  @Test
  void tooMuchIsRefusedHoweverItIsSent() throws IOException {
    Visitor stranger = visitor();
    Map<String, String> form = new HashMap<>(stranger.hidden("/join"));
    form.put("code", "x".repeat(2 << 20));
    assertThat(stranger.form("/join", form).statusCode()).isEqualTo(413);
    form.put("code", "BCDFBCDF");
    byte[] small = Served.encoded(form).getBytes(StandardCharsets.UTF_8);
    HttpRequest endless =
        stranger
            .request("/join", "Origin", origin, "Content-Type", FORM)
            .POST(HttpRequest.BodyPublishers.ofInputStream(() -> new ByteArrayInputStream(small)))
            .build();
    assertThat(stranger.send(endless).statusCode()).isEqualTo(411);

    ByteArrayOutputStream packed = new ByteArrayOutputStream();
    try (GZIPOutputStream out = new GZIPOutputStream(packed)) {
      out.write(new byte[50 << 20]);
    }
    Visitor phone = joined("Kim");
    for (String how : List.of("gzip", "deflate", "br", "identity, gzip")) {
      HttpRequest bomb =
          phone
              .request(
                  "/site/" + book + "/enter",
                  "Origin",
                  origin,
                  "Content-Type",
                  "application/json",
                  "Content-Encoding",
                  how,
                  "Daylight-Token",
                  phone.token("/sites"))
              .POST(HttpRequest.BodyPublishers.ofByteArray(packed.toByteArray()))
              .build();
      HttpResponse<String> reply = phone.send(bomb);
      assertThat(reply.statusCode()).as(how).isEqualTo(415);
      assertThat(reply.headers().firstValue("Accept-Encoding")).contains("identity");
    }
  }

  /** No more than 128 at once; the machine itself is served whatever strangers do. */
  @Test
  void strangersWhoKeepTheDoorBusyDoNotKeepTheMachineBusy() throws IOException {
    URI there = URI.create(origin);
    List<Socket> idle = new ArrayList<>();
    try {
      for (int i = 0; i < 140; i++) {
        idle.add(new Socket(there.getHost(), there.getPort()));
      }
      try (Socket late = new Socket(there.getHost(), there.getPort())) {
        late.setSoTimeout(700);
        late.getOutputStream()
            .write(
                ("GET /join HTTP/1.1\r\nHost: " + there.getAuthority() + "\r\n\r\n")
                    .getBytes(StandardCharsets.US_ASCII));
        assertThatThrownBy(() -> late.getInputStream().read())
            .isInstanceOf(SocketTimeoutException.class);
      }
      assertThat(served.get("/sites").statusCode()).isEqualTo(200);
    } finally {
      for (Socket one : idle) {
        one.close();
      }
    }
    assertThat(visitor().get("/join").statusCode()).isEqualTo(200);
  }

  @Test
  void aFilmThatIsCalledAPictureIsRefused() {
    Visitor phone = joined("Kim");
    Map<String, String> who = phone.hidden("/who");
    who.put("person", "Kim");
    phone.form("/who", who);
    String path =
        "/site/"
            + book
            + "/media/"
            + "a".repeat(64)
            + "?name=photo-11111111-1111-1111-1111-111111111111.jpg&from=0&length=24";
    HttpResponse<String> reply =
        phone.post(
            path,
            "application/octet-stream",
            "\0\0\0\u0018ftypmp42\0\0\0\0mp42isom",
            "Daylight-Token",
            phone.token("/sites"));

    assertThat(reply.statusCode()).isEqualTo(415);
    assertThat(served.archive().mediaOf(book)).isEmpty();
  }

  @Test
  void withACertificateConnectionsAreSecureAndPlainOnesGiveItOut()
      throws IOException, GeneralSecurityException {
    if (!yard.machine().isPrivate()) {
      Map<String, String> form = served.hidden("/phones");
      served.form("/phones/secure", form);
      form.putAll(Map.of("address", yard.machineText(), "how", "secure"));
      assertThat(served.form("/phones/open", form).body()).contains("no private network");
      System.err.println("No private address here: secure connections were only refused.");
      return;
    }
    Visitor before = joined("Plain");
    String known = before.cookies();
    served.form("/phones/secure", served.hidden("/phones"));
    origin = served.open(yard.machineText(), true);
    String plain = origin.replace("https:", "http:");
    byte[] authority;
    try (Visitor stranger = new Visitor(plain)) {
      HttpResponse<byte[]> der = stranger.bytes("/join/daylight.crt");
      authority = der.body();
      assertThat(der.headers().firstValue("Content-Type")).contains("application/x-x509-ca-cert");
      assertThat(stranger.get("/").headers().firstValue("Location").orElse(""))
          .endsWith("/join/secure");
      assertThat(stranger.get("/join").statusCode()).isEqualTo(303);
      assertThat(stranger.get("/join/secure").body()).contains(origin + "/join", "Android");
      assertThat(stranger.get("/sites").statusCode()).isEqualTo(403);
      assertThat(stranger.get("/sites", "Cookie", known).body()).contains("to be secure");
    }
    assertThat(origin).startsWith("https://");
    assertThatThrownBy(() -> visitor().get("/join"))
        .as("nobody trusts it who was not told to")
        .hasRootCauseInstanceOf(GeneralSecurityException.class);
    Visitor phone = new Visitor(origin, authority);
    visitors.add(phone);
    assertThat(
            phone
                .get("/sites", "Cookie", known.replace("daylight-", "__Host-daylight-"))
                .statusCode())
        .as("a key that went over a plain line is good for none that is secure")
        .isEqualTo(403);
    HttpResponse<String> reply = phone.join(served.code(), "Secure");
    assertThat(reply.statusCode()).isEqualTo(303);
    assertThat(reply.headers().allValues("Set-Cookie"))
        .anyMatch(one -> one.startsWith("__Host-daylight-device=") && one.contains("Secure"));
    assertThat(phone.get("/sites").body()).contains(SECRET);
    assertThat(phone.get("/", "Origin", plain).statusCode()).isEqualTo(302);
    HttpRequest crossed =
        phone
            .request("/look", "Origin", plain, "Content-Type", FORM)
            .POST(HttpRequest.BodyPublishers.ofString("token=" + phone.token("/sites")))
            .build();
    assertThat(phone.send(crossed).statusCode()).as("http is another origin").isEqualTo(403);
  }
}
