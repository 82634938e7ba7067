package daylight.line.answer;

import daylight.line.book.Catalogue;
import daylight.line.book.Place;
import daylight.line.course.PlacedFinding;
import daylight.line.course.Run;
import daylight.line.measure.Argument;
import daylight.line.measure.Measured;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What now? */
final class WhatNow {
  private WhatNow() {}

  static Answer answer(Case one, List<Answer> before, List<StopOrder> stops) {
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
    List<PlacedFinding> work = new ArrayList<>(one.findings(Catalogue.Bears.STRUCTURE));
    work.addAll(
        one.findings(Catalogue.Bears.OPERATION).stream()
            .filter(placed -> !placed.finding().kind().endsWith("-water"))
            .toList());
    if (work.isEmpty()) {
      boolean dry = before.stream().noneMatch(WhatNow::doesNotDrain);
      if (!dry) {
        return tell.answer(State.ANSWERED, Sureness.LIKELY, AnswerKey.NOW_DRAIN);
      }
      boolean open = before.stream().anyMatch(answer -> !answer.missing().isEmpty());
      return tell.answer(
          State.ANSWERED,
          open ? Sureness.OPEN : Sureness.LIKELY,
          open ? AnswerKey.NOW_MEASURE : AnswerKey.NOW_NOTHING);
    }
    tell.caution(Caution.NOTIFY_BEFORE_DIGGING, Caution.HAND_DIG, Caution.LOCAL_CODES);
    tell.cautionSewage();
    for (PlacedFinding next : work.subList(1, work.size())) {
      tell.reason(
          AnswerKey.NOW_THEN,
          tell.finding(next),
          tell.station(next.from()),
          tell.from(next.from()));
    }
    return first(one, tell, work.getFirst());
  }

  private static boolean doesNotDrain(Answer answer) {
    return answer.question() == Question.DRAIN && answer.state() == State.NO;
  }

  private static Answer first(Case one, Telling tell, PlacedFinding first) {
    Place place = first.from();
    Optional<Measured> depth =
        one.line()
            .findRun(place.reach())
            .filter(run -> !run.stations().isEmpty())
            .map(Run::path)
            .map(path -> path instanceof Run.Path.Found f ? f.nearest(place.distance()) : null)
            .map(station -> station.depth());
    if (depth.isEmpty()) {
      return tell.answer(
          State.ANSWERED,
          Sureness.LIKELY,
          AnswerKey.NOW_FIRST,
          tell.finding(first),
          tell.station(place),
          tell.from(place));
    }
    tell.restsOn(one.line().whyDepth(place));
    if (depth.get().upper95() >= one.rules().limits().trenchNotice()) {
      tell.caution(Caution.TRENCH);
    }
    return tell.answer(
        State.ANSWERED,
        Sureness.LIKELY,
        AnswerKey.NOW_FIRST_DEEP,
        tell.finding(first),
        tell.station(place),
        tell.from(place),
        tell.figure(FigureKey.DEPTH, new Argument.UncertainLength(depth.get()), place));
  }
}
