package daylight.app.field;

import daylight.app.web.Home;
import daylight.app.web.Shelf;
import daylight.archive.ReadBook;
import daylight.archive.Sha256;
import daylight.archive.store.Archive;
import daylight.line.book.FieldBook;
import daylight.line.book.Visit;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What a book answers as it is now. The book is written out as a file, its recordings beside it as
 * links, and put on the shelf with all others; the folder may be thrown away at any time.
 */
final class AnswerPages implements Pages {
  private final Office office;
  private final Shelf shelf;

  AnswerPages(Office office, Shelf shelf) {
    this.office = office;
    this.shelf = shelf;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/site/{book}/answers", this::answers);
  }

  @Override
  public List<Link> ofSite(UUID book, Phrases phrases) {
    return List.of(
        new Link("/site/" + book + "/answers", phrases.say("answers"), phrases.say("answers.why")));
  }

  private void answers(Context reply) {
    Optional<UUID> book = Office.id(reply.pathParam("book"));
    Optional<String> written = book.flatMap(office.archive()::written);
    if (written.isEmpty()) {
      reply.status(HttpStatus.NOT_FOUND);
      return;
    }
    try {
      Path folder = laidOut(office.archive(), book.get(), written.get());
      FieldBook read = office.archive().book(book.get()).map(ReadBook::book).orElse(null);
      reply.redirect(
          shelf.address(
              "site-" + book.get(),
              folder,
              measured(read),
              new Home("/site/" + book.get(), read == null ? "" : read.site().name())),
          HttpStatus.SEE_OTHER);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * The label of the last visit in which anything was measured, for one that is to come says
   * nothing; null where there is none.
   */
  private static @Nullable String measured(@Nullable FieldBook read) {
    return read == null
        ? null
        : read.visits().reversed().stream()
            .filter(AnswerPages::holdsAnything)
            .map(visit -> visit.id().label())
            .findFirst()
            .orElse(null);
  }

  private static boolean holdsAnything(Visit visit) {
    return Stream.of(
            visit.passes(),
            visit.locates(),
            visit.exposures(),
            visit.levels(),
            visit.tests(),
            visit.works())
        .anyMatch(list -> !list.isEmpty());
  }

  /** The book as a file in a folder of its own, its recordings beside it. */
  private static synchronized Path laidOut(Archive archive, UUID book, String written)
      throws IOException {
    Path folder = Files.createDirectories(archive.derived(book));
    for (Map.Entry<String, Sha256> media : archive.mediaOf(book).entrySet()) {
      Optional<Path> content = archive.media().file(media.getValue());
      Path place = folder.resolve(media.getKey()).normalize();
      if (content.isPresent() && place.startsWith(folder)) {
        lay(content.get(), place);
      }
    }
    Path file = folder.resolve("field-book.yaml");
    if (!Files.exists(file) || !Files.readString(file).equals(written)) {
      Path fresh = folder.resolve(".field-book.yaml");
      Files.write(fresh, written.getBytes(StandardCharsets.UTF_8));
      Files.move(fresh, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }
    return folder;
  }

  private static void lay(Path content, Path place) throws IOException {
    if (Files.exists(place) && Files.size(place) == Files.size(content)) {
      return;
    }
    Files.createDirectories(Objects.requireNonNull(place.getParent()));
    Files.deleteIfExists(place);
    try {
      Files.createLink(place, content);
    } catch (IOException | UnsupportedOperationException e) {
      // Not every file system knows links; a copy does as well.
      Files.copy(content, place);
    }
  }
}
