package daylight.line.course;

import daylight.line.book.Level;
import daylight.line.survey.Adjusted;

/** Whether there is enough to estimate anything from. */
final class Enough {
  /** Spots nearer to each other than this give no direction, metres; common practice. */
  static final double SHORTEST_BASE = 0.5;

  private Enough() {}

  /** Whether anything tells how deep or how high the line lies. */
  static boolean forHeights(Gathered of) {
    return of.marks().stream().anyMatch(mark -> mark.depth() != null || mark.silent() != null)
        || of.levelled().stream().anyMatch(level -> level.part() != Level.Part.GROUND);
  }

  /**
   * How far two spots are apart at most, both over the ground and along the pipe as first laid out,
   * metres: a course has a direction only where two places of the pipe have a place each.
   */
  static double spanOf(Model model, double[] shared) {
    double[] x = Start.values(model, shared, new int[model.gathered().freeTurns().size()]);
    Shape shape = new Shape(model.knots(), x);
    Adjusted survey = model.survey();
    double span = 0;
    for (Pinned a : model.spotted()) {
      for (Pinned b : model.spotted()) {
        if (survey != null) {
          double ground = survey.point(a.mark().label()).distanceTo(survey.point(b.mark().label()));
          span = Math.max(span, Math.min(ground, apart(model, shape, x, a, b)));
        }
      }
    }
    return span;
  }

  private static double apart(Model model, Shape shape, double[] x, Pinned a, Pinned b) {
    if (a.limb() == b.limb()) {
      Walk.Reached at = a.mark().on(a.limb(), model.layout(), x);
      Walk.Reached to = b.mark().on(b.limb(), model.layout(), x);
      return Math.abs(at.t() - to.t());
    }
    Shape.Point p = shape.knot(a.limb(), a.knot());
    Shape.Point q = shape.knot(b.limb(), b.knot());
    return StrictMath.hypot(p.east() - q.east(), p.north() - q.north());
  }
}
