package daylight.line.course;

import daylight.line.book.Locate;
import daylight.line.book.Priors;
import daylight.line.book.Visit;
import daylight.line.normal.Gradient;
import daylight.line.survey.Adjusted;
import daylight.line.survey.CoordinateWeight;
import daylight.line.survey.PlanPoint;
import java.util.ArrayList;
import java.util.List;

/**
 * The spots found from above lie over the pipe, as far as survey, receiver and counter can tell.
 *
 * <p>The error of a counter reading moves a spot along the pipe; it counts in the direction in
 * which the pipe runs there, as last estimated.
 */
final class SpotEquations {
  /**
   * A node or pit is seen, not sensed: its spot is as good as its ties, to this much, metres;
   * common practice, no source.
   */
  private static final double SEEN_SPOT = 0.02;

  /** Depth taken for the error of a spot whose depth was not read, metres; common practice. */
  private static final double USUAL_DEPTH = 1.0;

  private final Model model;
  private final Equations equations;
  private final double[] x;
  private final Shape shape;

  /** The course whose directions are taken for the errors along it. */
  private final Shape reference;

  SpotEquations(Model model, Equations equations, double[] x, Shape shape, Shape reference) {
    this.model = model;
    this.equations = equations;
    this.x = x;
    this.shape = shape;
    this.reference = reference;
  }

  /**
   * What a spot errs by beyond the survey, and all of it as a lower triangle.
   *
   * @param noise variance of receiver and foot, either way
   * @param alongEast how far the error of the counter moves it east
   * @param alongNorth the same to the north
   * @param l11 of the factor of own and beyond together, as the others
   */
  private record Errors(
      double noise, double alongEast, double alongNorth, double l11, double l21, double l22) {}

  void add() {
    Adjusted survey = model.survey();
    Common common = model.plan();
    if (survey == null || common == null) {
      return;
    }
    List<Pinned> spotted = model.spotted();
    List<Errors> errors = new ArrayList<>();
    var block =
        new Equations.Block(
            (weights, ledger) ->
                book(weights, ledger, spotted, errors, survey, model.gathered().surveyed()));
    for (int column = 0; column < common.columns(); column++) {
      int unknown = model.layout().named(Gathered.planError(column));
      equations.add(
          new Equations.Row(Origin.NOBODY, Equations.one(unknown), -x[unknown], 1, null, null));
    }
    for (int i = 0; i < spotted.size(); i++) {
      Pinned pin = spotted.get(i);
      Errors e = errors(pin, common.own()[i]);
      errors.add(e);
      Walk.Reached at = pin.mark().on(pin.limb(), model.layout(), x);
      Shape.Spot spot = shape.from(pin.limb(), pin.knot(), at.t(), at.dt());
      PlanPoint surveyed = survey.point(pin.mark().label());
      Gradient east = spot.east();
      Gradient north = spot.north();
      double de = surveyed.x() - spot.point().east() - shared(common, i, 0, east);
      double dn = surveyed.y() - spot.point().north() - shared(common, i, 1, north);
      // The whitened pair: first the east, then what is left of the north.
      double lean = e.l21 / e.l11;
      Gradient rest = new Gradient();
      rest.add(north);
      rest.add(east, -lean);
      var about = new Equations.About.SpotOf(pin);
      equations.add(new Equations.Row(Origin.NOBODY, east, de, e.l11, about, block));
      equations.add(new Equations.Row(Origin.NOBODY, rest, dn - lean * de, e.l22, about, block));
    }
    if (!spotted.isEmpty()) {
      equations.add(block);
    }
  }

  /** What the shared errors of the survey move a coordinate by; its derivatives are added. */
  private double shared(Common common, int point, int axis, Gradient gradient) {
    double moved = 0;
    double[] row = common.row(point, 2, axis);
    for (int column = 0; column < row.length; column++) {
      int unknown = model.layout().named(Gathered.planError(column));
      moved += row[column] * x[unknown];
      gradient.add(unknown, row[column]);
    }
    return moved;
  }

  private Errors errors(Pinned pin, double[] own) {
    double noise = noise(model, pin.mark()) * model.setAside().spotFactor(pin.mark().id());
    double alongEast = 0;
    double alongNorth = 0;
    double xy = 0;
    if (pin.mark().position() instanceof Mark.Position.ByCable by) {
      double along = model.priors().sd(Priors.Kind.COUNTER_READING, by.cable());
      double[] d = reference.direction(pin.limb(), pin.knot());
      alongEast = along * d[0];
      alongNorth = along * d[1];
      xy = along * along * d[0] * d[1];
    }
    double xx = noise * noise + square(alongEast);
    double yy = noise * noise + square(alongNorth);
    double l11 = Math.sqrt(own[0] + xx);
    double l21 = (own[1] + xy) / l11;
    double l22 = Math.sqrt(own[3] + yy - l21 * l21);
    return new Errors(noise * noise, alongEast, alongNorth, l11, l21, l22);
  }

  private static void book(
      List<Double> weights,
      Ledger ledger,
      List<Pinned> spotted,
      List<Errors> errors,
      Adjusted survey,
      Surveyed surveyed) {
    List<CoordinateWeight> terms = new ArrayList<>();
    for (int i = 0; i < spotted.size(); i++) {
      Errors e = errors.get(i);
      double wy = weights.get(2 * i + 1) / e.l22;
      double wx = weights.get(2 * i) / e.l11 - wy * e.l21 / e.l11;
      Mark mark = spotted.get(i).mark();
      ledger.add(
          new Source.OfEntry(mark.id(), mark.sort(), Source.Part.SPOT),
          e.noise * (wx * wx + wy * wy));
      if (mark.onCable()) {
        ledger.add(
            new Source.OfEntry(mark.id(), mark.sort(), Source.Part.CABLE),
            square(wx * e.alongEast + wy * e.alongNorth));
      }
      terms.add(new CoordinateWeight(mark.label(), wx, wy));
    }
    surveyed.ties(survey.sharesOf(terms), ledger);
  }

  /** How far the spot on the ground may be from the true place above the transmitter, metres. */
  static double noise(Model model, Mark mark) {
    if (!mark.onCable()) {
      return SEEN_SPOT;
    }
    Priors.Prior prior = model.priors().of(Priors.Kind.LOCATE_SPOT);
    for (Visit visit : model.visits()) {
      for (Locate locate : visit.locates()) {
        if (locate.id().equals(mark.id())) {
          double depth = locate.depth() == null ? USUAL_DEPTH : locate.depth().value();
          return Marks.multiplier(prior, locate.signal()) * prior.sd(depth);
        }
      }
    }
    return SEEN_SPOT;
  }

  private static double square(double v) {
    return v * v;
  }
}
