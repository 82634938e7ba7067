package daylight.app;

import daylight.archive.Bundled;
import daylight.archive.FieldBookReader;
import daylight.archive.ReadBook;
import daylight.line.book.FieldBook;
import daylight.line.book.Finding;
import daylight.line.book.Kit;
import daylight.line.book.Papers.Media;
import daylight.line.book.Pass;
import daylight.line.book.Visit;
import daylight.line.book.Where;
import daylight.line.counter.Track;
import daylight.line.measure.Shown;
import daylight.line.measure.Unit;
import daylight.report.captions.Counted;
import daylight.report.captions.FindingChapters.Seen;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What a field book says of one recording.
 *
 * @param media as the book names it
 * @param kit of its visit
 * @param passes that it shows, at least one where the book says so of any
 */
public record BookInFilm(FieldBook book, Media media, Kit kit, List<Pass> passes) {
  public BookInFilm {
    passes = List.copyOf(passes);
  }

  /**
   * When a recording shows what.
   *
   * @param seen findings with their moment
   * @param unseen findings of the same passes without one
   */
  public record Told(List<Seen> seen, List<Finding> unseen) {
    public Told {
      seen = List.copyOf(seen);
      unseen = List.copyOf(unseen);
    }
  }

  /** The file of a book, given by itself or by its folder. */
  public static Path file(Path given) {
    return Files.isDirectory(given) ? given.resolve("field-book.yaml") : given;
  }

  /** The book in a file, or in a folder. */
  public static ReadBook read(Path given) {
    return FieldBookReader.read(file(given), Bundled.catalogue());
  }

  /** The units of a book, as far as it was read. */
  public static Shown shown(@Nullable FieldBook book) {
    Unit unit = book == null ? Unit.METRE : book.units().distance();
    return unit == Unit.FOOT || unit == Unit.INCH ? Shown.FEET_INCHES : Shown.METRES;
  }

  /** What the book in a file says of a recording; empty where it does not name it. */
  public static Optional<BookInFilm> of(FieldBook book, Path given, Path video) {
    Path folder = file(given).toAbsolutePath().resolveSibling(".").normalize();
    for (Visit visit : book.visits()) {
      for (Media media : visit.papers().media()) {
        if (media.kind() == Media.Kind.FOOTAGE && isSame(folder, media, video)) {
          return Optional.of(of(book, visit, media));
        }
      }
    }
    return Optional.empty();
  }

  /** What a book says of a recording of that visit. */
  public static BookInFilm of(FieldBook book, Visit visit, Media media) {
    return new BookInFilm(
        book,
        media,
        visit.kit(),
        visit.passes().stream().filter(pass -> shows(media, pass)).toList());
  }

  private static boolean isSame(Path folder, Media media, Path video) {
    try {
      Path file = folder.resolve(media.file());
      return Files.exists(file) && Files.isSameFile(file, video);
    } catch (IOException | InvalidPathException e) {
      return false;
    }
  }

  private static boolean shows(Media media, Pass pass) {
    return pass.label().equals(media.pass())
        || pass.anchors().stream().anyMatch(one -> one.media().equals(media.label()))
        || pass.findings().stream()
            .anyMatch(
                one ->
                    one.where() instanceof Where.AtMoment(String own, double _)
                        && own.equals(media.label()));
  }

  /** The label of the node where the camera went in. */
  public String entry() {
    return passes.isEmpty() ? media.label() : passes.getFirst().entry();
  }

  /**
   * When the recording shows each finding: at the moment that was typed, else where its own counter
   * showed the distance, else where the typed readings say.
   *
   * @param counted the recording's own counter; null where it has none
   */
  public Told findings(@Nullable Counted counted) {
    List<Seen> seen = new ArrayList<>();
    List<Finding> unseen = new ArrayList<>();
    for (Pass pass : passes) {
      Optional<Track> typed = Track.ofAnchors(pass, media.label());
      for (Finding finding : pass.findings()) {
        Seen one = seen(finding, counted, typed);
        if (one == null) {
          unseen.add(finding);
        } else {
          seen.add(one);
        }
      }
    }
    return new Told(seen, unseen);
  }

  private @Nullable Seen seen(Finding finding, @Nullable Counted counted, Optional<Track> typed) {
    return switch (finding.where()) {
      case Where.AtMoment(String own, double seconds) ->
          own.equals(media.label())
              ? new Seen(finding, seconds, counter(counted, typed, seconds))
              : null;
      case Where.AtCable(var cable) -> at(finding, cable.value(), counted, typed);
      case Where.FromTo(var from, var _) -> at(finding, from.value(), counted, typed);
    };
  }

  private static @Nullable Double counter(
      @Nullable Counted counted, Optional<Track> typed, double seconds) {
    Optional<Track.Between> own =
        counted == null ? Optional.empty() : counted.track().counterAt(seconds);
    return own.or(() -> typed.flatMap(track -> track.counterAt(seconds)))
        .map(Track.Between::value)
        .orElse(null);
  }

  private static @Nullable Seen at(
      Finding finding, double cable, @Nullable Counted counted, Optional<Track> typed) {
    Optional<Double> told =
        typed.flatMap(track -> track.momentOf(cable, finding.moving())).map(Track.Between::value);
    List<Double> own =
        counted == null
            ? List.of()
            : counted.passages().times(cable).stream()
                .map(sample -> counted.track().samples().get(sample).seconds())
                .toList();
    Optional<Double> moment =
        own.isEmpty()
            ? told
            : told.isPresent()
                // A recording may show the distance on several pushes; this one is the one meant.
                ? own.stream().min(Comparator.comparingDouble(m -> Math.abs(m - told.get())))
                : Optional.of(
                    finding.moving() == Finding.Moving.PUSHING ? own.getFirst() : own.getLast());
    return moment.map(seconds -> new Seen(finding, seconds, cable)).orElse(null);
  }
}
