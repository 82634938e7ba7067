package daylight.line.course;

import daylight.line.book.Bend;
import daylight.line.book.Priors;
import daylight.line.measure.Reading;

/** How a pipe may lie: straight but for its bends, about level, as long as it was measured. */
final class PipeEquations {
  /** A length that nothing measured is held, so that the rest can be laid out. */
  private static final double HELD = 1e-6;

  /** How far off the first guess of a length may be that two pushes from either end give. */
  private static final double MET = 0.3;

  /** How far two pipes at the root may be from running straight through it: anywhere, nearly. */
  private static final double THROUGH_ROOT = Math.PI / 2;

  private final Model model;
  private final Equations equations;
  private final double[] x;
  private final Layout layout;

  PipeEquations(Model model, Equations equations, double[] x) {
    this.model = model;
    this.equations = equations;
    this.x = x;
    this.layout = model.layout();
  }

  void add(int[] hands) {
    for (int limb = 0; limb < layout.tree().limbs().size(); limb++) {
      turns(limb, hands);
      through(limb);
      if (layout.heights()) {
        pitches(limb);
      }
      stretch(limb);
    }
  }

  private void turns(int limb, int[] hands) {
    boolean rigid = model.material(limb).rigid();
    Priors.Kind kind = rigid ? Priors.Kind.STRAIGHT_RIGID : Priors.Kind.STRAIGHT_FLEXIBLE;
    for (int j = layout.tree().limbs().get(limb).parent() < 0 ? 1 : 0;
        j < layout.steps(limb);
        j++) {
      double expected = 0;
      double variance = square(wander(limb, j, kind));
      String source = j == 0 ? Priors.Kind.JUNCTION_TURN.id() : kind.id();
      boolean assumed = true;
      int free = 0;
      for (Turn turn : model.turns()) {
        boolean here = turn.limb() == limb && turn.joint() == j;
        boolean open = turn.sense() == Bend.Sense.UNKNOWN;
        if (here && turn.sense() != Bend.Sense.UP && turn.sense() != Bend.Sense.DOWN) {
          int hand = open ? hands[free] : turn.sense() == Bend.Sense.RIGHT ? 1 : -1;
          // A plane that nobody knows and that is not tried either way may turn by all of it.
          double sd = hand == 0 ? turn.angle() : turn.sd();
          expected += hand * turn.angle();
          variance += sd * sd;
          source = turn.label();
          assumed = false;
        }
        free += open ? 1 : 0;
      }
      put(source, assumed, layout.turn(limb, j), expected, Math.sqrt(variance));
    }
  }

  /** A second limb at the root has a bearing of its own, which is about straight through. */
  private void through(int limb) {
    if (limb > 0 && layout.tree().limbs().get(limb).parent() < 0) {
      int first = layout.turn(0, 0);
      int second = layout.turn(limb, 0);
      double[] d = new double[x.length];
      d[second] = 1;
      d[first] = -1;
      equations.suppose(
          Priors.Kind.JUNCTION_TURN.id(),
          d,
          Start.wrap(x[first] + Math.PI - x[second]),
          THROUGH_ROOT);
    }
  }

  private void pitches(int limb) {
    boolean rigid = model.material(limb).rigid();
    Priors.Kind kind = rigid ? Priors.Kind.GRADE_RIGID : Priors.Kind.GRADE_FLEXIBLE;
    double fall = model.priors().sd(Priors.Kind.FALL, 0);
    for (int j = 0; j < layout.steps(limb); j++) {
      double expected = 0;
      double variance = square(j == 0 ? fall : wander(limb, j, kind));
      String source = j == 0 ? Priors.Kind.FALL.id() : kind.id();
      boolean assumed = true;
      for (Turn turn : model.turns()) {
        if (turn.limb() == limb && turn.joint() == j) {
          switch (turn.sense()) {
            case UP, DOWN -> {
              expected += turn.sense() == Bend.Sense.UP ? turn.angle() : -turn.angle();
              variance += square(turn.sd());
              source = turn.label();
              assumed = false;
            }
            case UNKNOWN -> variance += square(turn.sd());
            case LEFT, RIGHT -> {}
          }
        }
      }
      put(source, assumed, layout.pitch(limb, j), expected, Math.sqrt(variance));
    }
  }

  /** How much a joint may turn that nobody noted a bend at. */
  private double wander(int limb, int j, Priors.Kind kind) {
    if (j == 0 && layout.tree().limbs().get(limb).parent() >= 0) {
      return model.priors().sd(Priors.Kind.JUNCTION_TURN, 0);
    }
    double step = layout.length0(limb) / layout.steps(limb);
    return model.priors().of(kind).a() * Math.sqrt(step);
  }

  private void stretch(int limb) {
    int unknown = layout.stretch(limb);
    Reading stated = layout.tree().limbs().get(limb).reach().length();
    if (stated != null) {
      double length0 = layout.length0(limb);
      double sd = model.priors().sd(Priors.Kind.TAPE, stated) / length0;
      put(
          layout.tree().limbs().get(limb).reach().label(),
          false,
          unknown,
          stated.value() / length0 - 1,
          sd);
    } else if (model.lengths().met()[limb]) {
      put(Priors.Kind.COUNTER_READING.id(), true, unknown, 0, MET);
    } else if (!model.lengths().measured()[limb]) {
      put(Priors.Kind.COUNTER_READING.id(), true, unknown, 0, HELD);
    }
  }

  private void put(String source, boolean assumed, int unknown, double expected, double sd) {
    if (assumed) {
      equations.assume(source, unknown, expected - x[unknown], sd);
    } else {
      equations.state(source, unknown, expected - x[unknown], sd);
    }
  }

  private static double square(double v) {
    return v * v;
  }
}
