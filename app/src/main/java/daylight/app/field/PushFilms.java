package daylight.app.field;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import daylight.app.track.Tracked;
import daylight.app.web.Sent;
import daylight.app.web.Types;
import daylight.archive.Sha256;
import daylight.line.counter.Track;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.Semaphore;
import org.jspecify.annotations.Nullable;

/**
 * The recordings of a push, to be gone through afterwards: each as it is kept, and what its counter
 * shows, as far as that was read. Counters are read when somebody asks for it, and may be stopped.
 */
final class PushFilms implements Pages {
  private static final int REMEMBERED = 100;

  private final Office office;
  private final Semaphore turns = new Semaphore(1, true);
  private final Map<UUID, Known> readings = new HashMap<>();

  /** A reading, and the book as it was when it began. */
  private record Known(Sha256 written, FilmReading reading) {}

  PushFilms(Office office) {
    this.office = office;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/site/{book}/pass/{pass}/films", this::films);
    routes.post("/site/{book}/films/read", reply -> order(reply, true));
    routes.post("/site/{book}/films/stop", reply -> order(reply, false));
    routes.get("/site/{book}/film/{entry}", this::show);
    routes.head("/site/{book}/film/{entry}", this::show);
  }

  private void films(Context reply) {
    office.withBook(
        reply,
        book -> {
          Optional<BookNow.Row> pass =
              Office.id(reply.pathParam("pass"))
                  .flatMap(book::find)
                  .filter(row -> row.section().equals("passes") && row.parent() != null);
          if (pass.isEmpty()) {
            reply.status(HttpStatus.NOT_FOUND);
          } else {
            Office.json(reply, told(book, pass.get(), reading(book.book(), false)));
          }
        });
  }

  /** What is being found out of a book now, begun where nothing of it is known as it is now. */
  private synchronized FilmReading reading(UUID book, boolean reads) {
    Sha256 written = Sha256.of(office.archive().written(book).orElse(""));
    Known known = readings.get(book);
    boolean enough =
        known != null
            && (!known.reading().isOver() || known.written().equals(written))
            && (!reads || known.reading().isReading() || known.reading().isWhole());
    if (known != null && enough) {
      return known.reading();
    }
    if (readings.size() >= REMEMBERED) {
      readings.values().removeIf(one -> one.reading().isOver());
    }
    FilmReading fresh = FilmReading.begin(office.archive(), book, turns, reads);
    readings.put(book, new Known(written, fresh));
    return fresh;
  }

  private void order(Context reply, boolean reads) {
    office.withBook(
        reply,
        book -> {
          if (reads) {
            reading(book.book(), true);
          } else {
            stop(book.book());
          }
          reply.status(HttpStatus.NO_CONTENT);
        });
  }

  private synchronized void stop(UUID book) {
    Known known = readings.get(book);
    if (known != null) {
      known.reading().stop();
    }
  }

  private ObjectNode told(BookNow book, BookNow.Row pass, FilmReading reading) {
    ObjectNode out = EntryJson.object();
    boolean over = reading.isOver();
    out.put("state", over ? "known" : reading.isReading() ? "reading" : "looking");
    out.put("file", reading.file()).put("share", reading.share());
    ArrayNode films = out.putArray("films");
    Map<String, Sha256> kept = office.archive().mediaOf(book.book());
    book.in(parent(pass), "media")
        .filter(row -> row.text("kind").filter("footage"::equals).isPresent())
        .forEach(row -> films.add(film(book.book(), row, pass, kept, reading)));
    return out;
  }

  private static UUID parent(BookNow.Row pass) {
    UUID parent = pass.parent();
    return parent == null ? pass.entry() : parent;
  }

  private ObjectNode film(
      UUID book, BookNow.Row row, BookNow.Row pass, Map<String, Sha256> kept, FilmReading reading) {
    ObjectNode out = EntryJson.object().put("label", row.label());
    String name = row.text("file").orElse("");
    out.put("file", name);
    Sha256 content = kept.get(name);
    boolean there = content != null && office.archive().media().file(content).isPresent();
    if (there) {
      out.put("src", "/site/" + book + "/film/" + row.entry());
    }
    Track track = track(reading.tracked(), pass.label(), row.label());
    out.put("track", track != null ? "read" : there && !reading.isWhole() ? "unread" : "nothing");
    if (track != null) {
      samples(out.putArray("samples"), track);
    }
    return out;
  }

  private static @Nullable Track track(@Nullable Tracked tracked, String pass, String media) {
    return tracked == null ? null : tracked.of(pass, media).orElse(null);
  }

  /**
   * Seconds and metres; null for what is not known. Of samples that are the same the first and the
   * last are told, for between them nothing else is.
   */
  private static void samples(ArrayNode out, Track track) {
    List<Track.Sample> all = track.samples();
    for (int i = 0; i < all.size(); i++) {
      if (i == 0
          || i == all.size() - 1
          || !isLike(all.get(i - 1), all.get(i))
          || !isLike(all.get(i), all.get(i + 1))) {
        Track.Sample one = all.get(i);
        ArrayNode sample = out.addArray().add(one.seconds());
        if (one.state() == Track.State.UNKNOWN) {
          sample.addNull();
        } else {
          sample.add(one.counter());
        }
      }
    }
  }

  private static boolean isLike(Track.Sample one, Track.Sample other) {
    boolean known = one.state() != Track.State.UNKNOWN;
    return known == (other.state() != Track.State.UNKNOWN)
        && (!known || one.counter() == other.counter());
  }

  /** A recording that the book names, or a part of it. */
  private void show(Context reply) throws IOException {
    Optional<UUID> id = Office.id(reply.pathParam("book"));
    Optional<String> name =
        id.flatMap(book -> BookNow.of(office.archive(), book))
            .flatMap(book -> Office.id(reply.pathParam("entry")).flatMap(book::find))
            .filter(row -> row.section().equals("media"))
            .filter(row -> row.text("kind").filter("footage"::equals).isPresent())
            .flatMap(row -> row.text("file"));
    Optional<Path> file =
        name.flatMap(
            one ->
                id.map(office.archive()::mediaOf)
                    .map(all -> all.get(one))
                    .flatMap(office.archive().media()::file));
    if (file.isEmpty()) {
      reply.status(HttpStatus.NOT_FOUND);
    } else {
      Sent.part(reply, file.get(), Types.of(name.orElse("")));
    }
  }
}
