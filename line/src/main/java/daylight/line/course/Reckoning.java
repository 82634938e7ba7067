package daylight.line.course;

import daylight.line.book.Bend;
import daylight.line.book.Priors;
import daylight.line.measure.Argument;
import daylight.line.measure.Measured;
import daylight.line.measure.Statement;
import daylight.line.survey.Adjusted;
import daylight.line.survey.Covariance2;
import daylight.line.survey.PlanPoint;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.hipparchus.special.Erf;

/**
 * Cable against ground: between two neighbouring locates of one limb the cable must be as long as
 * the ground between them, once the bends that were seen are allowed for.
 */
final class Reckoning {
  /** Chance that a sound line has any excess told of it; common practice, no source. */
  private static final double FAMILY = 1 / 80.0;

  private final Solved line;
  private final List<CableGap> gaps = new ArrayList<>();
  private final List<Statement> doubts = new ArrayList<>();

  /** By how much the cable between two neighbours is longer than the ground explains. */
  private record Reckoned(Sighted a, Sighted b, Measured excess) {
    /** The chance of as much either way if nothing is wrong. */
    double chance() {
      return Erf.erfc(Math.abs(excess.value()) / excess.sd() / Math.sqrt(2));
    }
  }

  private record Sighted(Mark mark, Walk.Reached at) {}

  Reckoning(Solved line) {
    this.line = line;
    Adjusted survey = line.model().survey();
    List<Reckoned> all = new ArrayList<>();
    if (survey != null) {
      for (int limb = 0; limb < line.model().layout().tree().limbs().size(); limb++) {
        List<Sighted> sighted = sighted(limb);
        for (int i = 1; i < sighted.size(); i++) {
          reckon(limb, sighted.get(i - 1), sighted.get(i), survey, all);
        }
      }
    }
    all.stream().filter(one -> one.chance() * all.size() <= FAMILY).forEach(this::tell);
  }

  List<CableGap> gaps() {
    return gaps;
  }

  List<Statement> doubts() {
    return doubts;
  }

  private List<Sighted> sighted(int limb) {
    List<Sighted> sighted = new ArrayList<>();
    for (Mark mark : line.model().marks()) {
      if (mark.onCable() && line.model().spotted(mark)) {
        double[] prior = prior();
        Walk.Reached at = mark.place(line.model().layout(), prior);
        if (at.limb() == limb) {
          sighted.add(new Sighted(mark, at));
        }
      }
    }
    sighted.sort(
        Comparator.comparingDouble((Sighted s) -> s.at().t()).thenComparing(s -> s.mark().id()));
    return sighted;
  }

  /**
   * The counter by itself: scale, slack and offset as known before the ground had a say, lengths as
   * estimated.
   */
  private double[] prior() {
    double[] x = line.x().clone();
    for (Walk walk : line.model().walks().all()) {
      x[walk.scale()] = walk.counter().scale().value() - 1;
      x[walk.slack()] = walk.counter().slack().value();
      x[walk.zero()] = 0;
    }
    return x;
  }

  private void reckon(int limb, Sighted a, Sighted b, Adjusted survey, List<Reckoned> into) {
    PlanPoint p = survey.point(a.mark().label());
    PlanPoint q = survey.point(b.mark().label());
    double ground = p.distanceTo(q);
    double cable = b.at().t() - a.at().t();
    if (ground < Enough.SHORTEST_BASE || cable < Enough.SHORTEST_BASE) {
      return;
    }
    Priors priors = line.model().priors();
    double reading = priors.sd(Priors.Kind.COUNTER_READING, 0);
    double scale =
        StrictMath.hypot(priors.sd(Priors.Kind.COUNTER_SCALE, 0), priors.of(Priors.Kind.SLACK).b());
    double cableSd = Math.sqrt(2 * reading * reading + square(scale * cable));
    double groundSd = groundSd(a.mark(), b.mark(), p, q, survey);
    double chord = chord(limb, a.at().t(), b.at().t());
    double excess = chord - shortfall(limb, a, b) - ground;
    Measured excessMeasured =
        new Measured(
            excess, Math.sqrt(square(cableSd) + square(groundSd) + bendVariance(limb, a, b)));
    gaps.add(
        new CableGap(
            a.mark().id(),
            b.mark().id(),
            new Measured(cable, cableSd),
            new Measured(ground, groundSd),
            excessMeasured));
    into.add(new Reckoned(a, b, excessMeasured));
  }

  private void tell(Reckoned one) {
    double excess = one.excess().value();
    if (!told(one.a(), one.b())) {
      doubts.add(
          Statement.of(
              excess > 0 ? CourseKey.CABLE_UNACCOUNTED : CourseKey.CABLE_TOO_SHORT,
              new Argument.Label(one.a().mark().label()),
              new Argument.Label(one.b().mark().label()),
              new Argument.Length(Math.abs(excess))));
    }
  }

  /** Whether the adjustment itself already found the counter at odds there. */
  private boolean told(Sighted a, Sighted b) {
    return line.found().stream()
        .filter(found -> found.about() instanceof Equations.About.WayTo)
        .anyMatch(
            found ->
                found.label().equals(a.mark().label()) && found.beyond().equals(b.mark().label()));
  }

  private double groundSd(Mark a, Mark b, PlanPoint p, PlanPoint q, Adjusted survey) {
    Covariance2 c = survey.relativeCovariance(a.label(), b.label());
    double d = p.distanceTo(q);
    double e = (q.x() - p.x()) / d;
    double n = (q.y() - p.y()) / d;
    double variance = e * e * c.xx() + e * n * (c.xy() + c.yx()) + n * n * c.yy();
    return Math.sqrt(
        Math.max(0, variance)
            + square(SpotEquations.noise(line.model(), a))
            + square(SpotEquations.noise(line.model(), b)));
  }

  /** By how much a pipe that wanders is expected to fall short of its length, metres. */
  private double shortfall(int limb, Sighted a, Sighted b) {
    Knots knots = line.model().knots();
    double sum = 0;
    for (int i = 1; i < knots.count(limb); i++) {
      double from = Math.max(a.at().t(), line.shape().t(limb, i - 1));
      double to = Math.min(b.at().t(), line.shape().t(limb, i));
      if (to > from) {
        double middle = (knots.t0(limb, i) + knots.t0(limb, i - 1)) / 2;
        sum += (to - from) * (1 - line.model().wander().share(limb, middle));
      }
    }
    return sum;
  }

  /** The straight distance between the ends of a pipe that turns only at the bends seen. */
  private double chord(int limb, double from, double to) {
    double e = 0;
    double n = 0;
    double bearing = 0;
    double at = from;
    for (Turn turn : turnsBetween(limb, from, to)) {
      double t = distance(turn);
      e += (t - at) * StrictMath.sin(bearing);
      n += (t - at) * StrictMath.cos(bearing);
      bearing += turn.sense() == Bend.Sense.LEFT ? -turn.angle() : turn.angle();
      at = t;
    }
    e += (to - at) * StrictMath.sin(bearing);
    n += (to - at) * StrictMath.cos(bearing);
    return StrictMath.hypot(e, n);
  }

  private List<Turn> turnsBetween(int limb, double from, double to) {
    return line.model().turns().stream()
        .filter(turn -> turn.limb() == limb)
        .filter(Turn::sideways)
        .filter(turn -> distance(turn) > from && distance(turn) < to)
        .sorted(Comparator.comparingDouble(this::distance))
        .toList();
  }

  private double distance(Turn turn) {
    return turn.at(line.x()).t();
  }

  /** A bend whose angle is uncertain makes the chord uncertain by about its lever. */
  private double bendVariance(int limb, Sighted a, Sighted b) {
    double variance = 0;
    for (Turn turn : turnsBetween(limb, a.at().t(), b.at().t())) {
      double before = distance(turn) - a.at().t();
      double after = b.at().t() - distance(turn);
      double lever =
          before * after / (before + after) * StrictMath.sin(Math.min(turn.angle(), 1.5));
      variance += square(lever * turn.sd());
    }
    return variance;
  }

  private static double square(double v) {
    return v * v;
  }
}
