package daylight.app;

import daylight.app.track.BookFiles;
import daylight.app.track.BookTracks;
import daylight.app.track.CounterCache;
import daylight.app.track.FilmCounter;
import daylight.app.track.Tracked;
import daylight.archive.Bundled;
import daylight.archive.FieldBookReader;
import daylight.archive.ReadBook;
import daylight.archive.store.Archive;
import daylight.line.answer.Answers;
import daylight.line.answer.Judge;
import daylight.line.answer.Rules;
import daylight.line.book.FieldBook;
import daylight.line.book.Id;
import daylight.line.book.Visit;
import daylight.line.counter.Fitted;
import daylight.line.course.Estimator;
import daylight.line.course.Line;
import daylight.line.measure.Complaint;
import daylight.line.measure.FilePlace;
import daylight.line.measure.Shown;
import daylight.line.measure.Unit;
import daylight.report.Handout;
import daylight.report.Report;
import daylight.report.draw.PlanTurn;
import daylight.report.page.Paper;
import daylight.report.shots.Shots;
import daylight.report.words.Language;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * The main job, wired by hand: a field book is read, the line is estimated, the questions are
 * judged, and the results are made. Every shell of Daylight calls this.
 */
public final class Job {
  private final Settings settings;
  private final @Nullable Progress progress;
  private final List<Complaint> complaints = new ArrayList<>();

  /**
   * @param progress told how the reading of the footage goes; null leaves the footage aside
   */
  private Job(Settings settings, @Nullable Progress progress) {
    this.settings = settings;
    this.progress = progress;
  }

  /**
   * What a person may choose.
   *
   * @param language of what is said; null takes English
   * @param shown units of what is shown; null takes those of the book
   * @param paper for what is printed; null takes Letter where feet are shown and A4 elsewhere
   * @param rules by which data the book is judged and named
   * @param visit label of the visit to judge; null takes the last
   * @param plan which way up the plan lies
   */
  public record Settings(
      @Nullable Language language,
      @Nullable Shown shown,
      @Nullable Paper paper,
      RuleChoice rules,
      @Nullable String visit,
      PlanTurn plan) {
    /** Where the plan lies as it fits. */
    public Settings(
        @Nullable Language language,
        @Nullable Shown shown,
        @Nullable Paper paper,
        RuleChoice rules,
        @Nullable String visit) {
      this(language, shown, paper, rules, visit, PlanTurn.AS_IT_FITS);
    }

    /** What is taken where nobody chooses. */
    public static final Settings USUAL = new Settings(null, null, null, RuleChoice.USUAL, null);

    /** The same in a language; null takes English. */
    public Settings in(@Nullable Language another) {
      return new Settings(another, shown, paper, rules, visit, plan);
    }

    /** The same of another visit; null takes the last. */
    public Settings of(@Nullable String another) {
      return new Settings(language, shown, paper, rules, another, plan);
    }
  }

  /** What became of the job. */
  public sealed interface Outcome {
    /**
     * The book was answered.
     *
     * @param counters what the counter of each recording showed, where it could be read
     * @param tracks of each recording and pass of which anything is known, as the line was
     *     estimated with them
     * @param places where each entry begins in its file, by its identity
     * @param named where the files lie that the book names
     */
    record Answered(
        Handout handout,
        SortedMap<Id, FilmCounter> counters,
        List<Fitted.OfPass> tracks,
        Map<UUID, FilePlace> places,
        BookFiles named)
        implements Outcome {
      public Answered {
        places = Map.copyOf(places);
        counters = Collections.unmodifiableSortedMap(new TreeMap<>(counters));
        tracks = List.copyOf(tracks);
      }

      /** One of which nobody asks for the files that its book names. */
      public Answered(
          Handout handout,
          SortedMap<Id, FilmCounter> counters,
          List<Fitted.OfPass> tracks,
          Map<UUID, FilePlace> places) {
        this(handout, counters, tracks, places, new BookFiles(null, Map.of()));
      }

      /** The results by file name. */
      public SortedMap<String, byte[]> files() {
        return Report.files(handout);
      }
    }

    /**
     * The book, or a file of data beside it, cannot be used until it is mended.
     *
     * @param shown units in which the complaints speak: those of the book as far as it was read
     */
    record Refused(List<Complaint> complaints, Shown shown) implements Outcome {
      public Refused {
        complaints = List.copyOf(complaints);
      }
    }
  }

  /** Answers the field book in a file, or in a folder that holds {@code field-book.yaml}. */
  public static Outcome answer(Path book, Settings settings) {
    return answer(book, settings, Progress.NONE);
  }

  /** The same, with word of how far it is. */
  public static Outcome answer(Path book, Settings settings, Progress progress) {
    return new Job(settings, progress).answer(book);
  }

  /**
   * The same without looking at the footage: quick, and without pictures. What was read of the
   * footage before is used.
   */
  public static Outcome answerWithoutFootage(Path book, Settings settings) {
    return new Job(settings, null).answer(book);
  }

  /**
   * Answers a site of the archive as it is now, with the recordings that are kept of it.
   *
   * <p>Refused: an identity of which no book is kept.
   */
  public static Outcome answer(Archive archive, UUID book, Settings settings, Progress progress) {
    return new Job(settings, progress).answer(archive, book);
  }

  /** The same without looking at the footage: quick, and without pictures. */
  public static Outcome answerWithoutFootage(Archive archive, UUID book, Settings settings) {
    return new Job(settings, null).answer(archive, book);
  }

  /**
   * What the recordings of a site show of their counters, and nothing else; empty where the book
   * cannot be read.
   *
   * @param progress told how the reading goes; null takes only what was read before
   */
  public static Optional<Tracked> tracks(Archive archive, UUID book, @Nullable Progress progress) {
    SiteOfArchive site = SiteOfArchive.of(archive, book, Bundled.catalogue());
    FieldBook whole = site.read().book();
    return whole == null
        ? Optional.empty()
        : Optional.of(
            BookTracks.of(site.read(), whole, site.files(), progress, CounterCache.usual()));
  }

  private Outcome answer(Archive archive, UUID book) {
    RuleChoice.Gathered gathered = gathered();
    SiteOfArchive site = SiteOfArchive.of(archive, book, gathered.rules().catalogue());
    return answer(gathered, site.read(), site.files(), Path.of(book + ".yaml"));
  }

  private Outcome answer(Path given) {
    Path file = Files.isDirectory(given) ? given.resolve("field-book.yaml") : given;
    Path folder = file.toAbsolutePath().resolveSibling(".").normalize();
    RuleChoice.Gathered gathered = gathered();
    ReadBook read = FieldBookReader.read(file, gathered.rules().catalogue());
    return answer(gathered, read, BookFiles.in(folder), file);
  }

  private RuleChoice.Gathered gathered() {
    RuleChoice.Gathered gathered = settings.rules().gather();
    complaints.addAll(gathered.complaints());
    return gathered;
  }

  private Outcome answer(RuleChoice.Gathered gathered, ReadBook read, BookFiles files, Path file) {
    Rules rules = gathered.rules();
    complaints.addAll(read.complaints());
    FieldBook book = read.book();
    if (!gathered.sound() || !read.sound() || book == null) {
      return refused(book);
    }
    Optional<Visit> visit = visit(book);
    if (visit.isEmpty()) {
      complaints.add(Trouble.noSuchVisit(file, settings.visit(), book));
      return refused(book);
    }
    Tracked tracked = BookTracks.of(read, book, files, progress, CounterCache.usual());
    complaints.addAll(tracked.complaints());
    Line line = Estimator.estimate(book, tracked.tracks(), rules.priors());
    Answers answers = Judge.judge(book, line, rules, visit.get());
    Shots shots = shots(read, files, visit.get(), tracked, new StillNames(line, shown(book)));
    Language language = settings.language();
    return new Outcome.Answered(
        new Handout(
                book,
                line,
                answers,
                rules,
                gathered.codes(),
                shots,
                complaints,
                language == null ? Language.EN : language,
                shown(book),
                paper(book))
            .turned(settings.plan())
            .from(gathered.sender()),
        tracked.counters(),
        tracked.passes(),
        begins(read),
        files);
  }

  /** Where each entry begins: at the first of its fields. */
  private static Map<UUID, FilePlace> begins(ReadBook read) {
    Map<UUID, FilePlace> begins = new HashMap<>();
    read.places()
        .forEach(
            (entry, fields) ->
                fields.values().stream()
                    .filter(place -> place.line() > 0)
                    .min(Comparator.comparingInt(FilePlace::line))
                    .ifPresent(place -> begins.put(entry, place)));
    return begins;
  }

  private Shots shots(
      ReadBook read, BookFiles files, Visit visit, Tracked tracked, StillNames names) {
    if (progress == null) {
      return Shots.NONE;
    }
    Recordings recordings = new Recordings(read, files, visit, tracked, names, progress);
    Shots shots = recordings.shots();
    complaints.addAll(recordings.complaints());
    Photos photos = new Photos(read, files, visit, names);
    shots = shots.with(photos.all());
    complaints.addAll(photos.complaints());
    return shots;
  }

  private Outcome refused(@Nullable FieldBook book) {
    return new Outcome.Refused(complaints, book == null ? Shown.METRES : shown(book));
  }

  private Optional<Visit> visit(FieldBook book) {
    String wanted = settings.visit();
    if (wanted == null) {
      return book.visits().isEmpty() ? Optional.empty() : Optional.of(book.visits().getLast());
    }
    return book.visits().stream().filter(v -> v.label().equals(wanted)).findFirst();
  }

  private Shown shown(FieldBook book) {
    Shown chosen = settings.shown();
    if (chosen != null) {
      return chosen;
    }
    Unit distance = book.units().distance();
    return distance == Unit.FOOT || distance == Unit.INCH ? Shown.FEET_INCHES : Shown.METRES;
  }

  private Paper paper(FieldBook book) {
    Paper chosen = settings.paper();
    if (chosen != null) {
      return chosen;
    }
    return shown(book) == Shown.METRES ? Paper.A4 : Paper.LETTER;
  }
}
