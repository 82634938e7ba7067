package daylight.line.course;

import daylight.line.course.Tree.Limb;
import java.util.List;

/**
 * The pipes of a line in space for one vector of unknowns: chains of straight steps, each turned
 * against the one before it, so that the pipe is as long as it is whatever its course.
 *
 * <p>A step of length h with bearing ψ (clockwise from grid north) and pitch γ (up positive, away
 * from the root) moves by h·(cos γ sin ψ, cos γ cos ψ, sin γ). Turning at one joint turns
 * everything beyond about that joint, which gives the derivatives.
 */
final class Shape {
  /** A place right at a joint belongs to the step beyond it, however its distance was rounded. */
  private static final double ROUNDING = 1e-9;

  private final Layout layout;
  private final double[] x;
  private final Chain[] chains;

  @SuppressWarnings("ArrayRecordComponent") // never leaves this room
  private record Chain(
      double[] east,
      double[] north,
      double[] up,
      double[] bearing,
      double[] pitch,
      double step,
      // Sum over the steps from the root of the change of place for one radian of pitch.
      double[] pitchEast,
      double[] pitchNorth,
      double[] pitchUp) {}

  /** A place in space, metres. */
  record Point(double east, double north, double up) {}

  Shape(Layout layout, double[] x) {
    this.layout = layout;
    this.x = x;
    List<Limb> limbs = layout.tree().limbs();
    chains = new Chain[limbs.size()];
    for (int limb = 0; limb < limbs.size(); limb++) {
      chains[limb] = chain(limb, limbs.get(limb).parent());
    }
  }

  private Chain chain(int limb, int parent) {
    int n = layout.steps(limb);
    double h = length(limb) / n;
    Chain chain =
        new Chain(
            new double[n + 1],
            new double[n + 1],
            new double[n + 1],
            new double[n],
            new double[n],
            h,
            new double[n + 1],
            new double[n + 1],
            new double[n + 1]);
    double psi = 0;
    double gamma = 0;
    if (parent < 0) {
      chain.east[0] = x[0];
      chain.north[0] = x[1];
      chain.up[0] = layout.heights() ? x[2] : 0;
    } else {
      Chain before = chains[parent];
      int end = before.bearing.length;
      chain.east[0] = before.east[end];
      chain.north[0] = before.north[end];
      chain.up[0] = before.up[end];
      chain.pitchEast[0] = before.pitchEast[end];
      chain.pitchNorth[0] = before.pitchNorth[end];
      chain.pitchUp[0] = before.pitchUp[end];
      psi = before.bearing[end - 1];
      gamma = before.pitch[end - 1];
    }
    for (int i = 0; i < n; i++) {
      psi += x[layout.turn(limb, i)];
      gamma += layout.heights() ? x[layout.pitch(limb, i)] : 0;
      chain.bearing[i] = psi;
      chain.pitch[i] = gamma;
      double sinPsi = StrictMath.sin(psi);
      double cosPsi = StrictMath.cos(psi);
      double sinGamma = StrictMath.sin(gamma);
      double cosGamma = StrictMath.cos(gamma);
      chain.east[i + 1] = chain.east[i] + h * cosGamma * sinPsi;
      chain.north[i + 1] = chain.north[i] + h * cosGamma * cosPsi;
      chain.up[i + 1] = chain.up[i] + h * sinGamma;
      chain.pitchEast[i + 1] = chain.pitchEast[i] - h * sinGamma * sinPsi;
      chain.pitchNorth[i + 1] = chain.pitchNorth[i] - h * sinGamma * cosPsi;
      chain.pitchUp[i + 1] = chain.pitchUp[i] + h * cosGamma;
    }
    return chain;
  }

  /** Length of a limb, metres. */
  double length(int limb) {
    return layout.length0(limb) * (1 + x[layout.stretch(limb)]);
  }

  /** The place at a distance from the root's side of a limb; straight on beyond its ends. */
  Point at(int limb, double t) {
    Chain c = chains[limb];
    int i = step(c, t);
    double rest = t - i * c.step;
    return new Point(
        c.east[i] + rest * east(c, i), c.north[i] + rest * north(c, i), c.up[i] + rest * up(c, i));
  }

  /** The bearing away from the root at a distance, radians. */
  double bearing(int limb, double t) {
    return chains[limb].bearing[step(chains[limb], t)];
  }

  /** The pitch away from the root at a distance, radians, up positive. */
  double pitch(int limb, double t) {
    return chains[limb].pitch[step(chains[limb], t)];
  }

  /**
   * Adds the derivatives of a place by every unknown to three rows.
   *
   * @param dt derivative of the distance t itself by every unknown
   */
  void differentiate(int limb, double t, double[] dt, double[] de, double[] dn, double[] du) {
    Chain c = chains[limb];
    int i = step(c, t);
    double rest = t - i * c.step;
    Point p = at(limb, t);
    double psi = c.bearing[i];
    double gamma = c.pitch[i];
    double pe = c.pitchEast[i] - rest * StrictMath.sin(gamma) * StrictMath.sin(psi);
    double pn = c.pitchNorth[i] - rest * StrictMath.sin(gamma) * StrictMath.cos(psi);
    double pu = c.pitchUp[i] + rest * StrictMath.cos(gamma);
    for (int k = 0; k < dt.length; k++) {
      de[k] += east(c, i) * dt[k];
      dn[k] += north(c, i) * dt[k];
      du[k] += up(c, i) * dt[k];
    }
    de[0] += 1;
    dn[1] += 1;
    if (layout.heights()) {
      du[2] += 1;
    }
    for (int a : layout.tree().path(limb)) {
      Chain own = chains[a];
      int last = a == limb ? i : own.bearing.length - 1;
      for (int j = 0; j <= last; j++) {
        int turn = layout.turn(a, j);
        de[turn] += p.north - own.north[j];
        dn[turn] -= p.east - own.east[j];
        if (layout.heights()) {
          int pitch = layout.pitch(a, j);
          de[pitch] += pe - own.pitchEast[j];
          dn[pitch] += pn - own.pitchNorth[j];
          du[pitch] += pu - own.pitchUp[j];
        }
      }
      stretch(a, a == limb, t, p, de, dn, du, i);
    }
  }

  /** A longer limb carries everything beyond it along; at a fixed distance within it, hardly. */
  private void stretch(
      int a, boolean own, double t, Point p, double[] de, double[] dn, double[] du, int i) {
    Chain c = chains[a];
    int k = layout.stretch(a);
    double grown = 1 + x[k];
    if (own) {
      de[k] += (p.east - c.east[0] - t * east(c, i)) / grown;
      dn[k] += (p.north - c.north[0] - t * north(c, i)) / grown;
      du[k] += (p.up - c.up[0] - t * up(c, i)) / grown;
    } else {
      int end = c.bearing.length;
      de[k] += (c.east[end] - c.east[0]) / grown;
      dn[k] += (c.north[end] - c.north[0]) / grown;
      du[k] += (c.up[end] - c.up[0]) / grown;
    }
  }

  private static int step(Chain c, double t) {
    return Math.clamp((int) Math.floor(t / c.step + ROUNDING), 0, c.bearing.length - 1);
  }

  private static double east(Chain c, int i) {
    return StrictMath.cos(c.pitch[i]) * StrictMath.sin(c.bearing[i]);
  }

  private static double north(Chain c, int i) {
    return StrictMath.cos(c.pitch[i]) * StrictMath.cos(c.bearing[i]);
  }

  private static double up(Chain c, int i) {
    return StrictMath.sin(c.pitch[i]);
  }
}
