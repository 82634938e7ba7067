package daylight.app.field;

import com.fasterxml.jackson.databind.node.ObjectNode;
import daylight.archive.store.By;
import daylight.line.measure.Shown;
import daylight.report.markup.Tag;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/**
 * The pushes of a visit: one is begun, and what the camera meets is written down in the basement.
 */
final class PushPages implements Pages {
  private final Office office;

  PushPages(Office office) {
    this.office = office;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    String visit = "/site/{book}/visit/{visit}/push";
    routes.get(
        visit,
        reply ->
            office.withVisit(
                reply, (book, row) -> ask(reply, book, row, PushForm.fresh(), new Trouble())));
    routes.post(visit, reply -> office.withVisit(reply, (book, row) -> begin(reply, book, row)));
    routes.get("/site/{book}/pass/{pass}", reply -> office.withBook(reply, b -> pass(reply, b)));
  }

  @Override
  public List<Link> ofVisit(UUID book, UUID visit, Phrases phrases) {
    return List.of(
        new Link(
            VisitPages.address(book, visit) + "/push",
            phrases.say("push.link"),
            phrases.say("push.link.why")));
  }

  private static String address(UUID book, UUID pass) {
    return "/site/" + book + "/pass/" + pass;
  }

  private void ask(
      Context reply, BookNow book, BookNow.Row visit, PushForm typed, Trouble trouble) {
    Caller caller = office.caller(reply);
    Phrases phrases = caller.phrases();
    List<Tag> contents = new ArrayList<>();
    contents.add(Parts.heading(phrases.say("push.begin")));
    trouble.told(phrases).ifPresent(contents::add);
    List<BookNow.Row> passes = book.in(visit.entry(), "passes").toList();
    if (!passes.isEmpty()) {
      List<Link> links =
          passes.stream()
              .map(
                  row ->
                      new Link(
                          address(book.book(), row.entry()),
                          phrases.say("push.pass", row.label()),
                          phrases.count("kept.findings", book.in(row.entry(), "findings").count())))
              .toList();
      contents.add(Parts.links(links));
    }
    contents.add(
        typed.form(
            caller, VisitPages.address(book.book(), visit.entry()) + "/push", book, trouble));
    office.show(
        reply,
        Sheet.of(phrases.say("push.begin"), contents)
            .under(SitePages.step(book), VisitPages.step(phrases, book, visit))
            .about(book.book()));
  }

  private void begin(Context reply, BookNow book, BookNow.Row visit) {
    Optional<By> by = office.writer(reply);
    if (by.isEmpty()) {
      return;
    }
    PushForm typed = PushForm.read(reply);
    Trouble trouble = new Trouble();
    Optional<BookNow.Row> site = book.site();
    if (site.isEmpty()) {
      reply.status(HttpStatus.NOT_FOUND);
      return;
    }
    trouble.addAll(
        office
            .archive()
            .enter(book.book(), typed.entries(book, site.get().entry(), visit.entry()), by.get()),
        office.caller(reply).look());
    if (trouble.isEmpty()) {
      reply.redirect(address(book.book(), typed.pass()), HttpStatus.SEE_OTHER);
    } else {
      reply.status(422);
      BookNow now = BookNow.of(office.archive(), book.book()).orElse(book);
      ask(reply, now, visit, typed, trouble);
    }
  }

  private void pass(Context reply, BookNow book) {
    Optional<BookNow.Row> pass =
        Office.id(reply.pathParam("pass"))
            .flatMap(book::find)
            .filter(row -> row.section().equals("passes"));
    Optional<BookNow.Row> visit = pass.map(BookNow.Row::parent).flatMap(book::find);
    if (pass.isEmpty() || visit.isEmpty()) {
      reply.status(HttpStatus.NOT_FOUND);
      return;
    }
    // On this page nothing may be refused for want of a name, so it is asked before.
    if (office.writer(reply).isEmpty()) {
      return;
    }
    Caller caller = office.caller(reply);
    Phrases phrases = caller.phrases();
    String title = phrases.say("push.pass", pass.get().label());
    ObjectNode about =
        EntryJson.object()
            .put("pass", pass.get().entry().toString())
            .put("visit", visit.get().entry().toString())
            .put("site", book.site().map(site -> site.entry().toString()).orElse(""))
            .put("unit", caller.look().shown() == Shown.METRES ? "m" : "ft");
    reply.header("Content-Security-Policy", PushFilmPart.POLICY);
    office.show(
        reply,
        Sheet.of(title, new PushBoard(phrases).told(title, about))
            .under(SitePages.step(book), VisitPages.step(phrases, book, visit.get()))
            .with("push.js")
            .about(book.book()));
  }
}
