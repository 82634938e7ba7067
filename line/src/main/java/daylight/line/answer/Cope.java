package daylight.line.answer;

import daylight.line.book.Reach;
import daylight.line.book.Test;
import daylight.line.course.Run;
import daylight.line.flow.FlowTables;
import daylight.line.flow.FrictionLaw;
import daylight.line.flow.Propagated;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Key;
import daylight.line.measure.Measured;
import daylight.line.measure.Reading;
import daylight.line.measure.Statement;
import daylight.line.proving.Passage;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Does it cope with what comes? */
final class Cope {
  /** From here on an answer is given; below it a measurement is asked for. */
  static final double LIKELY = 0.8;

  private final Case one;
  private final Telling tell;

  private Cope(Case one) {
    this.one = one;
    this.tell = new Telling(Question.COPE, one);
  }

  /**
   * What one part of a line comes to.
   *
   * @param rank the worst first: 0 for no, 1 for what cannot be said, 2 for yes
   */
  record Verdict(State state, Sureness sure, Key key, List<Argument> arguments, int rank) {
    Verdict {
      arguments = List.copyOf(arguments);
    }

    static Verdict no(Sureness sure, Key key, Argument... arguments) {
      return new Verdict(State.NO, sure, key, List.of(arguments), 0);
    }

    static Verdict open(Key key, Argument... arguments) {
      return new Verdict(State.CANNOT_SAY_YET, Sureness.OPEN, key, List.of(arguments), 1);
    }

    static Verdict yes(Sureness sure, Key key, Argument... arguments) {
      return new Verdict(State.WITHIN_LIMITS, sure, key, List.of(arguments), 2);
    }
  }

  static Answer answer(Case one) {
    return new Cope(one).answer();
  }

  private Answer answer() {
    List<Verdict> verdicts = new ArrayList<>();
    List<Run> pumped =
        one.runs().stream().filter(run -> run.reach().use() == Reach.Use.PUMPED).toList();
    pumped.forEach(run -> verdicts.add(new CopePump(one, tell).verdict(run.reach())));
    if (pumped.size() < one.runs().size()) {
      verdicts.add(new CopeGravity(one, tell).verdict());
    }
    carried();
    Verdict worst = verdicts.stream().min(Comparator.comparingInt(Verdict::rank)).orElseThrow();
    for (Verdict other : verdicts) {
      if (!other.equals(worst) && !other.key().equals(AnswerKey.COPE_OPEN)) {
        tell.reason(other.key(), other.arguments().toArray(Argument[]::new));
      }
    }
    if (worst.state() != State.CANNOT_SAY_YET || !worst.key().equals(AnswerKey.COPE_OPEN)) {
      tell.caution(Caution.LOCAL_CODES);
    }
    if (worst.state() == State.CANNOT_SAY_YET && !tell.misses()) {
      tell.missing(CopeKey.MISSING_RUN);
    }
    return tell.answer(
        worst.state(), worst.sure(), worst.key(), worst.arguments().toArray(Argument[]::new));
  }

  /** What was let in and came out was carried; nothing says of more than that. */
  private void carried() {
    for (Passage passage : one.proving().passages()) {
      Test test = passage.test();
      Reading flow = test.flow();
      boolean came = test.kind() == Test.Kind.WATER_RUN && passage.seen().arrived();
      if (came && flow != null && passage.said() && one.touches(passage.node())) {
        tell.noted(test, new Argument.Term("test.water_run"));
        tell.reason(
            CopeKey.CARRIED,
            tell.figure(
                FigureKey.CARRIED, new Argument.Quantity(Dimension.FLOW, flow.value()), null),
            tell.node(test.at()),
            tell.node(passage.seen().where()));
      }
    }
  }

  /** A flow that stands in a sentence, laid down as evidence. */
  static Argument flow(Telling tell, FigureKey what, double flow) {
    return tell.figure(what, new Argument.Quantity(Dimension.FLOW, Math.max(0, flow)), null);
  }

  /** A flow and half of its 95 % interval. */
  static List<Argument> flow(Telling tell, FigureKey what, FigureKey off, Measured flow) {
    return List.of(flow(tell, what, flow.value()), flow(tell, off, Measured.Z95 * flow.sd()));
  }

  /** How rough a wall was taken to be, and where that comes from. */
  static void wall(Telling tell, FlowTables.Wall wall) {
    boolean height = wall.law() == FrictionLaw.DARCY_WEISBACH;
    Argument figure =
        height ? new Argument.Small(wall.typical()) : new Argument.Number(wall.typical());
    Argument taken = tell.figure(FigureKey.ROUGHNESS, figure, null);
    tell.note(
        CopeKey.WALL,
        new Argument.Term("material." + wall.material().name().toLowerCase(Locale.ROOT)),
        taken,
        new Argument.Term(wall.law().key()),
        origin(wall.origin()));
  }

  /** A source of a table, and how it was come by. */
  static Argument origin(FlowTables.Origin origin) {
    return new Argument.Said(
        Statement.of(
            CopeKey.ORIGIN,
            new Argument.Text(origin.source()),
            new Argument.Term(origin.mark().key())));
  }

  /** Says which input decides, and how much of the doubt is its. */
  static void decides(Telling tell, Propagated figure) {
    Propagated.Share most = figure.decides();
    Argument share =
        tell.figure(
            FigureKey.DECIDES,
            new Argument.Quantity(Dimension.SHARE, Math.min(1, most.share())),
            null);
    tell.reason(CopeKey.DECIDES, new Argument.Term(most.what().key()), share);
  }

  /** Asks for what would settle it: a better figure of what decides. */
  static void ask(Case one, Telling tell, Propagated figure, @Nullable CopeSection section) {
    switch (figure.decides().what()) {
      case SLOPE -> ends(section, tell);
      case BORE ->
          Optional.ofNullable(section)
              .ifPresent(
                  s -> tell.missing(AnswerKey.MISSING_BORE, new Argument.Label(s.reach().label())));
      case ROOF -> tell.missing(AnswerKey.MISSING_AREA);
      case RAIN, RUNOFF -> tell.missing(AnswerKey.MISSING_RAIN);
      case PUMP -> tell.missing(AnswerKey.MISSING_PUMP);
      case FIXTURES -> tell.missing(CopeKey.MISSING_FIXTURE_FLOW, tell.node(figure.decides().of()));
      case PIT_AREA, RISE, TIME, INFLOW, LEVELS -> tell.missing(CopeKey.MISSING_RISE_AGAIN);
      case ROUGHNESS, FLOW, LENGTH, FITTINGS, LIFT -> tell.missing(CopeKey.MISSING_RUN);
    }
    if (one.runs().isEmpty()) {
      tell.missing(CopeKey.MISSING_RUN);
    }
  }

  private static void ends(@Nullable CopeSection section, Telling tell) {
    if (section == null) {
      tell.missing(CopeKey.MISSING_RUN);
    } else {
      tell.missing(AnswerKey.MISSING_INVERT_LEVEL, tell.node(section.reach().upstream()));
      tell.missing(AnswerKey.MISSING_INVERT_LEVEL, tell.node(section.reach().downstream()));
    }
  }
}
