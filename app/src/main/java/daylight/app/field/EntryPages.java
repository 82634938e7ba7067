package daylight.app.field;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import daylight.app.web.Look;
import daylight.archive.store.By;
import daylight.archive.store.Entered;
import daylight.archive.store.Entering;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Entries of a book as JSON: what is written by scripts, and what is there. */
final class EntryPages implements Pages {
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
          Office.json(reply, out);
        });
  }

  private void enter(Context reply) throws IOException {
    Optional<UUID> book = Office.id(reply.pathParam("book"));
    if (book.isEmpty()) {
      reply.status(HttpStatus.NOT_FOUND);
      return;
    }
    Optional<By> by = office.scribe(reply);
    Optional<byte[]> body = by.isEmpty() ? Optional.empty() : office.body(reply);
    if (by.isEmpty() || body.isEmpty()) {
      return;
    }
    switch (EntryJson.read(body.get())) {
      case EntryJson.Sent.Misread(String why, String at) -> office.refuse(reply, 400, why, at);
      case EntryJson.Sent.Entries(List<Entered> entries) ->
          tell(reply, entries, office.archive().enter(book.get(), entries, by.get()));
    }
  }

  private void tell(Context reply, List<Entered> entries, List<Entering> outcomes) {
    ObjectNode out = EntryJson.object();
    ArrayNode rows = out.putArray("entries");
    Look look = office.caller(reply).look();
    for (int i = 0; i < entries.size(); i++) {
      rows.add(EntryJson.outcome(entries.get(i).entry(), outcomes.get(i), look));
    }
    if (outcomes.stream().anyMatch(Entering.NotWritten.class::isInstance)) {
      reply.status(DISK);
    }
    Office.json(reply, out);
  }
}
