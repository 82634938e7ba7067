package daylight.line.answer;

import daylight.line.book.Place;
import daylight.line.course.Route;
import daylight.line.fall.Held;
import daylight.line.fall.Ponding;
import daylight.line.fall.WaterCause;
import daylight.line.fall.WaterSeen;
import daylight.line.fall.WaterSign;
import daylight.line.fall.WaterTest;
import daylight.line.measure.Argument;
import daylight.line.measure.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Water that stands: what holds what was seen, and where it would stand by the grade alone. */
final class Standing {
  private static final double SURE = 0.95;

  /** A few of them are told; more make no sentence. */
  private static final int MOST = 4;

  private final Case one;

  Standing(Case one) {
    this.one = one;
  }

  /** Tells what holds a water, or what it may be, and what would tell. */
  static void held(Telling tell, WaterSeen water) {
    Held held = water.held();
    Optional<Held.Share> found = held.found();
    if (found.isPresent()) {
      tell.reason(
          AnswerKey.DRAIN_HELD,
          new Argument.Term(found.get().cause().key()),
          chance(tell, found.get(), water.from()));
    } else {
      open(tell, water);
    }
    for (WaterTest test : held.tests()) {
      tell.missing(AnswerKey.MISSING_WATER_TEST, new Argument.Term(test.key()));
    }
  }

  private static void open(Telling tell, WaterSeen water) {
    List<Argument> may = new ArrayList<>();
    for (Held.Share share : water.held().shares()) {
      if (share.probability() >= Held.WORTH) {
        may.add(
            new Argument.Said(
                Statement.of(
                    AnswerKey.DRAIN_HELD_BY,
                    new Argument.Term(share.cause().key()),
                    chance(tell, share, water.from()))));
      }
    }
    tell.reason(AnswerKey.DRAIN_HELD_OPEN, new Argument.Either(may));
  }

  /** Whether it was found, and looked at again, that nothing held the water. */
  static boolean ranOff(WaterSeen water) {
    boolean gone = water.held().signs().contains(WaterSign.GONE_AFTER_WAITING);
    return gone
        && water
            .held()
            .found()
            .filter(share -> share.cause() == WaterCause.NOT_SETTLED)
            .isPresent();
  }

  /** Tells of water that only was running off. */
  static void ranOff(Telling tell, WaterSeen water) {
    water
        .held()
        .found()
        .ifPresent(
            share ->
                tell.reason(
                    AnswerKey.DRAIN_RAN_OFF,
                    tell.station(water.from()),
                    tell.from(water.from()),
                    chance(tell, share, water.from())));
  }

  private static Argument chance(Telling tell, Held.Share share, Place at) {
    return tell.figure(FigureKey.CHANCE, new Argument.Probability(share.probability()), at);
  }

  /** How sure it is that anything holds the water. */
  static Sureness held(WaterSeen water) {
    return Sureness.of(1 - water.held().of(WaterCause.NOT_SETTLED));
  }

  /**
   * Tells of pools by the grade alone.
   *
   * @return the deepest of those that are sure and were not seen dry
   */
  Optional<Ponding.Pool> tell(Telling tell) {
    Ponding ponding = one.fall().ponding();
    Ponding.Pool sure = null;
    for (Ponding.Pool pool : ponding.pools()) {
      if (!one.has(pool.from().reach())) {
        continue;
      }
      if (seenDry(pool.from(), pool.to())) {
        tell.reason(
            AnswerKey.DRAIN_POOL_SEEN_DRY,
            tell.station(pool.from()),
            tell.station(pool.to()),
            tell.from(pool.from()));
      } else if (pool.probability() < SURE) {
        tell.reason(
            AnswerKey.DRAIN_POOL_MAY,
            tell.station(pool.from()),
            tell.station(pool.to()),
            tell.from(pool.from()),
            tell.figure(
                FigureKey.CHANCE, new Argument.Probability(pool.probability()), pool.from()));
      } else if (sure == null || pool.depth().middle() > sure.depth().middle()) {
        sure = pool;
      }
    }
    open(tell, ponding);
    return Optional.ofNullable(sure);
  }

  private void open(Telling tell, Ponding ponding) {
    List<Argument> open = new ArrayList<>();
    for (Ponding.Open stretch : ponding.open()) {
      boolean here = one.has(stretch.from().reach());
      if (here && open.size() < MOST && !seenDry(stretch.from(), stretch.to())) {
        open.add(
            new Argument.Said(
                Statement.of(
                    AnswerKey.SEEN_STRETCH,
                    tell.station(stretch.from()),
                    tell.station(stretch.to()))));
      }
    }
    if (!open.isEmpty()) {
      tell.reason(AnswerKey.DRAIN_POOLS_OPEN, new Argument.Several(open));
    }
  }

  /** Whether a stretch was seen clearly from end to end; water there would have been noted. */
  private boolean seenDry(Place from, Place to) {
    Route route = one.route(from);
    double a = one.station(from);
    double b = route.station(to).orElse(a);
    return Sight.of(one, route).stream()
        .filter(sight -> sight.from() < b && sight.to() > a)
        .allMatch(sight -> sight.seen() == Sight.Seen.CLEAR);
  }
}
