package daylight.app.field;

import com.fasterxml.jackson.databind.node.ObjectNode;
import daylight.archive.store.By;
import daylight.report.markup.Tag;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;

/** The page of a site: its visits, what is kept of it, and ways on. */
final class SitePages implements Pages {
  /** What is told of a site in numbers, by section. */
  private static final List<String> ON_SITE =
      List.of("nodes", "reaches", "landmarks", "boundaries");

  private final Office office;
  private final List<Pages> makers;

  /**
   * @param makers of pages that links lead to
   */
  SitePages(Office office, List<Pages> makers) {
    this.office = office;
    this.makers = makers;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get(
        "/site/{book}",
        reply -> office.withBook(reply, book -> show(reply, book, "", new Trouble())));
    routes.post("/site/{book}/visits", reply -> office.withBook(reply, book -> plan(reply, book)));
  }

  static Sheet.Step step(BookNow book) {
    return new Sheet.Step("/site/" + book.book(), book.name());
  }

  private void show(Context reply, BookNow book, String complaint, Trouble trouble) {
    Caller caller = office.caller(reply);
    Phrases phrases = caller.phrases();
    List<Tag> contents = new ArrayList<>();
    contents.add(Parts.heading(book.name()));
    contents.addAll(Earlier.stops(book, phrases));
    book.site()
        .flatMap(site -> site.text("address"))
        .filter(address -> !address.equals(book.name()))
        .ifPresent(address -> contents.add(Parts.paragraph("lead", address)));
    if (book.site().flatMap(site -> site.text("invented")).filter("yes"::equals).isPresent()) {
      contents.add(Parts.paragraph("invented", phrases.say("site.invented")));
    }
    List<Link> links =
        makers.stream().flatMap(pages -> pages.ofSite(book.book(), phrases).stream()).toList();
    contents.add(Parts.links(links));
    contents.add(visits(phrases, book));
    contents.add(another(caller, book, complaint, trouble));
    contents.add(kept(phrases, book));
    office.show(reply, Sheet.of(book.name(), contents).under(step(book)).about(book.book()));
  }

  private static Tag visits(Phrases phrases, BookNow book) {
    Tag section = Parts.section("visits", phrases.say("site.visits"));
    List<BookNow.Row> visits = book.visits();
    return section.add(
        visits.isEmpty()
            ? Parts.paragraph("empty", phrases.say("site.visits.none"))
            : Parts.list("sites", visits.stream().map(one -> row(phrases, book, one)).toList()));
  }

  private static Tag row(Phrases phrases, BookNow book, BookNow.Row visit) {
    Tag link =
        Tag.of("a")
            .with("href", VisitPages.address(book.book(), visit.entry()))
            .add(Tag.of("strong", VisitPages.title(phrases, visit)));
    complaint(visit).ifPresent(words -> link.add(Tag.of("span", phrases.say("quoted", words))));
    String told = VisitPages.counted(phrases, book, visit);
    return Tag.of("li")
        .add(
            link.add(
                Tag.of("span", told.isEmpty() ? phrases.say("visit.nothing") : told)
                    .with("class", "quiet")));
  }

  /** The complaint in the owner's words. */
  static Optional<String> complaint(BookNow.Row visit) {
    return visit.text("complaint").or(() -> visit.text("complaint", "words"));
  }

  private static Tag another(Caller caller, BookNow book, String complaint, Trouble trouble) {
    Phrases phrases = caller.phrases();
    Tag section = Parts.section("another", phrases.say("site.another"));
    trouble.told(phrases).ifPresent(section::add);
    return section.add(
        Forms.form(caller, "/site/" + book.book() + "/visits")
            .add(Forms.hidden("visit", UUID.randomUUID().toString()))
            .add(
                Forms.line(
                    "date",
                    phrases.say("new.date"),
                    "date",
                    Office.today().toString(),
                    phrases.say("site.date.hint"),
                    trouble.of("date")))
            .add(
                Forms.line(
                    "complaint",
                    phrases.say("new.complaint"),
                    "textarea",
                    complaint,
                    phrases.say("new.complaint.hint"),
                    null))
            .add(Forms.submit(phrases.say("site.another.go"))));
  }

  private static Tag kept(Phrases phrases, BookNow book) {
    List<Tag> items = new ArrayList<>();
    for (String section : ON_SITE) {
      List<String> labels =
          book.in(section)
              .map(row -> row.text("label").orElse(""))
              .filter(l -> !l.isEmpty())
              .toList();
      if (!labels.isEmpty()) {
        items.add(
            Tag.of(
                "li",
                phrases.say(
                    "named",
                    phrases.count("kept." + section, labels.size()),
                    phrases.list(labels))));
      }
    }
    Tag section = Parts.section("kept", phrases.say("site.kept"));
    return section.add(
        items.isEmpty()
            ? Parts.paragraph("empty", phrases.say("site.kept.none"))
            : Parts.list("plain", items));
  }

  /** Writes a visit down, so that it can be prepared. */
  private void plan(Context reply, BookNow book) {
    String date = given(reply, "date");
    String complaint = given(reply, "complaint");
    Trouble trouble = new Trouble();
    Caller caller = office.caller(reply);
    if (!Trouble.isDay(date)) {
      trouble.at("date", caller.say("form.day", date));
    }
    Optional<By> by = office.writer(reply);
    if (by.isEmpty()) {
      return;
    }
    UUID visit = Office.id(given(reply, "visit")).orElseGet(UUID::randomUUID);
    if (trouble.isEmpty()) {
      ObjectNode keys = EntryJson.object().put("date", date);
      if (!complaint.isEmpty()) {
        keys.put("complaint", complaint);
      }
      trouble.addAll(
          office
              .archive()
              .enter(
                  book.book(),
                  List.of(EntryJson.fresh(visit, book.book(), "visits", keys)),
                  by.get()),
          caller.look());
    }
    if (trouble.isEmpty()) {
      reply.redirect(VisitPages.address(book.book(), visit), HttpStatus.SEE_OTHER);
    } else {
      reply.status(422);
      show(reply, book, complaint, trouble);
    }
  }

  private static String given(Context request, String name) {
    return Objects.requireNonNullElse(request.formParam(name), "").strip();
  }
}
