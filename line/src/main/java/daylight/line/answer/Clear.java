package daylight.line.answer;

import daylight.line.book.Catalogue;
import daylight.line.book.Pass;
import daylight.line.book.Place;
import daylight.line.course.PlacedFinding;
import daylight.line.course.Route;
import daylight.line.course.Run;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Reading;
import daylight.line.measure.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Is it clear? */
final class Clear {
  /** Water is judged by whether the line drains, not by whether it is clear. */
  private static final Set<String> WATER = Set.of("standing-water", "flowing-water");

  private final Case one;
  private final Telling tell;

  private Clear(Case one) {
    this.one = one;
    this.tell = new Telling(Question.CLEAR, one);
  }

  static Answer answer(Case one) {
    return new Clear(one).answer();
  }

  private Answer answer() {
    Coverage coverage = Coverage.of(one);
    new Passing(one, tell).passes();
    if (coverage.share() <= 0) {
      return notSeen(tell, one);
    }
    sight();
    unseen(tell, coverage);
    List<PlacedFinding> inTheWay = inTheWay();
    boolean stopped = stopped();
    if (!inTheWay.isEmpty()) {
      tell.cautionSewage();
      for (PlacedFinding also : inTheWay.subList(1, inTheWay.size())) {
        tell.reason(
            AnswerKey.ALSO_FOUND,
            tell.finding(also),
            tell.station(also.from()),
            tell.from(also.from()));
      }
      return no(inTheWay.getFirst());
    }
    if (!coverage.open().isEmpty()) {
      return tell.answer(
          State.WITHIN_LIMITS, Sureness.LIKELY, AnswerKey.CLEAR_SO_FAR, soFar(tell, coverage));
    }
    Argument share = seen(tell, coverage);
    boolean whole = coverage.whole(one.rules().limits().seenShare()) && !stopped;
    return tell.answer(
        State.WITHIN_LIMITS,
        whole ? Sureness.SURE : Sureness.LIKELY,
        whole ? AnswerKey.CLEAR_YES : AnswerKey.CLEAR_FOR_PART,
        share);
  }

  /**
   * Without a stretch of clear sight nothing can be said; a pass without notes is no such stretch.
   */
  static Answer notSeen(Telling tell, Case one) {
    boolean passed =
        one.visit().passes().stream()
            .flatMap(pass -> pass.walk().stream())
            .anyMatch(leg -> one.has(leg.reach()));
    tell.missing(passed ? AnswerKey.MISSING_SIGHT_NOTES : AnswerKey.MISSING_PASS);
    return tell.answer(
        State.CANNOT_SAY_YET,
        Sureness.OPEN,
        passed ? AnswerKey.SIGHT_NOT_NOTED : AnswerKey.NOT_SEEN);
  }

  static Argument soFar(Telling tell, Coverage coverage) {
    return tell.figure(FigureKey.SEEN_LENGTH, new Argument.Length(coverage.metres()), null);
  }

  static Argument seen(Telling tell, Coverage coverage) {
    return tell.figure(
        FigureKey.SEEN_SHARE, new Argument.Quantity(Dimension.SHARE, coverage.share()), null);
  }

  /** Tells from where to where each way was seen, and how well. */
  private void sight() {
    for (Route route : one.routes()) {
      List<Argument> told = new ArrayList<>();
      List<Sight> sights = Sight.of(one, route);
      for (Sight.Seen seen : Sight.Seen.values()) {
        told.add(
            new Argument.Several(
                sights.stream()
                    .filter(sight -> sight.seen() == seen)
                    .map(sight -> stretch(route, sight))
                    .toList()));
      }
      told.addFirst(tell.node(route.from()));
      boolean clear = sights.stream().anyMatch(sight -> sight.seen() == Sight.Seen.CLEAR);
      if (!sights.isEmpty()) {
        tell.reason(clear ? AnswerKey.SEEN : AnswerKey.SEEN_NOTHING, told.toArray(Argument[]::new));
      }
    }
  }

  private Argument stretch(Route route, Sight sight) {
    return new Argument.Said(
        Statement.of(
            AnswerKey.SEEN_STRETCH,
            tell.station(route.place(sight.from())),
            tell.station(route.place(sight.to()))));
  }

  /** Asks for what was not seen clearly or not reached. */
  static void unseen(Telling tell, Coverage coverage) {
    for (Coverage.Stretch stretch : coverage.unseen()) {
      tell.missing(
          AnswerKey.MISSING_SIGHT,
          tell.station(stretch.from()),
          tell.station(stretch.to()),
          tell.from(stretch.from()));
    }
    for (Run run : coverage.open()) {
      tell.missing(AnswerKey.MISSING_PASS_TO, tell.node(run.reach().downstream()));
    }
  }

  /** What lies in the way, the largest share of the bore first. */
  private List<PlacedFinding> inTheWay() {
    double from = one.rules().limits().obstruction();
    return one.findings(Catalogue.Bears.OPERATION).stream()
        .filter(placed -> !WATER.contains(placed.finding().kind()))
        .filter(placed -> share(placed) >= from)
        .sorted((a, b) -> Double.compare(share(b), share(a)))
        .toList();
  }

  /** The share of the bore a finding fills; one that nobody sized counts as filling it. */
  static double share(PlacedFinding placed) {
    Reading share = placed.finding().quantities().get("share");
    return share == null ? 1 : share.value();
  }

  private Answer no(PlacedFinding worst) {
    Place place = worst.from();
    Reading share = worst.finding().quantities().get("share");
    if (share == null) {
      return tell.answer(
          State.NO,
          Sureness.SURE,
          AnswerKey.CLEAR_NO,
          tell.finding(worst),
          tell.station(place),
          tell.from(place));
    }
    return tell.answer(
        State.NO,
        Sureness.SURE,
        AnswerKey.CLEAR_NO_SHARE,
        tell.finding(worst),
        tell.station(place),
        tell.from(place),
        tell.figure(
            FigureKey.FILLED, new Argument.Quantity(Dimension.SHARE, share.value()), place));
  }

  /** Tells of every pass that could not go on; true if there was one. */
  private boolean stopped() {
    boolean stopped = false;
    for (Pass pass : one.visit().passes()) {
      Pass.End end = pass.end();
      boolean here = pass.walk().stream().anyMatch(leg -> one.has(leg.reach()));
      if (end != null && here && hindered(end.why())) {
        stopped = true;
        tell.noted(pass, new Argument.Length(end.cable().value()));
        tell.reason(
            AnswerKey.CLEAR_STOPPED,
            tell.figure(FigureKey.STATION, new Argument.Length(end.cable().value()), null),
            tell.node(pass.entry()),
            new Argument.Term("why." + end.why().name().toLowerCase(Locale.ROOT)));
      }
    }
    return stopped;
  }

  private static boolean hindered(Pass.Why why) {
    return switch (why) {
      case OBSTRUCTION, FRICTION, BEND, TRAP, UNDER_WATER, HEAD_STUCK -> true;
      case END_OF_CABLE, MAIN_REACHED, OUTLET_REACHED, ENOUGH, UNKNOWN -> false;
    };
  }
}
