package daylight.report.draw;

import daylight.line.measure.Measured;
import daylight.line.measure.Shown;

/**
 * Lays distance and height on the sheet; heights are drawn a whole number of times larger.
 *
 * @param breaks what is left out of the distances
 * @param exaggeration how many times
 */
record ProfileFrame(
    Scale scale, ProfileBreaks breaks, int exaggeration, double left, double top, double highest) {
  private static final int[] OFFERED = {50, 40, 30, 25, 20, 15, 10, 8, 6, 5, 4, 3, 2, 1};

  /**
   * Fits a profile into a box.
   *
   * @param deepest height of the deepest reading to be shown, metres
   */
  static ProfileFrame of(
      Profile profile, double length, ProfileBreaks breaks, double deepest, Box box, Shown shown) {
    Scale scale = breaks.fitting(length, box.width(), shown);
    double highest = profile.samples().stream().mapToDouble(Profile.Sample::ground).max().orElse(0);
    double lowest =
        profile.samples().stream()
            .mapToDouble(s -> s.bottom().value() - Measured.Z95 * s.bottom().sd())
            .min()
            .orElse(-1);
    lowest = Math.min(lowest, deepest);
    double high = Math.max(0.1, highest - lowest) * scale.pointsPerMetre();
    int times = 1;
    for (int offered : OFFERED) {
      if (offered * high <= box.height()) {
        times = offered;
        break;
      }
    }
    double used = breaks.x(length, scale.pointsPerMetre());
    double free = Math.max(0, box.height() - times * high) / 2;
    return new ProfileFrame(
        scale,
        breaks,
        times,
        box.x() + Math.max(0, box.width() - used) / 2,
        box.y() + free,
        highest);
  }

  double x(double distance) {
    return left + breaks.x(distance, scale.pointsPerMetre());
  }

  double y(double height) {
    return top + (highest - height) * scale.pointsPerMetre() * exaggeration;
  }

  Point at(double distance, double height) {
    return new Point(x(distance), y(height));
  }
}
