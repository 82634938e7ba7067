package daylight.line.course;

import daylight.line.book.Place;
import daylight.line.book.Priors;
import daylight.line.measure.Measured;
import daylight.line.survey.Covariance2;
import daylight.line.survey.PlanPoint;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.ejml.data.DMatrixRMaj;
import org.jspecify.annotations.Nullable;

/** One line, estimated: any figure of it, its uncertainty and where that comes from. */
final class Solved {
  /** A figure that hangs on held quantities alone still is no surer than this. */
  private static final double SUREST = 1e-6;

  private final Model model;
  private final Layout layout;
  private final DenseFit.Fitted fit;
  private final Shape shape;
  private final List<GroundMark> grounds;

  /** A place where the height of the ground is an unknown. */
  private record GroundMark(
      int limb, double t, int unknown, @Nullable String surface, Priors.Kind unevenness) {
    /** Whether the ground may step on the way to another mark, as at a wall. */
    boolean stepsTo(GroundMark other) {
      return surface != null && other.surface != null && !surface.equals(other.surface);
    }
  }

  /**
   * A figure: its value, its gradient by the unknowns, and what it is unsure by beyond them.
   *
   * @param loose variance that no unknown carries, under the name of {@code looseSource}
   */
  @SuppressWarnings("ArrayRecordComponent") // never leaves this room
  record Figure(double value, double[] gradient, double loose, @Nullable String looseSource) {}

  Solved(Model model, DenseFit.Fitted fit) {
    this.model = model;
    this.layout = model.layout();
    this.fit = fit;
    this.shape = new Shape(layout, fit.x());
    this.grounds = grounds();
  }

  Model model() {
    return model;
  }

  DenseFit.Fitted fit() {
    return fit;
  }

  Shape shape() {
    return shape;
  }

  private List<GroundMark> grounds() {
    List<GroundMark> marks = new ArrayList<>();
    for (Mark mark : model.marks()) {
      if (mark.ground() >= 0) {
        Walk.Reached at = mark.place(layout, fit.x());
        String surface = mark.surface();
        Priors.Kind kind =
            surface == null ? Priors.Kind.GROUND_YARD : HeightEquations.unevenness(surface);
        marks.add(new GroundMark(at.limb(), at.t(), mark.ground(), surface, kind));
      }
    }
    return marks;
  }

  /** Length of a limb with its uncertainty, metres. */
  Measured length(int limb) {
    double[] gradient = new double[fit.x().length];
    gradient[layout.stretch(limb)] = layout.length0(limb);
    return measured(new Figure(shape.length(limb), gradient, 0, null));
  }

  /** Where a place is on its limb: its distance from the root's side and that one's derivatives. */
  Walk.Reached at(Place place) {
    int limb = layout.tree().indexOf(place.reach());
    double[] dt = new double[fit.x().length];
    if (layout.tree().limbs().get(limb).downstream()) {
      return new Walk.Reached(limb, place.distance(), dt, true);
    }
    dt[layout.stretch(limb)] = layout.length0(limb);
    return new Walk.Reached(limb, shape.length(limb) - place.distance(), dt, true);
  }

  /** The place at a distance from the root's side of a limb. */
  Place place(int limb, double t) {
    Tree.Limb of = layout.tree().limbs().get(limb);
    double distance = of.downstream() ? t : shape.length(limb) - t;
    return new Place(of.reach().label(), distance);
  }

  PlanPoint spot(Place place) {
    Walk.Reached at = at(place);
    Shape.Point p = shape.at(at.limb(), at.t());
    return new PlanPoint(p.east(), p.north());
  }

  Covariance2 spread(Place place) {
    double[][] d = derivatives(at(place));
    double[] fe = follows(d[0]);
    double[] fn = follows(d[1]);
    double xy = Equations.dot(d[0], fn);
    return new Covariance2(Equations.dot(d[0], fe), xy, xy, Equations.dot(d[1], fn));
  }

  private double[][] derivatives(Walk.Reached at) {
    int n = fit.x().length;
    double[][] d = new double[3][n];
    shape.differentiate(at.limb(), at.t(), at.dt(), d[0], d[1], d[2]);
    return d;
  }

  /** The bearing of the pipe at a place in the direction of the water, radians. */
  double bearing(Place place) {
    Walk.Reached at = at(place);
    double away = shape.bearing(at.limb(), at.t());
    boolean downstream = layout.tree().limbs().get(at.limb()).downstream();
    return Start.wrap(downstream ? away : away + Math.PI);
  }

  boolean hasHeights() {
    return layout.heights();
  }

  boolean hasGround() {
    return !grounds.isEmpty();
  }

  /** Height of the invert. */
  Figure invert(Place place) {
    Walk.Reached at = at(place);
    return new Figure(shape.at(at.limb(), at.t()).up(), derivatives(at)[2], 0, null);
  }

  /** Height of the ground, between the marks on either side or level with the nearest. */
  Figure ground(Place place) {
    Walk.Reached at = at(place);
    Neighbour before = toRoot(at);
    Neighbour after = fromRoot(at.limb(), at.t(), 0);
    if (before != null && after != null) {
      return between(before, after);
    }
    Neighbour only = before != null ? before : after != null ? after : nearestElsewhere(at);
    double[] gradient = new double[fit.x().length];
    gradient[only.mark().unknown()] = 1;
    Priors.Kind kind = only.mark().unevenness();
    return new Figure(
        fit.x()[only.mark().unknown()], gradient, strays(kind, only.away()), kind.id());
  }

  /**
   * Between two marks of one surface the ground runs on evenly. From one surface to another it may
   * step anywhere between them, so it is at the height of the one or of the other: with share p
   * beyond the step the mean is the same, and the variance p(1 − p) times the step squared.
   */
  private Figure between(Neighbour before, Neighbour after) {
    double span = before.away() + after.away();
    double share = span > 0 ? before.away() / span : 0;
    int one = before.mark().unknown();
    int other = after.mark().unknown();
    double[] gradient = new double[fit.x().length];
    gradient[one] += 1 - share;
    gradient[other] += share;
    double value = (1 - share) * fit.x()[one] + share * fit.x()[other];
    Priors.Kind kind = before.mark().unevenness();
    double loose =
        (1 - share) * strays(kind, before.away())
            + share * strays(kind, after.away())
            - share * (1 - share) * strays(kind, span);
    if (before.mark().stepsTo(after.mark())) {
      double step = fit.x()[other] - fit.x()[one];
      loose += share * (1 - share) * step * step;
      kind = Priors.Kind.GROUND_STEP;
    }
    return new Figure(value, gradient, Math.max(0, loose), kind.id());
  }

  /** A mark and how far away along the pipe it is, metres. */
  private record Neighbour(GroundMark mark, double away) {}

  private @Nullable Neighbour toRoot(Walk.Reached at) {
    double from = at.t();
    double passed = 0;
    for (int limb = at.limb(); limb >= 0; limb = layout.tree().limbs().get(limb).parent()) {
      double here = from;
      int of = limb;
      GroundMark nearest =
          grounds.stream()
              .filter(mark -> mark.limb() == of && mark.t() <= here)
              .max(Comparator.comparingDouble(GroundMark::t))
              .orElse(null);
      if (nearest != null) {
        return new Neighbour(nearest, passed + here - nearest.t());
      }
      passed += here;
      int parent = layout.tree().limbs().get(limb).parent();
      from = parent < 0 ? 0 : shape.length(parent);
    }
    return null;
  }

  private @Nullable Neighbour fromRoot(int limb, double from, double passed) {
    GroundMark nearest =
        grounds.stream()
            .filter(mark -> mark.limb() == limb && mark.t() >= from)
            .min(Comparator.comparingDouble(GroundMark::t))
            .orElse(null);
    if (nearest != null) {
      return new Neighbour(nearest, passed + nearest.t() - from);
    }
    for (int child = limb + 1; child < layout.tree().limbs().size(); child++) {
      if (layout.tree().limbs().get(child).parent() == limb) {
        Neighbour beyond = fromRoot(child, 0, passed + shape.length(limb) - from);
        if (beyond != null) {
          return beyond;
        }
      }
    }
    return null;
  }

  private Neighbour nearestElsewhere(Walk.Reached at) {
    GroundMark nearest =
        grounds.stream()
            .min(Comparator.comparingDouble(mark -> apart(at, mark)))
            .orElseThrow(() -> new IllegalStateException("asked only where the ground has a mark"));
    return new Neighbour(nearest, apart(at, nearest));
  }

  private double apart(Walk.Reached at, GroundMark mark) {
    Shape.Point here = shape.at(at.limb(), at.t());
    Shape.Point there = shape.at(mark.limb(), mark.t());
    return StrictMath.hypot(there.east() - here.east(), there.north() - here.north());
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

  /** Depth of the invert below the ground. */
  Figure depth(Place place) {
    return difference(ground(place), invert(place));
  }

  /** One figure less another. */
  static Figure difference(Figure a, Figure b) {
    double[] gradient = a.gradient().clone();
    for (int k = 0; k < gradient.length; k++) {
      gradient[k] -= b.gradient()[k];
    }
    String source = a.looseSource() != null ? a.looseSource() : b.looseSource();
    return new Figure(a.value() - b.value(), gradient, a.loose() + b.loose(), source);
  }

  Measured measured(Figure figure) {
    double variance = figure.loose() + Equations.dot(figure.gradient(), follows(figure.gradient()));
    return new Measured(figure.value(), Math.max(SUREST, Math.sqrt(Math.max(0, variance))));
  }

  /** What a figure's variance comes from. */
  List<Contribution> why(Figure... figures) {
    Ledger ledger = new Ledger();
    for (Figure figure : figures) {
      ledger.add(fit.equations().ledger(follows(figure.gradient())));
      if (figure.looseSource() != null && figure.loose() > 0) {
        ledger.add(figure.looseSource(), true, figure.loose());
      }
    }
    return ledger.contributions();
  }

  /** East and north of a place as figures. */
  Figure[] plan(Place place) {
    double[][] d = derivatives(at(place));
    Shape.Point p = shape.at(at(place).limb(), at(place).t());
    return new Figure[] {new Figure(p.east(), d[0], 0, null), new Figure(p.north(), d[1], 0, null)};
  }

  /** C·g for a gradient g. */
  double[] follows(double[] gradient) {
    DMatrixRMaj c = fit.covariance();
    double[] out = new double[gradient.length];
    for (int k = 0; k < gradient.length; k++) {
      double g = gradient[k];
      if (g != 0) {
        for (int i = 0; i < out.length; i++) {
          out[i] += c.data[k * c.numCols + i] * g;
        }
      }
    }
    return out;
  }
}
