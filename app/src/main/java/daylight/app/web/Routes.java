package daylight.app.web;

import daylight.line.measure.Shown;
import daylight.report.words.Words;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** Which address shows what. */
final class Routes {
  private static final String COPY = ".webm";

  private final Shelf shelf;
  private final boolean sites;
  private final Assets assets = new Assets();

  /**
   * @param sites whether pages of an archive are served, too, which then come first
   */
  Routes(Shelf shelf, boolean sites) {
    this.shelf = shelf;
    this.sites = sites;
  }

  void addTo(RoutesConfig routes) {
    routes.before(Guard::check);
    read(routes, "/", this::first);
    read(routes, "/property/", this::index);
    read(routes, "/assets/{name}", this::asset);
    // The files to hand over name no sign of their own, and browsers look for one here.
    read(routes, "/favicon.ico", this::sign);
    read(routes, "/property/{property}/", this::property);
    read(routes, "/property/{property}/" + BackingPage.NAME, this::backing);
    read(routes, "/property/{property}/progress", this::progress);
    routes.post("/property/{property}/stop", reply -> order(reply, Property::stop));
    routes.post("/property/{property}/read", reply -> order(reply, Property::again));
    read(routes, "/property/{property}/media/{id}", this::media);
    read(routes, "/property/{property}/media/{id}/{text}", this::text);
    read(routes, "/property/{property}/proxy/{id}", this::proxy);
    read(routes, "/property/{property}/<file>", this::file);
    routes.error(HttpStatus.NOT_FOUND, this::missing);
    routes.exception(
        RuntimeException.class,
        (fault, reply) -> page(reply.status(500), NoticePage.fault(notice(reply), fault)));
  }

  private static void read(RoutesConfig routes, String path, Handler handler) {
    routes.get(path, handler);
    routes.head(path, handler);
  }

  /** The sites of the archive, or else all books; one alone is shown at once. */
  private void first(Context reply) {
    if (sites) {
      reply.redirect("/sites");
    } else if (shelf.size() == 1) {
      reply.redirect(shelf.all().getFirst().address(""));
    } else {
      index(reply);
    }
  }

  private void index(Context reply) {
    if (!chose(reply, words(reply))) {
      page(reply, new IndexPage(shelf, Wish.by(reply)).write());
    }
  }

  /** Words for a page that is of no book. */
  private Words words(Context request) {
    return Wish.by(request).words(shelf.settings());
  }

  /** A page that only says why there is nothing. */
  private Frame notice(Context request) {
    return new Frame(words(request), shelf.size()).as(Wish.by(request).nowhere());
  }

  /**
   * Whether language, units or light were chosen by the address; the page itself is loaded next.
   */
  private static boolean chose(Context reply, Words now) {
    Optional<Look> choice = Wish.choice(reply, now);
    choice.ifPresent(look -> Remembered.set(reply, Look.COOKIE, look.cookie()));
    choice.ifPresent(look -> reply.redirect(reply.path(), HttpStatus.SEE_OTHER));
    return choice.isPresent();
  }

  private void sign(Context reply) {
    asset(reply, "mark.svg");
  }

  private void asset(Context reply) {
    asset(reply, reply.pathParam("name"));
  }

  private void asset(Context reply, String name) {
    assets
        .find(name)
        .ifPresentOrElse(bytes -> Sent.kept(reply, Types.of(name), bytes), () -> reply.status(404));
  }

  private void property(Context reply) {
    if (!reply.path().endsWith("/")) {
      // What the page names beside itself would be looked for one step too high.
      reply.redirect(reply.path() + "/");
      return;
    }
    find(reply).ifPresentOrElse(property -> show(reply, property), () -> reply.status(404));
  }

  private void show(Context reply, Property property) {
    Reading reading = property.soon();
    Wish wish = Wish.by(reply);
    if (!chose(reply, wish.words(property.settings(), usual(reading)))) {
      page(reply, page(reply, property, reading, wish));
    }
  }

  /** What stands behind the answers; until there are any, their own page says why. */
  private void backing(Context reply) {
    Optional<Known> known = answered(reply);
    if (known.isEmpty()) {
      find(reply)
          .ifPresentOrElse(
              property -> reply.redirect(property.address("")), () -> reply.status(404));
      return;
    }
    Property property = known.get().property();
    Reading.Answered answered = known.get().answered();
    if (!chose(reply, answered.subject().words())) {
      page(reply, new BackingPage(shelf.size(), property, answered, Wish.by(reply)).write());
    }
  }

  /** The units of a book. */
  private static Shown usual(@Nullable Reading reading) {
    return switch (reading) {
      case Reading.Answered answered -> answered.handout().shown();
      case Reading.Refused refused -> refused.outcome().shown();
      case null, default -> Shown.METRES;
    };
  }

  private String page(Context reply, Property property, @Nullable Reading reading, Wish wish) {
    return switch (reading) {
      case null -> {
        reply.status(202);
        yield new UnderwayPage(shelf.size(), property, wish).write();
      }
      case Reading.Answered answered ->
          new PropertyPage(shelf.size(), property, told(answered, property, wish), wish).write();
      case Reading.Refused refused ->
          new RefusedPage(shelf.size(), property, refused, wish).write();
      case Reading.Failed failed -> {
        reply.status(500);
        Frame frame = new Frame(wish.words(property.settings()), shelf.size());
        yield NoticePage.fault(frame.as(wish.nowhere()), failed.fault());
      }
    };
  }

  private static Reading.Answered told(Reading.Answered answered, Property property, Wish wish) {
    return answered.in(
        wish.language(property.settings()), wish.shown(answered.handout().shown()), wish.plan());
  }

  /** How far the looking at footage is, for the page that says so; accepted, while it goes on. */
  private void progress(Context reply) {
    Optional<Property> property = find(reply);
    if (property.isEmpty()) {
      reply.status(404);
      return;
    }
    Answering.Doing doing = property.get().doing();
    reply.status(doing == null ? 200 : 202).contentType(Types.of("progress.json"));
    reply.result(UnderwayPage.json(doing, Wish.by(reply).words(property.get().settings())));
  }

  private void order(Context reply, Consumer<Property> order) {
    find(reply)
        .ifPresentOrElse(
            property -> {
              order.accept(property);
              reply.status(204);
            },
            () -> reply.status(404));
  }

  /** Captions and chapters of a recording. */
  private void text(Context reply) {
    String name = reply.pathParam("text");
    answered(reply)
        .flatMap(
            one ->
                Recording.find(one.property(), reply.pathParam("id"))
                    .flatMap(recording -> recording.text(one.answered())))
        .flatMap(
            text ->
                switch (name) {
                  case Players.CAPTIONS -> Optional.of(text.captionFile());
                  case Players.CHAPTERS -> Optional.of(text.chapterFile());
                  default -> Optional.empty();
                })
        .ifPresentOrElse(
            file -> Sent.kept(reply, Types.of(name), file.getBytes(StandardCharsets.UTF_8)),
            () -> reply.status(404));
  }

  /** A book that is answered. */
  private record Known(Property property, Reading.Answered answered) {}

  /** The book that is asked about; empty where it is refused, or its footage is looked at. */
  private Optional<Known> answered(Context reply) {
    return find(reply)
        .flatMap(
            property ->
                property.soon() instanceof Reading.Answered answered
                    ? Optional.of(new Known(property, told(answered, property, Wish.by(reply))))
                    : Optional.empty());
  }

  private void media(Context reply) throws IOException {
    Optional<Recording> recording =
        find(reply).flatMap(property -> Recording.find(property, reply.pathParam("id")));
    if (recording.isPresent()) {
      Sent.part(reply, recording.get().file());
    } else {
      reply.status(404);
    }
  }

  /** The copy of a recording, or without its ending a line that says how far it is. */
  private void proxy(Context reply) throws IOException {
    String id = reply.pathParam("id");
    boolean copy = id.endsWith(COPY);
    String of = copy ? id.substring(0, id.length() - COPY.length()) : id;
    Optional<Proxies.State> state =
        find(reply).flatMap(p -> Recording.find(p, of).flatMap(recording -> p.proxy(recording)));
    if (state.isEmpty()) {
      reply.status(404);
    } else if (!copy) {
      reply.status(state.get() instanceof Proxies.State.Making ? 202 : 200);
      reply
          .contentType("text/plain; charset=utf-8")
          .result(ProxyWords.told(state.get(), words(reply)));
    } else if (state.get() instanceof Proxies.State.Ready(Path file)) {
      Sent.part(reply, file);
    } else {
      reply.status(404);
    }
  }

  private void file(Context reply) {
    String name = reply.pathParam("file");
    answered(reply)
        .flatMap(one -> one.answered().file(name))
        .ifPresentOrElse(
            bytes -> {
              reply.header("Content-Security-Policy", Guard.FILES);
              Sent.kept(reply, Types.of(name), bytes);
            },
            () -> reply.status(404));
  }

  private void missing(Context reply) {
    page(reply, NoticePage.missing(notice(reply)));
  }

  private Optional<Property> find(Context request) {
    return shelf.find(request.pathParam("property"));
  }

  private static void page(Context reply, String html) {
    byte[] bytes = html.getBytes(StandardCharsets.UTF_8);
    reply.contentType(Types.HTML).result(bytes);
  }
}
