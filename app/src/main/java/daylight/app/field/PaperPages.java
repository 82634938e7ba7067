package daylight.app.field;

import com.fasterxml.jackson.databind.node.ObjectNode;
import daylight.app.web.Sent;
import daylight.app.web.Types;
import daylight.archive.Sha256;
import daylight.archive.store.Arrival;
import daylight.archive.store.By;
import daylight.archive.store.Entered;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;

/** Tickets and consents as they are written down, and the signatures that belong to them. */
final class PaperPages implements Pages {
  private final Office office;
  private final VisitPages visits;

  PaperPages(Office office, VisitPages visits) {
    this.office = office;
    this.visits = visits;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    String visit = "/site/{book}/visit/{visit}/";
    routes.post(visit + "tickets", reply -> office.withVisit(reply, (b, v) -> ticket(reply, b, v)));
    routes.post(
        visit + "consents", reply -> office.withVisit(reply, (b, v) -> consent(reply, b, v)));
    routes.get("/site/{book}/signature/{sha}", this::signature);
  }

  private void ticket(Context reply, BookNow book, BookNow.Row visit) {
    Optional<By> by = office.writer(reply);
    if (by.isEmpty()) {
      return;
    }
    Caller caller = office.caller(reply);
    Trouble trouble = new Trouble();
    ObjectNode keys = EntryJson.object();
    keys.put("number", wanted(reply, "number", "before.ticket.number.wanted", trouble));
    for (String day : List.of("issued", "expires")) {
      String given = given(reply, day);
      if (!given.isEmpty()) {
        keys.put(day, given);
        if (!Trouble.isDay(given)) {
          trouble.at(day, caller.say("form.day", given));
        }
      }
    }
    trouble.typed(keys);
    UUID entry = identity(reply, "entry");
    List<Entered> entries = List.of(EntryJson.fresh(entry, visit.entry(), "tickets", keys));
    enter(reply, book, visit, entries, by.get(), trouble, "#tickets");
  }

  private void consent(Context reply, BookNow book, BookNow.Row visit) {
    Optional<By> by = office.writer(reply);
    if (by.isEmpty()) {
      return;
    }
    Trouble trouble = new Trouble();
    ObjectNode keys = EntryJson.object();
    keys.put("who", wanted(reply, "who", "before.consent.who.wanted", trouble));
    keys.put("what", wanted(reply, "what", "before.consent.what.wanted", trouble));
    keys.put("when", by.get().at().toString());
    trouble.typed(keys);
    List<Entered> entries = new ArrayList<>();
    String drawn = given(reply, "signature");
    if (!drawn.isEmpty() && trouble.isEmpty()) {
      Optional<byte[]> picture = Signature.read(drawn);
      if (picture.isEmpty()) {
        trouble.at("signature", office.caller(reply).say("before.consent.no_picture"));
      } else {
        UUID media = identity(reply, "media");
        String label = "signature " + media.toString().substring(0, 4);
        keys.put("signature", label);
        ObjectNode file = keep(book, media, label, picture.get(), by.get());
        entries.add(EntryJson.fresh(media, visit.entry(), "media", file));
      }
    }
    entries.add(EntryJson.fresh(identity(reply, "entry"), visit.entry(), "consents", keys));
    enter(reply, book, visit, entries, by.get(), trouble, "#consents");
  }

  /** Puts a picture where recordings lie; what a book says of it. */
  private ObjectNode keep(BookNow book, UUID media, String label, byte[] picture, By by) {
    String name = Signature.NAME + media + ".png";
    try {
      Sha256 content =
          Sha256.copied(new ByteArrayInputStream(picture), OutputStream.nullOutputStream());
      Arrival arrival =
          office
              .archive()
              .media()
              .receive(content, picture.length, 0, new ByteArrayInputStream(picture));
      if (!(arrival instanceof Arrival.Whole)) {
        throw new IOException("the signature could not be kept");
      }
      office.archive().nameMedia(book.book(), name, content, by);
      return EntryJson.object()
          .put("label", label)
          .put("kind", "document")
          .put("file", name)
          .put("sha256", content.hex());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void enter(
      Context reply,
      BookNow book,
      BookNow.Row visit,
      List<Entered> entries,
      By by,
      Trouble trouble,
      String where) {
    if (trouble.isEmpty()) {
      trouble.addAll(office.archive().enter(book.book(), entries, by), office.caller(reply).look());
    }
    if (trouble.isEmpty()) {
      reply.redirect(VisitPages.address(book.book(), visit.entry()) + where, HttpStatus.SEE_OTHER);
    } else {
      reply.status(422);
      visits.show(reply, book, visit, trouble);
    }
  }

  /** A signature that the book names: a picture and nothing else. */
  private void signature(Context reply) throws IOException {
    String wanted = reply.pathParam("sha");
    Optional<UUID> book = Office.id(reply.pathParam("book"));
    Optional<Path> file =
        book.flatMap(
            id ->
                office.archive().mediaOf(id).entrySet().stream()
                    .filter(one -> one.getKey().startsWith(Signature.NAME))
                    .filter(one -> one.getValue().hex().equals(wanted))
                    .findFirst()
                    .flatMap(one -> office.archive().media().file(one.getValue())));
    if (file.isEmpty()) {
      reply.status(HttpStatus.NOT_FOUND);
    } else {
      Sent.kept(reply, Types.of("signature.png"), Files.readAllBytes(file.get()));
    }
  }

  private String wanted(Context request, String name, String why, Trouble trouble) {
    String given = given(request, name);
    if (given.isEmpty()) {
      trouble.at(name, office.caller(request).say(why));
    }
    return given;
  }

  private static UUID identity(Context request, String name) {
    return Office.id(given(request, name)).orElseGet(UUID::randomUUID);
  }

  private static String given(Context request, String name) {
    return Objects.requireNonNullElse(request.formParam(name), "").strip();
  }
}
