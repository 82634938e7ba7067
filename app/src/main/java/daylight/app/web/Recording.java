package daylight.app.web;

import daylight.app.BookInFilm;
import daylight.app.FilmText;
import daylight.app.track.FilmCounter;
import daylight.line.book.FieldBook;
import daylight.line.book.Papers;
import daylight.report.captions.Counted;
import daylight.report.shots.Reel;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A recording that the book names.
 *
 * @param media as the book names it
 * @param reel what was read of it; null where nothing was
 * @param file where it lies, inside the book's folder
 */
record Recording(Papers.Media media, @Nullable Reel reel, Path file) {

  /** The recordings of the visit that was judged, as far as their files are there. */
  static List<Recording> of(Property property, Reading.Answered answered) {
    return answered.subject().visit().stream()
        .flatMap(visit -> visit.papers().media().stream())
        .flatMap(media -> of(property, answered, media).stream())
        .toList();
  }

  /** The recording of that identity, of whichever visit. */
  static Optional<Recording> find(Property property, String id) {
    return property.read() instanceof Reading.Answered answered
        ? answered.media().stream()
            .filter(media -> media.id().uuid().toString().equals(id))
            .findFirst()
            .flatMap(media -> of(property, answered, media))
        : Optional.empty();
  }

  private static Optional<Recording> of(
      Property property, Reading.Answered answered, Papers.Media media) {
    if (media.kind() != Papers.Media.Kind.FOOTAGE) {
      return Optional.empty();
    }
    Reel reel =
        answered.handout().shots().reels().stream()
            .filter(one -> one.media().equals(media.label()))
            .findFirst()
            .orElse(null);
    return inside(property.file(), media.file()).map(file -> new Recording(media, reel, file));
  }

  /** The file, if it is there and neither its name nor a link leads out of the book's folder. */
  private static Optional<Path> inside(Path book, String name) {
    try {
      Path folder = book.resolveSibling("").toRealPath();
      Path file = folder.resolve(name).toRealPath();
      return file.startsWith(folder) && file.toFile().isFile()
          ? Optional.of(file)
          : Optional.empty();
    } catch (IOException | java.nio.file.InvalidPathException missing) {
      return Optional.empty();
    }
  }

  /**
   * What is written beside it; empty where nothing is known of when it shows what.
   *
   * @param answered the book that names it
   */
  Optional<FilmText> text(Reading.Answered answered) {
    Reel read = reel;
    FilmCounter counter = answered.counter(media).orElse(null);
    if (read == null || !(read.seconds() > 0)) {
      return Optional.empty();
    }
    Counted counted =
        counter == null
            ? null
            : new Counted(counter.track(), counter.leaps(), counter.step(), read.seconds());
    FieldBook book = answered.handout().book();
    return book.visits().stream()
        .filter(visit -> visit.papers().media().contains(media))
        .findFirst()
        .map(visit -> BookInFilm.of(book, visit, media))
        .filter(film -> counted != null || !film.findings(null).seen().isEmpty())
        .map(film -> FilmText.of(film, counted, read.seconds(), answered.subject().words()));
  }

  /** The address of what is written beside it. */
  String textAddress(Property property, String file) {
    return address(property) + "/" + file;
  }

  /** Whether browsers play it as it is. */
  boolean playable() {
    Reel read = reel;
    return read != null && read.browser();
  }

  /** The address of what a browser plays: itself or its copy; empty while there is neither. */
  Optional<String> played(Property property) {
    if (playable()) {
      return Optional.of(address(property));
    }
    return property.proxy(this).filter(Proxies.State.Ready.class::isInstance).isPresent()
        ? Optional.of(proxyAddress(property))
        : Optional.empty();
  }

  /** The address of its copy for the browser. */
  String proxyAddress(Property property) {
    return property.address("proxy/" + media.id().uuid() + ".webm");
  }

  /** Where it is told how far that copy is. */
  String progressAddress(Property property) {
    return property.address("proxy/" + media.id().uuid());
  }

  /** Its address. */
  String address(Property property) {
    return property.address("media/" + media.id().uuid());
  }
}
