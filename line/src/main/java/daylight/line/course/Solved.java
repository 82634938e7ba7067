package daylight.line.course;

import daylight.line.book.Place;
import daylight.line.measure.Measured;
import daylight.line.normal.Covariance;
import daylight.line.normal.Gradient;
import daylight.line.survey.Adjusted;
import daylight.line.survey.Covariance2;
import java.util.List;
import java.util.Optional;

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
  private final GroundAlong ground;

  Solved(Suspicion.Cleared cleared) {
    this.fit = cleared.fitted();
    this.found = cleared.found();
    this.model = fit.model();
    this.layout = model.layout();
    this.knots = model.knots();
    this.shape = new Shape(knots, fit.x());
    this.ground = new GroundAlong(model, shape, fit.x());
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

  /** The ground above it. */
  GroundAlong ground() {
    return ground;
  }

  /** Length of a limb with its uncertainty, metres. */
  Measured length(int limb) {
    return measured(lengthOf(limb));
  }

  /** Length of a limb, metres. */
  Figure lengthOf(int limb) {
    Gradient gradient = new Gradient();
    gradient.add(layout.stretch(limb), layout.length0(limb));
    return Figure.of(shape.length(limb), gradient);
  }

  /** Whether a place is on it. */
  boolean has(Place place) {
    return layout.tree().indexOf(place.reach()) >= 0;
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

  /** What holds at a place. */
  Here here(Place place) {
    return new Here(this, at(place));
  }

  boolean hasHeights() {
    return layout.heights();
  }

  boolean hasGround() {
    return ground.told();
  }

  Measured measured(Figure figure) {
    double variance = figure.loose() + fit.covariance().variance(figure.gradient());
    return new Measured(figure.value(), Math.max(SUREST, Math.sqrt(Math.max(0, variance))));
  }

  /**
   * What a figure's variance comes from.
   *
   * @param follows how the unknowns follow it
   */
  Ledger ledger(Figure figure, double[] follows) {
    Ledger ledger = fit.equations().ledger(follows);
    for (Figure.Loose loose : figure.beyond()) {
      ledger.add(new Source.OfPrior(loose.from()), loose.variance());
    }
    return ledger;
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
    Shape.Spot spot = here(place).spot();
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
