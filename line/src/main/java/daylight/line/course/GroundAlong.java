package daylight.line.course;

import daylight.line.book.Priors;
import daylight.line.normal.Gradient;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The ground above a solved line, as its marks and its surfaces tell it. */
final class GroundAlong {
  private final Model model;
  private final Knots knots;
  private final Shape shape;
  private final double[] x;

  /** The marks of each limb, by their distance from the root's side. */
  private final List<List<GroundMark>> marks = new ArrayList<>();

  /** A place where something tells the height of the ground. */
  private record GroundMark(int limb, double t, int unknown, @Nullable String surface) {
    /** Whether the ground may step on the way to another mark, as at a wall. */
    boolean stepsTo(GroundMark other) {
      return surface != null && other.surface != null && !surface.equals(other.surface);
    }
  }

  /** A mark and how far away along the pipe it is, metres. */
  private record Neighbour(GroundMark mark, double away) {}

  GroundAlong(Model model, Shape shape, double[] x) {
    this.model = model;
    this.knots = model.knots();
    this.shape = shape;
    this.x = x;
    for (int limb = 0; limb < tree().limbs().size(); limb++) {
      marks.add(new ArrayList<>());
    }
    for (Pinned pin : model.pinned()) {
      if (pin.mark().ground()) {
        marks
            .get(pin.limb())
            .add(
                new GroundMark(
                    pin.limb(),
                    shape.t(pin.limb(), pin.knot()),
                    knots.unknown(pin.limb(), pin.knot(), Knots.GROUND),
                    pin.mark().surface()));
      }
    }
    marks.forEach(of -> of.sort(Comparator.comparingDouble(GroundMark::t)));
  }

  private Tree tree() {
    return model.layout().tree();
  }

  /** Whether anything tells a height of the ground. */
  boolean told() {
    return marks.stream().anyMatch(of -> !of.isEmpty());
  }

  /**
   * Height of the ground: as the knots beside the place have it. Where the surface is one thing at
   * the mark before and another at the mark beyond, it may step anywhere between them, so the
   * ground is at the height of the one or of the other: with share p beyond the step the mean is
   * between, and the variance p(1 − p) times the step squared.
   *
   * @param in where among the knots the place is; null beyond the ends of the limb
   */
  Figure at(int limb, double t, Shape.@Nullable Within in) {
    Neighbour before = toRoot(limb, t);
    Neighbour after = fromRoot(limb, t, 0);
    if (before != null && after != null && before.mark().stepsTo(after.mark())) {
      return stepped(before, after);
    }
    Gradient gradient = new Gradient();
    int end = in == null ? (t < 0 ? 0 : knots.count(limb) - 1) : in.end();
    double f = in == null ? 1 : in.f();
    gradient.add(knots.unknown(limb, end, Knots.GROUND), f);
    Priors.Kind kind = Surfaces.unevenness(model.surfaces().of(knots.block(limb, end)));
    double loose = 0;
    if (in != null) {
      gradient.add(knots.unknown(limb, end - 1, Knots.GROUND), 1 - f);
      double h = shape.t(limb, end) - shape.t(limb, end - 1);
      loose =
          (1 - f) * strays(kind, f * h)
              + f * strays(kind, (1 - f) * h)
              - f * (1 - f) * strays(kind, h);
    }
    return Figure.of(gradient.dot(x), gradient, Math.max(0, loose), kind);
  }

  private Figure stepped(Neighbour before, Neighbour after) {
    double span = before.away() + after.away();
    double share = span > 0 ? before.away() / span : 0;
    Gradient gradient = new Gradient();
    double one = strayed(before, 1 - share, gradient);
    double other = strayed(after, share, gradient);
    double step = other - one;
    double loose =
        (1 - share) * bend(before) + share * bend(after) + share * (1 - share) * step * step;
    return Figure.of((1 - share) * one + share * other, gradient, loose, Priors.Kind.GROUND_STEP);
  }

  /** The ground as one mark tells it: it goes back to the plane of its surface with distance. */
  private double strayed(Neighbour from, double weight, Gradient gradient) {
    String surface = from.mark().surface();
    double keeps = keeps(from);
    int plane = model.layout().named(Surfaces.plane(surface == null ? "" : surface));
    gradient.add(from.mark().unknown(), weight * keeps);
    gradient.add(plane, weight * (1 - keeps));
    return keeps * x[from.mark().unknown()] + (1 - keeps) * x[plane];
  }

  private double bend(Neighbour from) {
    String surface = from.mark().surface();
    double sd = model.priors().sd(Surfaces.unevenness(surface == null ? "" : surface), 0);
    double keeps = keeps(from);
    return sd * sd * (1 - keeps * keeps);
  }

  private double keeps(Neighbour from) {
    String surface = from.mark().surface();
    Priors.Kind kind = Surfaces.unevenness(surface == null ? "" : surface);
    double length = model.priors().of(kind).correlationLength();
    return length > 0 ? StrictMath.exp(-from.away() / length) : from.away() > 0 ? 0 : 1;
  }

  private @Nullable Neighbour toRoot(int of, double t) {
    double from = t;
    double passed = 0;
    for (int limb = of; limb >= 0; limb = tree().limbs().get(limb).parent()) {
      int before = firstAfter(marks.get(limb), from) - 1;
      if (before >= 0) {
        // Of several at one place the first entered tells.
        GroundMark nearest = marks.get(limb).get(firstAt(marks.get(limb), before));
        return new Neighbour(nearest, passed + from - nearest.t());
      }
      passed += from;
      int parent = tree().limbs().get(limb).parent();
      from = parent < 0 ? 0 : shape.length(parent);
    }
    return null;
  }

  private @Nullable Neighbour fromRoot(int limb, double from, double passed) {
    List<GroundMark> of = marks.get(limb);
    int next = firstAfter(of, from);
    if (next > 0 && of.get(next - 1).t() == from) {
      next = firstAt(of, next - 1);
    }
    if (next < of.size()) {
      GroundMark nearest = of.get(next);
      return new Neighbour(nearest, passed + nearest.t() - from);
    }
    for (int child = limb + 1; child < tree().limbs().size(); child++) {
      if (tree().limbs().get(child).parent() == limb) {
        Neighbour beyond = fromRoot(child, 0, passed + shape.length(limb) - from);
        if (beyond != null) {
          return beyond;
        }
      }
    }
    return null;
  }

  /** The index of the first mark beyond a distance. */
  private static int firstAfter(List<GroundMark> marks, double t) {
    int low = 0;
    int high = marks.size();
    while (low < high) {
      int middle = (low + high) / 2;
      if (marks.get(middle).t() > t) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low;
  }

  /** The index of the first mark at the place of another. */
  private static int firstAt(List<GroundMark> marks, int index) {
    int first = index;
    while (first > 0 && marks.get(first - 1).t() == marks.get(index).t()) {
      first--;
    }
    return first;
  }

  /**
   * Variance of the difference of the ground at two places so far apart, each of which strays from
   * flat by the prior's sd: 2σ²·(1 − e^(−away/length)). Source: Cressie, <em>Statistics for Spatial
   * Data</em> (1993), exponential variogram and the variance of linear prediction from it (from
   * memory).
   */
  private double strays(Priors.Kind kind, double away) {
    double sd = model.priors().sd(kind, 0);
    double length = model.priors().of(kind).correlationLength();
    double fade = length > 0 ? StrictMath.exp(-away / length) : away > 0 ? 0 : 1;
    return 2 * sd * sd * (1 - fade);
  }
}
