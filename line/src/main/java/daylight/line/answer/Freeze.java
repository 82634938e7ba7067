package daylight.line.answer;

import daylight.line.book.Node;
import daylight.line.book.Place;
import daylight.line.book.Priors;
import daylight.line.book.Reach;
import daylight.line.course.Run;
import daylight.line.course.Wanted;
import daylight.line.frost.Frost;
import daylight.line.frost.FrostAlong;
import daylight.line.frost.FrostDepth;
import daylight.line.frost.Froster;
import daylight.line.frost.Input;
import daylight.line.frost.Margin;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Measured;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Will it freeze? A pipe freezes where frost gets to water that stands in it; frost in the ground
 * beside an empty pipe does nothing to it.
 */
final class Freeze {
  private static final double SURE = 0.95;
  private static final double LIKELY = 0.8;

  private final Case one;
  private final Telling tell;
  private final FrostGiven given;

  /** Whether part of it lies under a building. */
  private boolean warm;

  private Freeze(Case one) {
    this.one = one;
    this.tell = new Telling(Question.FREEZE, one);
    this.given = new FrostGiven(one, tell);
  }

  static Answer answer(Case one) {
    return new Freeze(one).answer();
  }

  private Answer answer() {
    Optional<FrostGiven.Known> known = given.read();
    if (known.isEmpty()) {
      return cannotSay(AnswerKey.FREEZE_OPEN);
    }
    FrostGiven.Known is = known.get();
    return switch (Frost.depth(
        is.winter(), is.ground(), is.surface(), one.rules().frost().formula().value())) {
      case FrostDepth.None(FrostDepth.NoFrost why) -> {
        given.tell();
        yield tell.answer(
            State.WITHIN_LIMITS,
            why == FrostDepth.NoFrost.NO_COLD ? Sureness.SURE : Sureness.LIKELY,
            AnswerKey.FREEZE_NO_FROST,
            new Argument.Term(why.key()));
      }
      case FrostDepth.Beyond(FrostDepth.NotHeld why) -> {
        given.tell();
        tell.missing(
            why == FrostDepth.NotHeld.PERMAFROST
                ? AnswerKey.MISSING_GROUND_TEMPERATURE
                : AnswerKey.MISSING_SOIL_WATER);
        tell.caution(Caution.LOCAL_CODES);
        yield tell.answer(
            State.CANNOT_SAY_YET,
            Sureness.OPEN,
            AnswerKey.FREEZE_NOT_HELD,
            new Argument.Term(why.key()));
      }
      case FrostDepth.Reaches frost -> along(frost, is.winter().season().value());
    };
  }

  private Answer cannotSay(AnswerKey key, Argument... arguments) {
    return tell.answer(State.CANNOT_SAY_YET, Sureness.OPEN, key, arguments);
  }

  private Answer along(FrostDepth.Reaches frost, double season) {
    Priors priors = one.rules().priors();
    Indoors indoors = Indoors.of(one.book(), one.line());
    FrostAlong along =
        Froster.along(one.line(), one.fall(), frost, season, priors, one.name(), indoors::holds);
    warm =
        one.runs().stream()
            .flatMap(run -> run.stations().stream())
            .anyMatch(s -> indoors.holds(s.place()));
    tell.caution(Caution.LOCAL_CODES);
    Argument deep = depth(FigureKey.FROST_DEPTH, frost.depth(), null);
    Optional<FrostAlong.Spot> worst = along.worst();
    if (worst.isEmpty() && warm && missingReaches(along)) {
      given.tell();
      return tell.answer(State.WITHIN_LIMITS, Sureness.LIKELY, AnswerKey.FREEZE_ALL_INDOORS, deep);
    }
    if (worst.isEmpty()) {
      given.tell();
      missingDepths();
      return cannotSay(AnswerKey.FREEZE_NO_DEPTHS, deep);
    }
    List<FrostAlong.Wet> wet = along.wet().stream().filter(this::maybeWet).toList();
    Optional<FrostAlong.Wet> wettest =
        wet.stream().max(Comparator.comparingDouble(FrostAlong.Wet::reached));
    Optional<FrostAlong.Wet> outlet = atOutlet(wet, frost);
    return judged(along, worst.get(), wettest, outlet, deep);
  }

  private Answer judged(
      FrostAlong along,
      FrostAlong.Spot worst,
      Optional<FrostAlong.Wet> wettest,
      Optional<FrostAlong.Wet> outlet,
      Argument deep) {
    double reached = worst.margin().reached();
    double water = wettest.map(FrostAlong.Wet::reached).orElse(0.0);
    double open = outlet.map(FrostAlong.Wet::there).orElse(0.0);
    tell.restsOn(new Wanted.Depth(worst.place()));
    if (Math.max(water, open) >= LIKELY) {
      return freezes(worst, wettest, open > water ? outlet : Optional.empty(), deep);
    }
    boolean all = missingReaches(along);
    if (reached <= 1 - SURE && open <= 1 - SURE) {
      tellOutlet(Optional.empty());
      told(worst, worst.margin(), false);
      return tell.answer(
          all ? State.WITHIN_LIMITS : State.CANNOT_SAY_YET,
          all ? Sureness.of(1 - reached) : Sureness.OPEN,
          AnswerKey.FREEZE_DEEP_ENOUGH,
          deep,
          cover(worst),
          tell.station(worst.place()),
          tell.from(worst.place()));
    }
    boolean pumped = one.runs().stream().anyMatch(run -> run.reach().use() == Reach.Use.PUMPED);
    if (pumped) {
      tell.reason(AnswerKey.FREEZE_PUMPED);
      tell.missing(AnswerKey.MISSING_DRAIN_BACK);
    } else if (Math.max(water, open) <= 1 - SURE) {
      tellOutlet(Optional.empty());
      tell.reason(AnswerKey.FREEZE_DEPTH, deep);
      told(worst, worst.margin(), true);
      return tell.answer(
          all ? State.ANSWERED : State.CANNOT_SAY_YET,
          all ? Sureness.LIKELY : Sureness.OPEN,
          AnswerKey.FREEZE_EMPTY_PIPE,
          tell.station(worst.place()),
          tell.from(worst.place()),
          chance(FigureKey.REACHED, reached, worst.place()));
    }
    return close(worst, wettest, outlet, deep);
  }

  private Answer freezes(
      FrostAlong.Spot worst,
      Optional<FrostAlong.Wet> wettest,
      Optional<FrostAlong.Wet> outlet,
      Argument deep) {
    tell.caution(Caution.THAWING, Caution.ELECTRICITY);
    FrostAlong.Wet wet = outlet.or(() -> wettest).orElseThrow();
    tellOutlet(outlet);
    water(wet);
    if (outlet.isPresent()) {
      tell.reason(AnswerKey.FREEZE_DEPTH, deep);
    }
    told(worst, wet.ground().margin(), true);
    if (outlet.isPresent()) {
      return tell.answer(
          State.ANSWERED,
          // Whether the end is in the open, nobody noted.
          wet.there() >= LIKELY ? Sureness.LIKELY : Sureness.OPEN,
          AnswerKey.FREEZE_OUTLET,
          tell.station(wet.place()),
          tell.from(wet.place()),
          tell.node(outletOf(wet)));
    }
    return tell.answer(
        State.ANSWERED,
        Sureness.of(wet.reached()),
        AnswerKey.FREEZE_WATER,
        tell.station(wet.place()),
        tell.from(wet.place()),
        deep,
        depth(FigureKey.WATER_BELOW, wet.ground().margin().below(), wet.place()));
  }

  private Answer close(
      FrostAlong.Spot worst,
      Optional<FrostAlong.Wet> wettest,
      Optional<FrostAlong.Wet> outlet,
      Argument deep) {
    tell.caution(Caution.THAWING, Caution.ELECTRICITY);
    tellOutlet(outlet);
    wettest.ifPresent(this::water);
    tell.reason(AnswerKey.FREEZE_DEPTH, deep);
    Optional<FrostAlong.Wet> asked = wettest.or(() -> outlet);
    told(worst, asked.map(wet -> wet.ground().margin()).orElse(worst.margin()), true);
    boolean unsureOfWater = asked.filter(wet -> wet.there() < SURE).isPresent();
    if (unsureOfWater) {
      Place at = asked.orElseThrow().place();
      tell.missing(AnswerKey.MISSING_WATER_LOOK, tell.station(at), tell.from(at));
    }
    Input decides =
        asked.map(wet -> wet.ground().margin().deciding()).orElse(worst.margin().deciding());
    double reached =
        asked.map(wet -> wet.ground().margin().reached()).orElse(worst.margin().reached());
    if (!unsureOfWater || (reached > 1 - SURE && reached < SURE)) {
      Place at = asked.map(FrostAlong.Wet::place).orElse(worst.place());
      given.missing(decides, at);
    }
    Place at = asked.map(FrostAlong.Wet::place).orElse(worst.place());
    double chance =
        asked
            .map(wet -> Math.max(wet.reached(), outlet.map(FrostAlong.Wet::there).orElse(0.0)))
            .orElse(reached);
    return cannotSay(
        AnswerKey.FREEZE_CLOSE,
        tell.station(at),
        tell.from(at),
        chance(FigureKey.REACHED, chance, at));
  }

  /**
   * What the answer was worked out from, and the place where the frost is likeliest at the pipe.
   */
  private void told(FrostAlong.Spot worst, Margin asked, boolean place) {
    if (place) {
      tell.reason(
          AnswerKey.FREEZE_WORST,
          tell.station(worst.place()),
          tell.from(worst.place()),
          cover(worst),
          chance(FigureKey.REACHED, worst.margin().reached(), worst.place()));
    }
    given.tell();
    tell.reason(AnswerKey.FREEZE_DECIDES, new Argument.Term(asked.deciding().key()));
    tell.reason(warm ? AnswerKey.FREEZE_INDOORS : AnswerKey.FREEZE_LEFT_OUT);
  }

  private void water(FrostAlong.Wet wet) {
    if (!wet.finding().isEmpty()) {
      tell.noted(wet.finding(), new Argument.Term("kind.standing-water"));
    }
    tell.reason(
        wet.finding().isEmpty() ? AnswerKey.FREEZE_WATER_POOLED : AnswerKey.FREEZE_WATER_SEEN,
        tell.station(wet.place()),
        tell.from(wet.place()),
        chance(FigureKey.THERE, wet.there(), wet.place()),
        chance(FigureKey.REACHED, wet.ground().margin().reached(), wet.place()),
        chance(FigureKey.ICE, wet.ground().solid(), wet.place()));
    Double time = wet.ground().time();
    if (time != null) {
      tell.reason(
          AnswerKey.FREEZE_TIME,
          tell.figure(
              FigureKey.FREEZE_TIME, new Argument.Quantity(Dimension.DURATION, time), wet.place()));
    }
  }

  /** Water near the end of a pipe that may be in the open freezes there whatever its cover. */
  private void tellOutlet(Optional<FrostAlong.Wet> wet) {
    for (Run run : one.runs()) {
      String end = run.reach().downstream();
      if (isOutlet(end)) {
        tell.reason(
            wet.isPresent() ? AnswerKey.FREEZE_OUTLET_WET : AnswerKey.FREEZE_OUTLET_DRY,
            tell.node(end));
      }
    }
  }

  private boolean isOutlet(String node) {
    return one.book()
        .site()
        .findNode(node)
        .filter(found -> found.kind() == Node.Kind.OUTLET)
        .isPresent();
  }

  private String outletOf(FrostAlong.Wet wet) {
    return run(wet.place()).reach().downstream();
  }

  private Run run(Place place) {
    return one.line().findRun(place.reach()).orElseThrow();
  }

  /** The likeliest water that lies no further from an outlet than frost goes. */
  private Optional<FrostAlong.Wet> atOutlet(List<FrostAlong.Wet> wet, FrostDepth.Reaches frost) {
    return wet.stream()
        .filter(
            each -> {
              Run run = run(each.place());
              boolean outlet = isOutlet(run.reach().downstream()) && !run.stations().isEmpty();
              return outlet && toEnd(run, each.place()) <= frost.depth().value();
            })
        .max(Comparator.comparingDouble(FrostAlong.Wet::there));
  }

  private static double toEnd(Run run, Place place) {
    boolean forward = run.reach().downstream().equals(run.reach().to());
    double end = forward ? run.stations().getLast().place().distance() : 0;
    return Math.abs(end - place.distance());
  }

  /** Where the camera saw clearly and no water was noted, none stands by the grade. */
  private boolean maybeWet(FrostAlong.Wet wet) {
    double at = one.station(wet.place());
    return !wet.finding().isEmpty()
        || Sight.of(one, one.route(wet.place())).stream()
            .filter(sight -> sight.from() <= at && at <= sight.to())
            .noneMatch(sight -> sight.seen() == Sight.Seen.CLEAR);
  }

  private void missingDepths() {
    boolean unfound = Unfound.isTrueOf(one);
    if (unfound) {
      Unfound.missing(tell, one);
    }
    if (!unfound || !Unfound.deep(one)) {
      tell.missing(AnswerKey.MISSING_DEPTHS);
    }
  }

  /** Asks for the depth of reaches of which none is known; true if there are none. */
  private boolean missingReaches(FrostAlong along) {
    along
        .unknown()
        .forEach(label -> tell.missing(AnswerKey.MISSING_LOCATE_ON, new Argument.Label(label)));
    return along.unknown().isEmpty();
  }

  private Argument cover(FrostAlong.Spot spot) {
    return depth(FigureKey.COVER, spot.margin().below(), spot.place());
  }

  private Argument depth(FigureKey what, Measured depth, @Nullable Place at) {
    return tell.figure(what, new Argument.UncertainLength(depth), at);
  }

  private Argument chance(FigureKey what, double probability, Place at) {
    return tell.figure(what, new Argument.Probability(probability), at);
  }
}
