package daylight.app;

import daylight.app.track.BookTracks;
import daylight.app.track.CounterCache;
import daylight.app.track.FilmCounter;
import daylight.app.track.Tracked;
import daylight.archive.Bundled;
import daylight.archive.DataReader;
import daylight.archive.FieldBookReader;
import daylight.archive.ReadBook;
import daylight.archive.ReadData;
import daylight.line.answer.Answers;
import daylight.line.answer.Judge;
import daylight.line.answer.Rules;
import daylight.line.book.Catalogue;
import daylight.line.book.FieldBook;
import daylight.line.book.Id;
import daylight.line.book.Priors;
import daylight.line.book.Visit;
import daylight.line.course.Estimator;
import daylight.line.course.Line;
import daylight.line.fall.FallRules;
import daylight.line.measure.Complaint;
import daylight.line.measure.Shown;
import daylight.line.measure.Unit;
import daylight.line.urgency.UrgencyTable;
import daylight.report.Handout;
import daylight.report.Report;
import daylight.report.page.Paper;
import daylight.report.shots.Shots;
import daylight.report.words.Language;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
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
   * @param shown units of what is shown; null takes those of the book
   * @param paper for what is printed; null takes Letter where feet are shown and A4 elsewhere
   * @param fallRules id of a table of smallest slopes that comes with Daylight
   * @param fallRulesFile a table of one's own in its place; null for none
   * @param priors a file over the priors; null for none
   * @param catalogue a file over the catalogue; null for none
   * @param limits a file over the limits; null for none
   * @param urgency a table of urgency of one's own in its place; null for none
   * @param visit label of the visit to judge; null takes the last
   */
  public record Settings(
      @Nullable Shown shown,
      @Nullable Paper paper,
      String fallRules,
      @Nullable Path fallRulesFile,
      @Nullable Path priors,
      @Nullable Path catalogue,
      @Nullable Path limits,
      @Nullable Path urgency,
      @Nullable String visit) {
    /** What is taken where nobody chooses. */
    public static final Settings USUAL =
        new Settings(null, null, "ipc-704.1", null, null, null, null, null, null);
  }

  /** What became of the job. */
  public sealed interface Outcome {
    /**
     * The book was answered.
     *
     * @param counters what the counter of each recording showed, where it could be read
     */
    record Answered(Handout handout, SortedMap<Id, FilmCounter> counters) implements Outcome {
      public Answered {
        counters = Collections.unmodifiableSortedMap(new TreeMap<>(counters));
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

  private Outcome answer(Path given) {
    Path file = Files.isDirectory(given) ? given.resolve("field-book.yaml") : given;
    Catalogue catalogue = catalogue();
    Priors priors = priors();
    Rules.Limits limits = limits();
    FallRules fall = fallRules();
    UrgencyTable urgency = urgency();
    ReadBook read = FieldBookReader.read(file, catalogue);
    complaints.addAll(read.complaints());
    FieldBook book = read.book();
    boolean sound = read.sound() && priors != null && limits != null && fall != null;
    if (!sound || book == null || priors == null || limits == null || fall == null) {
      return refused(book);
    }
    if (urgency == null) {
      return refused(book);
    }
    Optional<Visit> visit = visit(book);
    if (visit.isEmpty()) {
      complaints.add(Trouble.noSuchVisit(file, settings.visit(), book));
      return refused(book);
    }
    Rules rules =
        new Rules(
            catalogue,
            fall,
            limits,
            priors,
            Bundled.grades(),
            urgency,
            Bundled.causes(),
            Bundled.holdLimits(),
            Bundled.flow());
    Path folder = file.toAbsolutePath().resolveSibling(".").normalize();
    Tracked tracked = BookTracks.of(read, book, folder, progress, CounterCache.usual());
    complaints.addAll(tracked.complaints());
    Line line = Estimator.estimate(book, tracked.tracks(), priors);
    Answers answers = Judge.judge(book, line, rules, visit.get());
    Shots shots = shots(read, folder, visit.get(), tracked);
    return new Outcome.Answered(
        new Handout(
            book, line, answers, rules, shots, complaints, Language.EN, shown(book), paper(book)),
        tracked.counters());
  }

  private Shots shots(ReadBook read, Path folder, Visit visit, Tracked tracked) {
    if (progress == null) {
      return Shots.NONE;
    }
    Recordings recordings = new Recordings(read, folder, visit, tracked, progress);
    Shots shots = recordings.shots();
    complaints.addAll(recordings.complaints());
    Photos photos = new Photos(read, folder, visit);
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

  private @Nullable Priors priors() {
    Path own = settings.priors();
    Priors base = Bundled.priors();
    return own == null ? base : taken(DataReader.priors(own, base));
  }

  private Catalogue catalogue() {
    Path own = settings.catalogue();
    Catalogue base = Bundled.catalogue();
    Catalogue read = own == null ? base : taken(DataReader.catalogue(own, base));
    return read == null ? base : read;
  }

  private Rules.@Nullable Limits limits() {
    Path own = settings.limits();
    Rules.Limits base = Bundled.limits();
    return own == null ? base : taken(DataReader.limits(own, base));
  }

  private @Nullable FallRules fallRules() {
    Path own = settings.fallRulesFile();
    return own == null ? Bundled.fallRules(settings.fallRules()) : taken(DataReader.fallRules(own));
  }

  private @Nullable UrgencyTable urgency() {
    Path own = settings.urgency();
    return own == null ? Bundled.urgency() : taken(DataReader.urgency(own));
  }

  private <T> @Nullable T taken(ReadData<T> read) {
    complaints.addAll(read.complaints());
    return read.complaints().stream()
            .anyMatch(c -> c.code().gravity() == daylight.line.measure.Gravity.STOPS)
        ? null
        : read.value();
  }
}
