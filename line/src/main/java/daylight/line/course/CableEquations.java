package daylight.line.course;

import daylight.line.book.Finding;
import daylight.line.book.Kit;
import daylight.line.book.Pass;
import daylight.line.book.Priors;
import daylight.line.book.Visit;
import daylight.line.book.Where;
import daylight.line.counter.Counter;
import daylight.line.measure.Measured;
import daylight.line.measure.Reading;
import daylight.line.normal.Gradient;
import java.util.HashSet;
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
        assume(Priors.Kind.COUNTER_SCALE, walk.scale(), counter.scale().plus(-1));
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

  /** Two passes saw one bend: both counters mean one place. */
  private void sameBend(Turn turn, Turn.Again again) {
    Walk.Reached first = turn.at(x);
    Walk.Reached other = again.at(turn.limb(), x);
    Gradient d = new Gradient();
    d.add(other.dt());
    d.add(first.dt(), -1);
    equations.observe(
        again.label(),
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
      carried(
          Priors.Kind.SONDE_BEHIND_LENS,
          kit.sondeBehindLens(),
          model.layout().named("behind/" + visit.label()));
    }
    for (Pass pass : visit.passes()) {
      @Nullable Walk walk = model.walks().find(visit.label(), pass.label());
      if (walk != null && Altered.holds(model.book(), visit, pass)) {
        for (Finding finding : pass.findings()) {
          if (finding.node() != null && finding.where() instanceof Where.AtCable(Reading cable)) {
            atNode(walk, finding.label(), finding.node(), cable, finding.moving());
          }
        }
        Pass.End end = pass.end();
        if (end != null && end.node() != null) {
          atNode(walk, pass.label(), end.node(), end.cable(), Finding.Moving.PUSHING);
        }
      }
    }
  }

  /** How something rides on the cable: as recorded, else as is usual. */
  private void carried(Priors.Kind kind, @Nullable Reading recorded, int unknown) {
    Measured is = model.priors().recordedOrTypical(kind, recorded);
    assume(kind, unknown, is);
  }

  private void assume(Priors.Kind kind, int unknown, Measured expected) {
    equations.assume(kind.id(), unknown, expected.value() - x[unknown], expected.sd());
  }

  /** The lens was at a node at a reading: reading = zero + scale × slack × distance to the node. */
  private void atNode(Walk walk, String source, String node, Reading cable, Finding.Moving moving) {
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
        source,
        d,
        walk.counter().sinceEntry(cable.value()) - modelled,
        model.priors().sd(Priors.Kind.COUNTER_READING, cable));
  }
}
