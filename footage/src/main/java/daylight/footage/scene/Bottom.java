package daylight.footage.scene;

/** What lies on the bottom of the pipe: how high it stands above the lowest point, in metres. */
final class Bottom {
  private final Script script;

  Bottom(Script script) {
    this.script = script;
  }

  /** Depth of water; in a belly it is deepest in the middle, since its surface is level. */
  double waterAt(double in) {
    double depth = 0;
    for (Thing thing : script.things()) {
      if (thing instanceof Thing.Water water && water.at() < in && in < water.to()) {
        double half = (water.to() - water.at()) / 2;
        double off = (in - water.at()) / half - 1;
        double shape =
            water.still() ? 1 - off * off : Cloud.ease((1 - Math.abs(off)) * half / 0.15);
        depth = Math.max(depth, water.depth() * shape);
      }
    }
    return depth;
  }

  /** Whether no water between two places flows. */
  boolean still(double from, double to) {
    return script.things().stream()
        .noneMatch(
            thing ->
                thing instanceof Thing.Water water
                    && !water.still()
                    && water.at() < to
                    && water.to() > from);
  }

  /** Height of loose stuff. */
  double siltAt(double in) {
    double height = 0;
    for (Thing thing : script.things()) {
      if (thing instanceof Thing.Silt silt && silt.at() < in && in < silt.to()) {
        double ends = Math.min(in - silt.at(), silt.to() - in);
        double radius = script.pipeAt(in).radius();
        double waves = 1 + 0.25 * Cloud.COARSE.between((float) (in * 700), 40);
        double full = segment(silt.share()) * radius * waves;
        height = Math.max(height, full * Cloud.ease(ends / (2.5 * radius)));
      }
    }
    return height;
  }

  /** Whether anything lies between two places. */
  boolean any(double from, double to) {
    return script.things().stream()
        .anyMatch(
            thing ->
                (thing instanceof Thing.Water || thing instanceof Thing.Silt)
                    && thing.at() < to
                    && thing.to() > from);
  }

  /** Height, in radii, of the segment of a circle that is this share of it. */
  static double segment(double share) {
    double low = 0;
    double high = 2;
    for (int i = 0; i < 40; i++) {
      double height = (low + high) / 2;
      double half = StrictMath.acos(1 - height);
      double area = (half - StrictMath.sin(half) * StrictMath.cos(half)) / StrictMath.PI;
      if (area < share) {
        low = height;
      } else {
        high = height;
      }
    }
    return (low + high) / 2;
  }
}
