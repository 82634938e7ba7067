package daylight.line.course;

import daylight.line.book.Priors;
import daylight.line.normal.Gradient;
import daylight.line.survey.LevelAdjusted;
import java.util.Map;

/**
 * What lies above the pipe between its marks: the ground, about level and straying from the plane
 * of its surface, and what bends a receiver's field. Both are stationary along the pipe with a
 * correlation that falls off as e to the minus distance over a length (Ornstein and Uhlenbeck), so
 * each knot hangs on the one before it alone.
 */
final class GroundEquations {
  /** The height of the first surface is the datum where nothing was levelled, metres. */
  private static final double DATUM = 1e-4;

  /** At a junction ground and distortion are those of the pipe it joins, to this share. */
  private static final double SAME = 1e-3;

  private final Model model;
  private final Equations equations;
  private final double[] x;
  private final Knots knots;

  GroundEquations(Model model, Equations equations, double[] x) {
    this.model = model;
    this.equations = equations;
    this.x = x;
    this.knots = model.knots();
  }

  void add() {
    planes();
    for (int limb = 0; limb < model.layout().tree().limbs().size(); limb++) {
      for (int i = 0; i < knots.count(limb); i++) {
        int block = knots.block(limb, i);
        int parent = knots.pattern().parent(block);
        double h = i == 0 ? 0 : knots.t0(limb, i) - knots.t0(limb, i - 1);
        distortion(block, parent, h);
        ground(block, parent, h);
      }
    }
  }

  /** The planes of the surfaces; the first is the datum where nothing was levelled. */
  private void planes() {
    double mean = meanGround(model.levels());
    boolean datum = model.levels() == null;
    for (String surface : model.surfaceNames()) {
      int plane = model.layout().named(Surfaces.plane(surface));
      double sd = datum ? DATUM : model.priors().sd(Priors.Kind.GROUND_STEP, 0);
      equations.assume(Priors.Kind.GROUND_STEP, plane, mean - x[plane], sd);
      datum = false;
    }
  }

  static double meanGround(@org.jspecify.annotations.Nullable LevelAdjusted levels) {
    if (levels == null) {
      return 0;
    }
    return levels.heights().entrySet().stream()
        .filter(height -> height.getKey().endsWith("/ground"))
        .mapToDouble(Map.Entry::getValue)
        .average()
        .orElseGet(
            () -> levels.heights().values().stream().mapToDouble(h -> h).average().orElse(0));
  }

  private void distortion(int block, int parent, double h) {
    Priors.Kind source = Priors.Kind.DEPTH_DISTORTION;
    int own = knots.pattern().first(block) + Knots.BENT;
    if (parent < 0) {
      equations.assume(source, own, -x[own], 1);
      return;
    }
    int before = knots.pattern().first(parent) + Knots.BENT;
    double length = model.priors().of(Priors.Kind.DEPTH_DISTORTION).correlationLength();
    double keeps = length > 0 ? StrictMath.exp(-h / length) : 0;
    Gradient d = Equations.one(own);
    d.add(before, -keeps);
    equations.suppose(
        source, d, keeps * x[before] - x[own], Math.max(SAME, Math.sqrt(1 - keeps * keeps)));
  }

  private void ground(int block, int parent, double h) {
    String surface = model.surfaces().of(block);
    Priors.Kind kind = Surfaces.unevenness(surface);
    double sd = model.priors().sd(kind, 0);
    int own = knots.pattern().first(block) + Knots.GROUND;
    int plane = model.layout().named(Surfaces.plane(surface));
    Gradient d = Equations.one(own);
    // From one surface to another the ground may step: nothing of the one is known from the other.
    if (parent < 0 || !model.surfaces().of(parent).equals(surface)) {
      d.add(plane, -1);
      equations.suppose(kind, d, x[plane] - x[own], sd);
      return;
    }
    int before = knots.pattern().first(parent) + Knots.GROUND;
    double length = model.priors().of(kind).correlationLength();
    double keeps = length > 0 ? StrictMath.exp(-h / length) : 0;
    d.add(before, -keeps);
    d.add(plane, keeps - 1);
    double expected = keeps * x[before] + (1 - keeps) * x[plane];
    equations.suppose(
        kind, d, expected - x[own], sd * Math.max(SAME, Math.sqrt(1 - keeps * keeps)));
  }
}
