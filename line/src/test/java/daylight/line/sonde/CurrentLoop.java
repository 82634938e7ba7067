package daylight.line.sonde;

/** A small loop of current, integrated piece by piece by the law of Biot and Savart. */
final class CurrentLoop {
  private static final int PIECES = 720;

  private CurrentLoop() {}

  /** How far its field is from the dipole's, over the size of the field. */
  static double difference(Dipole sonde, double radius, double x, double y, double height) {
    double[] normal = sonde.moment();
    double strength = sonde.strength();
    for (int i = 0; i < 3; i++) {
      normal[i] /= strength;
    }
    double[] aside =
        StrictMath.abs(normal[2]) < 0.9
            ? cross(normal, new double[] {0, 0, 1})
            : cross(normal, new double[] {1, 0, 0});
    unit(aside);
    double[] other = cross(normal, aside);
    // K = μ0 m / 4π and m = I π radius²: with μ0/4π = 1 the current is K / (π radius²).
    double current = strength / (StrictMath.PI * radius * radius);
    double[] field = new double[3];
    for (int i = 0; i < PIECES; i++) {
      double angle = 2 * StrictMath.PI * i / PIECES;
      double step = 2 * StrictMath.PI / PIECES * radius;
      double[] piece = new double[3];
      double[] way = new double[3];
      double[] centre = {sonde.x(), sonde.y(), -sonde.depth()};
      double[] receiver = {x, y, height};
      for (int k = 0; k < 3; k++) {
        double at =
            centre[k]
                + radius * (StrictMath.cos(angle) * aside[k] + StrictMath.sin(angle) * other[k]);
        way[k] = receiver[k] - at;
        piece[k] = step * (-StrictMath.sin(angle) * aside[k] + StrictMath.cos(angle) * other[k]);
      }
      double r = StrictMath.sqrt(way[0] * way[0] + way[1] * way[1] + way[2] * way[2]);
      double[] part = cross(piece, way);
      for (int k = 0; k < 3; k++) {
        field[k] += current * part[k] / (r * r * r);
      }
    }
    Field ours = sonde.at(x, y, height);
    double off =
        StrictMath.hypot(
            StrictMath.hypot(field[0] - ours.x(), field[1] - ours.y()), field[2] - ours.z());
    return off / ours.total();
  }

  private static double[] cross(double[] a, double[] b) {
    return new double[] {
      a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]
    };
  }

  private static void unit(double[] a) {
    double size = StrictMath.sqrt(a[0] * a[0] + a[1] * a[1] + a[2] * a[2]);
    for (int i = 0; i < 3; i++) {
      a[i] /= size;
    }
  }
}
