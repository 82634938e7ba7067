package daylight.app.field;

import daylight.archive.ReadBook;
import daylight.line.book.FieldBook;
import daylight.report.markup.Tag;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

/** The page of a visit: where to write, and what to know and have before one goes. */
final class VisitPages implements Pages {
  /** What is told of a visit in numbers, by section. */
  private static final List<String> DONE =
      List.of("passes", "locates", "exposures", "levels", "tests", "works", "media");

  private final Office office;
  private final List<Pages> makers;

  /**
   * @param makers of pages that links lead to
   */
  VisitPages(Office office, List<Pages> makers) {
    this.office = office;
    this.makers = makers;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get(
        "/site/{book}/visit/{visit}",
        reply -> office.withVisit(reply, (book, visit) -> show(reply, book, visit, new Trouble())));
  }

  static String address(UUID book, UUID visit) {
    return "/site/" + book + "/visit/" + visit;
  }

  static String title(Phrases phrases, BookNow.Row visit) {
    return visit
        .text("date")
        .map(day -> phrases.say("visit.of", day))
        .orElseGet(() -> phrases.say("visit.undated", visit.label()));
  }

  static Sheet.Step step(Phrases phrases, BookNow book, BookNow.Row visit) {
    return new Sheet.Step(address(book.book(), visit.entry()), title(phrases, visit));
  }

  /** What was measured in a visit, in numbers; empty where nothing was. */
  static String counted(Phrases phrases, BookNow book, BookNow.Row visit) {
    List<String> parts = new ArrayList<>();
    for (String section : DONE) {
      long count =
          book.in(visit.entry(), section)
              .filter(row -> !row.text("file").orElse("").startsWith(Signature.NAME))
              .count();
      if (count > 0) {
        parts.add(phrases.count("kept." + section, count));
      }
    }
    long findings = Earlier.findings(book, visit).size();
    if (findings > 0) {
      parts.add(phrases.count("kept.findings", findings));
    }
    return phrases.list(parts);
  }

  void show(Context reply, BookNow book, BookNow.Row visit, Trouble trouble) {
    Caller caller = office.caller(reply);
    Phrases phrases = caller.phrases();
    String title = title(phrases, visit);
    List<Tag> contents = new ArrayList<>();
    contents.add(Parts.heading(title));
    contents.addAll(Earlier.stops(book, phrases));
    trouble.told(phrases).ifPresent(contents::add);
    contents.add(Parts.paragraph("quiet", book.name()));
    SitePages.complaint(visit)
        .ifPresent(
            words ->
                contents.add(Tag.of("blockquote").add(Tag.of("p", phrases.say("quoted", words)))));
    List<Link> links =
        makers.stream()
            .flatMap(pages -> pages.ofVisit(book.book(), visit.entry(), phrases).stream())
            .toList();
    if (!links.isEmpty()) {
      contents.add(Parts.links(links));
    }
    String told = counted(phrases, book, visit);
    contents.add(
        Parts.paragraph(
            "quiet",
            told.isEmpty() ? phrases.say("visit.nothing") : phrases.say("visit.has", told)));
    FieldBook read = office.archive().book(book.book()).map(ReadBook::book).orElse(null);
    contents.addAll(new BeforeYouGo(caller, book, visit, read).told(trouble));
    office.show(
        reply,
        Sheet.of(title, contents)
            .under(SitePages.step(book), step(phrases, book, visit))
            .with("before.js")
            .about(book.book()));
  }
}
