package daylight.line.sonde;

import daylight.line.measure.Measured;

/**
 * Position and depth for one tilt and one distance beside the pipe, by weighted least squares.
 *
 * @param xx variance of the position; {@code xd} and {@code dd} alike
 * @param misfit weighted sum of squares of the marks
 */
record AtTilt(
    double tilt, double position, double depth, double xx, double xd, double dd, double misfit) {
  private static final int ROUNDS = 20;
  private static final double STEP = 1e-6;

  /** From a depth to start with; over the pipe the marks are linear and one round is enough. */
  static AtTilt fit(NullMarks marks, double tilt, double beside, double start) {
    double depth = start;
    double position = marks.first().value() - NullModel.behind(depth, tilt, beside);
    Sums sums = new Sums();
    for (int round = 0; round < ROUNDS; round++) {
      sums = sums(marks, tilt, beside, position, depth);
      double determinant = sums.aa * sums.bb - sums.ab * sums.ab;
      position += (sums.bb * sums.ar - sums.ab * sums.br) / determinant;
      double by = (sums.aa * sums.br - sums.ab * sums.ar) / determinant;
      // Never through the ground: halfway up at most.
      depth = StrictMath.max(depth / 2, depth + by);
      if (StrictMath.abs(by) < 1e-12 * depth) {
        break;
      }
    }
    sums = sums(marks, tilt, beside, position, depth);
    double determinant = sums.aa * sums.bb - sums.ab * sums.ab;
    return new AtTilt(
        tilt,
        position,
        depth,
        sums.bb / determinant,
        -sums.ab / determinant,
        sums.aa / determinant,
        sums.rr);
  }

  /** Normal equations: a for the position, b for the depth, r for what is left. */
  private static final class Sums {
    private double aa;
    private double ab;
    private double bb;
    private double ar;
    private double br;
    private double rr;

    void add(Measured mark, double model, double byDepth) {
      double weight = 1 / (mark.sd() * mark.sd());
      double left = mark.value() - model;
      aa += weight;
      ab += weight * byDepth;
      bb += weight * byDepth * byDepth;
      ar += weight * left;
      br += weight * byDepth * left;
      rr += weight * left * left;
    }
  }

  private static Sums sums(
      NullMarks marks, double tilt, double beside, double position, double depth) {
    double step = STEP * depth;
    double more = depth + step;
    double less = depth - step;
    Sums sums = new Sums();
    sums.add(
        marks.first(),
        position + NullModel.behind(depth, tilt, beside),
        (NullModel.behind(more, tilt, beside) - NullModel.behind(less, tilt, beside)) / (2 * step));
    sums.add(
        marks.second(),
        position + NullModel.ahead(depth, tilt, beside),
        (NullModel.ahead(more, tilt, beside) - NullModel.ahead(less, tilt, beside)) / (2 * step));
    Measured over = marks.over();
    if (over != null) {
      sums.add(
          over,
          position + NullModel.over(depth, tilt, beside),
          (NullModel.over(more, tilt, beside) - NullModel.over(less, tilt, beside)) / (2 * step));
    }
    return sums;
  }
}
