package daylight.line.course;

/**
 * Carries a step of the linearised adjustment out on the pipe: where the step turns a piece of
 * pipe, the piece is turned, so that a far end swings round on its arc and does not leave it on a
 * tangent.
 *
 * <p>The way between two knots is kept in the frame of its mean direction; the step changes the
 * frame and the way's components in it, and the positions follow by adding up from the root. To
 * first order this is the step itself.
 */
final class Step {
  private final Knots knots;
  private final Layout layout;
  private final double[] x;
  private final double[] move;
  private final double share;
  private final double[] to;
  private final Shape shape;

  private Step(Knots knots, double[] x, double[] move, double share) {
    this.knots = knots;
    this.layout = knots.layout();
    this.x = x;
    this.move = move;
    this.share = share;
    this.to = new double[x.length];
    for (int k = 0; k < x.length; k++) {
      to[k] = x[k] + share * move[k];
    }
    this.shape = new Shape(knots, x);
  }

  /** The unknowns after that share of a step. */
  static double[] take(Knots knots, double[] x, double[] move, double share) {
    Step step = new Step(knots, x, move, share);
    for (int limb = 0; limb < knots.layout().tree().limbs().size(); limb++) {
      step.begin(limb);
      for (int i = 1; i < knots.count(limb); i++) {
        step.swing(limb, i);
      }
    }
    return step.to;
  }

  /** A limb's first knot keeps its place against the knot it hangs on. */
  private void begin(int limb) {
    int block = knots.block(limb, 0);
    int parent = knots.pattern().parent(block);
    if (parent >= 0) {
      for (int which : axes()) {
        int own = knots.pattern().first(block) + which;
        int on = knots.pattern().first(parent) + which;
        to[own] = to[on] + (x[own] - x[on]) + share * (move[own] - move[on]);
      }
    }
  }

  private int[] axes() {
    return layout.heights()
        ? new int[] {Knots.EAST, Knots.NORTH, Knots.UP}
        : new int[] {Knots.EAST, Knots.NORTH};
  }

  private void swing(int limb, int i) {
    double psi = (shape.bearing(limb, i - 1) + shape.bearing(limb, i)) / 2;
    double gamma = (shape.pitch(limb, i - 1) + shape.pitch(limb, i)) / 2;
    double turn = mean(limb, i, Knots.BEARING);
    double tip = layout.heights() ? mean(limb, i, Knots.PITCH) : 0;
    double[] way = new double[3];
    double[] change = new double[3];
    int[] axes = axes();
    for (int axis = 0; axis < axes.length; axis++) {
      int a = knots.unknown(limb, i - 1, axes[axis]);
      int b = knots.unknown(limb, i, axes[axis]);
      way[axis] = x[b] - x[a];
      change[axis] = share * (move[b] - move[a]);
    }
    double[][] before = frame(psi, gamma);
    double[][] after = frame(psi + turn, gamma + tip);
    double[][] byPsi = byBearing(psi, gamma);
    double[][] byGamma = byPitch(psi, gamma);
    double[] rest = change.clone();
    double[] in = new double[3];
    for (int k = 0; k < 3; k++) {
      in[k] = dot(before[k], way);
      for (int axis = 0; axis < 3; axis++) {
        rest[axis] -= in[k] * (turn * byPsi[k][axis] + tip * byGamma[k][axis]);
      }
    }
    double[] swung = new double[3];
    for (int k = 0; k < 3; k++) {
      double component = in[k] + dot(before[k], rest);
      for (int axis = 0; axis < 3; axis++) {
        swung[axis] += component * after[k][axis];
      }
    }
    for (int axis = 0; axis < axes.length; axis++) {
      to[knots.unknown(limb, i, axes[axis])] =
          to[knots.unknown(limb, i - 1, axes[axis])] + swung[axis];
    }
  }

  private double mean(int limb, int i, int which) {
    return share
        * (move[knots.unknown(limb, i - 1, which)] + move[knots.unknown(limb, i, which)])
        / 2;
  }

  /** Along, to the right, and up square to both. */
  private static double[][] frame(double psi, double gamma) {
    return new double[][] {
      Shape.direction(psi, gamma),
      {StrictMath.cos(psi), -StrictMath.sin(psi), 0},
      Shape.byPitch(psi, gamma)
    };
  }

  private static double[][] byBearing(double psi, double gamma) {
    double sin = StrictMath.sin(gamma);
    return new double[][] {
      Shape.byBearing(psi, gamma),
      {-StrictMath.sin(psi), -StrictMath.cos(psi), 0},
      {-sin * StrictMath.cos(psi), sin * StrictMath.sin(psi), 0}
    };
  }

  private static double[][] byPitch(double psi, double gamma) {
    double[] d = Shape.direction(psi, gamma);
    return new double[][] {Shape.byPitch(psi, gamma), {0, 0, 0}, {-d[0], -d[1], -d[2]}};
  }

  private static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }
}
