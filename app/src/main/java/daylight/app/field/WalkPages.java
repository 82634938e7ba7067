package daylight.app.field;

import com.fasterxml.jackson.databind.node.ObjectNode;
import daylight.app.web.Look;
import daylight.app.web.Types;
import daylight.archive.Sha256;
import daylight.report.markup.Tag;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

/**
 * The walk over the pipe with a phone: where the transmitter was found, and what it was measured
 * from. What is written waits in the browser until the archive has it; see {@code walk.js}.
 */
final class WalkPages implements Pages {
  /** What the page is made of, to be kept for out of reach. */
  private static final List<String> FILES =
      List.of(
          "walk.js",
          "walk-queue.js",
          "walk-names.js",
          "walk-fields.js",
          "walk-ground.js",
          "walk-lines.js",
          "walk-landmarks.js",
          "walk-sketch.js",
          "walk-told.js",
          "walk-under.js",
          "push-media.js",
          "walk-ways.js",
          "levels.js",
          "level-sums.js",
          "disk.js",
          "enter.js",
          "field.css",
          "walk.css",
          "levels.css");

  private final Office office;
  private final WalkFit fit;

  WalkPages(Office office) {
    this.office = office;
    this.fit = new WalkFit(office);
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/site/{book}/visit/{visit}/walk", this::walk);
    routes.get("/site/{book}/visit/{visit}/walk/fit", this::fit);
    routes.get("/site/{book}/walk-worker.js", WalkPages::worker);
  }

  @Override
  public List<Link> ofVisit(UUID book, UUID visit, Phrases phrases) {
    return List.of(
        new Link(
            VisitPages.address(book, visit) + "/walk",
            phrases.say("walk"),
            phrases.say("walk.why")));
  }

  private void walk(Context reply) {
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
    String title = phrases.say("walk");
    WalkForm form = new WalkForm(phrases, WalkUnits.of(book, caller.look()));
    List<Tag> contents = new ArrayList<>();
    contents.add(Tag.of("link").with("rel", "stylesheet").with("href", "/field/walk.css"));
    contents.add(Parts.heading(title));
    contents.add(Tag.of("noscript").add(Parts.paragraph("empty", phrases.say("walk.no_script"))));
    contents.add(
        Tag.of("div")
            .with("id", "walk")
            .with("hidden", "hidden")
            .with("data-told", told(caller, book, visit).toString())
            .addAll(form.told()));
    office.show(
        reply,
        Sheet.of(title, contents)
            .under(SitePages.step(book), VisitPages.step(phrases, book, visit))
            .with("walk.js")
            .about(book.book()));
  }

  /** What the module must know: where to write, in which units, and what it may say. */
  private static ObjectNode told(Caller caller, BookNow book, BookNow.Row visit) {
    ObjectNode told =
        EntryJson.object()
            .put("book", book.book().toString())
            .put("visit", visit.entry().toString())
            .put("site", book.site().map(site -> site.entry().toString()).orElse(""))
            .put("shown", Look.code(caller.look().shown()))
            .put("person", caller.person());
    WalkUnits units = WalkUnits.of(book, caller.look());
    told.putObject("units").put("distance", units.distance()).put("depth", units.depth());
    ObjectNode words = told.putObject("words");
    caller.phrases().behind("walk.js.").forEach(words::put);
    return told;
  }

  private void fit(Context reply) {
    office.withVisit(
        reply,
        (book, visit) ->
            reply
                .contentType(Types.of("fit.json"))
                .result(fit.told(office.caller(reply), book, visit).toString()));
  }

  /**
   * The worker that lets the page be loaded again out of reach. Its first line names the version of
   * the files that it keeps, so that a changed program is a changed worker.
   */
  private static void worker(Context reply) {
    if (Office.id(reply.pathParam("book")).isEmpty()) {
      reply.status(HttpStatus.NOT_FOUND);
      return;
    }
    String worker = asset("walk-worker.js");
    StringBuilder all = new StringBuilder(worker);
    FILES.forEach(name -> all.append(asset(name)));
    String shell =
        "const VERSION = '%s';\nconst FILES = [%s];\n"
            .formatted(
                Sha256.of(all.toString()),
                String.join(", ", FILES.stream().map(name -> "'/field/" + name + "'").toList()));
    reply.contentType(Types.of("worker.js")).result(shell + worker);
  }

  private static String asset(String name) {
    return FieldAssets.find(name)
        .map(bytes -> new String(bytes, StandardCharsets.UTF_8))
        .orElseThrow(() -> new IllegalStateException("no file " + name));
  }
}
