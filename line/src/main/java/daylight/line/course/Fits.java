package daylight.line.course;

import daylight.line.book.Priors;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Measured;
import daylight.line.measure.Statement;
import daylight.line.normal.Gradient;
import daylight.line.survey.Adjusted;
import daylight.line.survey.Covariance2;
import daylight.line.survey.PlanPoint;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** How each locate and exposure fits the course that all of them give together. */
final class Fits {
  /** Less redundancy than this checks nothing. */
  private static final double CHECKED = 0.05;

  /** An error is said to show when it does so in 95 of 100 cases, at one false alarm in 400. */
  private static final double SHOWS = 3.0 + 1.645;

  private final Solved line;
  private final List<LocateFit> locates = new ArrayList<>();
  private final List<Statement> doubts = new ArrayList<>();

  Fits(Solved line) {
    this.line = line;
    for (Pinned pin : line.model().pinned()) {
      if (pin.mark().onCable()) {
        locates.add(fit(pin));
      }
    }
    for (Suspicion.Found found : line.found()) {
      doubts.add(told(found));
    }
  }

  List<LocateFit> locates() {
    return locates;
  }

  List<Statement> doubts() {
    return doubts;
  }

  private Statement told(Suspicion.Found found) {
    double size = Math.abs(found.size());
    Argument.Label label = new Argument.Label(found.label());
    return switch (found.about()) {
      case Equations.About.SpotOf _ ->
          Statement.of(CourseKey.SPOT_OFF, label, new Argument.Length(size));
      case Equations.About.DepthOf _ ->
          Statement.of(CourseKey.DEPTH_OFF, label, new Argument.Length(size));
      case Equations.About.TurnTo _ ->
          Statement.of(
              CourseKey.UNSEEN_BEND,
              label,
              new Argument.Label(found.beyond()),
              new Argument.Quantity(Dimension.ANGLE, size));
      case Equations.About.WayTo _ ->
          // What falls short of the cable bends or slipped; a pipe longer than its cable cannot be.
          Statement.of(
              found.size() > 0 ? CourseKey.CABLE_UNACCOUNTED : CourseKey.CABLE_TOO_SHORT,
              label,
              new Argument.Label(found.beyond()),
              new Argument.Length(size));
    };
  }

  private LocateFit fit(Pinned pin) {
    Walk.Reached at = pin.mark().on(pin.limb(), line.model().layout(), line.x());
    Across across = across(pin, at);
    Deep deep = deep(pin, at);
    double off = Math.max(across == null ? 0 : across.off(), deep == null ? 0 : deep.off());
    return new LocateFit(
        pin.mark().id(),
        line.place(at.limb(), at.t()),
        across == null ? null : across.spot(),
        across == null ? null : across.value(),
        across == null ? null : across.sd(),
        deep == null ? null : deep.alone(),
        deep == null ? null : deep.residual(),
        off,
        across == null ? null : across.shows(),
        deep == null ? null : deep.shows());
  }

  /**
   * A spot beside the course.
   *
   * @param shows the smallest error that would show; null where nothing checks it
   */
  private record Across(
      PlanPoint spot, double value, double sd, double off, @Nullable Double shows) {}

  private @Nullable Across across(Pinned pin, Walk.Reached at) {
    Mark mark = pin.mark();
    Adjusted survey = line.model().survey();
    if (survey == null || !line.model().spotted(mark)) {
      return null;
    }
    PlanPoint spot = survey.point(mark.label());
    Shape.Spot course = line.shape().from(pin.limb(), pin.knot(), at.t(), at.dt());
    Shape.Point p = course.point();
    double left = line.here(line.place(at.limb(), at.t())).bearing() - Math.PI / 2;
    double e = StrictMath.sin(left);
    double n = StrictMath.cos(left);
    double value = e * (spot.x() - p.east()) + n * (spot.y() - p.north());
    Covariance2 tied = survey.covariance(mark.label(), mark.label());
    double noise = SpotEquations.noise(line.model(), mark);
    double read = e * e * tied.xx() + 2 * e * n * tied.xy() + n * n * tied.yy() + noise * noise;
    Gradient across = new Gradient();
    across.add(course.east(), e);
    across.add(course.north(), n);
    double fitted = line.fit().covariance().variance(across);
    boolean leantOn = !line.model().setAside().spots().contains(mark.id());
    // A spot that was put aside is compared with a course that does not know it.
    double free = leantOn ? read - fitted : read + fitted;
    double off = free > CHECKED * read ? Math.abs(value) / Math.sqrt(free) : 0;
    Double shows = free > CHECKED * read ? SHOWS * read / Math.sqrt(free) : null;
    return new Across(spot, value, Math.sqrt(read), off, shows);
  }

  private record Deep(Measured alone, double residual, double off, @Nullable Double shows) {}

  /** The depth of the invert by one reading alone, and how the course differs from it. */
  private @Nullable Deep deep(Pinned pin, Walk.Reached at) {
    Mark.DepthRead read = pin.mark().depth();
    if (read == null) {
      return null;
    }
    Shape.Spot course = line.shape().from(pin.limb(), pin.knot(), at.t(), at.dt());
    int ground = line.model().knots().unknown(pin.limb(), pin.knot(), Knots.GROUND);
    Gradient depth = new Gradient();
    depth.add(ground, 1);
    depth.add(course.up(), -1);
    double lies = line.x()[ground] - course.point().up();
    Measured alone =
        switch (read) {
          case Mark.DepthRead.ByReceiver(
                  double shown,
                  double raised,
                  double noise,
                  double bent) -> {
            double scale = line.model().priors().sd(Priors.Kind.RECEIVER_SCALE, 0) * shown;
            double above = line.x()[line.model().layout().named("above/" + pin.mark().visit())];
            yield new Measured(
                shown - raised + above, Math.sqrt(noise * noise + bent * bent + scale * scale));
          }
          case Mark.DepthRead.ByTape tape -> new Measured(tape.below() + tape.above(), tape.sd());
        };
    double residual = lies - alone.value();
    double variance = alone.sd() * alone.sd();
    double fitted = line.fit().covariance().variance(depth);
    boolean leantOn = !line.model().setAside().depths().contains(pin.mark().id());
    double free = leantOn ? variance - fitted : variance + fitted;
    double off = free > CHECKED * variance ? Math.abs(residual) / Math.sqrt(free) : 0;
    Double shows = free > CHECKED * variance ? SHOWS * variance / Math.sqrt(free) : null;
    return new Deep(alone, residual, off, shows);
  }
}
