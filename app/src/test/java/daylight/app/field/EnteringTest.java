package daylight.app.field;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Entries as scripts send them. */
class EnteringTest {
  private static final JsonMapper JSON = new JsonMapper();

  @TempDir private Path folder = Path.of("");
  private Served served;
  private UUID book = new UUID(0, 0);
  private UUID site = new UUID(0, 0);
  private UUID visit = new UUID(0, 0);

  @BeforeEach
  void serve() throws IOException {
    served = new Served(folder.resolve("archive"));
    book = served.site("14 Elder Row (invented)", "It backs up.");
    BookNow now = BookNow.of(served.archive(), book).orElseThrow();
    site = now.site().orElseThrow().entry();
    visit = now.visits().getFirst().entry();
  }

  @AfterEach
  void close() {
    served.close();
  }

  private static String entry(UUID entry, UUID parent, String section, int base, String keys) {
    return "{\"entry\":\"%s\",\"parent\":\"%s\",\"section\":\"%s\",\"base\":%d,\"keys\":%s}"
        .formatted(entry, parent, section, base, keys);
  }

  private JsonNode sent(String... entries) throws IOException {
    HttpResponse<String> reply =
        served.enter(book, "{\"entries\":[" + String.join(",", entries) + "]}");
    assertThat(reply.statusCode()).as(reply.body()).isEqualTo(200);
    return JSON.readTree(reply.body()).get("entries");
  }

  @Test
  void anEntryIsKeptOnceHoweverOftenItIsSent() throws IOException {
    UUID node = UUID.randomUUID();
    String keys = "{\"label\":\"C1\",\"kind\":\"access\",\"what\":null}";
    String one = entry(node, site, "nodes", 0, keys);

    assertThat(sent(one).get(0).get("state").asText()).isEqualTo("kept");
    JsonNode again = sent(one).get(0);
    assertThat(again.get("state").asText()).isEqualTo("same");
    assertThat(again.get("number").asInt()).isEqualTo(1);
    assertThat(served.archive().history(book, node)).hasSize(1);
    JsonNode now =
        JSON.readTree(served.get("/site/" + book + "/entries?section=nodes").body()).get("entries");
    assertThat(now).hasSize(1);
    assertThat(now.get(0).get("keys").toString())
        .isEqualTo("{\"label\":\"C1\",\"kind\":\"access\"}");
    assertThat(now.get(0).get("parent").asText()).isEqualTo(site.toString());
  }

  @Test
  void whoComesLaterIsShownWhatItSaysNow() throws IOException {
    UUID node = UUID.randomUUID();
    sent(entry(node, site, "nodes", 0, "{\"label\":\"C1\",\"kind\":\"access\"}"));
    sent(
        entry(node, site, "nodes", 1, "{\"label\":\"C1\",\"kind\":\"access\",\"what\":\"north\"}"));
    JsonNode late =
        sent(entry(node, site, "nodes", 1, "{\"label\":\"C1\",\"kind\":\"outlet\"}")).get(0);

    assertThat(late.get("state").asText()).isEqualTo("clash");
    assertThat(late.get("number").asInt()).isEqualTo(2);
    assertThat(late.get("now").get("what").asText()).isEqualTo("north");
  }

  @Test
  void whatTheReaderWouldRefuseIsWrongAndKeepsNothingElseOut() throws IOException {
    UUID bad = UUID.randomUUID();
    UUID good = UUID.randomUUID();
    JsonNode both =
        sent(
            entry(
                bad,
                visit,
                "locates",
                0,
                "{\"label\":\"L1\",\"cable\":\"12 elephants\",\"pass\":\"P1\"}"),
            entry(good, site, "nodes", 0, "{\"label\":\"C1\",\"kind\":\"access\"}"));

    assertThat(both.get(0).get("state").asText()).isEqualTo("wrong");
    assertThat(both.get(0).get("complaints").toString()).contains("12 elephants");
    assertThat(both.get(0).get("at").toString()).contains("cable");
    assertThat(both.get(1).get("state").asText()).isEqualTo("kept");
    assertThat(served.archive().history(book, bad)).isEmpty();
  }

  @Test
  void anEntryIsWithdrawnAndStaysInItsHistory() throws IOException {
    UUID node = UUID.randomUUID();
    sent(entry(node, site, "nodes", 0, "{\"label\":\"C1\",\"kind\":\"access\"}"));
    assertThat(sent(entry(node, site, "nodes", 1, "null")).get(0).get("state").asText())
        .isEqualTo("kept");

    assertThat(BookNow.of(served.archive(), book).orElseThrow().in("nodes")).isEmpty();
    assertThat(served.archive().history(book, node)).hasSize(2);
  }

  @Test
  void numbersAreKeptAsTheyWereWritten() throws IOException {
    UUID node = UUID.randomUUID();
    sent(entry(node, site, "nodes", 0, "{\"label\":\"C1\",\"kind\":\"access\",\"what\":12.50}"));

    assertThat(served.archive().written(book).orElseThrow()).contains("what: 12.50");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "nonsense",
        "[]",
        "{\"entries\":[]}",
        "{\"entries\":{}}",
        "{\"entries\":[{}]}",
        "{\"entries\":[1]}",
        "{\"entries\":[],\"entries\":[]}",
        "{\"entries\":[]} more",
        "{\"entries\":[{\"entry\":\"../../x\",\"parent\":null,\"section\":\"\",\"keys\":{}}]}",
        "{\"entries\":[{\"entry\":\"11111111-1111-1111-1111-111111111111\",\"parent\":\"x\","
            + "\"section\":\"nodes\",\"base\":0,\"keys\":{}}]}",
        "{\"entries\":[{\"entry\":\"11111111-1111-1111-1111-111111111111\",\"parent\":"
            + "\"11111111-1111-1111-1111-111111111112\",\"section\":\"../nodes\",\"base\":0,\"keys\":{}}]}",
        "{\"entries\":[{\"entry\":\"11111111-1111-1111-1111-111111111111\",\"parent\":"
            + "\"11111111-1111-1111-1111-111111111112\",\"section\":\"nodes\",\"base\":-1,\"keys\":{}}]}",
        "{\"entries\":[{\"entry\":\"11111111-1111-1111-1111-111111111111\",\"parent\":"
            + "\"11111111-1111-1111-1111-111111111112\",\"section\":\"nodes\",\"base\":0,\"keys\":"
            + "{\"id\":\"another\"}}]}"
      })
  void whatIsNoListOfEntriesIsRefusedClearly(String body) throws IOException {
    HttpResponse<String> reply = served.enter(book, body);

    assertThat(reply.statusCode()).isEqualTo(400);
    assertThat(JSON.readTree(reply.body()).get("error").asText()).isNotBlank();
  }

  @Test
  void whatIsTooDeepTooManyOrTooLargeIsRefused() {
    String deep =
        "{\"entries\":[{\"entry\":\""
            + UUID.randomUUID()
            + "\",\"parent\":null,\"section\":\"\",\"keys\":"
            + "{\"a\":".repeat(100_00)
            + "1"
            + "}".repeat(100_00)
            + "}]}";
    String many =
        "{\"entries\":["
            + (entry(UUID.randomUUID(), site, "nodes", 0, "{}") + ",").repeat(EntryJson.MOST)
            + entry(UUID.randomUUID(), site, "nodes", 0, "{}")
            + "]}";
    String large = "{\"entries\":[\"" + "x".repeat(Gate.LARGEST) + "\"]}";

    assertThat(served.enter(book, deep).statusCode()).isEqualTo(400);
    assertThat(served.enter(book, many).statusCode()).isEqualTo(400);
    assertThat(served.enter(book, large).statusCode()).isEqualTo(413);
    assertThat(served.get("/site/" + book).statusCode()).isEqualTo(200);
  }

  @Test
  void aFormThatIsTooLargeIsRefused() {
    var form = served.hidden("/sites/new");
    form.put("address", "x".repeat(Gate.LARGEST));

    assertThat(served.form("/sites/new", form).statusCode()).isEqualTo(413);
  }

  @Test
  void nothingIsWrittenForNobody() throws IOException {
    try (Served other = new Served(folder.resolve("other"))) {
      HttpResponse<String> reply =
          other.enter(book, "{\"entries\":[" + entry(book, book, "nodes", 0, "{}") + "]}");

      assertThat(reply.statusCode()).isEqualTo(428);
    }
  }
}
