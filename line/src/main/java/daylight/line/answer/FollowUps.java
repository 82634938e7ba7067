package daylight.line.answer;

import daylight.line.book.FieldBook;
import daylight.line.book.Id;
import daylight.line.book.Papers;
import daylight.line.book.Reach;
import daylight.line.book.Visit;
import daylight.line.book.Work;
import daylight.line.course.Line;
import daylight.line.course.PlacedFinding;
import daylight.line.urgency.HowSoon;
import daylight.line.urgency.Occasion;
import daylight.line.urgency.TimeLimits;
import daylight.line.urgency.Urgency;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What there is to come back to after a visit, and by which day: a second door of this room.
 *
 * <p>Days follow from the day of the visit and the lengths of time in the table of urgency, never
 * from a clock. Where how soon cannot be said, nobody noted the day, or the table has no length, no
 * day is made up. Advice that was declined is nobody's task and not among them.
 */
public final class FollowUps {
  /** The earliest day first, then by what it is, then by identity; what has no day is last. */
  private static final Comparator<FollowUp> ORDER =
      Comparator.comparing((FollowUp one) -> day(one.due()))
          .thenComparingInt(FollowUps::rank)
          .thenComparing(one -> one.line() == null ? "" : one.line())
          .thenComparing(FollowUp::id);

  private final FieldBook book;
  private final Line line;
  private final Rules rules;
  private final Answers answers;
  private final Visit visit;
  private final @Nullable LocalDate visited;
  private final List<FollowUp> all = new ArrayList<>();

  private FollowUps(FieldBook book, Line line, Rules rules, Answers answers, Visit visit) {
    this.book = book;
    this.line = line;
    this.rules = rules;
    this.answers = answers;
    this.visit = visit;
    this.visited = visit.date();
  }

  /**
   * Of the visit that was judged.
   *
   * <p>Refused: answers of a visit that the book does not have.
   */
  public static List<FollowUp> of(FieldBook book, Line line, Rules rules, Answers answers) {
    Visit visit =
        book.visits().stream()
            .filter(one -> one.label().equals(answers.visit()))
            .findFirst()
            .orElseThrow(() -> new IllegalArgumentException("no visit " + answers.visit()));
    FollowUps follow = new FollowUps(book, line, rules, answers, visit);
    book.site().reaches().stream().map(Reach::line).distinct().forEach(follow::line);
    follow.papers();
    return follow.all.stream().sorted(ORDER).toList();
  }

  private static LocalDate day(FollowUp.Due due) {
    return due instanceof FollowUp.Due.On on ? on.day() : LocalDate.MAX;
  }

  private static int rank(FollowUp one) {
    return switch (one.what()) {
      case FollowUp.What.Stop _ -> 0;
      case FollowUp.What.Work _ -> 1;
      case FollowUp.What.Ticket _ -> 2;
      case FollowUp.What.Look _ -> 3;
      case FollowUp.What.Consent _ -> 4;
    };
  }

  private UUID id(String kind, String of) {
    return Id.derived(book.id().uuid(), "follow-up", kind + "/" + of).uuid();
  }

  private static UUID of(PlacedFinding placed) {
    return placed.finding().id().uuid();
  }

  private void line(String name) {
    Case one = Case.of(book, line, rules, answers.fall(), answers.proving(), visit, name);
    List<StopOrder> stops =
        answers.stops().stream().filter(s -> one.has(s.finding().from().reach())).toList();
    boolean stopped = !stops.isEmpty();
    for (StopOrder stop : stops) {
      PlacedFinding placed = stop.finding();
      all.add(
          new FollowUp(
              id("stop", of(placed).toString()),
              new FollowUp.What.Stop(placed, spot(one, placed)),
              // To stop needs no rule for how soon: it is now.
              visited == null
                  ? new FollowUp.Due.Open(FollowUp.Why.NO_DAY)
                  : new FollowUp.Due.On(visited, null),
              name,
              true));
    }
    List<FollowUp.Watched> watched = new ArrayList<>();
    boolean toDo = false;
    for (PlacedFinding placed : WhatNow.work(one)) {
      HowSoon how = rules.howSoon(placed, book, line);
      switch (how) {
        case HowSoon.Stop _, HowSoon.Nothing _ -> {}
        case HowSoon.Ruled ruled when ruled.urgency() == Urgency.WATCH && !sooner(ruled) ->
            watched.add(new FollowUp.Watched(placed, spot(one, placed)));
        case HowSoon.Ruled _, HowSoon.Listed _, HowSoon.CannotSay _ -> {
          toDo = true;
          all.add(work(one, placed, how, stopped));
        }
      }
    }
    all.add(look(one, watched, toDo, stopped));
  }

  /** Whether something that is only to be watched may be more than that. */
  private static boolean sooner(HowSoon.Ruled ruled) {
    Urgency worst = ruled.atWorst();
    return worst != null && worst != Urgency.WATCH;
  }

  private static FollowUp.Spot spot(Case one, PlacedFinding placed) {
    return new FollowUp.Spot(
        one.station(placed.from()), one.named(one.route(placed.from()).from()));
  }

  private FollowUp work(Case one, PlacedFinding placed, HowSoon how, boolean stopped) {
    DigPlace dig =
        answers.digs().stream()
            .filter(place -> of(place.finding()).equals(of(placed)) && !place.cleaned())
            .findFirst()
            .orElse(null);
    return new FollowUp(
        id("work", of(placed).toString()),
        new FollowUp.What.Work(placed, spot(one, placed), how, atWorst(how), dig),
        due(how),
        one.name(),
        stopped);
  }

  private FollowUp.Due due(HowSoon how) {
    return switch (how) {
      case HowSoon.Ruled ruled -> due(limit(ruled.urgency()));
      case HowSoon.Listed _, HowSoon.Stop _ -> due(limit(Urgency.AT_ONCE));
      case HowSoon.CannotSay _, HowSoon.Nothing _ -> new FollowUp.Due.Open(FollowUp.Why.NO_CLASS);
    };
  }

  private @Nullable LocalDate atWorst(HowSoon how) {
    Urgency worst = how instanceof HowSoon.Ruled ruled ? ruled.atWorst() : null;
    return worst != null && due(limit(worst)) instanceof FollowUp.Due.On on ? on.day() : null;
  }

  private TimeLimits.@Nullable Limit limit(Urgency urgency) {
    return rules.urgency().times().of(urgency).orElse(null);
  }

  private FollowUp.Due due(TimeLimits.@Nullable Limit limit) {
    if (limit == null) {
      return new FollowUp.Due.Open(FollowUp.Why.NO_LENGTH);
    }
    return visited == null
        ? new FollowUp.Due.Open(FollowUp.Why.NO_DAY)
        : new FollowUp.Due.On(limit.from(visited), limit);
  }

  /** One look at a line, for the reason that is earliest; all reasons are told. */
  private FollowUp look(Case one, List<FollowUp.Watched> watched, boolean toDo, boolean stopped) {
    List<FollowUp.Reason> reasons = new ArrayList<>();
    if (!Coverage.of(one).whole(rules.limits().seenShare())) {
      reasons.add(reason(Occasion.NOT_SEEN_WHOLE));
    }
    if (toDo || stopped) {
      reasons.add(reason(Occasion.WORK_DUE));
    }
    if (visit.works().stream().anyMatch(work -> isCleaningOf(work, one))) {
      reasons.add(reason(Occasion.CLEANED));
    }
    if (!watched.isEmpty()) {
      reasons.add(new FollowUp.Reason(Urgency.WATCH, due(limit(Urgency.WATCH))));
    }
    if (reasons.isEmpty()) {
      reasons.add(reason(Occasion.NOTHING_FOUND));
    }
    reasons.sort(Comparator.comparing(reason -> day(reason.due())));
    return new FollowUp(
        id("look", one.name()),
        new FollowUp.What.Look(reasons, watched),
        reasons.getFirst().due(),
        one.name(),
        stopped);
  }

  private FollowUp.Reason reason(Occasion occasion) {
    return new FollowUp.Reason(occasion, due(rules.urgency().times().of(occasion).orElse(null)));
  }

  private static boolean isCleaningOf(Work work, Case one) {
    return work instanceof Work.Cleaning cleaning && cleaning.reaches().stream().anyMatch(one::has);
  }

  /** Tickets that have not run out before the visit, and consents of the visit. */
  private void papers() {
    for (Visit each : book.visits()) {
      for (Papers.Ticket ticket : each.papers().tickets()) {
        LocalDate expires = ticket.expires();
        if (expires != null && (visited == null || !expires.isBefore(visited))) {
          add("ticket", ticket.id(), new FollowUp.What.Ticket(ticket), expires);
        }
      }
    }
    for (Papers.Consent consent : visit.papers().consents()) {
      Optional<Instant> when = Optional.ofNullable(consent.when());
      when.ifPresent(
          given ->
              add(
                  "consent",
                  consent.id(),
                  new FollowUp.What.Consent(consent),
                  given.atZone(book.site().zone()).toLocalDate()));
    }
  }

  private void add(String kind, Id of, FollowUp.What what, LocalDate day) {
    all.add(
        new FollowUp(
            id(kind, of.uuid().toString()), what, new FollowUp.Due.On(day, null), null, false));
  }
}
