package daylight.line.course;

import daylight.line.book.Priors;
import daylight.line.measure.Argument;
import daylight.line.measure.Statement;
import daylight.line.survey.Adjusted;
import daylight.line.survey.Covariance2;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What cable and ground contradict of a line that has no course: two spots far apart at one reading
 * of the counter, or one spot at two readings far apart.
 */
final class Unlaid {
  /** A difference of so many standard uncertainties is told; common practice. */
  private static final double TOLD = 4;

  private Unlaid() {}

  /**
   * The contradictions between locates that follow each other on one limb.
   *
   * @param x the shared unknowns as first guessed
   */
  static List<Statement> contradictions(Model model, double[] x) {
    Adjusted survey = model.survey();
    List<Statement> found = new ArrayList<>();
    if (survey == null) {
      return found;
    }
    for (int limb = 0; limb < model.layout().tree().limbs().size(); limb++) {
      int of = limb;
      List<Pinned> along =
          model.spotted().stream()
              .filter(pin -> pin.limb() == of && pin.mark().onCable())
              .sorted(
                  Comparator.comparingDouble((Pinned pin) -> at(model, pin, x))
                      .thenComparing(pin -> pin.mark().id()))
              .toList();
      for (int i = 1; i < along.size(); i++) {
        compare(model, survey, along.get(i - 1), along.get(i), x, found);
      }
    }
    return found;
  }

  private static double at(Model model, Pinned pin, double[] x) {
    return pin.mark().on(pin.limb(), model.layout(), x).t();
  }

  private static void compare(
      Model model, Adjusted survey, Pinned a, Pinned b, double[] x, List<Statement> found) {
    Argument.Label one = new Argument.Label(a.mark().label());
    Argument.Label other = new Argument.Label(b.mark().label());
    double ground = survey.point(one.label()).distanceTo(survey.point(other.label()));
    double cable = at(model, b, x) - at(model, a, x);
    // Both coordinates together: which way the two lie apart is what is in doubt here.
    Covariance2 spots = survey.relativeCovariance(one.label(), other.label());
    double reading = model.priors().sd(Priors.Kind.COUNTER_READING, 0);
    double sd =
        Math.sqrt(
            spots.xx()
                + spots.yy()
                + 2 * reading * reading
                + square(SpotEquations.noise(model, a.mark()))
                + square(SpotEquations.noise(model, b.mark()))
                + square(model.priors().sd(Priors.Kind.COUNTER_SCALE, 0) * cable));
    double excess = cable - ground;
    if (Math.abs(excess) > Math.max(Enough.SHORTEST_BASE, TOLD * sd)) {
      found.add(
          Statement.of(
              excess > 0 ? CourseKey.CABLE_UNACCOUNTED : CourseKey.CABLE_TOO_SHORT,
              one,
              other,
              new Argument.Length(Math.abs(excess))));
    }
  }

  private static double square(double v) {
    return v * v;
  }
}
