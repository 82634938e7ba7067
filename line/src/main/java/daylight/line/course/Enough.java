package daylight.line.course;

import daylight.line.book.Level;
import daylight.line.survey.PlanPoint;
import java.util.List;

/** Whether there is enough to estimate anything from. */
final class Enough {
  /** Spots nearer to each other than this give no direction, metres; common practice. */
  static final double SHORTEST_BASE = 0.5;

  private Enough() {}

  /** Whether anything tells how deep or how high the line lies. */
  static boolean forHeights(Model model) {
    return model.marks().stream()
        .anyMatch(
            mark ->
                mark.depth() != null
                    || model.levelled(mark, Level.Part.INVERT)
                    || (model.levelled(mark, Level.Part.CROWN) && bored(model, mark)));
  }

  private static boolean bored(Model model, Mark mark) {
    int limb = mark.place(model.layout(), new double[model.layout().size()]).limb();
    return model.layout().tree().limbs().get(limb).reach().bore() != null;
  }

  /**
   * How far two spots are apart at most, both over the ground and along the pipe as first laid out,
   * metres: a course has a direction only where two places of the pipe have a place each.
   */
  static double spanOf(Model model, List<Mark> spotted, double[] start) {
    Shape shape = new Shape(model.layout(), start);
    double span = 0;
    for (Mark a : spotted) {
      for (Mark b : spotted) {
        if (model.survey() != null) {
          PlanPoint p = model.survey().point(a.label());
          double ground = p.distanceTo(model.survey().point(b.label()));
          span = Math.max(span, Math.min(ground, apart(model, shape, start, a, b)));
        }
      }
    }
    return span;
  }

  private static double apart(Model model, Shape shape, double[] start, Mark a, Mark b) {
    Walk.Reached at = a.place(model.layout(), start);
    Walk.Reached to = b.place(model.layout(), start);
    if (at.limb() == to.limb()) {
      return Math.abs(at.t() - to.t());
    }
    Shape.Point p = shape.at(at.limb(), at.t());
    Shape.Point q = shape.at(to.limb(), to.t());
    return StrictMath.hypot(p.east() - q.east(), p.north() - q.north());
  }
}
