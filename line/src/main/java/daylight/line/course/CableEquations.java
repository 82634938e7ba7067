package daylight.line.course;

import daylight.line.book.Finding;
import daylight.line.book.Id;
import daylight.line.book.Kit;
import daylight.line.book.Pass;
import daylight.line.book.Priors;
import daylight.line.book.Visit;
import daylight.line.book.Where;
import daylight.line.counter.Counter;
import daylight.line.measure.Measured;
import daylight.line.measure.Reading;
import daylight.line.normal.Gradient;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What the counter says: its scale, slack and zero, and the nodes that a pass came by. */
final class CableEquations {
  private final Model model;
  private final Equations equations;
  private final double[] x;

  CableEquations(Model model, Equations equations, double[] x) {
    this.model = model;
    this.equations = equations;
    this.x = x;
  }

  void add() {
    Set<Integer> scales = new HashSet<>();
    for (Walk walk : model.walks().all()) {
      Counter counter = walk.counter();
      if (scales.add(walk.scale())) {
        Measured scale = counter.scale().plus(-1);
        equations.assume(
            scaled(counter), walk.scale(), scale.value() - x[walk.scale()], scale.sd());
      }
      assume(Priors.Kind.SLACK, walk.slack(), counter.slack());
      assume(Priors.Kind.COUNTER_ZERO, walk.zero(), new Measured(0, counter.zeroSd()));
    }
    for (Visit visit : model.visits()) {
      visitEquations(visit);
    }
    for (Turn turn : model.turns()) {
      for (Turn.Again again : turn.again()) {
        sameBend(turn, again);
      }
    }
  }

  /** What the scale was taken from: usual scales, and each place where a tape was held to it. */
  private static Origin scaled(Counter counter) {
    List<Origin.Part> parts = new ArrayList<>();
    double usual = 1;
    for (Counter.Vote vote : counter.votes()) {
      parts.add(
          new Origin.Part(
              new Source.OfEntry(vote.check(), Source.Sort.COUNTER_CHECK, Source.Part.READING),
              vote.share()));
      usual -= vote.share();
    }
    parts.add(new Origin.Part(new Source.OfPrior(Priors.Kind.COUNTER_SCALE), usual));
    return Origin.of(parts.toArray(Origin.Part[]::new));
  }

  /** Two passes saw one bend: both counters mean one place. */
  private void sameBend(Turn turn, Turn.Again again) {
    Walk.Reached first = turn.at(x);
    Walk.Reached other = again.at(turn.limb(), x);
    Gradient d = new Gradient();
    d.add(other.dt());
    d.add(first.dt(), -1);
    equations.observe(
        Origin.of(
            Origin.part(turn.id(), Source.Sort.BEND, Source.Part.CABLE, turn.readingSd()),
            Origin.part(again.id(), Source.Sort.BEND, Source.Part.CABLE, again.readingSd())),
        d,
        first.t() - other.t(),
        StrictMath.hypot(turn.readingSd(), again.readingSd()));
  }

  private void visitEquations(Visit visit) {
    Kit kit = visit.kit();
    boolean behind =
        model.marks().stream()
            .anyMatch(
                m ->
                    m.visit().equals(visit.label())
                        && m.position() instanceof Mark.Position.ByCable by
                        && by.behind() >= 0);
    if (behind) {
      Priors.Kind kind = Priors.Kind.SONDE_BEHIND_LENS;
      Measured is = model.priors().recordedOrTypical(kind, kit.sondeBehindLens());
      int unknown = model.layout().named("behind/" + visit.label());
      Origin origin =
          kit.sondeBehindLens() == null
              ? Origin.of(kind)
              : Origin.of(visit.id(), Source.Sort.VISIT, Source.Part.BEHIND);
      equations.assume(origin, unknown, is.value() - x[unknown], is.sd());
    }
    for (Pass pass : visit.passes()) {
      @Nullable Walk walk = model.walks().find(visit.label(), pass.label());
      if (walk != null && Altered.holds(model.book(), visit, pass)) {
        for (Finding finding : pass.findings()) {
          if (finding.node() != null && finding.where() instanceof Where.AtCable(Reading cable)) {
            atNode(
                walk,
                cable(finding.id(), Source.Sort.FINDING),
                finding.node(),
                cable,
                finding.moving());
          }
        }
        Pass.End end = pass.end();
        if (end != null && end.node() != null) {
          atNode(
              walk,
              cable(pass.id(), Source.Sort.PASS),
              end.node(),
              end.cable(),
              Finding.Moving.PUSHING);
        }
      }
    }
  }

  private static Origin cable(Id id, Source.Sort sort) {
    return Origin.of(id, sort, Source.Part.CABLE);
  }

  private void assume(Priors.Kind kind, int unknown, Measured expected) {
    equations.assume(kind, unknown, expected.value() - x[unknown], expected.sd());
  }

  /** The lens was at a node at a reading: reading = zero + scale × slack × distance to the node. */
  private void atNode(Walk walk, Origin origin, String node, Reading cable, Finding.Moving moving) {
    Gradient along = new Gradient();
    Double distance = walk.toNode(x, node, along);
    if (distance == null) {
      return;
    }
    double grown = walk.grown(x, moving);
    Gradient d = new Gradient();
    d.add(along, grown);
    d.add(walk.zero(), 1);
    d.add(walk.scale(), distance * grown / (1 + x[walk.scale()]));
    if (Counter.slackens(moving)) {
      d.add(walk.slack(), distance * grown / (1 + x[walk.slack()]));
    }
    double modelled = x[walk.zero()] + grown * distance;
    equations.observe(
        origin,
        d,
        walk.counter().sinceEntry(cable.value()) - modelled,
        model.priors().sd(Priors.Kind.COUNTER_READING, cable));
  }
}
