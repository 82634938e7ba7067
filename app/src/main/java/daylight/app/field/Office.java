package daylight.app.field;

import com.fasterxml.jackson.databind.node.ObjectNode;
import daylight.app.web.Look;
import daylight.app.web.Types;
import daylight.archive.store.Archive;
import daylight.archive.store.By;
import daylight.line.measure.Complaint;
import daylight.line.measure.Statement;
import daylight.report.words.Words;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.regex.Pattern;

/** What every maker of pages needs: the archive, who asks, and a way to show a page. */
final class Office {
  private static final Pattern UUID_TEXT =
      Pattern.compile("[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}");

  private static final int WHO_FIRST = 428;

  private final Archive archive;

  Office(Archive archive) {
    this.archive = archive;
  }

  /** The day on this machine. */
  static LocalDate today() {
    return LocalDate.now(ZoneId.systemDefault());
  }

  Archive archive() {
    return archive;
  }

  Caller caller(Context request) {
    return Gate.caller(request);
  }

  /** The whole page, in the caller's language and light. */
  void show(Context reply, Sheet sheet) {
    String html = new SheetWriter(caller(reply), address(reply)).write(sheet);
    reply.contentType(Types.HTML).result(html.getBytes(StandardCharsets.UTF_8));
  }

  /** Where one comes back to it: of what a form brought up, the page that the form stands on. */
  private static String address(Context reply) {
    String from = reply.header("Referer");
    if (reply.method().equals(HandlerType.POST) && from != null) {
      return from.replaceFirst("^https?://[^/]*", "");
    }
    String asked = reply.queryString();
    return asked == null ? reply.path() : reply.path() + "?" + asked;
  }

  /** An identity in an address, written as identities are; empty for anything else. */
  static Optional<UUID> id(String text) {
    return UUID_TEXT.matcher(text).matches()
        ? Optional.of(UUID.fromString(text))
        : Optional.empty();
  }

  /** The book in the address, as it is now; what is not there is said to be missing. */
  void withBook(Context reply, Consumer<BookNow> then) {
    id(reply.pathParam("book"))
        .flatMap(book -> BookNow.of(archive, book))
        .ifPresentOrElse(then, () -> reply.status(HttpStatus.NOT_FOUND));
  }

  /** The visit in the address. */
  void withVisit(Context reply, VisitNow then) {
    withBook(
        reply,
        book ->
            id(reply.pathParam("visit"))
                .flatMap(book::find)
                .filter(row -> row.section().equals("visits"))
                .ifPresentOrElse(
                    visit -> then.show(book, visit), () -> reply.status(HttpStatus.NOT_FOUND)));
  }

  /** What is done with a visit. */
  @FunctionalInterface
  interface VisitNow {
    void show(BookNow book, BookNow.Row visit);
  }

  /**
   * Who writes. Where nobody said so yet, the page that asks is shown first and leads back; what a
   * form sent goes along and comes again with the name. Empty then.
   */
  Optional<By> writer(Context reply) {
    Caller caller = caller(reply);
    if (caller.person() != null) {
      return caller.by();
    }
    if (!reply.method().equals(HandlerType.POST)) {
      reply.redirect("/who?back=" + Forms.encoded(reply.path()), HttpStatus.SEE_OTHER);
      return Optional.empty();
    }
    String given = reply.formParam(WhoForm.PERSON);
    String person = Cookies.name(given);
    if (person == null) {
      String wrong = given == null ? null : caller.say("who.person.wanted");
      reply.status(wrong == null ? 200 : 422);
      show(reply, WhoForm.sheet(caller, reply.path(), WhoForm.typed(reply), wrong));
      return Optional.empty();
    }
    String named = Cookies.name(reply.formParam(WhoForm.DEVICE));
    String device = named == null || caller.standing() != Standing.HERE ? caller.device() : named;
    Cookies.set(reply, Cookies.WHO, Cookies.who(person, device));
    return new Caller(
            caller.standing(), caller.number(), caller.token(), caller.look(), person, device)
        .by();
  }

  /** Who writes, for a script, which is told where nobody said so yet; empty then. */
  Optional<By> scribe(Context reply) {
    Optional<By> by = caller(reply).by();
    if (by.isEmpty()) {
      refuse(reply, WHO_FIRST, "enter.who");
    }
    return by;
  }

  /** What was sent along; empty where it is too much, which is said. */
  Optional<byte[]> body(Context reply) throws IOException {
    try (InputStream in = reply.bodyInputStream()) {
      // One byte more than is allowed, so that too much is seen to be.
      byte[] body = in.readNBytes(Gate.LARGEST + 1);
      if (body.length <= Gate.LARGEST) {
        return Optional.of(body);
      }
    }
    refuse(reply, 413, "gate.too_large");
    return Optional.empty();
  }

  /** Tells a script why nothing was done. */
  void refuse(Context reply, int status, String why, Object... told) {
    json(reply.status(status), EntryJson.object().put("error", caller(reply).say(why, told)));
  }

  /** An answer to a script. */
  static void json(Context reply, ObjectNode out) {
    reply.contentType(Types.of("reply.json")).result(out.toString());
  }

  /** What the reader has to say against something, in the words of whoever looks. */
  static List<String> said(List<Complaint> complaints, Look look) {
    Words words = Words.of(look.language(), look.shown());
    return complaints.stream()
        .map(one -> words.say(new Statement(one.code(), one.arguments())))
        .toList();
  }
}
