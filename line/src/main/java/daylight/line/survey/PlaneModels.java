package daylight.line.survey;

/**
 * What each kind of sighting would read without error, with its derivatives (Ghilani, Adjustment
 * Computations, ch. 14–16; along and out by plane geometry).
 */
final class PlaneModels {
  /** Nearer than this, metres, two points give no direction. */
  private static final double ONE_SPOT = 1e-9;

  private PlaneModels() {}

  static Equation.Model distance(Spot from, Spot to) {
    return (state, gradient) -> {
      double dx = to.x(state) - from.x(state);
      double dy = to.y(state) - from.y(state);
      double d = StrictMath.hypot(dx, dy);
      if (d > ONE_SPOT) {
        from.add(gradient, -dx / d, -dy / d);
        to.add(gradient, dx / d, dy / d);
      }
      return d;
    };
  }

  static Equation.Model bearing(Spot from, Spot to) {
    return (state, gradient) -> {
      double dx = to.x(state) - from.x(state);
      double dy = to.y(state) - from.y(state);
      double square = dx * dx + dy * dy;
      if (square > ONE_SPOT * ONE_SPOT) {
        from.add(gradient, -dy / square, dx / square);
        to.add(gradient, dy / square, -dx / square);
      }
      return StrictMath.atan2(dx, dy);
    };
  }

  static Equation.Model angle(Spot at, Spot from, Spot to) {
    Equation.Model forward = bearing(at, to);
    Equation.Model back = bearing(at, from);
    return (state, gradient) -> {
      double[] backward = new double[gradient.length];
      double angle = forward.at(state, gradient) - back.at(state, backward);
      for (int k = 0; k < gradient.length; k++) {
        gradient[k] -= backward[k];
      }
      return angle;
    };
  }

  /** A circle reading: bearing less the bearing of the circle's zero. */
  static Equation.Model direction(Spot from, Spot to, int orientation) {
    Equation.Model bearing = bearing(from, to);
    return (state, gradient) -> {
      double reading = bearing.at(state, gradient) - state[orientation];
      gradient[orientation] = -1;
      return reading;
    };
  }

  /** One coordinate of a point. */
  static Equation.Model coordinate(Spot point, boolean x) {
    return (state, gradient) -> {
      point.add(gradient, x ? 1 : 0, x ? 0 : 1);
      return x ? point.x(state) : point.y(state);
    };
  }

  /** One coordinate of the way from one point to another. */
  static Equation.Model difference(Spot from, Spot to, boolean x) {
    return (state, gradient) -> {
      from.add(gradient, x ? -1 : 0, x ? 0 : -1);
      to.add(gradient, x ? 1 : 0, x ? 0 : 1);
      return x ? to.x(state) - from.x(state) : to.y(state) - from.y(state);
    };
  }

  /** How far along the wall; its wall end turns the wall by out/length. */
  static Equation.Model along(Spot wallFrom, Spot wallTo, Spot point) {
    return (state, gradient) -> {
      var wall = new Wall(wallFrom, wallTo, point, state);
      double turn = wall.out() / wall.length;
      point.add(gradient, wall.ux, wall.uy);
      wallTo.add(gradient, -wall.uy * turn, wall.ux * turn);
      wallFrom.add(gradient, -wall.ux + wall.uy * turn, -wall.uy - wall.ux * turn);
      return wall.along();
    };
  }

  /** How far out to the left; its wall end turns the wall by −along/length. */
  static Equation.Model out(Spot wallFrom, Spot wallTo, Spot point) {
    return (state, gradient) -> {
      var wall = new Wall(wallFrom, wallTo, point, state);
      double turn = -wall.along() / wall.length;
      point.add(gradient, -wall.uy, wall.ux);
      wallTo.add(gradient, -wall.uy * turn, wall.ux * turn);
      wallFrom.add(gradient, wall.uy + wall.uy * turn, -wall.ux - wall.ux * turn);
      return wall.out();
    };
  }

  /** The unit vector u of a wall, and a point seen from its zero corner. */
  private static final class Wall {
    private final double length;
    private final double ux;
    private final double uy;
    private final double rx;
    private final double ry;

    Wall(Spot from, Spot to, Spot point, double[] state) {
      double dx = to.x(state) - from.x(state);
      double dy = to.y(state) - from.y(state);
      length = Math.max(StrictMath.hypot(dx, dy), ONE_SPOT);
      ux = dx / length;
      uy = dy / length;
      rx = point.x(state) - from.x(state);
      ry = point.y(state) - from.y(state);
    }

    double along() {
      return ux * rx + uy * ry;
    }

    double out() {
      return ux * ry - uy * rx;
    }
  }

  /**
   * East of a satellite fix: unknowns tie, tie+1, tie+2 are shift east, shift north, grid north.
   */
  static Equation.Model east(Spot point, int tie) {
    return (state, gradient) -> {
      double c = StrictMath.cos(state[tie + 2]);
      double s = StrictMath.sin(state[tie + 2]);
      double x = point.x(state);
      double y = point.y(state);
      point.add(gradient, c, s);
      gradient[tie] = 1;
      gradient[tie + 2] = -s * x + c * y;
      return state[tie] + c * x + s * y;
    };
  }

  /** North of a satellite fix, as {@link #east}. */
  static Equation.Model north(Spot point, int tie) {
    return (state, gradient) -> {
      double c = StrictMath.cos(state[tie + 2]);
      double s = StrictMath.sin(state[tie + 2]);
      double x = point.x(state);
      double y = point.y(state);
      point.add(gradient, -s, c);
      gradient[tie + 1] = 1;
      gradient[tie + 2] = -c * x - s * y;
      return state[tie + 1] - s * x + c * y;
    };
  }
}
