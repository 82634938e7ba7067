package daylight.line.course;

import daylight.line.book.Priors;
import daylight.line.book.Visit;
import daylight.line.measure.Argument;
import daylight.line.measure.Measured;
import daylight.line.measure.Statement;
import daylight.line.survey.Adjusted;
import daylight.line.survey.Covariance2;
import daylight.line.survey.PlanPoint;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** How each locate and exposure fits the course that all of them give together. */
final class Fits {
  /** A mark this many standard uncertainties away is doubted; about one in 400 by chance. */
  private static final double DOUBTED = 3.0;

  private final Solved line;
  private final List<LocateFit> locates = new ArrayList<>();
  private final List<Statement> doubts = new ArrayList<>();

  Fits(Solved line) {
    this.line = line;
    for (Mark mark : line.model().marks()) {
      if (mark.noise() >= 0) {
        locates.add(fit(mark));
      }
    }
  }

  List<LocateFit> locates() {
    return locates;
  }

  List<Statement> doubts() {
    return doubts;
  }

  private LocateFit fit(Mark mark) {
    Walk.Reached at = mark.place(line.model().layout(), line.fit().x());
    Across across = across(mark, at);
    Deep deep = deep(mark, at);
    double off = 0;
    if (across != null) {
      off = across.off();
      if (off > DOUBTED) {
        doubts.add(
            Statement.of(
                CourseKey.SPOT_OFF,
                new Argument.Label(mark.label()),
                new Argument.Length(Math.abs(across.value()))));
      }
    }
    if (deep != null) {
      off = Math.max(off, deep.off());
      if (deep.off() > DOUBTED) {
        doubts.add(
            Statement.of(
                CourseKey.DEPTH_OFF,
                new Argument.Label(mark.label()),
                new Argument.Length(Math.abs(deep.residual()))));
      }
    }
    return new LocateFit(
        mark.id(),
        line.place(at.limb(), at.t()),
        across == null ? null : across.spot(),
        across == null ? null : across.value(),
        across == null ? null : across.sd(),
        deep == null ? null : deep.alone(),
        deep == null ? null : deep.residual(),
        off);
  }

  private record Across(PlanPoint spot, double value, double sd, double off) {}

  private @Nullable Across across(Mark mark, Walk.Reached at) {
    Adjusted survey = line.model().survey();
    if (survey == null || !line.model().spotted(mark)) {
      return null;
    }
    PlanPoint spot = survey.point(mark.label());
    Shape.Point p = line.shape().at(at.limb(), at.t());
    double bearing = line.bearing(line.place(at.limb(), at.t()));
    double left = bearing - Math.PI / 2;
    double e = StrictMath.sin(left);
    double n = StrictMath.cos(left);
    double value = e * (spot.x() - p.east()) + n * (spot.y() - p.north());
    Covariance2 tied = survey.covariance(mark.label(), mark.label());
    double read =
        e * e * tied.xx()
            + 2 * e * n * tied.xy()
            + n * n * tied.yy()
            + SpotEquations.noise(line.model(), mark) * SpotEquations.noise(line.model(), mark);
    int size = line.fit().x().length;
    double[] de = new double[size];
    double[] dn = new double[size];
    line.shape().differentiate(at.limb(), at.t(), at.dt(), de, dn, new double[size]);
    for (int k = 0; k < size; k++) {
      de[k] = e * de[k] + n * dn[k];
    }
    double fitted = Equations.dot(de, line.follows(de));
    double free = read - fitted;
    // Where almost nothing but this spot holds the course, its misfit says nothing.
    double off = free > 0.01 * read ? Math.abs(value) / Math.sqrt(free) : 0;
    return new Across(spot, value, Math.sqrt(read), off);
  }

  private record Deep(Measured alone, double residual, double off) {}

  /** The depth of the invert by one reading alone, and how the course differs from it. */
  private @Nullable Deep deep(Mark mark, Walk.Reached at) {
    Mark.DepthRead read = mark.depth();
    if (read == null) {
      return null;
    }
    double[] x = line.fit().x();
    double course = x[mark.ground()] - line.shape().at(at.limb(), at.t()).up();
    Measured alone =
        switch (read) {
          case Mark.DepthRead.ByReceiver(
                  double shown,
                  double raised,
                  double noise,
                  double bent) -> {
            double scale = line.model().priors().sd(Priors.Kind.RECEIVER_SCALE, 0) * shown;
            yield new Measured(
                shown - raised + x[above(mark)],
                Math.sqrt(noise * noise + bent * bent + scale * scale));
          }
          case Mark.DepthRead.ByTape(double below, double above, double sd) ->
              new Measured(below + above, sd);
        };
    double residual = course - alone.value();
    Measured fitted = fitted(mark, at);
    double free = alone.sd() * alone.sd() - fitted.sd() * fitted.sd();
    double off = free > 0.01 * alone.sd() * alone.sd() ? Math.abs(residual) / Math.sqrt(free) : 0;
    return new Deep(alone, residual, off);
  }

  private int above(Mark mark) {
    for (Visit visit : line.model().visits()) {
      if (visit.label().equals(mark.visit())) {
        return line.model().layout().named("above/" + visit.label());
      }
    }
    throw new IllegalStateException("a receiver's reading belongs to a visit");
  }

  private Measured fitted(Mark mark, Walk.Reached at) {
    int size = line.fit().x().length;
    double[] du = new double[size];
    line.shape().differentiate(at.limb(), at.t(), at.dt(), new double[size], new double[size], du);
    for (int k = 0; k < size; k++) {
      du[k] = -du[k];
    }
    du[mark.ground()] += 1;
    return line.measured(new Solved.Figure(0, du, 0, null));
  }
}
