package daylight.line.course;

import daylight.line.book.Priors;
import daylight.line.measure.Reading;
import daylight.line.normal.Gradient;

/**
 * How a pipe may lie: straight but for its bends, about level, as long as it was measured.
 *
 * <p>Bearing and pitch are random walks along the pipe. From one knot to the next, over a length h
 * and with wander σ per square root of metre, the turn has the variance σ²h, and the way between
 * the knots lies off the mean of both directions by an error with the variance σ²h³/12, independent
 * of the turn (integrated Brownian motion with known ends; Rasmussen and Williams, <em>Gaussian
 * Processes for Machine Learning</em> (2006), section 2.4, from memory). A turn Δ spread evenly
 * shortens the chord to h·sin(Δ/2)/(Δ/2).
 */
final class PipeEquations {
  /** A length that nothing measured is held, so that the rest can be laid out. */
  private static final double HELD = 1e-6;

  /** How far off the first guess of a length may be that two pushes from either end give. */
  private static final double MET = 0.3;

  /** How far two pipes at the root may be from running straight through it: anywhere, nearly. */
  private static final double THROUGH_ROOT = Math.PI / 2;

  /** How a laid pipe differs from its length, metres per square root of metre; common practice. */
  private static final double ALONG = 0.003;

  /** How near the axes of two pipes pass that join, metres; common practice. */
  private static final double JOINED = 0.01;

  /** An unknown that nothing need determine is as unsure as this, whatever its unit. */
  private static final double ANYWHERE = 1e6;

  private final Model model;
  private final Equations equations;
  private final double[] x;
  private final Shape shape;
  private final Layout layout;
  private final Knots knots;

  PipeEquations(Model model, Equations equations, double[] x, Shape shape) {
    this.model = model;
    this.equations = equations;
    this.x = x;
    this.shape = shape;
    this.layout = model.layout();
    this.knots = model.knots();
  }

  void add(int[] hands) {
    for (int limb = 0; limb < layout.tree().limbs().size(); limb++) {
      begin(limb);
      for (int i = 1; i < knots.count(limb); i++) {
        segment(limb, i, hands);
      }
      stretch(limb);
    }
  }

  private int unknown(int limb, int i, int which) {
    return knots.unknown(limb, i, which);
  }

  private double value(int limb, int i, int which) {
    return x[unknown(limb, i, which)];
  }

  /** The first knot of a limb: anywhere at the root, else where its parent ends. */
  private void begin(int limb) {
    int parent = layout.tree().limbs().get(limb).parent();
    if (limb == 0) {
      for (int which : new int[] {Knots.EAST, Knots.NORTH, Knots.BEARING}) {
        anywhere(which);
      }
      if (layout.heights()) {
        anywhere(Knots.UP);
        pitch(limb, 0);
      }
      return;
    }
    int on = parent < 0 ? 0 : parent;
    int at = parent < 0 ? 0 : knots.count(parent) - 1;
    same(limb, on, at, Knots.EAST, JOINED);
    same(limb, on, at, Knots.NORTH, JOINED);
    // Water turns little where pipes join. So a limb goes on about straight, unless the water comes
    // down both: then it runs back about the way its parent came, as far off as two turns make it.
    boolean meets = parent >= 0 && layout.tree().meets(limb);
    double turn = model.priors().sd(Priors.Kind.JUNCTION_TURN, 0);
    double expected = value(on, at, Knots.BEARING) + (parent < 0 || meets ? Math.PI : 0);
    equations.suppose(
        Priors.Kind.JUNCTION_TURN,
        difference(limb, on, at, Knots.BEARING),
        Angles.wrap(expected - value(limb, 0, Knots.BEARING)),
        parent < 0 ? THROUGH_ROOT : meets ? Math.sqrt(2) * turn : turn);
    if (layout.heights()) {
      same(limb, on, at, Knots.UP, JOINED);
      if (parent < 0 || meets) {
        pitch(limb, 0);
      } else {
        same(limb, on, at, Knots.PITCH, model.priors().sd(Priors.Kind.FALL, 0));
      }
    }
  }

  private void anywhere(int which) {
    equations.assume(Origin.NOBODY, unknown(0, 0, which), -value(0, 0, which), ANYWHERE);
  }

  private Gradient difference(int limb, int on, int at, int which) {
    Gradient d = Equations.one(unknown(limb, 0, which));
    d.add(unknown(on, at, which), -1);
    return d;
  }

  private void same(int limb, int on, int at, int which, double sd) {
    double off = value(on, at, which) - value(limb, 0, which);
    equations.suppose(Priors.Kind.JUNCTION_TURN, difference(limb, on, at, which), off, sd);
  }

  private void pitch(int limb, int i) {
    equations.assume(
        Priors.Kind.FALL,
        unknown(limb, i, Knots.PITCH),
        -value(limb, i, Knots.PITCH),
        model.priors().sd(Priors.Kind.FALL, 0));
  }

  private void segment(int limb, int i, int[] hands) {
    Priors.Kind straight = model.straight(limb);
    Priors.Kind grade = model.grade(limb);
    double h0 = knots.t0(limb, i) - knots.t0(limb, i - 1);
    double h = h0 * (1 + x[layout.stretch(limb)]);
    Bending bends = Bending.of(model, x, limb, i, hands);
    double psi = (value(limb, i - 1, Knots.BEARING) + value(limb, i, Knots.BEARING)) / 2;
    double gamma = (shape.pitch(limb, i - 1) + shape.pitch(limb, i)) / 2;
    double turned = value(limb, i, Knots.BEARING) - value(limb, i - 1, Knots.BEARING);
    double tipped = shape.pitch(limb, i) - shape.pitch(limb, i - 1);
    double wander =
        square(model.priors().of(straight).a())
            + model.setAside().loose(limb, knots.t0(limb, i - 1), h0);
    Gradient turn = Equations.one(unknown(limb, i, Knots.BEARING));
    turn.add(unknown(limb, i - 1, Knots.BEARING), -1);
    equations.add(
        new Equations.Row(
            bends.sideways.turning(straight, wander * h0),
            turn,
            bends.turn - turned,
            Math.sqrt(wander * h0 + bends.turnVariance),
            bends.sideways.isEmpty() ? new Equations.About.TurnTo(limb, i) : null,
            null));

    Shape.Point a = shape.knot(limb, i - 1);
    Shape.Point b = shape.knot(limb, i);
    double[] v = {b.east() - a.east(), b.north() - a.north(), b.up() - a.up()};
    double[] d = Shape.direction(psi, gamma);
    double[] byPsi = Shape.byBearing(psi, gamma);
    double[] byGamma = Shape.byPitch(psi, gamma);

    along(
        limb,
        i,
        v,
        d,
        byPsi,
        byGamma,
        h,
        h0,
        turned * StrictMath.cos(gamma),
        tipped,
        bends,
        straight);

    // Square to the mean direction, to the right: what a turn to the right moves towards.
    double[] right = {StrictMath.cos(psi), -StrictMath.sin(psi), 0};
    Gradient across = vector(limb, i, right);
    halves(
        across, limb, i, Knots.BEARING, -(v[0] * StrictMath.sin(psi) + v[1] * StrictMath.cos(psi)));
    across.add(bends.acrossBy, -1);
    put(
        bends.sideways.moving(straight, wander * h0 * h0 * h0 / 12),
        across,
        bends.across - dot(right, v),
        Math.sqrt(wander * h0 * h0 * h0 / 12 + bends.acrossVariance));

    if (layout.heights()) {
      double climb = square(model.priors().of(grade).a());
      Gradient tip = Equations.one(unknown(limb, i, Knots.PITCH));
      tip.add(unknown(limb, i - 1, Knots.PITCH), -1);
      put(
          bends.upright.turning(grade, climb * h0),
          tip,
          bends.tip - tipped,
          Math.sqrt(climb * h0 + bends.tipVariance));
      Gradient above = vector(limb, i, byGamma);
      halves(above, limb, i, Knots.PITCH, -dot(d, v));
      // The upward normal turns with the bearing too.
      double[] turnedNormal = {
        -StrictMath.sin(gamma) * StrictMath.cos(psi), StrictMath.sin(gamma) * StrictMath.sin(psi), 0
      };
      halves(above, limb, i, Knots.BEARING, dot(turnedNormal, v));
      above.add(bends.aboveBy, -1);
      put(
          bends.upright.moving(grade, climb * h0 * h0 * h0 / 12),
          above,
          bends.above - dot(byGamma, v),
          Math.sqrt(climb * h0 * h0 * h0 / 12 + bends.aboveVariance));
    }
  }

  /** The chord is as long as the pipe less what its turning takes. */
  private void along(
      int limb,
      int i,
      double[] v,
      double[] d,
      double[] byPsi,
      double[] byGamma,
      double h,
      double h0,
      double turned,
      double tipped,
      Bending bends,
      Priors.Kind straight) {
    double middle = (knots.t0(limb, i) + knots.t0(limb, i - 1)) / 2;
    double share = model.wander().share(limb, middle);
    double[] s = Bending.chord(turned);
    double[] u = Bending.chord(tipped);
    s[0] *= share;
    s[1] *= share;
    double chord = h * s[0] * u[0];
    Gradient gradient = vector(limb, i, d);
    halves(gradient, limb, i, Knots.BEARING, dot(byPsi, v));
    if (layout.heights()) {
      halves(gradient, limb, i, Knots.PITCH, dot(byGamma, v));
      double byTip = h * s[0] * u[1];
      gradient.add(unknown(limb, i, Knots.PITCH), -byTip);
      gradient.add(unknown(limb, i - 1, Knots.PITCH), byTip);
    }
    double cos = turnedShare(limb, i);
    double byTurn = h * s[1] * u[0] * cos;
    gradient.add(unknown(limb, i, Knots.BEARING), -byTurn);
    gradient.add(unknown(limb, i - 1, Knots.BEARING), byTurn);
    if (layout.heights()) {
      double gamma = (shape.pitch(limb, i - 1) + shape.pitch(limb, i)) / 2;
      double rawTurn = value(limb, i, Knots.BEARING) - value(limb, i - 1, Knots.BEARING);
      halves(gradient, limb, i, Knots.PITCH, h * s[1] * u[0] * rawTurn * StrictMath.sin(gamma));
    }
    gradient.add(layout.stretch(limb), -h0 * s[0] * u[0]);
    double loose = square(ALONG) + model.wander().noise(limb, middle);
    double sd = Math.sqrt(loose * h0 + square(bends.along * h));
    equations.add(
        new Equations.Row(
            Origin.of(straight),
            gradient,
            chord - dot(d, v),
            sd,
            new Equations.About.WayTo(limb, i),
            null));
  }

  private double turnedShare(int limb, int i) {
    return StrictMath.cos((shape.pitch(limb, i - 1) + shape.pitch(limb, i)) / 2);
  }

  /** The derivatives of the way between two knots in a direction. */
  private Gradient vector(int limb, int i, double[] direction) {
    Gradient gradient = new Gradient();
    int[] own = {Knots.EAST, Knots.NORTH, Knots.UP};
    for (int axis = 0; axis < (layout.heights() ? 3 : 2); axis++) {
      gradient.add(unknown(limb, i, own[axis]), direction[axis]);
      gradient.add(unknown(limb, i - 1, own[axis]), -direction[axis]);
    }
    return gradient;
  }

  /** Adds a derivative by the mean of an angle at both knots. */
  private void halves(Gradient gradient, int limb, int i, int which, double derivative) {
    gradient.add(unknown(limb, i, which), derivative / 2);
    gradient.add(unknown(limb, i - 1, which), derivative / 2);
  }

  private void stretch(int limb) {
    int unknown = layout.stretch(limb);
    Reading stated = layout.tree().limbs().get(limb).reach().length();
    if (stated != null) {
      double length0 = layout.length0(limb);
      double sd = model.priors().sd(Priors.Kind.TAPE, stated) / length0;
      put(
          Origin.of(
              layout.tree().limbs().get(limb).reach().id(), Source.Sort.REACH, Source.Part.LENGTH),
          Equations.one(unknown),
          stated.value() / length0 - 1 - x[unknown],
          sd);
    } else if (model.lengths().met()[limb]) {
      equations.assume(Priors.Kind.COUNTER_READING, unknown, -x[unknown], MET);
    } else if (!model.lengths().measured()[limb]) {
      equations.assume(Priors.Kind.COUNTER_READING, unknown, -x[unknown], HELD);
    }
  }

  private void put(Origin origin, Gradient gradient, double misfit, double sd) {
    equations.add(new Equations.Row(origin, gradient, misfit, sd, null, null));
  }

  private static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }

  private static double square(double v) {
    return v * v;
  }
}
