package daylight.app.field;

import com.fasterxml.jackson.databind.node.ObjectNode;
import daylight.app.web.Look;
import daylight.report.markup.Tag;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

/**
 * Ground levels of a visit by an instrument and a rod. The page shows heights and misclosures by
 * arithmetic, see {@code level-sums.js}; what they are worth is for the adjustment of the book.
 */
final class LevelPages implements Pages {
  private final Office office;

  LevelPages(Office office) {
    this.office = office;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/site/{book}/visit/{visit}/levels", this::levels);
  }

  @Override
  public List<Link> ofVisit(UUID book, UUID visit, Phrases phrases) {
    return List.of(
        new Link(
            VisitPages.address(book, visit) + "/levels",
            phrases.say("levels"),
            phrases.say("levels.why")));
  }

  private void levels(Context reply) {
    office.withVisit(
        reply,
        (book, visit) -> {
          if (office.writer(reply).isPresent()) {
            show(reply, book, visit);
          }
        });
  }

  private void show(Context reply, BookNow book, BookNow.Row visit) {
    Caller caller = office.caller(reply);
    Phrases phrases = caller.phrases();
    String title = phrases.say("levels");
    WalkUnits units = WalkUnits.of(book, caller.look());
    List<Tag> contents = new ArrayList<>();
    for (String style : List.of("walk.css", "levels.css")) {
      contents.add(Tag.of("link").with("rel", "stylesheet").with("href", "/field/" + style));
    }
    contents.add(Parts.heading(title));
    contents.add(Tag.of("noscript").add(Parts.paragraph("empty", phrases.say("walk.no_script"))));
    contents.add(
        Tag.of("div")
            .with("id", "levels")
            .with("hidden", "hidden")
            .with("data-told", told(caller, book, visit, units).toString())
            .addAll(new LevelForm(phrases, units).told()));
    office.show(
        reply,
        Sheet.of(title, contents)
            .under(SitePages.step(book), VisitPages.step(phrases, book, visit))
            .with("levels.js")
            .about(book.book()));
  }

  /** What the module must know: where to write, in which unit, and what it may say. */
  private static ObjectNode told(Caller caller, BookNow book, BookNow.Row visit, WalkUnits units) {
    Phrases phrases = caller.phrases();
    ObjectNode told =
        EntryJson.object()
            .put("book", book.book().toString())
            .put("visit", visit.entry().toString())
            .put("site", book.site().map(site -> site.entry().toString()).orElse(""))
            .put("shown", Look.code(caller.look().shown()))
            .put("point", phrases.tongue().point())
            .put("unit", units.level());
    ObjectNode words = told.putObject("words");
    for (String start : List.of("walk.js.", "levels.js.")) {
      phrases.behind(start).forEach(words::put);
    }
    return told;
  }
}
