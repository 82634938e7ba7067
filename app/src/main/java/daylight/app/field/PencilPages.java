package daylight.app.field;

import daylight.archive.store.By;
import daylight.archive.store.Entered;
import daylight.archive.store.Entering;
import daylight.archive.store.EntryTrouble;
import daylight.line.measure.Complaint;
import daylight.report.markup.Tag;
import daylight.report.words.Words;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;

/** Pencil sheets of a visit: printed before, typed afterwards, on one page each. */
final class PencilPages implements Pages {
  private static final String STYLE = "/field/pencil.css";

  private final Office office;

  PencilPages(Office office) {
    this.office = office;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    String sheets = "/site/{book}/visit/{visit}/sheets";
    routes.get(sheets, reply -> office.withVisit(reply, (b, v) -> print(reply, b, v)));
    routes.get(
        sheets + "/typed",
        reply ->
            office.withVisit(
                reply,
                (b, v) ->
                    type(
                        reply,
                        b,
                        v,
                        new Typed(Pencil.fresh(sheet(reply)), PushForm.fresh(), true),
                        new Trouble())));
    routes.post(sheets + "/typed", reply -> office.withVisit(reply, (b, v) -> take(reply, b, v)));
    routes.get(sheets + "/kept", reply -> office.withVisit(reply, (b, v) -> kept(reply, b, v)));
  }

  @Override
  public List<Link> ofVisit(UUID book, UUID visit, Phrases phrases) {
    String sheets = address(book, visit);
    return List.of(
        new Link(sheets, phrases.say("pencil.link"), phrases.say("pencil.link.why")),
        new Link(
            sheets + "/typed", phrases.say("pencil.typed"), phrases.say("pencil.typed.link.why")));
  }

  private static String address(UUID book, UUID visit) {
    return VisitPages.address(book, visit) + "/sheets";
  }

  private void show(
      Context reply, BookNow book, BookNow.Row visit, String title, List<Tag> contents) {
    Phrases phrases = office.caller(reply).phrases();
    office.show(
        reply,
        Sheet.of(phrases.say(title), contents)
            .under(
                SitePages.step(book),
                VisitPages.step(phrases, book, visit),
                step(phrases, book, visit))
            .with("pencil.js")
            .about(book.book()));
  }

  private static Sheet.Step step(Phrases phrases, BookNow book, BookNow.Row visit) {
    return new Sheet.Step(address(book.book(), visit.entry()), phrases.say("pencil.link"));
  }

  private static int sheet(Context request) {
    String asked = request.queryParam("sheet");
    return asked != null && asked.matches("[1-5]") ? Integer.parseInt(asked) : 1;
  }

  private static Tag style() {
    return Tag.of("link").with("rel", "stylesheet").with("href", STYLE);
  }

  private void print(Context reply, BookNow book, BookNow.Row visit) {
    Caller caller = office.caller(reply);
    List<Tag> contents = new ArrayList<>();
    contents.add(style());
    contents.addAll(
        new PencilSheets(caller, book, visit, sheet(reply))
            .told(address(book.book(), visit.entry())));
    show(reply, book, visit, "pencil.link", contents);
  }

  /**
   * What was typed.
   *
   * @param fresh whether nothing was yet
   */
  private record Typed(Pencil pencil, PushForm push, boolean fresh) {}

  private void type(Context reply, BookNow book, BookNow.Row visit, Typed typed, Trouble trouble) {
    // Asked before, so that nobody is asked after everything was typed.
    if (office.writer(reply).isEmpty()) {
      return;
    }
    Caller caller = office.caller(reply);
    Phrases phrases = caller.phrases();
    List<Tag> contents = new ArrayList<>();
    contents.add(style());
    contents.add(Parts.heading(phrases.say("pencil.typed")));
    trouble.told(phrases).ifPresent(contents::add);
    contents.addAll(
        new PencilForm(caller, book, visit, trouble)
            .told(
                address(book.book(), visit.entry()) + "/typed",
                typed.pencil(),
                typed.push(),
                typed.fresh()));
    show(reply, book, visit, "pencil.typed", contents);
  }

  private void take(Context reply, BookNow book, BookNow.Row visit) {
    Optional<By> by = office.writer(reply);
    if (by.isEmpty()) {
      return;
    }
    Optional<BookNow.Row> site = book.site();
    if (site.isEmpty()) {
      reply.status(HttpStatus.NOT_FOUND);
      return;
    }
    Typed typed = new Typed(Pencil.read(reply), PushForm.read(reply), false);
    if (reply.formParam("more") != null || reply.formParam("show") != null) {
      Pencil shown = reply.formParam("more") == null ? typed.pencil() : typed.pencil().more();
      type(reply, book, visit, new Typed(shown, typed.push(), false), new Trouble());
      return;
    }
    Caller caller = office.caller(reply);
    Trouble trouble = new Trouble();
    List<PencilCells.Step> steps =
        new PencilBook(
                caller, book, visit, site.get().entry(), typed.pencil(), typed.push(), trouble)
            .steps();
    if (!steps.isEmpty()) {
      List<Entered> entries = steps.stream().map(PencilCells.Step::entered).toList();
      List<Entering> outcomes = office.archive().enter(book.book(), entries, by.get());
      for (int i = 0; i < steps.size(); i++) {
        note(steps.get(i), outcomes.get(i), trouble, caller);
      }
    }
    if (trouble.isEmpty()) {
      reply.redirect(address(book.book(), visit.entry()) + "/kept", HttpStatus.SEE_OTHER);
    } else {
      reply.status(422);
      BookNow now = BookNow.of(office.archive(), book.book()).orElse(book);
      type(reply, now, visit, typed, trouble);
    }
  }

  private static void note(
      PencilCells.Step step, Entering outcome, Trouble trouble, Caller caller) {
    Pencil.Row row = step.row();
    switch (outcome) {
      case Entering.Kept(int number) -> noted(step, number);
      case Entering.Same(int number) -> noted(step, number);
      case Entering.Clash(int number, String now) -> {
        if (row == null) {
          trouble.at(step.otherwise(), caller.say("form.clash"));
        } else {
          // Who has read what it says now and sends it again means it.
          row.kept(step.entered().section(), number);
          trouble.at(step.otherwise(), caller.say("pencil.clash", now == null ? "–" : said(now)));
        }
      }
      case Entering.Wrong(List<Complaint> complaints) ->
          complaints.forEach(one -> wrong(step, one, trouble, caller));
      case Entering.NotWritten(var why) -> {
        String says = Words.of(caller.look().language(), caller.look().shown()).say(why);
        if (!says.equals(trouble.of("keep"))) {
          trouble.moreAt("keep", says);
        }
      }
    }
  }

  private static void noted(PencilCells.Step step, int number) {
    Pencil.Row row = step.row();
    if (row != null && step.entered().content() == null) {
      row.gone();
    } else if (row != null) {
      row.kept(step.entered().section(), number);
    }
  }

  /** What an entry says, for somebody who is to choose. */
  private static String said(String content) {
    return BookNow.keys(content).members().keySet().stream()
        .filter(key -> !key.equals("id"))
        .flatMap(
            key -> BookNow.text(BookNow.keys(content), key).stream().map(text -> key + " " + text))
        .collect(Collectors.joining(", "));
  }

  private static void wrong(
      PencilCells.Step step, Complaint complaint, Trouble trouble, Caller caller) {
    if (complaint.code() == EntryTrouble.NO_PARENT) {
      trouble.at(step.otherwise(), caller.say("pencil.waits"));
      return;
    }
    Map<String, String> cells = step.cells();
    String key = EntryJson.lastKey(complaint.place().path()).replaceFirst("\\[\\d+]$", "");
    Office.said(List.of(complaint), caller.look())
        .forEach(why -> trouble.moreAt(cells.getOrDefault(key, step.otherwise()), why));
  }

  private void kept(Context reply, BookNow book, BookNow.Row visit) {
    Phrases phrases = office.caller(reply).phrases();
    List<Link> links = new ArrayList<>();
    String to = VisitPages.address(book.book(), visit.entry());
    links.add(
        new Link(
            to + "/sheets/typed",
            phrases.say("pencil.another"),
            phrases.say("pencil.another.why")));
    links.add(new Link(to + "/push", phrases.say("push.link"), phrases.say("pencil.see.push")));
    links.add(new Link(to + "/walk", phrases.say("walk"), phrases.say("pencil.see.walk")));
    List<Tag> contents =
        List.of(
            style(),
            Parts.heading(phrases.say("pencil.typed")),
            PencilForm.kept(phrases, visit.entry(), VisitPages.counted(phrases, book, visit)),
            Parts.links(links));
    show(reply, book, visit, "pencil.typed", contents);
  }
}
