package daylight.app.demo;

import daylight.footage.Watch;
import daylight.footage.scene.Script;
import daylight.line.book.FieldBook;
import daylight.line.book.Papers;
import daylight.line.book.Pass;
import daylight.line.book.Visit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** The door: makes the footage that the book of an invented property names. */
public final class DemoFilms {
  /** Films made at once; which thread paints which changes no byte. */
  private static final int AT_ONCE = 2;

  private DemoFilms() {}

  /**
   * Every footage that a book names.
   *
   * @throws IllegalArgumentException for the book of a real property, for a name that no invented
   *     camera writes, and for footage without anchors
   */
  public static List<DemoFilm> of(FieldBook book) {
    if (!book.site().invented()) {
      throw new IllegalArgumentException(
          "footage is made for invented properties only, not for " + book.site().name());
    }
    List<DemoFilm> films = new ArrayList<>();
    for (Visit visit : book.visits()) {
      for (Papers.Media media : visit.papers().media()) {
        if (media.kind() == Papers.Media.Kind.FOOTAGE) {
          films.add(film(book, visit, media));
        }
      }
    }
    return films;
  }

  private static DemoFilm film(FieldBook book, Visit visit, Papers.Media media) {
    Pass pass =
        visit.passes().stream()
            .filter(p -> p.anchors().stream().anyMatch(a -> a.media().equals(media.label())))
            .findFirst()
            .orElseThrow(
                () -> new IllegalArgumentException("no pass has anchors in " + media.label()));
    DemoCamera camera =
        DemoCamera.of(media.file())
            .orElseThrow(
                () -> new IllegalArgumentException("no invented camera writes " + media.file()));
    String date = visit.date() == null ? "" : visit.date().toString();
    Script script = Script.of(book, pass, media.label(), date);
    return new DemoFilm(media.label(), media.file(), script, camera);
  }

  /**
   * Makes what is not there yet. A film that was stopped or failed leaves nothing behind; those
   * made before stay.
   *
   * @param folder where the book lies
   * @param watch told of the progress over all films
   * @return the files that were made, in the order of the book
   */
  public static List<Path> make(FieldBook book, Path folder, Watch watch) throws IOException {
    List<DemoFilm> missing = new ArrayList<>();
    for (DemoFilm film : of(book)) {
      if (!Files.exists(target(folder, film))) {
        missing.add(film);
      }
    }
    Tally tally = new Tally(watch, missing.stream().mapToLong(DemoFilm::frames).sum());
    try (ExecutorService threads = Executors.newFixedThreadPool(AT_ONCE)) {
      List<Future<Boolean>> written = new ArrayList<>();
      for (DemoFilm film : missing) {
        Path target = target(folder, film);
        written.add(threads.submit(() -> film.write(target, tally::add, tally::stopped)));
      }
      return made(folder, missing, written, tally);
    }
  }

  private static List<Path> made(
      Path folder, List<DemoFilm> films, List<Future<Boolean>> written, Tally tally)
      throws IOException {
    List<Path> made = new ArrayList<>();
    for (int i = 0; i < films.size(); i++) {
      if (whole(written.get(i), tally)) {
        made.add(target(folder, films.get(i)));
      }
    }
    return made;
  }

  private static boolean whole(Future<Boolean> film, Tally tally) throws IOException {
    try {
      return film.get();
    } catch (ExecutionException e) {
      tally.stop();
      switch (Objects.requireNonNull(e.getCause())) {
        case IOException failed -> throw failed;
        case RuntimeException ours -> throw ours;
        default -> throw new IllegalStateException(e);
      }
    } catch (InterruptedException e) {
      tally.stop();
      Thread.currentThread().interrupt();
      return false;
    }
  }

  private static Path target(Path folder, DemoFilm film) {
    Path target = folder.resolve(film.file()).normalize();
    if (!target.startsWith(folder.normalize())) {
      throw new IllegalArgumentException(film.file() + " leads out of the folder of its book");
    }
    return target;
  }
}
