package daylight.line.answer;

import daylight.line.book.Reach;
import daylight.line.book.Surroundings;
import daylight.line.flow.Cycle;
import daylight.line.flow.Gravity;
import daylight.line.flow.Operation;
import daylight.line.flow.Propagated;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Measured;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Whether the pump of a pumped reach takes out what comes into its pit. */
final class CopePump {
  private final Case one;
  private final Telling tell;

  CopePump(Case one, Telling tell) {
    this.one = one;
    this.tell = tell;
  }

  Cope.Verdict verdict(Reach reach) {
    Pumps pumps = new Pumps(one, tell);
    Surroundings.Pump pump = pumps.of(reach).orElse(null);
    if (pump == null) {
      tell.missing(AnswerKey.MISSING_PUMP);
      return Cope.Verdict.open(AnswerKey.COPE_OPEN);
    }
    PumpAtWork work = pumps.atWork(reach);
    tell.caution(Caution.ELECTRICITY, Caution.CONFINED_SPACE);
    tell.cautionSewage();
    if (work == null) {
      return comesIn(new Inflows(one, tell).intoPit(pump));
    }
    return switch (work.operation()) {
      case Operation.WillNotPump lift -> willNot(lift);
      case Operation.BeyondCurve beyond -> beyond(beyond, work.inflow());
      case Operation.Pumps works -> works(works, work);
    };
  }

  /** Something is known of what comes, nothing of the pump. */
  private Cope.Verdict comesIn(@Nullable Propagated in) {
    if (in == null) {
      return Cope.Verdict.open(AnswerKey.COPE_OPEN);
    }
    Cope.decides(tell, in);
    return Cope.Verdict.open(
        CopeKey.COMES_IN,
        Cope.flow(tell, FigureKey.INFLOW, FigureKey.INFLOW_OFF, in.value())
            .toArray(Argument[]::new));
  }

  private Cope.Verdict willNot(Operation.WillNotPump never) {
    Argument head = length(FigureKey.SHUT_OFF, never.shutOff());
    Argument lift = length(FigureKey.LIFT, never.lift().value());
    tell.reason(
        CopeKey.PUMPS_CHANCE,
        tell.figure(FigureKey.COPES, new Argument.Probability(never.may()), null));
    if (never.may() > 1 - Cope.LIKELY) {
      tell.missing(AnswerKey.MISSING_PUMP);
      return Cope.Verdict.open(CopeKey.WILL_NOT_PUMP, head, lift);
    }
    return Cope.Verdict.no(Sureness.of(1 - never.may()), CopeKey.WILL_NOT_PUMP, head, lift);
  }

  private Cope.Verdict beyond(Operation.BeyondCurve beyond, @Nullable Propagated in) {
    Argument last = Cope.flow(tell, FigureKey.PUMPED, beyond.flow());
    if (in != null && in.value().probabilityBelow(beyond.flow()) >= Cope.LIKELY) {
      double chance = in.value().probabilityBelow(beyond.flow());
      List<Argument> comes = Cope.flow(tell, FigureKey.INFLOW, FigureKey.INFLOW_OFF, in.value());
      return Cope.Verdict.yes(
          Sureness.of(chance), CopeKey.PUMP_AT_LEAST, last, comes.get(0), comes.get(1));
    }
    tell.missing(CopeKey.MISSING_CURVE);
    return Cope.Verdict.open(CopeKey.CURVE_ENDS, last);
  }

  private Cope.Verdict works(Operation.Pumps works, PumpAtWork work) {
    Propagated in = work.inflow();
    lifts(works);
    List<Argument> out =
        Cope.flow(tell, FigureKey.PUMPED, FigureKey.PUMPED_OFF, works.flow().value());
    if (in == null) {
      Cope.decides(tell, works.flow());
      return Cope.Verdict.open(CopeKey.PUMPS, out.get(0), out.get(1));
    }
    Measured margin = works.flow().value().minus(in.value());
    double keeps = 1 - margin.probabilityBelow(0);
    tell.reason(
        CopeKey.KEEPS_UP_CHANCE,
        tell.figure(FigureKey.COPES, new Argument.Probability(keeps), null));
    Propagated both = Propagated.sum(List.of(works.flow(), in));
    Cope.decides(tell, both);
    boolean ownWater = comesAndGoes(work.filling());
    List<Argument> said = new ArrayList<>(out);
    said.addAll(Cope.flow(tell, FigureKey.INFLOW, FigureKey.INFLOW_OFF, in.value()));
    Argument[] arguments = said.toArray(Argument[]::new);
    if (ownWater) {
      return Cope.Verdict.no(Sureness.LIKELY, CopeKey.OWN_WATER, arguments);
    }
    if (keeps >= Cope.LIKELY) {
      return Cope.Verdict.yes(Sureness.of(keeps), CopeKey.PUMP_KEEPS_UP, arguments);
    }
    if (keeps <= 1 - Cope.LIKELY) {
      return Cope.Verdict.no(Sureness.of(1 - keeps), CopeKey.PUMP_TOO_WEAK, arguments);
    }
    Cope.ask(one, tell, both, null);
    return Cope.Verdict.open(CopeKey.PUMP_CLOSE, arguments);
  }

  private void lifts(Operation.Pumps works) {
    double head = works.head().value().value();
    tell.reason(
        CopeKey.LIFTS,
        length(FigureKey.HEAD, head),
        length(FigureKey.LIFT, works.lift()),
        tell.figure(FigureKey.SPEED, new Argument.Quantity(Dimension.SPEED, works.speed()), null));
    if (works.speed() < Gravity.SELF_CLEANSING) {
      tell.reason(
          CopeKey.SLOW_PUMPED,
          tell.figure(
              FigureKey.SPEED_LEAST,
              new Argument.Quantity(Dimension.SPEED, Gravity.SELF_CLEANSING),
              null));
    }
  }

  /** Tells how it runs and rests; true where it only pumps its own water. */
  private boolean comesAndGoes(PumpAtWork.@Nullable Filling filling) {
    if (filling == null) {
      return false;
    }
    double back = filling.pit().runsBack();
    if (back > 0) {
      tell.reason(CopeKey.RUNS_BACK, volume(FigureKey.RUNS_BACK, back));
    }
    switch (filling.cycle()) {
      case Cycle.Turns turns ->
          tell.reason(
              CopeKey.TURNS,
              time(FigureKey.RUN, turns.run().value()),
              time(FigureKey.REST, turns.rest().value()),
              tell.figure(
                  FigureKey.STARTS,
                  new Argument.Number(Math.rint(turns.starts().value() * 10) / 10),
                  null));
      case Cycle.PumpsItsOwnWater own -> {
        return true;
      }
      case Cycle.Rests none -> {}
      case Cycle.CannotKeepUp never -> {}
    }
    return false;
  }

  private Argument time(FigureKey what, Measured seconds) {
    return tell.figure(what, new Argument.Quantity(Dimension.DURATION, seconds.value()), null);
  }

  private Argument volume(FigureKey what, double cubicMetres) {
    return tell.figure(what, new Argument.Quantity(Dimension.VOLUME, cubicMetres), null);
  }

  private Argument length(FigureKey what, double metres) {
    return tell.figure(what, new Argument.Length(metres), null);
  }
}
