package daylight.app.track;

import daylight.app.OnScreen;
import daylight.app.Progress;
import daylight.app.Trouble;
import daylight.archive.ReadBook;
import daylight.footage.Recording;
import daylight.footage.codec.Footage;
import daylight.footage.codec.Opening;
import daylight.footage.codec.RecorderClock;
import daylight.footage.counter.Found;
import daylight.footage.counter.Window;
import daylight.line.book.FieldBook;
import daylight.line.book.Id;
import daylight.line.book.Kit;
import daylight.line.book.Papers.Media;
import daylight.line.book.Pass;
import daylight.line.book.Visit;
import daylight.line.book.Where;
import daylight.line.counter.Fitted;
import daylight.line.counter.Misfit;
import daylight.line.counter.Track;
import daylight.line.measure.Argument;
import daylight.line.measure.Complaint;
import daylight.line.measure.Dimension;
import daylight.line.measure.Unit;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** The door: from the recordings of a book, or what was typed of them, to its tracks. */
public final class BookTracks {
  private final ReadBook read;
  private final FieldBook book;
  private final BookFiles files;
  private final @Nullable Progress progress;
  private final CounterCache cache;
  private final List<Fitted.OfPass> tracks = new ArrayList<>();
  private final SortedMap<Id, Track.Between> located = new TreeMap<>();
  private final SortedMap<Id, FilmCounter> counters = new TreeMap<>();
  private final List<Complaint> complaints = new ArrayList<>();

  private BookTracks(
      ReadBook read,
      FieldBook book,
      BookFiles files,
      @Nullable Progress progress,
      CounterCache cache) {
    this.read = read;
    this.book = book;
    this.files = files;
    this.progress = progress;
    this.cache = cache;
  }

  /**
   * The tracks of all visits. Each recording is read once; what was read before is taken from the
   * cache.
   *
   * @param book the one that was read
   * @param files where those lie that it names
   * @param progress told how the reading goes; null reads nothing that is not in the cache
   */
  public static Tracked of(
      ReadBook read,
      FieldBook book,
      BookFiles files,
      @Nullable Progress progress,
      CounterCache cache) {
    return new BookTracks(read, book, files, progress, cache).tracked();
  }

  private Tracked tracked() {
    for (Visit visit : book.visits()) {
      Set<String> filmed = new HashSet<>();
      for (Media media : visit.papers().media()) {
        if (media.kind() == Media.Kind.FOOTAGE && isSpokenOf(visit, media)) {
          filmed.add(media.label());
          take(visit, media);
        }
      }
      for (Pass pass : visit.passes()) {
        pass.anchors().stream()
            .map(Pass.Anchor::media)
            .distinct()
            .filter(media -> !filmed.contains(media))
            .forEach(media -> typed(pass, media));
      }
      new Placed(
              read, book.site().zone(), label -> clock(visit, label), tracks, located, complaints)
          .take(visit);
    }
    return new Tracked(tracks, located, counters, complaints);
  }

  /** What the recorder's clock said; null where the recording does not tell. */
  private @Nullable Instant clock(Visit visit, String label) {
    return visit.papers().media().stream()
        .filter(media -> media.label().equals(label))
        .flatMap(media -> Optional.ofNullable(file(media)).stream())
        .flatMap(file -> RecorderClock.of(file).stream())
        .findFirst()
        .orElse(null);
  }

  private static boolean isSpokenOf(Visit visit, Media media) {
    return visit.passes().stream()
        .anyMatch(pass -> pass.label().equals(media.pass()) || Fitted.speaks(pass, media.label()));
  }

  /** A track of readings that were typed; whether there are enough of them. */
  private boolean typed(Pass pass, String media) {
    var track = Track.ofAnchors(pass, media);
    track.ifPresent(one -> tracks.add(new Fitted.OfPass(pass.label(), one, 0)));
    return track.isPresent();
  }

  private boolean typed(Visit visit, Media media) {
    boolean any = false;
    for (Pass pass : visit.passes()) {
      any |= typed(pass, media.label());
    }
    return any;
  }

  private void take(Visit visit, Media media) {
    Path file = file(media);
    Found found = file == null ? null : counter(visit, media, file);
    switch (found) {
      case Found.Counter counter -> fit(visit, media, inItsUnit(visit, media, counter));
      case Found.None(Found.Why why) -> {
        Trouble code =
            typed(visit, media) ? Trouble.COUNTER_NOT_READ_TYPED : Trouble.COUNTER_NOT_READ;
        complain(
            code,
            media.id(),
            "file",
            new Argument.Label(media.label()),
            new Argument.Term("app.why." + why.name().toLowerCase(Locale.ROOT)));
      }
      case Found.Stopped() -> {
        typed(visit, media);
        complain(Trouble.COUNTER_STOPPED, media.id(), "file", new Argument.Label(media.label()));
      }
      case null -> {
        boolean any = typed(visit, media);
        if (file != null && progress == null && !any && leansOn(visit, media)) {
          complain(
              Trouble.COUNTER_NOT_READ_YET, media.id(), "file", new Argument.Label(media.label()));
        }
      }
    }
  }

  /** Whether something was noted by nothing but a moment of a recording. */
  private static boolean leansOn(Visit visit, Media media) {
    return visit.passes().stream()
        .flatMap(pass -> pass.findings().stream())
        .anyMatch(
            finding ->
                finding.where() instanceof Where.AtMoment(String own, double _)
                    && own.equals(media.label()));
  }

  private void complain(Trouble code, Id entry, String field, Argument... arguments) {
    complaints.add(new Complaint(code, read.place(entry, field), List.of(arguments)));
  }

  /** The file of a recording; null where it is not there, of which the reader has complained. */
  private @Nullable Path file(Media media) {
    return files.find(media);
  }

  /** What its counter showed; null where nobody has read it, or the recording cannot be read. */
  private @Nullable Found counter(Visit visit, Media media, Path file) {
    if (progress == null && cache.isEmpty()) {
      return null;
    }
    try {
      Seen seen = Seen.of(file);
      Window told = window(visit);
      Optional<Found> kept = cache.find(seen, told);
      return kept.isPresent() || progress == null
          ? kept.orElse(null)
          : read(seen, media, file, told, progress);
    } catch (IOException e) {
      // What cannot be read is told where pictures are taken from it.
      return null;
    }
  }

  private static @Nullable Window window(Visit visit) {
    Kit.Burned told = visit.kit().counter();
    Kit.Region region = told == null ? null : told.region();
    return region == null
        ? null
        : new Window(region.left(), region.top(), region.width(), region.height());
  }

  private @Nullable Found read(
      Seen seen, Media media, Path file, @Nullable Window told, Progress progress)
      throws IOException {
    return switch (Footage.open(file, progress.begin(Progress.Step.READING, media.file()))) {
      case Opening.Refused _ -> null;
      case Opening.Stopped() -> new Found.Stopped();
      case Opening.Opened(Footage footage) -> {
        try (footage) {
          // What was told outside the picture is told nowhere: it is kept under nobody's word, so
          // that the next answer complains of it again.
          boolean outside = told != null && !lies(told, footage.recording());
          if (outside) {
            complain(Trouble.REGION_OUTSIDE, media.id(), "file", new Argument.Label(media.label()));
          }
          yield cache.read(
              seen,
              footage,
              outside ? null : told,
              () -> progress.begin(Progress.Step.COUNTING, media.file()));
        }
      }
    };
  }

  private static boolean lies(Window window, Recording picture) {
    return window.left() + window.width() <= picture.width()
        && window.top() + window.height() <= picture.height();
  }

  /** A counter without a unit counts in the book's; one with another than the book's is told. */
  private FilmCounter inItsUnit(Visit visit, Media media, Found.Counter counter) {
    Unit written = FilmCounter.written(counter, book, visit.kit());
    Unit shown = OnScreen.unit(counter.metresPerStep());
    Argument label = new Argument.Label(media.label());
    if (written == null) {
      if (counter.bare()) {
        complain(
            Trouble.COUNTER_UNIT_GUESSED,
            media.id(),
            "file",
            label,
            new Argument.Text(shown.symbol()));
      }
    } else if (!counter.bare()
        && OnScreen.likeliest(written) != shown
        && BareReadings.in(visit, media)) {
      complain(
          Trouble.COUNTER_UNIT_UNLIKE,
          media.id(),
          "file",
          label,
          new Argument.Text(shown.symbol()),
          new Argument.Text(written.symbol()));
    }
    return FilmCounter.of(counter, book, visit.kit());
  }

  private void fit(Visit visit, Media media, FilmCounter counter) {
    counters.put(media.id(), counter);
    Track track = new Track(media.label(), counter.track().samples());
    Fitted fitted = Fitted.of(visit, media.label(), media.pass(), track, counter.step());
    tracks.addAll(fitted.tracks());
    fitted.misfits().forEach(misfit -> complain(media, misfit));
  }

  private void complain(Media media, Misfit misfit) {
    Argument label = new Argument.Label(media.label());
    switch (misfit) {
      case Misfit.Anchor(Pass.Anchor anchor, double shown) ->
          complain(
              Trouble.ANCHOR_UNLIKE,
              anchor.id(),
              "counter",
              label,
              new Argument.Quantity(Dimension.DURATION, anchor.seconds()),
              new Argument.Length(shown),
              new Argument.Length(anchor.counter().value()));
      case Misfit.Set(var set) ->
          complain(
              Trouble.COUNTER_SET,
              media.id(),
              "file",
              label,
              new Argument.Quantity(Dimension.DURATION, set.to()),
              new Argument.Length(set.before()),
              new Argument.Length(set.after()));
      case Misfit.Before(String pass, var set) ->
          complain(
              Trouble.COUNTER_ZEROED,
              media.id(),
              "file",
              label,
              new Argument.Quantity(Dimension.DURATION, set.to()),
              new Argument.Label(pass));
    }
  }
}
