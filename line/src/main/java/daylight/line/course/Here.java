package daylight.line.course;

import daylight.line.book.Place;
import daylight.line.book.Priors;
import daylight.line.normal.Covariance;
import daylight.line.normal.Gradient;
import daylight.line.survey.Covariance2;
import daylight.line.survey.PlanPoint;
import org.jspecify.annotations.Nullable;

/** One place of a solved line and everything that holds there. */
final class Here {
  private final Solved line;
  private final int limb;
  private final double t;
  private final Shape.@Nullable Within in;
  private final Shape.Spot spot;

  Here(Solved line, Walk.Reached at) {
    this.line = line;
    this.limb = at.limb();
    this.t = at.t();
    this.in = line.shape().within(limb, t);
    this.spot = line.shape().spot(limb, t, at.dt());
  }

  private Tree.Limb of() {
    return line.model().layout().tree().limbs().get(limb);
  }

  Place place() {
    return line.place(limb, t);
  }

  PlanPoint point() {
    return new PlanPoint(spot.point().east(), spot.point().north());
  }

  /** The place with its derivatives. */
  Shape.Spot spot() {
    return spot;
  }

  /** The covariance of the position in plan. */
  Covariance2 spread() {
    Covariance covariance = line.fit().covariance();
    double xy = covariance.of(spot.east(), spot.north());
    double sag = sag(line.model().straight(limb));
    double psi = bearing();
    double sin = StrictMath.sin(psi);
    double cos = StrictMath.cos(psi);
    return new Covariance2(
        covariance.variance(spot.east()) + sag * cos * cos,
        xy - sag * sin * cos,
        xy - sag * sin * cos,
        covariance.variance(spot.north()) + sag * sin * sin);
  }

  /** How far the pipe may lie off the expected path there, as a variance. */
  private double sag(Priors.Kind kind) {
    return line.shape().sag(limb, t, line.model().priors().of(kind).a());
  }

  /** The bearing of the pipe in the direction of the water, radians. */
  double bearing() {
    double away = line.shape().bearing(limb, t);
    return Angles.wrap(of().downstream() ? away : away + Math.PI);
  }

  /** Standard uncertainty of that bearing, radians. */
  double bearingSd() {
    Gradient gradient = line.shape().bearingGradient(limb, t);
    return Math.sqrt(Math.max(0, line.fit().covariance().variance(gradient)));
  }

  /** Height of the invert. */
  Figure invert() {
    Priors.Kind grade = line.model().grade(limb);
    return Figure.of(spot.point().up(), spot.up(), sag(grade), grade);
  }

  /** Height of the ground. */
  Figure ground() {
    return line.ground().at(limb, t, in);
  }

  /** Depth of the invert below the ground. */
  Figure depth() {
    return ground().less(invert());
  }

  /** The derivatives of the distortion: as the knots beside the place have it. */
  Gradient bent() {
    Knots knots = line.model().knots();
    Gradient gradient = new Gradient();
    if (in == null) {
      gradient.add(knots.unknown(limb, t < 0 ? 0 : knots.count(limb) - 1, Knots.BENT), 1);
    } else {
      gradient.add(knots.unknown(limb, in.end() - 1, Knots.BENT), 1 - in.f());
      gradient.add(knots.unknown(limb, in.end(), Knots.BENT), in.f());
    }
    return gradient;
  }

  /** East and north as figures, without how the pipe may sag between its knots. */
  Figure[] plan() {
    return new Figure[] {
      Figure.of(spot.point().east(), spot.east()), Figure.of(spot.point().north(), spot.north())
    };
  }

  /** How far the place may lie toward a bearing, against where it is taken to be. */
  Figure toward(double bearing) {
    double e = StrictMath.sin(bearing);
    double n = StrictMath.cos(bearing);
    Gradient gradient = new Gradient();
    gradient.add(spot.east(), e);
    gradient.add(spot.north(), n);
    Priors.Kind straight = line.model().straight(limb);
    double across = StrictMath.sin(bearing - bearing());
    return Figure.of(0, gradient, sag(straight) * across * across, straight);
  }

  /** The pipe here, told. */
  Station station() {
    boolean deep = line.hasHeights() && line.hasGround();
    Figure invert = line.hasHeights() ? invert() : null;
    Figure ground = deep ? ground() : null;
    return new Station(
        place(),
        point(),
        spread(),
        bearing(),
        bearingSd(),
        invert == null ? null : line.measured(invert),
        ground == null ? null : line.measured(ground),
        ground == null || invert == null ? null : line.measured(ground.less(invert)));
  }
}
