package daylight.line.answer;

import daylight.line.book.Place;
import daylight.line.book.Reach;
import daylight.line.course.Run;
import daylight.line.course.Wanted;
import daylight.line.fall.FallLimit;
import daylight.line.fall.FallStretch;
import daylight.line.fall.Ponding;
import daylight.line.fall.WaterSeen;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Measured;
import daylight.line.measure.Reading;
import daylight.line.proving.Passage;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Does it drain? */
final class Drain {
  private static final double SURE = 0.95;

  private final Case one;
  private final Telling tell;

  private Drain(Case one) {
    this.one = one;
    this.tell = new Telling(Question.DRAIN, one);
  }

  static Answer answer(Case one) {
    return new Drain(one).answer();
  }

  private Answer answer() {
    if (one.runs().stream().allMatch(run -> run.reach().use() == Reach.Use.PUMPED)) {
      return tell.answer(State.DOES_NOT_APPLY, Sureness.SURE, AnswerKey.DRAIN_PUMPED);
    }
    Passing passing = new Passing(one, tell);
    passing.drains();
    List<FallStretch> stretches =
        one.fall().stretches().stream().filter(s -> one.has(s.from().reach())).toList();
    rest(stretches);
    List<WaterSeen> seen =
        one.fall().water().stream().filter(w -> one.has(w.from().reach())).toList();
    Optional<WaterSeen> water = seen.stream().filter(w -> !Standing.ranOff(w)).findFirst();
    seen.stream().filter(Standing::ranOff).forEach(w -> Standing.ranOff(tell, w));
    if (water.isPresent()) {
      return standing(water.get(), stretches);
    }
    Optional<Passage> lost = passing.lost();
    if (lost.isPresent()) {
      return notArrived(lost.get(), stretches);
    }
    if (stretches.isEmpty()) {
      boolean unfound = Unfound.isTrueOf(one);
      if (unfound) {
        Unfound.missing(tell, one);
      }
      if (!unfound || !Unfound.deep(one)) {
        tell.missing(AnswerKey.MISSING_DEPTHS);
      }
      return tell.answer(State.CANNOT_SAY_YET, Sureness.OPEN, AnswerKey.DRAIN_NO_HEIGHTS);
    }
    return byFall(stretches);
  }

  private void rest(List<FallStretch> stretches) {
    worst(stretches).ifPresent(worst -> tell.restsOn(new Wanted.Fall(worst.from(), worst.to())));
  }

  private static Optional<FallStretch> worst(List<FallStretch> stretches) {
    return stretches.stream().max(Comparator.comparingDouble(Drain::doubt));
  }

  /** How likely it is that a stretch fails its rule, or runs backward where it has none. */
  private static double doubt(FallStretch stretch) {
    Double below = stretch.belowLimit();
    return below == null ? stretch.adverse() : below;
  }

  private Answer standing(WaterSeen water, List<FallStretch> stretches) {
    tell.cautionSewage();
    Measured depth = water.depth();
    if (depth != null) {
      tell.reason(
          AnswerKey.DRAIN_WATER_DEPTH,
          tell.figure(FigureKey.WATER_DEPTH, new Argument.Small(depth.value()), water.from()));
    }
    Standing.held(tell, water);
    for (FallStretch stretch : stretches) {
      if (stretch.whole()) {
        overall(stretch);
      }
    }
    if (stretches.stream().anyMatch(s -> s.limit() != null)) {
      tell.reason(AnswerKey.DRAIN_RULE_NEW_WORK);
    }
    tell.noted(water.finding(), new Argument.Term("kind.standing-water"));
    Place to = water.to();
    Sureness sure = Standing.held(water);
    boolean open = sure == Sureness.OPEN && !water.held().tests().isEmpty();
    State state = open ? State.CANNOT_SAY_YET : State.NO;
    if (to == null) {
      return tell.answer(
          state,
          sure,
          AnswerKey.DRAIN_WATER_STANDS_AT,
          tell.station(water.from()),
          tell.from(water.from()));
    }
    return tell.answer(
        state,
        sure,
        AnswerKey.DRAIN_WATER_STANDS,
        tell.station(water.from()),
        tell.station(to),
        tell.from(water.from()));
  }

  /** Water that was put in and did not come out speaks louder than any fall. */
  private Answer notArrived(Passage lost, List<FallStretch> stretches) {
    tell.caution(Caution.SEWAGE);
    stretches.stream().filter(FallStretch::whole).forEach(this::overall);
    return tell.answer(
        State.NO,
        Sureness.LIKELY,
        AnswerKey.TEST_DID_NOT_ARRIVE,
        tell.node(lost.test().at()),
        tell.node(lost.seen().where()));
  }

  private void overall(FallStretch stretch) {
    FallLimit limit = stretch.limit();
    Argument slope = slope(stretch);
    if (limit == null) {
      tell.reason(AnswerKey.DRAIN_FALLS_NO_RULE, slope, from(stretch), to(stretch));
      tell.missing(AnswerKey.MISSING_BORE, new Argument.Label(stretch.from().reach()));
    } else {
      tell.reason(AnswerKey.DRAIN_FALLS, slope, limit(limit), from(stretch), to(stretch));
    }
  }

  /** The upstream node of the reach that a stretch is on. */
  private Argument from(FallStretch stretch) {
    return new Argument.Label(reach(stretch).upstream());
  }

  private Argument to(FallStretch stretch) {
    return new Argument.Label(reach(stretch).downstream());
  }

  private Reach reach(FallStretch stretch) {
    return one.line().findRun(stretch.from().reach()).orElseThrow().reach();
  }

  private Argument slope(FallStretch stretch) {
    return tell.figure(FigureKey.SLOPE, Telling.slope(stretch.slope()), stretch.from());
  }

  private Argument limit(FallLimit limit) {
    tell.rule(limit);
    return new Argument.Quantity(Dimension.SLOPE, limit.slope());
  }

  private Answer byFall(List<FallStretch> stretches) {
    Optional<Ponding.Pool> sure = new Standing(one).tell(tell);
    if (sure.isPresent()) {
      Ponding.Pool pool = sure.get();
      return tell.answer(
          State.NO,
          Sureness.SURE,
          AnswerKey.DRAIN_POOL,
          tell.station(pool.from()),
          tell.station(pool.to()),
          tell.from(pool.from()),
          tell.figure(FigureKey.WATER_DEPTH, new Argument.Small(deep(pool)), pool.to()));
    }
    Optional<FallStretch> backward =
        stretches.stream()
            .filter(s -> s.adverse() >= SURE)
            .max(Comparator.comparingDouble(FallStretch::adverse));
    if (backward.isPresent()) {
      FallStretch s = backward.get();
      return tell.answer(
          State.NO,
          Sureness.SURE,
          AnswerKey.DRAIN_BACKWARD,
          slope(s),
          tell.station(s.from()),
          tell.station(s.to()),
          tell.from(s.from()));
    }
    FallStretch worst = worst(stretches).orElseThrow();
    FallLimit limit = worst.limit();
    if (limit == null) {
      return noRule(worst, stretches);
    }
    tell.reason(AnswerKey.DRAIN_RULE_NEW_WORK);
    double below = doubt(worst);
    if (below >= SURE) {
      return tell.answer(
          State.NO,
          Sureness.SURE,
          AnswerKey.DRAIN_TOO_FLAT,
          slope(worst),
          limit(limit),
          tell.station(worst.from()),
          tell.station(worst.to()),
          tell.from(worst.from()));
    }
    if (below <= 1 - SURE) {
      FallStretch whole = stretches.stream().filter(FallStretch::whole).findFirst().orElse(worst);
      boolean all = askForReachesLeftOut(stretches);
      return tell.answer(
          all ? State.WITHIN_LIMITS : State.CANNOT_SAY_YET,
          all ? Sureness.of(1 - below) : Sureness.OPEN,
          AnswerKey.DRAIN_FALLS,
          slope(whole),
          limit(limit),
          from(whole),
          to(whole));
    }
    if (wholeEnough(stretches) && askForReachesLeftOut(stretches)) {
      FallStretch whole = stretches.stream().filter(FallStretch::whole).findFirst().orElse(worst);
      tell.reason(AnswerKey.DRAIN_DIPS_OPEN);
      askForLevels();
      return tell.answer(
          State.WITHIN_LIMITS,
          Sureness.LIKELY,
          AnswerKey.DRAIN_FALLS,
          slope(whole),
          limit(limit),
          from(whole),
          to(whole));
    }
    tell.reason(
        AnswerKey.DRAIN_CHANCE,
        tell.station(worst.from()),
        tell.station(worst.to()),
        tell.from(worst.from()),
        tell.figure(FigureKey.CHANCE, new Argument.Probability(below), worst.from()));
    askForLevels();
    return tell.answer(
        State.CANNOT_SAY_YET, Sureness.OPEN, AnswerKey.DRAIN_OPEN, slope(worst), limit(limit));
  }

  /** How deep a pool is inside the pipe: no deeper than its bore. */
  private double deep(Ponding.Pool pool) {
    Reading bore = one.line().findRun(pool.from().reach()).orElseThrow().reach().bore();
    double depth = pool.depth().middle();
    return bore == null ? depth : Math.min(bore.value(), depth);
  }

  /** Whether every reach falls enough from end to end, and no part of it likely does not. */
  private static boolean wholeEnough(List<FallStretch> stretches) {
    return stretches.stream().anyMatch(FallStretch::whole)
        && stretches.stream().allMatch(s -> doubt(s) <= (s.whole() ? 1 - SURE : 0.5));
  }

  private Answer noRule(FallStretch worst, List<FallStretch> stretches) {
    boolean all = askForReachesLeftOut(stretches);
    boolean falls = worst.adverse() <= 1 - SURE;
    if (!falls) {
      askForLevels();
    }
    return tell.answer(
        all && falls ? State.ANSWERED : State.CANNOT_SAY_YET,
        all && falls ? Sureness.of(1 - worst.adverse()) : Sureness.OPEN,
        AnswerKey.DRAIN_FALLS_NO_RULE,
        slope(worst),
        from(worst),
        to(worst));
  }

  /** Asks for what keeps a reach from being judged; true if none is left out. */
  private boolean askForReachesLeftOut(List<FallStretch> stretches) {
    boolean all = true;
    for (Run run : one.runs()) {
      String label = run.reach().label();
      boolean pumped = run.reach().use() == Reach.Use.PUMPED;
      boolean known = stretches.stream().anyMatch(s -> s.from().reach().equals(label));
      if (!pumped && !known) {
        tell.missing(AnswerKey.MISSING_LOCATE_ON, new Argument.Label(label));
        all = false;
      } else if (!pumped && run.reach().bore() == null) {
        tell.missing(AnswerKey.MISSING_BORE, new Argument.Label(label));
        all = false;
      }
    }
    return all;
  }

  /**
   * A fall hangs on the heights of inverts and of the ground above locates. Where all of them were
   * levelled and it still cannot be told, the ends are to be levelled again.
   */
  private void askForLevels() {
    List<String> nodes = new ArrayList<>(List.of(one.main().from()));
    one.main().runs().forEach(run -> nodes.add(run.reach().downstream()));
    List<String> open = nodes.stream().filter(node -> !Levelled.invert(one, node)).toList();
    List<Argument> grounds = Levelled.notLevelled(one);
    List<String> asked =
        open.isEmpty() && grounds.isEmpty() ? List.of(one.main().from(), one.main().to()) : open;
    asked.forEach(node -> tell.missing(AnswerKey.MISSING_INVERT_LEVEL, tell.node(node)));
    if (!grounds.isEmpty()) {
      tell.missing(AnswerKey.MISSING_LEVELS, new Argument.Several(grounds));
    }
  }
}
