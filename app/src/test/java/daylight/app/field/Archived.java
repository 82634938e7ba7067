package daylight.app.field;

import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.Map;
import java.util.UUID;

/** An invented site with an earlier visit in which something was found, and one to come. */
final class Archived {
  private static final JsonMapper JSON = new JsonMapper();

  private Archived() {}

  static void fill(Served served, String site) throws IOException {
    UUID book = UUID.fromString(site.substring("/site/".length()));
    BookNow now = BookNow.of(served.archive(), book).orElseThrow();
    UUID place = now.site().orElseThrow().entry();
    UUID visit = now.visits().getFirst().entry();
    UUID pass = UUID.randomUUID();
    enter(
        served,
        book,
        UUID.randomUUID(),
        place,
        "nodes",
        "{'label':'C1','kind':'access','what':'cleanout in the basement floor'}");
    enter(
        served,
        book,
        UUID.randomUUID(),
        place,
        "nodes",
        "{'label':'O1','kind':'outlet','what':'ditch behind the shed'}");
    enter(
        served,
        book,
        UUID.randomUUID(),
        place,
        "reaches",
        "{'label':'R1','from':'C1','to':'O1','water':'forward','bore':'4 in','material':'clay'}");
    enter(
        served,
        book,
        pass,
        visit,
        "passes",
        "{'label':'P1','entry':'C1','walk':['R1'],'zero':{'reads':'0 ft'},'head':'self-righting'}");
    enter(
        served,
        book,
        UUID.randomUUID(),
        pass,
        "findings",
        "{'label':'F1','kind':'roots','cable':'23.6 ft','share':'15 %'}");
    enter(
        served,
        book,
        UUID.randomUUID(),
        pass,
        "findings",
        "{'label':'F2','kind':'foreign-pipe','cable':'31 ft'}");
    Map<String, String> form = served.hidden(site);
    form.putAll(Map.of("date", "2026-12-04", "complaint", "It backs up again."));
    served.form(site + "/visits", form);
    String path = lastVisit(served, site);
    Map<String, String> ticket = served.hidden(path);
    ticket.putAll(
        Map.of("number", "INVENTED-1204", "issued", "2026-11-26", "expires", "2026-12-10"));
    served.form(path + "/tickets", ticket);
  }

  static String lastVisit(Served served, String site) {
    UUID book = UUID.fromString(site.substring("/site/".length()));
    BookNow now = BookNow.of(served.archive(), book).orElseThrow();
    return site + "/visit/" + now.visits().getFirst().entry();
  }

  private static void enter(
      Served served, UUID book, UUID entry, UUID parent, String section, String keys)
      throws IOException {
    ObjectNode one = JSON.createObjectNode();
    one.put("entry", entry.toString()).put("parent", parent.toString());
    one.put("section", section).put("base", 0);
    one.set("keys", JSON.readTree(keys.replace('\'', '"')));
    ObjectNode all = JSON.createObjectNode();
    all.putArray("entries").add(one);
    String reply = served.enter(book, all.toString()).body();
    if (!reply.contains("\"kept\"")) {
      throw new IllegalStateException(section + ": " + reply);
    }
  }
}
