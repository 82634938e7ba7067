package daylight.app.cli;

import daylight.app.BookInFilm;
import daylight.app.track.FilmCounter;
import daylight.archive.ReadBook;
import daylight.footage.codec.Footage;
import daylight.footage.counter.Found;
import daylight.line.measure.Reading;
import daylight.line.measure.Shown;
import daylight.report.captions.Counted;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The field book that a command about a recording may go by, and the units that it speaks in. */
final class ByBook {
  @Option(names = "--book", paramLabel = "BOOK", description = "The field book that names VIDEO.")
  private @Nullable Path book;

  @Option(
      names = "--units",
      paramLabel = "UNITS",
      description = "Feet-inches, feet or metres; default: as the book, else as the counter.")
  private Manner.@Nullable UnitsWord units;

  /** What a command does with a recording and what the book says of it. */
  interface Work {
    /**
     * Returns the exit code.
     *
     * @param told null without a book
     * @param step how far from one to the next; null where nobody said
     */
    int with(Footage footage, @Nullable BookInFilm told, @Nullable Reading step) throws IOException;
  }

  /**
   * Reads the book and opens the recording.
   *
   * @param wrong what is wrong already; null where nothing is
   * @param every how far from one to the next, as it was typed; null where it was not
   */
  int open(
      VideoConsole console,
      Video video,
      @Nullable String wrong,
      @Nullable String every,
      Work work) {
    Given given = new Given();
    Reading step = given.positiveLength("--every", every);
    if (wrong != null || !given.sound()) {
      return console.misunderstood(wrong != null ? wrong : console.wrong(given.wrong().getFirst()));
    }
    if (book == null) {
      return video.open(console, footage -> work.with(footage, null, step));
    }
    ReadBook read = BookInFilm.read(book);
    if (!read.sound() || read.book() == null) {
      return console.refused(read.complaints(), BookInFilm.shown(read.book()));
    }
    Optional<BookInFilm> told = BookInFilm.of(read.book(), book, video.file());
    return told.isEmpty()
        ? console.misunderstood(
            console.say(
                "cli.book.other", Given.text(book.toString()), Given.text(video.file().toString())))
        : video.open(console, footage -> work.with(footage, told.get(), step));
  }

  /**
   * The units to speak in.
   *
   * @param told null without a book
   * @param counter null where none could be read
   */
  Shown shown(@Nullable BookInFilm told, Found.@Nullable Counter counter) {
    if (units != null) {
      return units.shown();
    }
    return told != null || counter == null
        ? BookInFilm.shown(told == null ? null : told.book())
        : CounterConsole.shown(counter);
  }

  /**
   * A counter as what is written beside a recording needs it, in the book's unit if it has none.
   */
  static Counted counted(Found.Counter found, Footage footage, @Nullable BookInFilm told) {
    FilmCounter counter =
        told == null ? FilmCounter.of(found) : FilmCounter.of(found, told.book(), told.kit());
    return new Counted(
        counter.track(), counter.leaps(), counter.step(), footage.recording().seconds());
  }
}
