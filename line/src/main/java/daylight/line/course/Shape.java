package daylight.line.course;

import daylight.line.normal.Gradient;

/**
 * The pipes of a line in space for one vector of unknowns.
 *
 * <p>The direction of a pipe with bearing ψ (clockwise from grid north) and pitch γ (up positive,
 * away from the root) is (cos γ sin ψ, cos γ cos ψ, sin γ). Between two knots the pipe runs on the
 * cubic that has their positions and directions: the expected path of a direction that wanders at
 * random between known ends. Beyond the ends of a limb it runs straight on.
 */
final class Shape {
  private final Knots knots;
  private final Layout layout;
  private final double[] x;

  /** A place in space, metres. */
  record Point(double east, double north, double up) {
    Point plus(double times, double[] direction) {
      return new Point(
          east + times * direction[0], north + times * direction[1], up + times * direction[2]);
    }
  }

  /** A place with the derivatives of its three coordinates. */
  record Spot(Point point, Gradient east, Gradient north, Gradient up) {}

  Shape(Knots knots, double[] x) {
    this.knots = knots;
    this.layout = knots.layout();
    this.x = x;
  }

  /** Length of a limb, metres. */
  double length(int limb) {
    return layout.length(x, limb);
  }

  private double grown(int limb) {
    return 1 + x[layout.stretch(limb)];
  }

  /** How far along its limb a knot is, metres. */
  double t(int limb, int i) {
    return knots.t0(limb, i) * grown(limb);
  }

  private double value(int limb, int i, int which) {
    return x[knots.unknown(limb, i, which)];
  }

  double bearing(int limb, int i) {
    return value(limb, i, Knots.BEARING);
  }

  double pitch(int limb, int i) {
    return layout.heights() ? value(limb, i, Knots.PITCH) : 0;
  }

  Point knot(int limb, int i) {
    return new Point(
        value(limb, i, Knots.EAST),
        value(limb, i, Knots.NORTH),
        layout.heights() ? value(limb, i, Knots.UP) : 0);
  }

  double[] direction(int limb, int i) {
    return direction(bearing(limb, i), pitch(limb, i));
  }

  static double[] direction(double psi, double gamma) {
    double cos = StrictMath.cos(gamma);
    return new double[] {
      cos * StrictMath.sin(psi), cos * StrictMath.cos(psi), StrictMath.sin(gamma)
    };
  }

  /** The change of a direction for one radian of bearing. */
  static double[] byBearing(double psi, double gamma) {
    double cos = StrictMath.cos(gamma);
    return new double[] {cos * StrictMath.cos(psi), -cos * StrictMath.sin(psi), 0};
  }

  /** The change of a direction for one radian of pitch. */
  static double[] byPitch(double psi, double gamma) {
    double sin = StrictMath.sin(gamma);
    return new double[] {
      -sin * StrictMath.sin(psi), -sin * StrictMath.cos(psi), StrictMath.cos(gamma)
    };
  }

  /**
   * Where in a segment a place is: {@code end} the knot after it, {@code f} the share from 0 to 1.
   */
  record Within(int limb, int end, double f) {}

  /** Where a distance falls; null beyond the ends of the limb. */
  @org.jspecify.annotations.Nullable
  Within within(int limb, double t) {
    double t0 = t / grown(limb);
    if (t0 < 0 || t0 > layout.length0(limb)) {
      return null;
    }
    int end = knots.segment(limb, t0);
    double a = knots.t0(limb, end - 1);
    return new Within(limb, end, (t0 - a) / (knots.t0(limb, end) - a));
  }

  /** The place at a distance from the root's side of a limb. */
  Point at(int limb, double t) {
    Within in = within(limb, t);
    if (in == null) {
      int i = t < 0 ? 0 : knots.count(limb) - 1;
      return knot(limb, i).plus(t - t(limb, i), direction(limb, i));
    }
    Cubic c = new Cubic(in.f());
    int i = in.end();
    double h = t(limb, i) - t(limb, i - 1);
    Point a = knot(limb, i - 1);
    Point b = knot(limb, i);
    return new Point(
            c.a * a.east() + c.b * b.east(),
            c.a * a.north() + c.b * b.north(),
            c.a * a.up() + c.b * b.up())
        .plus(h * c.da, direction(limb, i - 1))
        .plus(h * c.db, direction(limb, i));
  }

  /** The weights of two positions and two directions (times length) at a share of a segment. */
  private static final class Cubic {
    final double a;
    final double b;
    final double da;
    final double db;
    // The same, differentiated by the share.
    final double a1;
    final double b1;
    final double da1;
    final double db1;

    Cubic(double f) {
      a = (1 + 2 * f) * (1 - f) * (1 - f);
      b = f * f * (3 - 2 * f);
      da = f * (1 - f) * (1 - f);
      db = -f * f * (1 - f);
      a1 = -6 * f * (1 - f);
      b1 = -a1;
      da1 = (1 - f) * (1 - 3 * f);
      db1 = f * (3 * f - 2);
    }
  }

  /**
   * How far a pipe may lie off the expected path between two knots: variance σ²h³·f³(1 − f)³/3 of a
   * twice integrated white noise with known ends (same source as in {@link PipeEquations}).
   *
   * @param rate by which its direction wanders, radians per square root of metre
   */
  double sag(int limb, double t, double rate) {
    Within in = within(limb, t);
    if (in == null) {
      return 0;
    }
    double h = t(limb, in.end()) - t(limb, in.end() - 1);
    double between = in.f() * (1 - in.f());
    return rate * rate * h * h * h * between * between * between / 3;
  }

  /** The direction in which the pipe runs away from the root at a distance. */
  double[] tangent(int limb, double t) {
    Within in = within(limb, t);
    if (in == null) {
      return direction(limb, t < 0 ? 0 : knots.count(limb) - 1);
    }
    Cubic c = new Cubic(in.f());
    int i = in.end();
    double h = t(limb, i) - t(limb, i - 1);
    Point a = knot(limb, i - 1);
    Point b = knot(limb, i);
    double[] before = direction(limb, i - 1);
    double[] after = direction(limb, i);
    return new double[] {
      (c.a1 * a.east() + c.b1 * b.east()) / h + c.da1 * before[0] + c.db1 * after[0],
      (c.a1 * a.north() + c.b1 * b.north()) / h + c.da1 * before[1] + c.db1 * after[1],
      (c.a1 * a.up() + c.b1 * b.up()) / h + c.da1 * before[2] + c.db1 * after[2]
    };
  }

  /** The bearing away from the root at a distance, radians. */
  double bearing(int limb, double t) {
    double[] d = tangent(limb, t);
    return StrictMath.atan2(d[0], d[1]);
  }

  /** The derivatives of the bearing at a distance, as the knots beside it have them. */
  Gradient bearingGradient(int limb, double t) {
    Gradient gradient = new Gradient();
    Within in = within(limb, t);
    if (in == null) {
      int i = t < 0 ? 0 : knots.count(limb) - 1;
      gradient.add(knots.unknown(limb, i, Knots.BEARING), 1);
    } else {
      gradient.add(knots.unknown(limb, in.end() - 1, Knots.BEARING), 1 - in.f());
      gradient.add(knots.unknown(limb, in.end(), Knots.BEARING), in.f());
    }
    return gradient;
  }

  /**
   * A place reached from a knot by going straight on: how marks hang on their knots.
   *
   * @param dt derivatives of the distance t by the shared unknowns
   */
  Spot from(int limb, int i, double t, Gradient dt) {
    double[] d = direction(limb, i);
    double beyond = t - t(limb, i);
    Gradient[] g = straight(limb, i, beyond, d, dt);
    return new Spot(knot(limb, i).plus(beyond, d), g[0], g[1], g[2]);
  }

  private Gradient[] straight(int limb, int i, double beyond, double[] d, Gradient dt) {
    double[] byPsi = byBearing(bearing(limb, i), pitch(limb, i));
    double[] byGamma = byPitch(bearing(limb, i), pitch(limb, i));
    Gradient[] g = {new Gradient(), new Gradient(), new Gradient()};
    int[] own = {Knots.EAST, Knots.NORTH, Knots.UP};
    for (int axis = 0; axis < 3; axis++) {
      if (axis < 2 || layout.heights()) {
        g[axis].add(knots.unknown(limb, i, own[axis]), 1);
        g[axis].add(knots.unknown(limb, i, Knots.BEARING), beyond * byPsi[axis]);
        if (layout.heights()) {
          g[axis].add(knots.unknown(limb, i, Knots.PITCH), beyond * byGamma[axis]);
        }
        g[axis].add(dt, d[axis]);
        g[axis].add(layout.stretch(limb), -knots.t0(limb, i) * d[axis]);
      }
    }
    return g;
  }

  /**
   * The place at a distance with its derivatives.
   *
   * @param dt derivatives of the distance t by the shared unknowns
   */
  Spot spot(int limb, double t, Gradient dt) {
    Within in = within(limb, t);
    if (in == null) {
      return from(limb, t < 0 ? 0 : knots.count(limb) - 1, t, dt);
    }
    Cubic c = new Cubic(in.f());
    int i = in.end();
    double h0 = knots.t0(limb, i) - knots.t0(limb, i - 1);
    double h = h0 * grown(limb);
    double[] before = direction(limb, i - 1);
    double[] after = direction(limb, i);
    double[] along = tangent(limb, t);
    Gradient[] g = {new Gradient(), new Gradient(), new Gradient()};
    int[] own = {Knots.EAST, Knots.NORTH, Knots.UP};
    for (int axis = 0; axis < (layout.heights() ? 3 : 2); axis++) {
      g[axis].add(knots.unknown(limb, i - 1, own[axis]), c.a);
      g[axis].add(knots.unknown(limb, i, own[axis]), c.b);
      turned(g[axis], limb, i - 1, axis, h * c.da);
      turned(g[axis], limb, i, axis, h * c.db);
      g[axis].add(dt, along[axis]);
      g[axis].add(
          layout.stretch(limb),
          -along[axis] * t / grown(limb) + h0 * (c.da * before[axis] + c.db * after[axis]));
    }
    return new Spot(at(limb, t), g[0], g[1], g[2]);
  }

  private void turned(Gradient gradient, int limb, int i, int axis, double times) {
    gradient.add(
        knots.unknown(limb, i, Knots.BEARING),
        times * byBearing(bearing(limb, i), pitch(limb, i))[axis]);
    if (layout.heights()) {
      gradient.add(
          knots.unknown(limb, i, Knots.PITCH),
          times * byPitch(bearing(limb, i), pitch(limb, i))[axis]);
    }
  }
}
