package daylight.line.answer;

import daylight.line.book.Catalogue;
import daylight.line.book.FieldBook;
import daylight.line.book.Place;
import daylight.line.course.PlacedFinding;
import daylight.line.course.Wanted;
import daylight.line.dig.Dig;
import daylight.line.dig.DigTarget;
import daylight.line.dig.DigTicket;
import daylight.line.dig.Digger;
import daylight.line.dig.TapeTies;
import daylight.line.measure.Argument;
import daylight.line.measure.Measured;
import daylight.line.proving.Passage;
import daylight.line.urgency.HowSoon;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What now? */
final class WhatNow {
  /** What a jet or a cutter takes away; common practice, no source. */
  private static final Set<String> CLEANED = Set.of("deposit-loose", "grease", "vermin");

  private WhatNow() {}

  /**
   * What was seen that asks for work, what is most urgent first and of that the pipe itself; water
   * is judged by the fall.
   */
  static List<PlacedFinding> work(Case one) {
    List<PlacedFinding> work = new ArrayList<>(one.findings(Catalogue.Bears.STRUCTURE));
    work.addAll(
        one.findings(Catalogue.Bears.OPERATION).stream()
            .filter(placed -> !placed.finding().kind().endsWith("-water"))
            .toList());
    return work.stream()
        .map(placed -> new Ranked(placed, howSoon(one, placed).rank()))
        .sorted(Comparator.comparingInt(Ranked::rank))
        .map(Ranked::placed)
        .toList();
  }

  /** A finding with how urgent it is, worked out once. */
  private record Ranked(PlacedFinding placed, int rank) {}

  private static HowSoon howSoon(Case one, PlacedFinding placed) {
    return one.rules().howSoon(placed, one.book(), one.line());
  }

  /** Where to dig for each of them; nowhere while the line has a stop order. */
  static List<DigPlace> digs(Case one, List<StopOrder> stops) {
    if (stops.stream().anyMatch(stop -> one.has(stop.finding().from().reach()))) {
      return List.of();
    }
    FieldBook book = one.book();
    @Nullable LocalDate visited = one.visit().date();
    LocalDate day = visited == null ? LocalDate.MIN : visited;
    DigTicket ticket = DigTicket.of(book, day);
    return work(one).stream()
        .map(
            finding ->
                new DigPlace(
                    one.name(),
                    finding,
                    ticket,
                    CLEANED.contains(finding.finding().kind()),
                    Digger.target(
                        book,
                        one.line(),
                        one.rules().priors(),
                        one.rules().limits().dig(),
                        finding,
                        day)))
        .toList();
  }

  static Answer answer(Case one, List<Answer> before, List<StopOrder> stops, List<DigPlace> digs) {
    Telling tell = new Telling(Question.WHAT_NOW, one);
    if (!stops.isEmpty()) {
      tell.caution(Caution.GAS, Caution.ELECTRICITY, Caution.LOCAL_CODES);
      for (StopOrder stop : stops) {
        if (one.has(stop.finding().from().reach())) {
          tell.finding(stop.finding());
          return tell.answer(State.ANSWERED, Sureness.SURE, AnswerKey.NOW_STOP);
        }
      }
    }
    List<PlacedFinding> work = work(one);
    if (work.isEmpty()) {
      return nothingSeen(one, tell, before);
    }
    tell.caution(Caution.NOTIFY_BEFORE_DIGGING, Caution.HAND_DIG, Caution.LOCAL_CODES);
    tell.cautionSewage();
    if (digs.getFirst().dig() instanceof DigTarget target) {
      spot(tell, target);
    }
    Soon.tell(one, tell, work);
    for (PlacedFinding next : work.subList(1, work.size())) {
      tell.reason(
          AnswerKey.NOW_THEN,
          tell.finding(next),
          tell.station(next.from()),
          tell.from(next.from()));
    }
    beforeWinter(tell, before);
    return first(tell, work.getFirst(), digs.getFirst().dig());
  }

  /** What to see to where no finding asks for work: the worst of the other answers. */
  private static Answer nothingSeen(Case one, Telling tell, List<Answer> before) {
    if (before.stream().anyMatch(WhatNow::doesNotDrain)) {
      beforeWinter(tell, before);
      return tell.answer(State.ANSWERED, Sureness.LIKELY, AnswerKey.NOW_DRAIN);
    }
    if (before.stream().anyMatch(WhatNow::leaks)) {
      beforeWinter(tell, before);
      tell.cautionSewage();
      return tell.answer(State.ANSWERED, Sureness.LIKELY, AnswerKey.NOW_LEAK);
    }
    List<Passage> indoors = new Passing(one, tell).indoors();
    if (!indoors.isEmpty()) {
      Passage smoke = indoors.getFirst();
      beforeWinter(tell, before);
      tell.noted(smoke.test(), new Argument.Term("test.smoke.true"));
      tell.caution(Caution.GAS);
      return tell.answer(
          State.ANSWERED, Sureness.LIKELY, AnswerKey.NOW_TRAP, tell.node(smoke.seen().where()));
    }
    if (before.stream().anyMatch(WhatNow::doesNotCope)) {
      beforeWinter(tell, before);
      return tell.answer(State.ANSWERED, Sureness.LIKELY, CopeKey.NOW);
    }
    if (before.stream().anyMatch(WhatNow::freezes)) {
      return tell.answer(State.ANSWERED, Sureness.LIKELY, AnswerKey.NOW_FREEZE);
    }
    boolean open = before.stream().anyMatch(answer -> !answer.missing().isEmpty());
    return tell.answer(
        State.ANSWERED,
        open ? Sureness.OPEN : Sureness.LIKELY,
        open ? AnswerKey.NOW_MEASURE : AnswerKey.NOW_NOTHING);
  }

  /** Frost waits for winter: it is told after all else. */
  private static void beforeWinter(Telling tell, List<Answer> before) {
    if (before.stream().anyMatch(WhatNow::freezes)) {
      tell.reason(AnswerKey.NOW_FREEZE);
    }
  }

  private static boolean freezes(Answer answer) {
    return answer.headline().key() == AnswerKey.FREEZE_WATER
        || answer.headline().key() == AnswerKey.FREEZE_OUTLET;
  }

  private static boolean doesNotDrain(Answer answer) {
    return answer.question() == Question.DRAIN && answer.state() == State.NO;
  }

  private static boolean doesNotCope(Answer answer) {
    return answer.question() == Question.COPE && answer.state() == State.NO;
  }

  private static boolean leaks(Answer answer) {
    return answer.question() == Question.SOUND && answer.state() == State.NO;
  }

  private static Answer first(Telling tell, PlacedFinding first, Dig dig) {
    Place place = first.from();
    Measured depth = null;
    if (dig instanceof DigTarget target) {
      depth = target.invert();
      boolean walls =
          target.trench() == DigTarget.Trench.WAY_OUT
              || target.trench() == DigTarget.Trench.PROTECT;
      if (walls) {
        tell.caution(Caution.TRENCH);
      }
    }
    if (depth == null) {
      return tell.answer(
          State.ANSWERED,
          Sureness.LIKELY,
          AnswerKey.NOW_FIRST,
          tell.finding(first),
          tell.station(place),
          tell.from(place));
    }
    tell.restsOn(new Wanted.Depth(place));
    return tell.answer(
        State.ANSWERED,
        Sureness.LIKELY,
        AnswerKey.NOW_FIRST_DEEP,
        tell.finding(first),
        tell.station(place),
        tell.from(place),
        tell.figure(FigureKey.DEPTH, new Argument.UncertainLength(depth), place));
  }

  /** The tapes that find it, so that nobody looks for faded paint. */
  private static void spot(Telling tell, DigTarget target) {
    TapeTies ties = target.ties();
    if (ties != null) {
      tell.reason(
          AnswerKey.NOW_SPOT,
          tape(tell, ties.first(), target.place()),
          new Argument.Label(ties.first().landmark()),
          tape(tell, ties.second(), target.place()),
          new Argument.Label(ties.second().landmark()));
    }
  }

  private static Argument tape(Telling tell, TapeTies.Tape tape, Place place) {
    return tell.figure(FigureKey.TAPE, new Argument.UncertainLength(tape.length()), place);
  }
}
