package daylight.line.answer;

import daylight.line.book.Place;
import daylight.line.book.Reach;
import daylight.line.course.Run;
import daylight.line.course.Wanted;
import daylight.line.flow.Capacity;
import daylight.line.flow.Gravity;
import daylight.line.flow.Propagated;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Whether the pipes of a line carry by gravity what comes: by their worst section. */
final class CopeGravity {
  private final Case one;
  private final Telling tell;

  CopeGravity(Case one, Telling tell) {
    this.one = one;
    this.tell = tell;
  }

  /** A section, what comes into it, and how likely it carries that; null where nobody knows. */
  private record Judged(
      CopeSection section, @Nullable Propagated inflow, @Nullable Double carries) {
    /** By which the worst is told: the chance, else what it carries. */
    double good() {
      return carries == null ? 2 + full(section) : carries;
    }
  }

  private static double full(CopeSection section) {
    return Gravity.capacity(section.pipe()) instanceof Capacity.Carries carries
        ? carries.flow().value().value()
        : 0;
  }

  Cope.Verdict verdict() {
    List<Judged> judged = new ArrayList<>();
    Map<String, Propagated> inflows = new HashMap<>();
    boolean all = true;
    for (Run run : one.runs()) {
      if (run.reach().use() != Reach.Use.PUMPED) {
        all &= judge(run, judged, inflows);
      }
    }
    Optional<Judged> worst = judged.stream().min(Comparator.comparingDouble(Judged::good));
    return worst.map(one -> verdict(one, inflows)).filter(v -> v.rank() == 0).isPresent() || all
        ? worst.map(one -> verdict(one, inflows)).orElse(Cope.Verdict.open(AnswerKey.COPE_OPEN))
        : worst.map(this::capacity).orElse(Cope.Verdict.open(AnswerKey.COPE_OPEN));
  }

  /** Judges the sections of a reach; false where something about it is missing. */
  private boolean judge(Run run, List<Judged> judged, Map<String, Propagated> inflows) {
    Argument label = new Argument.Label(run.reach().label());
    List<CopeSection> sections = CopeSection.of(one, run);
    Propagated inflow = new Inflows(one, tell).into(run.reach());
    if (run.reach().bore() == null) {
      tell.missing(AnswerKey.MISSING_BORE, label);
    }
    if (sections.isEmpty() && run.reach().bore() != null) {
      tell.missing(CopeKey.MISSING_FALL, label);
    }
    if (inflow != null) {
      inflows.put(run.reach().label(), inflow);
    }
    for (CopeSection section : sections) {
      Double carries = inflow == null ? null : Gravity.carries(section.pipe(), inflow);
      judged.add(new Judged(section, inflow, carries));
    }
    return !sections.isEmpty() && inflow != null;
  }

  private Cope.Verdict verdict(Judged worst, Map<String, Propagated> inflows) {
    Propagated inflow = worst.inflow();
    Double carries = worst.carries();
    if (inflow == null || carries == null) {
      return capacity(worst);
    }
    CopeSection section = worst.section();
    basis(section);
    Propagated margin = Gravity.margin(section.pipe(), inflow);
    Cope.decides(tell, margin);
    tell.reason(
        CopeKey.CHANCE,
        tell.figure(FigureKey.COPES, new Argument.Probability(carries), from(section)));
    CopeBackup backup = new CopeBackup(one, tell);
    boolean comesOut = (carries < Cope.LIKELY || backup.isDrowned()) && backup.tell(inflows);
    if (carries < Cope.LIKELY || comesOut) {
      tell.cautionSewage();
    }
    List<Argument> arguments = new ArrayList<>();
    arguments.addAll(Cope.flow(tell, FigureKey.INFLOW, FigureKey.INFLOW_OFF, inflow.value()));
    arguments.addAll(place(section));
    boolean falls = Gravity.capacity(section.pipe()) instanceof Capacity.Carries;
    arguments.addAll(carried(section));
    Argument[] said = arguments.toArray(Argument[]::new);
    if (carries >= Cope.LIKELY && comesOut) {
      return Cope.Verdict.no(Sureness.LIKELY, CopeKey.DROWNED, arguments.get(0), arguments.get(1));
    }
    if (carries >= Cope.LIKELY) {
      return Cope.Verdict.yes(Sureness.of(carries), CopeKey.YES, said);
    }
    if (carries <= 1 - Cope.LIKELY) {
      return Cope.Verdict.no(Sureness.of(1 - carries), falls ? CopeKey.NO : CopeKey.NO_FALL, said);
    }
    Cope.ask(one, tell, margin, section);
    return Cope.Verdict.open(falls ? CopeKey.CLOSE : CopeKey.NO_FALL, said);
  }

  /** What its worst section carries, where nobody knows what comes or a part is missing. */
  private Cope.Verdict capacity(Judged worst) {
    CopeSection section = worst.section();
    if (!(Gravity.capacity(section.pipe()) instanceof Capacity.Carries carries)) {
      return Cope.Verdict.open(AnswerKey.COPE_OPEN);
    }
    basis(section);
    Cope.decides(tell, carries.flow());
    List<Argument> arguments = new ArrayList<>(place(section));
    arguments.addAll(carried(section));
    return Cope.Verdict.open(CopeKey.CARRIES, arguments.toArray(Argument[]::new));
  }

  /** What the figures rest on: fall, wall, and what takes from the section. */
  private void basis(CopeSection section) {
    tell.restsOn(new Wanted.Fall(section.fall().from(), section.fall().to()));
    tell.reason(
        CopeKey.FALLS,
        tell.figure(FigureKey.SLOPE, Telling.slope(section.fall().slope()), section.fall().from()),
        tell.figure(
            FigureKey.BORE, new Argument.Bore(section.pipe().bore().value()), from(section)),
        new Argument.Term("material." + lower(section.wall().material())));
    Cope.wall(tell, section.wall());
    if (section.narrowed() != null) {
      tell.reason(
          CopeKey.NARROWED,
          tell.finding(section.narrowed()),
          tell.figure(
              FigureKey.FREE,
              new Argument.Quantity(Dimension.SHARE, section.pipe().free()),
              section.narrowed().from()));
    }
    if (Gravity.capacity(section.pipe()) instanceof Capacity.Carries carries && !carries.cleans()) {
      tell.reason(
          CopeKey.SLOW,
          tell.figure(
              FigureKey.SPEED,
              new Argument.Quantity(Dimension.SPEED, carries.speed().value()),
              from(section)),
          tell.figure(
              FigureKey.SPEED_LEAST,
              new Argument.Quantity(Dimension.SPEED, Gravity.SELF_CLEANSING),
              null));
    }
  }

  private static String lower(Enum<?> word) {
    return word.name().toLowerCase(Locale.ROOT);
  }

  private static Place from(CopeSection section) {
    return section.fall().from();
  }

  private List<Argument> place(CopeSection section) {
    return List.of(
        tell.station(section.fall().from()),
        tell.station(section.fall().to()),
        tell.from(section.fall().from()));
  }

  /** The ends of the interval of what it carries; nothing where it does not fall. */
  private List<Argument> carried(CopeSection section) {
    return Gravity.capacity(section.pipe()) instanceof Capacity.Carries carries
        ? List.of(
            Cope.flow(tell, FigureKey.CAPACITY_LEAST, carries.least()),
            Cope.flow(tell, FigureKey.CAPACITY_MOST, carries.most()))
        : List.of();
  }
}
