package daylight.app.field;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import daylight.app.web.Types;
import daylight.archive.store.By;
import daylight.archive.store.Entered;
import daylight.archive.store.Entering;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Entries of a book as JSON: what is written by scripts, and what is there. */
final class EntryPages implements Pages {
  private static final int WHO_FIRST = 428;
  private static final int DISK = 507;

  private final Office office;

  EntryPages(Office office) {
    this.office = office;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/site/{book}/entries", this::entries);
    routes.post("/site/{book}/enter", this::enter);
  }

  private void entries(Context reply) {
    String section = reply.queryParam("section");
    office.withBook(
        reply,
        book -> {
          ObjectNode out = EntryJson.object();
          ArrayNode rows = out.putArray("entries");
          book.rows().stream()
              .filter(row -> section == null || row.section().equals(section))
              .forEach(row -> rows.add(EntryJson.row(row)));
          json(reply, out);
        });
  }

  private void enter(Context reply) throws IOException {
    Optional<UUID> book = Office.id(reply.pathParam("book"));
    if (book.isEmpty()) {
      reply.status(HttpStatus.NOT_FOUND);
      return;
    }
    Caller caller = office.caller(reply);
    Optional<By> by = caller.by();
    if (by.isEmpty()) {
      refuse(reply, WHO_FIRST, caller.say("enter.who"));
      return;
    }
    byte[] body = body(reply);
    if (body.length > Gate.LARGEST) {
      refuse(reply, 413, caller.say("gate.too_large"));
      return;
    }
    switch (EntryJson.read(body)) {
      case EntryJson.Sent.Misread(String why, String at) -> refuse(reply, 400, caller.say(why, at));
      case EntryJson.Sent.Entries(List<Entered> entries) ->
          tell(reply, entries, office.archive().enter(book.get(), entries, by.get()));
    }
  }

  /** No more than is allowed and one byte, so that too much is seen to be. */
  private static byte[] body(Context request) throws IOException {
    try (InputStream in = request.bodyInputStream()) {
      return in.readNBytes(Gate.LARGEST + 1);
    }
  }

  private void tell(Context reply, List<Entered> entries, List<Entering> outcomes) {
    ObjectNode out = EntryJson.object();
    ArrayNode rows = out.putArray("entries");
    Look look = office.caller(reply).look();
    for (int i = 0; i < entries.size(); i++) {
      rows.add(EntryJson.outcome(entries.get(i).entry(), outcomes.get(i), look.shown()));
    }
    if (outcomes.stream().anyMatch(Entering.NotWritten.class::isInstance)) {
      reply.status(DISK);
    }
    json(reply, out);
  }

  private static void refuse(Context reply, int status, String why) {
    reply.status(status);
    json(reply, EntryJson.object().put("error", why));
  }

  private static void json(Context reply, ObjectNode out) {
    reply.contentType(Types.of("entries.json")).result(out.toString());
  }
}
