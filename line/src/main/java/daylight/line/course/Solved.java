package daylight.line.course;

import daylight.line.book.Place;
import daylight.line.book.Priors;
import daylight.line.measure.Measured;
import daylight.line.normal.Covariance;
import daylight.line.normal.Gradient;
import daylight.line.survey.Adjusted;
import daylight.line.survey.Covariance2;
import daylight.line.survey.PlanPoint;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** One line, estimated: any figure of it, its uncertainty and where that comes from. */
final class Solved {
  /** A figure that hangs on held quantities alone still is no surer than this. */
  private static final double SUREST = 1e-6;

  private final Model model;
  private final Layout layout;
  private final Knots knots;
  private final Fit.Fitted fit;
  private final Shape shape;
  private final List<Suspicion.Found> found;
  private final List<GroundMark> grounds;

  /** A place where something tells the height of the ground. */
  private record GroundMark(int limb, double t, int unknown, @Nullable String surface) {
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
  record Figure(double value, Gradient gradient, double loose, @Nullable String looseSource) {}

  Solved(Suspicion.Cleared cleared) {
    this.fit = cleared.fitted();
    this.found = cleared.found();
    this.model = fit.model();
    this.layout = model.layout();
    this.knots = model.knots();
    this.shape = new Shape(knots, fit.x());
    this.grounds = grounds();
  }

  Model model() {
    return model;
  }

  Fit.Fitted fit() {
    return fit;
  }

  double[] x() {
    return fit.x();
  }

  Shape shape() {
    return shape;
  }

  /** What was put aside because the rest contradicts it. */
  List<Suspicion.Found> found() {
    return found;
  }

  private List<GroundMark> grounds() {
    List<GroundMark> marks = new ArrayList<>();
    for (Pinned pin : model.pinned()) {
      if (pin.mark().ground()) {
        marks.add(
            new GroundMark(
                pin.limb(),
                shape.t(pin.limb(), pin.knot()),
                knots.unknown(pin.limb(), pin.knot(), Knots.GROUND),
                pin.mark().surface()));
      }
    }
    return marks;
  }

  /** Length of a limb with its uncertainty, metres. */
  Measured length(int limb) {
    Gradient gradient = new Gradient();
    gradient.add(layout.stretch(limb), layout.length0(limb));
    return measured(new Figure(shape.length(limb), gradient, 0, null));
  }

  /** Where a place is on its limb: its distance from the root's side and that one's derivatives. */
  Walk.Reached at(Place place) {
    int limb = layout.tree().indexOf(place.reach());
    Gradient dt = new Gradient();
    if (layout.tree().limbs().get(limb).downstream()) {
      return new Walk.Reached(limb, place.distance(), dt, true);
    }
    dt.add(layout.stretch(limb), layout.length0(limb));
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

  private Shape.Spot derived(Place place) {
    Walk.Reached at = at(place);
    return shape.spot(at.limb(), at.t(), at.dt());
  }

  Covariance2 spread(Place place) {
    Shape.Spot spot = derived(place);
    Covariance covariance = fit.covariance();
    double xy = covariance.of(spot.east(), spot.north());
    double sag = sag(place, wander(at(place).limb()));
    double psi = bearing(place);
    double sin = StrictMath.sin(psi);
    double cos = StrictMath.cos(psi);
    return new Covariance2(
        covariance.variance(spot.east()) + sag * cos * cos,
        xy - sag * sin * cos,
        xy - sag * sin * cos,
        covariance.variance(spot.north()) + sag * sin * sin);
  }

  private Priors.Kind wander(int limb) {
    return layout.tree().limbs().get(limb).reach().material().rigid()
        ? Priors.Kind.STRAIGHT_RIGID
        : Priors.Kind.STRAIGHT_FLEXIBLE;
  }

  /**
   * How far a pipe may lie off the expected path between two knots: variance σ²h³·f³(1 − f)³/3 of a
   * twice integrated white noise with known ends (same source as in {@link PipeEquations}).
   */
  private double sag(Place place, Priors.Kind kind) {
    Walk.Reached at = at(place);
    Shape.Within in = shape.within(at.limb(), at.t());
    if (in == null) {
      return 0;
    }
    double h = shape.t(in.limb(), in.end()) - shape.t(in.limb(), in.end() - 1);
    double rate = model.priors().of(kind).a();
    double between = in.f() * (1 - in.f());
    return rate * rate * h * h * h * between * between * between / 3;
  }

  /** The bearing of the pipe at a place in the direction of the water, radians. */
  double bearing(Place place) {
    Walk.Reached at = at(place);
    double away = shape.bearing(at.limb(), at.t());
    boolean downstream = layout.tree().limbs().get(at.limb()).downstream();
    return Angles.wrap(downstream ? away : away + Math.PI);
  }

  /** Standard uncertainty of that bearing, radians. */
  double bearingSd(Place place) {
    Walk.Reached at = at(place);
    Gradient gradient = shape.bearingGradient(at.limb(), at.t());
    return Math.sqrt(Math.max(0, fit.covariance().variance(gradient)));
  }

  boolean hasHeights() {
    return layout.heights();
  }

  boolean hasGround() {
    return !grounds.isEmpty();
  }

  /** Height of the invert. */
  Figure invert(Place place) {
    Shape.Spot spot = derived(place);
    boolean rigid = wander(at(place).limb()) == Priors.Kind.STRAIGHT_RIGID;
    Priors.Kind grade = rigid ? Priors.Kind.GRADE_RIGID : Priors.Kind.GRADE_FLEXIBLE;
    return new Figure(spot.point().up(), spot.up(), sag(place, grade), grade.id());
  }

  /**
   * Height of the ground: as the knots beside the place have it. Where the surface is one thing at
   * the mark before and another at the mark beyond, it may step anywhere between them, so the
   * ground is at the height of the one or of the other: with share p beyond the step the mean is
   * between, and the variance p(1 − p) times the step squared.
   */
  Figure ground(Place place) {
    Walk.Reached at = at(place);
    Neighbour before = toRoot(at);
    Neighbour after = fromRoot(at.limb(), at.t(), 0);
    if (before != null && after != null && before.mark().stepsTo(after.mark())) {
      return stepped(before, after);
    }
    Gradient gradient = new Gradient();
    Shape.Within in = shape.within(at.limb(), at.t());
    int end = in == null ? (at.t() < 0 ? 0 : knots.count(at.limb()) - 1) : in.end();
    double f = in == null ? 1 : in.f();
    gradient.add(knots.unknown(at.limb(), end, Knots.GROUND), f);
    Priors.Kind kind = Surfaces.unevenness(model.surfaces().of(knots.block(at.limb(), end)));
    double loose = 0;
    if (in != null) {
      gradient.add(knots.unknown(at.limb(), end - 1, Knots.GROUND), 1 - f);
      double h = shape.t(at.limb(), end) - shape.t(at.limb(), end - 1);
      loose =
          (1 - f) * strays(kind, f * h)
              + f * strays(kind, (1 - f) * h)
              - f * (1 - f) * strays(kind, h);
    }
    return new Figure(gradient.dot(fit.x()), gradient, Math.max(0, loose), kind.id());
  }

  /** The derivatives of the distortion at a place: as the knots beside it have it. */
  Gradient bent(Place place) {
    Walk.Reached at = at(place);
    Shape.Within in = shape.within(at.limb(), at.t());
    Gradient gradient = new Gradient();
    if (in == null) {
      int i = at.t() < 0 ? 0 : knots.count(at.limb()) - 1;
      gradient.add(knots.unknown(at.limb(), i, Knots.BENT), 1);
    } else {
      gradient.add(knots.unknown(at.limb(), in.end() - 1, Knots.BENT), 1 - in.f());
      gradient.add(knots.unknown(at.limb(), in.end(), Knots.BENT), in.f());
    }
    return gradient;
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
    return new Figure(
        (1 - share) * one + share * other, gradient, loose, Priors.Kind.GROUND_STEP.id());
  }

  /** The ground as one mark tells it: it goes back to the plane of its surface with distance. */
  private double strayed(Neighbour from, double weight, Gradient gradient) {
    String surface = from.mark().surface();
    double keeps = keeps(from);
    int plane = layout.named(Surfaces.plane(surface == null ? "" : surface));
    gradient.add(from.mark().unknown(), weight * keeps);
    gradient.add(plane, weight * (1 - keeps));
    return keeps * fit.x()[from.mark().unknown()] + (1 - keeps) * fit.x()[plane];
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
    Gradient gradient = new Gradient();
    gradient.add(a.gradient());
    gradient.add(b.gradient(), -1);
    String source = a.loose() >= b.loose() ? a.looseSource() : b.looseSource();
    return new Figure(a.value() - b.value(), gradient, a.loose() + b.loose(), source);
  }

  Measured measured(Figure figure) {
    double variance = figure.loose() + fit.covariance().variance(figure.gradient());
    return new Measured(figure.value(), Math.max(SUREST, Math.sqrt(Math.max(0, variance))));
  }

  /** What a figure's variance comes from. */
  List<Contribution> why(Figure... figures) {
    Ledger ledger = new Ledger();
    for (Figure figure : figures) {
      ledger.add(fit.equations().ledger(fit.factor().follows(figure.gradient())));
      if (figure.looseSource() != null && figure.loose() > 0) {
        ledger.add(figure.looseSource(), true, figure.loose());
      }
    }
    return ledger.contributions();
  }

  /** East and north of a place as figures. */
  Figure[] plan(Place place) {
    Shape.Spot spot = derived(place);
    return new Figure[] {
      new Figure(spot.point().east(), spot.east(), 0, null),
      new Figure(spot.point().north(), spot.north(), 0, null)
    };
  }

  /**
   * The covariance of the way from a surveyed point to a place: where that point errs with the
   * spots the course hangs on, its error falls out.
   */
  Optional<Covariance2> relative(Place place, String point) {
    Adjusted survey = model.survey();
    if (survey == null || !survey.points().containsKey(point)) {
      return Optional.empty();
    }
    Shape.Spot spot = derived(place);
    double[] own = new double[3];
    Gradient[] g = {spot.east(), spot.north()};
    model.gathered().take(point, g, own);
    Covariance covariance = fit.covariance();
    double xy = covariance.of(g[0], g[1]) + own[1];
    return Optional.of(
        new Covariance2(
            covariance.variance(g[0]) + own[0], xy, xy, covariance.variance(g[1]) + own[2]));
  }
}
