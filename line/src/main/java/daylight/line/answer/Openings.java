package daylight.line.answer;

import daylight.line.book.FieldBook;
import daylight.line.book.Reported;
import daylight.line.book.Visit;
import daylight.line.cause.Ask;
import daylight.line.cause.Cause;
import daylight.line.cause.Causes;
import daylight.line.cause.Clue;
import daylight.line.cause.Scene;
import daylight.line.cause.Strength;
import daylight.line.cause.WordList;
import daylight.line.course.Line;
import daylight.line.measure.Argument;
import daylight.line.measure.Statement;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The complaint, and what may be behind it. */
final class Openings {
  private final FieldBook book;
  private final Line line;
  private final Visit visit;
  private final List<Case> cases;
  private final boolean stopped;
  private final Laid laid;
  private final List<Statement> told = new ArrayList<>();
  private final Set<Caution> cautions = new LinkedHashSet<>();

  private Openings(FieldBook book, Line line, Visit visit, List<Case> cases, boolean stopped) {
    this.stopped = stopped;
    this.book = book;
    this.line = line;
    this.visit = visit;
    this.cases = cases;
    this.laid = new Laid(cases);
  }

  /**
   * @param stopped whether a stop order stands: then nothing more is asked for
   */
  static Opening of(FieldBook book, Line line, Visit visit, List<Case> cases, boolean stopped) {
    return new Openings(book, line, visit, cases, stopped).opening();
  }

  private Opening opening() {
    Reported complaint = visit.complaint();
    if (complaint == null || cases.isEmpty()) {
      return unranked(complaint);
    }
    List<Reported.Kind> kinds = kinds(complaint);
    if (kinds.isEmpty()) {
      return unranked(complaint);
    }
    Rules rules = cases.getFirst().rules();
    Scene scene =
        new Scene(
            book,
            line,
            cases.getFirst().fall(),
            cases.getFirst().proving(),
            visit,
            placed -> rules.grade(placed, line),
            rules.limits().seenShare());
    where(complaint, Causes.knowsPlace(scene, complaint));
    cautions(kinds);
    List<Opening.Ranked> ranked =
        Causes.of(scene, rules.causes().table(), kinds, complaint).stream()
            .map(cause -> ranked(cause, complaint))
            .toList();
    return new Opening(
        complaint.words(),
        told,
        ranked,
        List.of(),
        List.of(),
        laid.evidence(),
        List.copyOf(cautions));
  }

  private Opening unranked(@Nullable Reported complaint) {
    Unranked found = Unranked.of(visit, cases, laid);
    return new Opening(
        complaint == null ? null : complaint.words(),
        told,
        List.of(),
        found.causes(),
        found.against(),
        laid.evidence(),
        List.of());
  }

  /** As the book says; else as the words say, and then that is told. */
  private List<Reported.Kind> kinds(Reported complaint) {
    if (!complaint.kinds().isEmpty()) {
      told.add(Statement.of(OpeningKey.TOLD_KINDS, terms(complaint.kinds())));
      return complaint.kinds();
    }
    String words = complaint.words();
    List<WordList.Recognised> recognised =
        words == null ? List.of() : cases.getFirst().rules().causes().words().in(words);
    List<Reported.Kind> kinds = recognised.stream().map(WordList.Recognised::kind).toList();
    if (!kinds.isEmpty()) {
      told.add(
          Statement.of(
              OpeningKey.TAKEN_FROM_WORDS,
              terms(kinds),
              new Argument.Several(
                  recognised.stream()
                      .map(WordList.Recognised::by)
                      .distinct()
                      .<Argument>map(
                          by ->
                              new Argument.Said(
                                  Statement.of(OpeningKey.QUOTED, new Argument.Text(by))))
                      .toList())));
    } else if (words != null) {
      told.add(Statement.of(OpeningKey.KIND_NOT_KNOWN));
    }
    return kinds;
  }

  private static Argument terms(List<Reported.Kind> kinds) {
    return new Argument.Several(
        kinds.stream()
            .<Argument>map(
                kind -> new Argument.Term("reported." + kind.name().toLowerCase(Locale.ROOT)))
            .toList());
  }

  private void where(Reported complaint, boolean known) {
    String at = complaint.at();
    if (at == null) {
      told.add(Statement.of(OpeningKey.AT_NOT_KNOWN));
    } else {
      told.add(
          Statement.of(
              known ? OpeningKey.TOLD_AT : OpeningKey.AT_NOT_ON_DRAIN, Clues.place(book, at)));
    }
    Reported.When when = complaint.when();
    if (when != null) {
      told.add(
          Statement.of(
              OpeningKey.TOLD_WHEN,
              new Argument.Term("when." + when.name().toLowerCase(Locale.ROOT))));
    }
  }

  private void cautions(List<Reported.Kind> kinds) {
    for (Reported.Kind kind : kinds) {
      switch (kind) {
        case SMELL -> cautions.addAll(List.of(Caution.GAS, Caution.SEWAGE));
        case SINKHOLE -> cautions.add(Caution.HOLLOW_GROUND);
        case SLOW_DRAIN, BACK_UP, WET_SPOT -> {
          boolean storm =
              cases.stream()
                  .flatMap(one -> one.runs().stream())
                  .allMatch(run -> run.reach().use() == daylight.line.book.Reach.Use.STORM);
          if (!storm) {
            cautions.add(Caution.SEWAGE);
          }
        }
        case NOISE, FROZEN_OUTLET -> {}
      }
    }
  }

  private Opening.Ranked ranked(Cause cause, Reported complaint) {
    String at = complaint.at();
    Clues clues = new Clues(book, laid, at == null ? new Argument.Text("") : Clues.place(book, at));
    boolean settled =
        stopped || cause.strength() == Strength.PROBABLE || cause.strength() == Strength.UNLIKELY;
    return new Opening.Ranked(
        cause.row().cause(),
        cause.strength(),
        said(clues, cause.speaksFor()),
        said(clues, cause.speaksAgainst()),
        settled ? List.of() : cause.open().stream().map(Openings::ask).toList());
  }

  private static Statement ask(Ask ask) {
    return Statement.of(ask);
  }

  private static List<Statement> said(Clues clues, List<Clue> all) {
    return all.stream().map(clues::say).toList();
  }
}
