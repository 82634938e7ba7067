package daylight.app.field;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.archive.store.KeptSite;
import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the pages of an archive take and refuse, asked as a browser asks and as others would. */
class FieldPagesTest {
  private static final String SCRIPT = "<script>alert(1)</script>\"'><img src=x onerror=alert(2)>";

  /** A head that promises 60 000 by 60 000 points, and little behind it. */
  private static final String PNG_OF_60000_BY_60000 =
      "iVBORw0KGgoAAAANSUhEUgAA6mAAAOpgCAIAAAD//////wAAAApJREFUeJxjYAAAAAIAAQ==";

  @TempDir private Path folder = Path.of("");
  private Served served;

  @BeforeEach
  void serve() throws IOException {
    served = new Served(folder.resolve("archive"));
  }

  @AfterEach
  void close() {
    served.close();
  }

  @Test
  void aBlankArchiveSaysHowToBegin() {
    HttpResponse<String> page = served.get("/");

    assertThat(page.uri().getPath()).isEqualTo("/sites");
    assertThat(page.body()).contains("No site is kept yet").contains("/sites/new");
  }

  @Test
  void aSiteIsBegunByAddressAndComplaint() {
    UUID book = served.site("14 Elder Row (invented)", "It backs up.");

    assertThat(served.get("/site/" + book).body())
        .contains("14 Elder Row (invented)")
        .contains("It backs up.");
    assertThat(served.archive().sites("elder")).extracting(KeptSite::visits).containsExactly(1);
    assertThat(served.archive().written(book).orElseThrow())
        .contains("zone: America/New_York", "distance: ft", "complaint: It backs up.");
    assertThat(served.get("/sites?q=elder").body()).contains("/site/" + book);
    assertThat(served.get("/sites?q=nobody").body()).contains("No name and no address holds");
  }

  @Test
  void theSameFormSentTwiceMakesOneSite() {
    Map<String, String> form = served.hidden("/sites/new");
    form.putAll(
        Map.of(
            "address", "2 Mill Lane (invented)",
            "date", "2026-11-27",
            "person", "Kim",
            "units", "metres",
            "zone", "UTC"));
    served.form("/sites/new", form);
    HttpResponse<String> again = served.form("/sites/new", form);

    assertThat(again.statusCode()).isEqualTo(200);
    assertThat(served.archive().sites("")).hasSize(1);
    assertThat(
            served
                .archive()
                .history(UUID.fromString(form.get("book")), UUID.fromString(form.get("site"))))
        .hasSize(1);
  }

  @Test
  void allThatIsWrongIsToldAtOnceAndNothingTypedIsLost() {
    Map<String, String> form = served.hidden("/sites/new");
    form.putAll(Map.of("address", "", "complaint", "Slow.", "date", "27/11", "zone", "Nowhere"));
    HttpResponse<String> page = served.form("/sites/new", form);

    assertThat(page.statusCode()).isEqualTo(422);
    assertThat(page.body())
        .contains("An address is wanted.")
        .contains("“27/11” is no day.")
        .contains("A time zone of the list is wanted.")
        .contains("Your name is wanted.")
        .contains(">Slow.</textarea>");
    assertThat(served.archive().sites("")).isEmpty();
  }

  @Test
  void aSecondSiteAtAnAddressIsAskedAbout() {
    served.site("5 Quarry Hill (invented)", "");
    Map<String, String> form = served.hidden("/sites/new");
    form.putAll(
        Map.of(
            "address", "5 QUARRY HILL (invented)",
            "date", "2026-11-27",
            "units", "feet",
            "zone", "UTC"));

    assertThat(served.form("/sites/new", form).body()).contains("is kept already");
    assertThat(served.archive().sites("")).hasSize(1);
    form.put("another", "yes");
    served.form("/sites/new", form);
    assertThat(served.archive().sites("")).hasSize(2);
  }

  @Test
  void whatAnybodyTypesIsShownAsText() {
    Map<String, String> form = served.hidden("/sites/new");
    form.putAll(
        Map.of(
            "address", SCRIPT,
            "complaint", SCRIPT,
            "name", SCRIPT,
            "person", SCRIPT,
            "date", "2026-11-27",
            "units", "feet",
            "zone", "UTC"));
    UUID book = UUID.fromString(form.get("book"));
    String visit = "/site/" + book + "/visit/" + form.get("visit");
    served.form("/sites/new", form);
    Map<String, String> ticket = served.hidden(visit);
    ticket.putAll(Map.of("number", SCRIPT, "expires", "2026-12-01"));
    assertThat(served.form(visit + "/tickets", ticket).statusCode()).isEqualTo(200);
    Map<String, String> consent = served.hidden(visit);
    consent.putAll(Map.of("who", SCRIPT, "what", SCRIPT));
    assertThat(served.form(visit + "/consents", consent).statusCode()).isEqualTo(200);

    for (String path :
        List.of("/sites", "/sites?q=" + "%3Cscript%3E", "/site/" + book, visit, "/who")) {
      assertThat(served.get(path).body())
          .as(path)
          .doesNotContain("<script>alert")
          .doesNotContain("<img src=x");
    }
    assertThat(served.get(visit).body()).contains("&lt;script&gt;alert(1)");
  }

  @Test
  void ordersWithoutTheirTokenAreRefused() {
    UUID book = served.site("1 Lock Street (invented)", "");
    Map<String, String> form = served.hidden("/sites/new");
    Map<String, String> bare = new HashMap<>(form);
    bare.remove("token");
    Map<String, String> forged = new HashMap<>(form);
    forged.put("token", "0".repeat(64));

    assertThat(served.form("/sites/new", bare).statusCode()).isEqualTo(403);
    assertThat(served.form("/sites/new", forged).statusCode()).isEqualTo(403);
    assertThat(
            served
                .post("/site/" + book + "/enter", "application/json", "{\"entries\":[]}")
                .statusCode())
        .isEqualTo(403);
    assertThat(
            served
                .post("/site/" + book + "/enter", "text/plain", "token=" + form.get("token"))
                .statusCode())
        .isEqualTo(403);
  }

  @Test
  void ordersFromElsewhereAreRefused() {
    Map<String, String> form = served.hidden("/sites/new");
    form.put("address", "9 Forged Way");
    HttpRequest.Builder none =
        served.request("/sites/new", "Content-Type", "application/x-www-form-urlencoded");
    HttpRequest.BodyPublisher body = HttpRequest.BodyPublishers.ofString(Served.encoded(form));

    assertThat(served.send(none.copy().POST(body).build()).statusCode()).isEqualTo(403);
    assertThat(
            served
                .send(none.copy().header("Origin", "http://elsewhere.example").POST(body).build())
                .statusCode())
        .isEqualTo(403);
    assertThat(served.form("/sites/new", form, "Sec-Fetch-Site", "cross-site").statusCode())
        .isEqualTo(403);
    assertThat(served.form("/sites/new", form, "Sec-Fetch-Site", "same-site").statusCode())
        .isEqualTo(403);
    assertThat(served.archive().sites("")).isEmpty();
  }

  @Test
  void aDeviceKeyThatIsNotOursIsNone() throws IOException {
    try (HttpClient other = HttpClient.newHttpClient()) {
      HttpRequest request =
          served
              .request(
                  "/look",
                  "Origin",
                  served.origin(),
                  "Content-Type",
                  "application/x-www-form-urlencoded",
                  "Cookie",
                  "daylight-device=" + "a".repeat(32) + "." + "b".repeat(64))
              .POST(HttpRequest.BodyPublishers.ofString("light=sun"))
              .build();
      assertThat(other.send(request, HttpResponse.BodyHandlers.ofString()).statusCode())
          .isEqualTo(403);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  @Test
  void cookiesAreKeptFromScriptsAndFromOtherPages() {
    List<String> set = served.get("/sites").headers().allValues("Set-Cookie");

    assertThat(set)
        .hasSize(1)
        .allMatch(one -> one.contains("HttpOnly") && one.contains("SameSite=Strict"));
    assertThat(served.get("/sites").headers().allValues("Set-Cookie")).isEmpty();
    assertThat(served.get("/sites").headers().firstValue("Content-Security-Policy").orElse(""))
        .contains("default-src 'self'", "form-action 'self'", "frame-ancestors 'none'")
        .doesNotContain("unsafe");
  }

  @Test
  void switchesAreRemembered() {
    Map<String, String> form = served.hidden("/sites");
    form.put("back", "/sites?q=x");
    form.put("light", "basement");
    HttpResponse<String> back = served.form("/look", form);
    assertThat(back.uri()).asString().endsWith("/sites?q=x");
    assertThat(back.body()).contains("data-light=\"basement\"");
    form.remove("light");
    form.put("language", "fr");
    assertThat(served.form("/look", form).body())
        .contains("lang=\"fr\"", "data-light=\"basement\"", "Nouveau site");
    form.remove("language");
    form.put("units", "metres");
    assertThat(served.form("/look", form).body()).contains("data-units=\"metres\"", "lang=\"fr\"");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "//elsewhere.example",
        "https://elsewhere.example/",
        "/\\elsewhere.example",
        "javascript:x",
        ""
      })
  void nobodyIsLedAwayBySwitching(String back) {
    assertThat(LookPages.back(back)).isEqualTo("/sites");
  }

  @Test
  void theLanguageIsTheBrowsersUntilSomebodyChooses() {
    assertThat(served.get("/sites", "Accept-Language", "fr-CA,fr;q=0.9,en;q=0.8").body())
        .contains("lang=\"fr\"", "data-units=\"metres\"");
    assertThat(served.get("/sites", "Accept-Language", "de, en-US;q=0.5").body())
        .contains("lang=\"en\"", "data-units=\"feet\"");
    assertThat(served.get("/sites", "Accept-Language", ";;;").statusCode()).isEqualTo(200);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/site/nobody",
        "/site/00000000-0000-0000-0000-000000000000",
        "/site/0-0-0-0-0",
        "/site/..%2F..%2Fetc/entries",
        "/site/00000000-0000-0000-0000-000000000000/visit/00000000-0000-0000-0000-000000000000",
        "/site/00000000-0000-0000-0000-000000000000/answers",
        "/site/00000000-0000-0000-0000-000000000000/signature/..%2F..%2Farchive.db",
        "/field/..%2F..%2Fweb%2Flook.css",
        "/field/en.properties",
        "/field/FieldPages.class"
      })
  void whatIsNotThereIsMissing(String path) {
    HttpResponse<String> page = served.get(path);

    assertThat(page.statusCode()).isIn(400, 404);
    assertThat(page.body()).doesNotContain("Exception").doesNotContain("daylight.app");
  }

  @Test
  void whoWritesIsAskedOnceAndGoesWithEveryEntry() {
    UUID book = served.site("3 Bell Court (invented)", "");

    assertThat(served.get("/sites/new").body()).doesNotContain("name=\"person\"");
    assertThat(served.archive().history(book, book).getFirst().by().person()).isEqualTo("Kim");
    Map<String, String> form = served.hidden("/who");
    form.putAll(Map.of("person", " Lou \n", "device", "truck"));
    served.form("/who", form);
    Map<String, String> visit = served.hidden("/site/" + book);
    visit.putAll(Map.of("date", "2026-12-01", "complaint", "Again."));
    served.form("/site/" + book + "/visits", visit);
    var by = served.archive().history(book, UUID.fromString(visit.get("visit"))).getFirst().by();
    assertThat(by.person()).isEqualTo("Lou");
    assertThat(by.device()).isEqualTo("truck");
  }

  @Test
  void aVisitToComeDoesNotHideWhatWasMeasured() throws IOException {
    UUID book = served.site("6 Tannery Lane (invented)", "It backs up.");
    String before = served.get("/site/" + book + "/answers").body();
    Archived.fill(served, "/site/" + book);
    HttpResponse<String> page = served.get("/site/" + book + "/answers");

    assertThat(before).doesNotContain("through the bore");
    assertThat(page.body()).contains("STOP", "through the bore", "November 27, 2026");
  }

  @ParameterizedTest
  @ValueSource(strings = {"token=%zz", "token", "=", "%", "token=x&token=y"})
  void aFormThatIsNoneIsRefused(String body) {
    HttpResponse<String> reply = served.post("/look", "application/x-www-form-urlencoded", body);

    assertThat(reply.statusCode()).isIn(400, 403);
    assertThat(reply.body()).doesNotContain("Exception");
  }

  @Test
  void aSignatureThatIsNoSmallPictureIsRefused() {
    UUID book = served.site("4 Kiln Yard (invented)", "");
    String visit = Archived.lastVisit(served, "/site/" + book);
    for (String picture :
        List.of(
            "data:image/png;base64,AAAA",
            "data:image/png;base64,%%%",
            "data:image/svg+xml;base64,PHN2Zz4=",
            "data:image/png;base64," + PNG_OF_60000_BY_60000,
            "../../archive.db")) {
      Map<String, String> form = served.hidden(visit);
      form.putAll(Map.of("who", "owner", "what", "camera", "signature", picture));
      HttpResponse<String> page = served.form(visit + "/consents", form);

      assertThat(page.statusCode()).as(picture).isEqualTo(422);
      assertThat(page.body()).contains("is no small picture (PNG)");
    }
    assertThat(BookNow.of(served.archive(), book).orElseThrow().in("consents")).isEmpty();
  }

  @Test
  void theSiteIsAnsweredAsItIsNow() {
    UUID book = served.site("8 Ferry Road (invented)", "The yard is wet.");
    HttpResponse<String> page = served.get("/site/" + book + "/answers");

    assertThat(page.uri().getPath()).isEqualTo("/property/site-" + book + "/");
    assertThat(page.body()).contains("8 Ferry Road (invented)");
  }
}
