package daylight.app.web;

import daylight.app.Job;
import daylight.app.track.FilmCounter;
import daylight.line.book.Papers;
import daylight.line.counter.Fitted;
import daylight.line.measure.FilePlace;
import daylight.line.measure.Shown;
import daylight.report.Handout;
import daylight.report.draw.PlanTurn;
import daylight.report.draw.Subject;
import daylight.report.page.OwnersReport;
import daylight.report.words.Language;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** What came of reading a book. */
sealed interface Reading {

  /** It was answered. The result files are made when somebody first asks for one. */
  final class Answered implements Reading {
    private final Job.Outcome.Answered outcome;
    private final Subject subject;
    private final Map<Reader, Answered> others = new ConcurrentHashMap<>();
    private @Nullable SortedMap<String, byte[]> files;
    private @Nullable Kept kept;

    Answered(Job.Outcome.Answered outcome) {
      this.outcome = outcome;
      this.subject = outcome.handout().subject();
    }

    /**
     * Its page as it was last made.
     *
     * @param depends on what it depended beside the reading itself
     */
    private record Kept(List<Object> depends, String page) {}

    /**
     * Its page; made anew only where something that it depends on changed, for drawing a crowded
     * line takes its time.
     */
    synchronized String page(List<Object> depends, Supplier<String> make) {
      Kept last = kept;
      if (last == null || !last.depends().equals(depends)) {
        last = new Kept(List.copyOf(depends), make.get());
        kept = last;
      }
      return last.page();
    }

    /** For whom it is told. */
    private record Reader(Language language, Shown shown, PlanTurn plan) {}

    /**
     * The same told to another reader; nothing is read or computed anew.
     *
     * @param plan which way up the plan is to lie; null leaves it as it is
     */
    Answered in(Language language, Shown shown, @Nullable PlanTurn plan) {
      Handout own = handout();
      Reader usual = new Reader(own.language(), own.shown(), own.plan());
      Reader wanted = new Reader(language, shown, plan == null ? own.plan() : plan);
      return wanted.equals(usual)
          ? this
          : others.computeIfAbsent(
              wanted,
              reader ->
                  new Answered(
                      new Job.Outcome.Answered(
                          own.in(language, shown).turned(reader.plan()),
                          outcome.counters(),
                          outcome.tracks(),
                          outcome.places())));
    }

    Handout handout() {
      return outcome.handout();
    }

    Subject subject() {
      return subject;
    }

    /** The files that the book names, of every visit. */
    List<Papers.Media> media() {
      return handout().book().visits().stream()
          .flatMap(visit -> visit.papers().media().stream())
          .toList();
    }

    /** Where an entry stands in the file of its book. */
    Optional<FilePlace> place(UUID entry) {
      return Optional.ofNullable(outcome.places().get(entry));
    }

    /** What the counter of a recording showed; empty where it was not read. */
    Optional<FilmCounter> counter(Papers.Media media) {
      return Optional.ofNullable(outcome.counters().get(media.id()));
    }

    /** The track of each recording and pass of which anything is known. */
    List<Fitted.OfPass> tracks() {
      return outcome.tracks();
    }

    /** One of the result files; what people look at first does not wait for the others. */
    Optional<byte[]> file(String name) {
      if (name.equals("report.html")) {
        return Optional.of(OwnersReport.of(subject, handout().sender()).file());
      }
      Optional<byte[]> still =
          handout().shots().stills().stream()
              .filter(one -> one.file().equals(name))
              .map(one -> one.picture().jpeg())
              .findFirst();
      return still.isPresent() ? still : Optional.ofNullable(files().get(name));
    }

    private synchronized SortedMap<String, byte[]> files() {
      SortedMap<String, byte[]> made = files;
      if (made == null) {
        made = outcome.files();
        files = made;
      }
      return made;
    }
  }

  /** It must be mended first. */
  record Refused(Job.Outcome.Refused outcome) implements Reading {}

  /** A fault of ours. */
  record Failed(RuntimeException fault) implements Reading {}
}
