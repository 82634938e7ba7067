package daylight.line.answer;

import daylight.line.book.Material;
import daylight.line.book.Priors;
import daylight.line.book.Reach;
import daylight.line.book.Surroundings;
import daylight.line.course.Run;
import daylight.line.flow.Cycles;
import daylight.line.flow.Discharge;
import daylight.line.flow.FlowTables;
import daylight.line.flow.FrictionLaw;
import daylight.line.flow.Operation;
import daylight.line.flow.Pit;
import daylight.line.flow.Propagated;
import daylight.line.flow.PumpCurve;
import daylight.line.flow.Pumping;
import daylight.line.flow.Roughness;
import daylight.line.flow.Water;
import daylight.line.measure.Argument;
import daylight.line.measure.Measured;
import daylight.line.measure.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The pumps of a book on their pipes; what keeps them from being worked out is asked for. */
final class Pumps {
  /** A pump that has run for years is off its curve by so much of itself; common practice. */
  private static final double WEAR = 0.05;

  /** What fittings lose where nobody noted them: a few elbows and a valve; common practice. */
  private static final Measured USUAL_FITTINGS = new Measured(5, 2);

  private static final String CHECK_VALVE = "check-valve";

  private final Case one;
  private final Telling tell;

  Pumps(Case one, Telling tell) {
    this.one = one;
    this.tell = tell;
  }

  /** The pump that presses water into a reach; empty where the book has none. */
  Optional<Surroundings.Pump> of(Reach reach) {
    return one.book().site().surroundings().pumps().stream()
        .filter(pump -> pump.node().equals(reach.upstream()))
        .findFirst();
  }

  /** All pumps of a line at work of which enough is known to say what they do. */
  static List<PumpAtWork> atWork(Case one) {
    Pumps pumps = new Pumps(one, new Telling(Question.COPE, one));
    return one.runs().stream()
        .map(Run::reach)
        .filter(reach -> reach.use() == Reach.Use.PUMPED)
        .flatMap(reach -> Stream.ofNullable(pumps.atWork(reach)))
        .toList();
  }

  /** A pump with what comes to it; null where what it does cannot be said. */
  @Nullable PumpAtWork atWork(Reach reach) {
    Lifted lifted = lifted(reach);
    if (lifted == null) {
      return null;
    }
    Surroundings.Pump pump = lifted.pump();
    boolean never = lifted.operation() instanceof Operation.WillNotPump;
    Propagated in = never ? null : new Inflows(one, tell).intoPit(pump);
    return new PumpAtWork(
        reach.label(),
        pump.node(),
        lifted.curve(),
        lifted.discharge(),
        lifted.operation(),
        in,
        in == null ? null : filling(lifted, in));
  }

  /** What it does on its pipe; null where that cannot be said. */
  @Nullable Operation operation(Reach reach) {
    Lifted lifted = lifted(reach);
    return lifted == null ? null : lifted.operation();
  }

  /** A pump on its pipe, whatever comes. */
  private record Lifted(
      Surroundings.Pump pump, PumpCurve curve, Discharge discharge, Operation operation) {}

  private @Nullable Lifted lifted(Reach reach) {
    Surroundings.Pump pump = of(reach).orElse(null);
    PumpCurve curve = pump == null ? null : curve(pump);
    if (pump == null || curve == null) {
      tell.missing(AnswerKey.MISSING_PUMP);
      return null;
    }
    Discharge discharge = discharge(pump, reach);
    if (discharge == null) {
      return null;
    }
    Measured wear = new Measured(1, WEAR);
    double viscosity = Water.viscosity(Water.USUAL_CELSIUS);
    return new Lifted(pump, curve, discharge, Pumping.of(curve, wear, discharge, viscosity));
  }

  /** How it comes and goes over its pit; null where the pit or its levels are not known. */
  private PumpAtWork.@Nullable Filling filling(Lifted lifted, Propagated in) {
    Reading area = lifted.pump().area();
    Reading start = lifted.pump().start();
    Reading stop = lifted.pump().stop();
    if (area == null
        || start == null
        || stop == null
        || !(start.value() > stop.value())
        || !(area.value() > 0)
        || !(lifted.operation() instanceof Operation.Pumps works)) {
      return null;
    }
    double swing = start.value() - stop.value();
    double off = StrictMath.sqrt(2) * one.rules().priors().sd(Priors.Kind.LEVEL, swing);
    Pit pit =
        new Pit(
            new Inflows(one, tell).area(area),
            new Measured(swing, off),
            runsBack(lifted.pump(), lifted.discharge()));
    return new PumpAtWork.Filling(pit, stop.value(), Cycles.of(pit, in, works.flow()));
  }

  private static @Nullable PumpCurve curve(Surroundings.Pump pump) {
    List<PumpCurve.Point> points =
        pump.curve().stream()
            .map(point -> new PumpCurve.Point(point.flow().value(), point.head().value()))
            .toList();
    return PumpCurve.wrong(points).isEmpty() ? PumpCurve.through(points) : null;
  }

  /** The pipe; null where its lift, bore or length is not known. */
  private @Nullable Discharge discharge(Surroundings.Pump pump, Reach reach) {
    Priors priors = one.rules().priors();
    Reading lift = pump.lift();
    Reading bore = reach.bore();
    Measured length = length(reach);
    Argument label = new Argument.Label(reach.label());
    if (lift == null) {
      tell.missing(CopeKey.MISSING_LIFT, tell.node(pump.node()));
    }
    if (bore == null) {
      tell.missing(AnswerKey.MISSING_BORE, label);
    }
    if (length == null) {
      tell.missing(AnswerKey.MISSING_LENGTH, label);
    }
    if (lift == null || bore == null || length == null || !(bore.value() > 0)) {
      return null;
    }
    Measured high = new Measured(lift.value(), Math.max(0.02, priors.sd(Priors.Kind.LEVEL, lift)));
    Measured inside = new Measured(bore.value(), priors.sd(Priors.Kind.BORE, bore));
    return new Discharge(
        high,
        List.of(new Discharge.Piece(length, inside, roughness(reach.material()), fittings(pump))));
  }

  private @Nullable Measured length(Reach reach) {
    Measured computed =
        one.line().findRun(reach.label()).map(Run::length).filter(m -> m.value() > 0).orElse(null);
    Reading written = reach.length();
    return computed != null || written == null
        ? computed
        : new Measured(written.value(), one.rules().priors().sd(Priors.Kind.TAPE, written));
  }

  private Roughness roughness(Material material) {
    FlowTables tables = one.rules().flow();
    FrictionLaw law = FrictionLaw.HAZEN_WILLIAMS;
    FlowTables.Wall wall =
        tables
            .wall(material, FlowTables.State.USED, law)
            .or(() -> tables.wall(Material.UNKNOWN, FlowTables.State.USED, law))
            .orElseThrow(() -> new IllegalStateException("no row of an unknown wall"));
    Cope.wall(tell, wall);
    return wall.roughness();
  }

  /** What the fittings noted lose; of those whose name no table has, nothing is known. */
  private Measured fittings(Surroundings.Pump pump) {
    if (pump.fittings().isEmpty()) {
      tell.note(CopeKey.FITTINGS_USUAL);
      return USUAL_FITTINGS;
    }
    double sum = 0;
    double sd = 0;
    List<Argument> origins = new ArrayList<>();
    for (String name : pump.fittings()) {
      Optional<FlowTables.Fitting> fitting = one.rules().flow().fitting(name);
      if (fitting.isEmpty()) {
        tell.note(CopeKey.FITTING_UNKNOWN, new Argument.Text(name));
      } else {
        sum += fitting.get().loss().value();
        sd = StrictMath.hypot(sd, fitting.get().loss().sd());
        Argument origin = Cope.origin(fitting.get().origin());
        if (!origins.contains(origin)) {
          origins.add(origin);
        }
      }
    }
    if (!origins.isEmpty()) {
      tell.note(
          CopeKey.FITTINGS,
          tell.figure(FigureKey.FITTINGS, new Argument.Number(Math.rint(sum * 10) / 10), null),
          new Argument.Several(origins));
    }
    return new Measured(sum, Math.max(1e-9, sd));
  }

  /** What runs back into the pit when it stops, cubic metres, as far as the fittings tell. */
  private static double runsBack(Surroundings.Pump pump, Discharge discharge) {
    boolean open = !pump.fittings().isEmpty() && !pump.fittings().contains(CHECK_VALVE);
    return open ? discharge.volume() : 0;
  }
}
