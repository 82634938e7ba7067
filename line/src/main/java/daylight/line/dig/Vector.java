package daylight.line.dig;

import daylight.line.survey.Covariance2;
import daylight.line.survey.PlanPoint;

/** A vector in plan, x east and y north, metres; or a direction of length one. */
record Vector(double x, double y) {
  static Vector of(double bearing) {
    return new Vector(StrictMath.sin(bearing), StrictMath.cos(bearing));
  }

  static Vector between(PlanPoint from, PlanPoint to) {
    return new Vector(to.x() - from.x(), to.y() - from.y());
  }

  double dot(Vector other) {
    return x * other.x + y * other.y;
  }

  /** Positive where the other lies to the left. */
  double cross(Vector other) {
    return x * other.y - y * other.x;
  }

  double length() {
    return StrictMath.hypot(x, y);
  }

  Vector unit() {
    double length = length();
    return new Vector(x / length, y / length);
  }

  /** The variance in this direction, uᵀCu, never below nothing. */
  double variance(Covariance2 c) {
    return Math.max(0, covariance(c, this));
  }

  /** uᵀCv. */
  double covariance(Covariance2 c, Vector v) {
    return x * (c.xx() * v.x + c.xy() * v.y) + y * (c.yx() * v.x + c.yy() * v.y);
  }

  /** The covariance of an error along this direction alone. */
  Covariance2 along(double variance) {
    return new Covariance2(variance * x * x, variance * x * y, variance * x * y, variance * y * y);
  }

  static Covariance2 sum(Covariance2 a, Covariance2 b) {
    return new Covariance2(a.xx() + b.xx(), a.xy() + b.xy(), a.yx() + b.yx(), a.yy() + b.yy());
  }
}
