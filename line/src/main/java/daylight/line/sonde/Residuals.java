package daylight.line.sonde;

import java.util.List;
import org.hipparchus.special.Erf;
import org.jspecify.annotations.Nullable;

/**
 * What a sonde leaves of the walked readings, each over its uncertainty, and how that changes with
 * the six unknowns: place to the right and ahead, logarithm of the depth, moment in three parts.
 * With those the field is linear in half of the unknowns, no depth is above the ground and no
 * direction is special.
 */
final class Residuals {
  static final int UNKNOWNS = 6;

  private static final double ROOT_2 = StrictMath.sqrt(2);
  private static final double NOISE_ALONE = StrictMath.sqrt(2 / StrictMath.PI);
  private static final double SURELY_SIGNED = 4;
  private static final double[][] NONE = new double[3][6];

  private final List<Walked> readings;
  private final int size;

  Residuals(List<Walked> readings) {
    this.readings = readings;
    this.size = readings.stream().mapToInt(one -> one instanceof Walked.Parts ? 3 : 1).sum();
  }

  int size() {
    return size;
  }

  static double[] unknowns(Dipole sonde) {
    double[] moment = sonde.moment();
    return new double[] {
      sonde.x(), sonde.y(), StrictMath.log(sonde.depth()), moment[0], moment[1], moment[2]
    };
  }

  /**
   * What is left at those unknowns, and its sum of squares.
   *
   * @param left takes what is left, one for each figure
   * @param slopes takes how that changes, a row for each figure; null where it is not asked for
   * @return the sum of squares
   */
  double at(double[] unknowns, double[] left, double @Nullable [][] slopes) {
    double depth = StrictMath.exp(unknowns[2]);
    double[] moment = {unknowns[3], unknowns[4], unknowns[5]};
    double sum = 0;
    int row = 0;
    for (Walked reading : readings) {
      double rx = reading.x() - unknowns[0];
      double ry = reading.y() - unknowns[1];
      double rz = reading.height() + depth;
      double[] field = Moment.field(moment, rx, ry, rz);
      double[][] change = slopes == null ? NONE : Moment.slopes(moment, rx, ry, rz);
      switch (reading) {
        case Walked.Strength strength -> {
          double[] weights = weights(strength.antenna(), field);
          double sd = strength.value().sd();
          double shown = dot(weights, field);
          left[row] = (folded(shown, sd) - strength.value().value()) / sd;
          row(row++, weights, slopeOfFolded(shown, sd) / sd, change, depth, slopes);
        }
        case Walked.Parts parts -> {
          double[] value = {parts.right().value(), parts.ahead().value(), parts.up().value()};
          double[] sd = {parts.right().sd(), parts.ahead().sd(), parts.up().sd()};
          double sign = dot(field, value) < 0 ? -1 : 1;
          for (int i = 0; i < 3; i++) {
            double[] weights = new double[3];
            weights[i] = sign;
            left[row] = (sign * field[i] - value[i]) / sd[i];
            row(row++, weights, 1 / sd[i], change, depth, slopes);
          }
        }
      }
    }
    for (int i = 0; i < row; i++) {
      sum += left[i] * left[i];
    }
    return sum;
  }

  /**
   * What a strength without sign reads on average: noise turned upright never reads nothing, so
   * that a silent place reads 0.8 of its noise (mean of a folded normal distribution).
   */
  private static double folded(double shown, double sd) {
    double z = shown / sd;
    return z > SURELY_SIGNED
        ? shown
        : shown * Erf.erf(z / ROOT_2) + sd * NOISE_ALONE * StrictMath.exp(-z * z / 2);
  }

  private static double slopeOfFolded(double shown, double sd) {
    double z = shown / sd;
    return z > SURELY_SIGNED ? 1 : Erf.erf(z / ROOT_2);
  }

  /** Every figure over its uncertainty. */
  double[] figures() {
    double[] figures = new double[size];
    int row = 0;
    for (Walked reading : readings) {
      switch (reading) {
        case Walked.Strength strength ->
            figures[row++] = strength.value().value() / strength.value().sd();
        case Walked.Parts parts -> {
          figures[row++] = parts.right().value() / parts.right().sd();
          figures[row++] = parts.ahead().value() / parts.ahead().sd();
          figures[row++] = parts.up().value() / parts.up().sd();
        }
      }
    }
    return figures;
  }

  /** What the sonde would show without noise, over the same uncertainties, into {@code shown}. */
  void shown(double[] unknowns, double[] shown) {
    double depth = StrictMath.exp(unknowns[2]);
    double[] moment = {unknowns[3], unknowns[4], unknowns[5]};
    int row = 0;
    for (Walked reading : readings) {
      double rx = reading.x() - unknowns[0];
      double ry = reading.y() - unknowns[1];
      double[] field = Moment.field(moment, rx, ry, reading.height() + depth);
      switch (reading) {
        case Walked.Strength strength ->
            shown[row++] = dot(weights(strength.antenna(), field), field) / strength.value().sd();
        case Walked.Parts parts -> {
          double[] value = {parts.right().value(), parts.ahead().value(), parts.up().value()};
          double sign = dot(field, value) < 0 ? -1 : 1;
          shown[row++] = sign * field[0] / parts.right().sd();
          shown[row++] = sign * field[1] / parts.ahead().sd();
          shown[row++] = sign * field[2] / parts.up().sd();
        }
      }
    }
  }

  /** The weights with which the parts of the field make what the antenna shows. */
  private static double[] weights(Antenna antenna, double[] field) {
    return switch (antenna) {
      case Antenna.Whole() -> {
        double total = StrictMath.sqrt(dot(field, field));
        yield total > 0
            ? new double[] {field[0] / total, field[1] / total, field[2] / total}
            : new double[] {0, 0, 0};
      }
      case Antenna.Upright() -> new double[] {0, 0, field[2] < 0 ? -1 : 1};
      case Antenna.Level(double bearing) -> {
        double right = StrictMath.sin(bearing);
        double ahead = StrictMath.cos(bearing);
        double sign = field[0] * right + field[1] * ahead < 0 ? -1 : 1;
        yield new double[] {sign * right, sign * ahead, 0};
      }
    };
  }

  private static void row(
      int row,
      double[] weights,
      double scale,
      double[][] change,
      double depth,
      double @Nullable [][] slopes) {
    if (slopes == null) {
      return;
    }
    for (int k = 0; k < UNKNOWNS; k++) {
      double by = 0;
      for (int i = 0; i < 3; i++) {
        by += weights[i] * change[i][k];
      }
      // The place of the sonde moves against the way from it to the receiver.
      double turned = k < 2 ? -by : k == 2 ? by * depth : by;
      slopes[row][k] = scale * turned;
    }
  }

  private static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }
}
