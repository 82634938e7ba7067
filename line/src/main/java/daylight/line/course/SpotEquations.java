package daylight.line.course;

import daylight.line.book.Locate;
import daylight.line.book.Priors;
import daylight.line.book.Visit;
import daylight.line.survey.Adjusted;
import daylight.line.survey.CoordinateWeight;
import daylight.line.survey.Covariance2;
import daylight.line.survey.PlanPoint;
import java.util.ArrayList;
import java.util.List;
import org.ejml.data.DMatrixRMaj;

/** The spots found from above lie over the pipe, as far as survey and receiver can tell. */
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

  SpotEquations(Model model, Equations equations, double[] x, Shape shape) {
    this.model = model;
    this.equations = equations;
    this.x = x;
    this.shape = shape;
  }

  void add() {
    Adjusted survey = model.survey();
    List<Mark> spotted = model.marks().stream().filter(model::spotted).toList();
    if (survey == null || spotted.isEmpty()) {
      return;
    }
    int n = spotted.size();
    double[][] derivatives = new double[2 * n][];
    double[] misfits = new double[2 * n];
    DMatrixRMaj covariance = new DMatrixRMaj(2 * n, 2 * n);
    double[] noise = new double[n];
    for (int i = 0; i < n; i++) {
      Mark mark = spotted.get(i);
      Walk.Reached at = mark.place(model.layout(), x);
      Shape.Point p = shape.at(at.limb(), at.t());
      PlanPoint spot = survey.point(mark.label());
      derivatives[2 * i] = new double[x.length];
      derivatives[2 * i + 1] = new double[x.length];
      shape.differentiate(
          at.limb(),
          at.t(),
          at.dt(),
          derivatives[2 * i],
          derivatives[2 * i + 1],
          new double[x.length]);
      misfits[2 * i] = spot.x() - p.east();
      misfits[2 * i + 1] = spot.y() - p.north();
      noise[i] = noise(model, mark);
      for (int j = 0; j < n; j++) {
        Covariance2 c = survey.covariance(mark.label(), spotted.get(j).label());
        covariance.set(2 * i, 2 * j, c.xx());
        covariance.set(2 * i, 2 * j + 1, c.xy());
        covariance.set(2 * i + 1, 2 * j, c.yx());
        covariance.set(2 * i + 1, 2 * j + 1, c.yy());
      }
      covariance.add(2 * i, 2 * i, noise[i] * noise[i]);
      covariance.add(2 * i + 1, 2 * i + 1, noise[i] * noise[i]);
    }
    equations.observe(
        new Equations.Block(
            derivatives,
            misfits,
            covariance,
            (weights, ledger) -> book(weights, ledger, spotted, noise, survey)));
  }

  private static void book(
      double[] weights, Ledger ledger, List<Mark> spotted, double[] noise, Adjusted survey) {
    List<CoordinateWeight> terms = new ArrayList<>();
    for (int i = 0; i < spotted.size(); i++) {
      double wx = weights[2 * i];
      double wy = weights[2 * i + 1];
      ledger.add(spotted.get(i).label(), false, (wx * wx + wy * wy) * noise[i] * noise[i]);
      terms.add(new CoordinateWeight(spotted.get(i).label(), wx, wy));
    }
    ledger.add(survey.sharesOf(terms));
  }

  /** How far the spot on the ground may be from the true place above the transmitter, metres. */
  static double noise(Model model, Mark mark) {
    if (mark.noise() < 0) {
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
}
