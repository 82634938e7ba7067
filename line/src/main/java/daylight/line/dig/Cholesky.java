package daylight.line.dig;

import daylight.line.survey.Covariance2;

/** The factor L of a covariance, LLᵀ: [[a, 0], [b, c]], a and c positive. */
record Cholesky(double a, double b, double c) {
  /** Where a direction is all but certain, it is taken for uncertain by that much, metres. */
  static Cholesky of(Covariance2 covariance, double leastSd) {
    double a = Math.sqrt(Math.max(covariance.xx(), leastSd * leastSd));
    double b = (covariance.xy() + covariance.yx()) / 2 / a;
    double c = Math.sqrt(Math.max(covariance.yy() - b * b, leastSd * leastSd));
    return new Cholesky(a, b, c);
  }

  Vector times(double u, double v) {
    return new Vector(a * u, b * u + c * v);
  }

  Vector solve(Vector way) {
    double u = way.x() / a;
    return new Vector(u, (way.y() - b * u) / c);
  }
}
