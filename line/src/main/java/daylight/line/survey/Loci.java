package daylight.line.survey;

import java.util.List;
import java.util.Optional;

/** What single ties to known points say about where an unknown point may be. */
final class Loci {
  private static final double STRAIGHT = 1e-3;

  private Loci() {}

  /** The loci of a point by one tie whose other points are known; none if it says nothing. */
  static List<Locus> of(Sighting tie, String point, Scene scene) {
    return switch (tie) {
      case Sighting.Tape s -> List.of(new Locus.Circle(at(scene, other(s, point)), s.metres()));
      case Sighting.AlongOut s -> alongOut(s, point, scene);
      case Sighting.Bearing s -> List.of(new Locus.Line(at(scene, other(s, point)), s.rad()));
      case Sighting.Angle s -> angle(s, point, scene);
      case Sighting.Sketched s -> List.of(new Locus.Place(new PlanPoint(s.x(), s.y())));
      case Sighting.Offset s -> {
        PlanPoint other = at(scene, other(s, point));
        double way = point.equals(s.to()) ? 1 : -1;
        yield List.of(
            new Locus.Place(new PlanPoint(other.x() + way * s.x(), other.y() + way * s.y())));
      }
      case Sighting.Direction _, Sighting.Gnss _, Sighting.Fixed _, Sighting.Side _ -> List.of();
    };
  }

  private static String other(Sighting tie, String point) {
    return tie.points().stream().filter(p -> !p.equals(point)).findFirst().orElseThrow();
  }

  private static PlanPoint at(Scene scene, String point) {
    return scene.position(point).orElseThrow();
  }

  private static List<Locus> alongOut(Sighting.AlongOut s, String point, Scene scene) {
    double reach = StrictMath.hypot(s.along(), s.out());
    double aside = StrictMath.atan2(s.out(), s.along());
    if (point.equals(s.point())) {
      Optional<Double> wall = scene.bearing(s.wallFrom(), s.wallTo());
      // Out is to the left, which is against the clock.
      return wall.<List<Locus>>map(
              b ->
                  List.of(
                      new Locus.Place(
                          new Locus.Line(at(scene, s.wallFrom()), b - aside).at(reach))))
          .orElse(List.of());
    }
    if (point.equals(s.wallTo())) {
      PlanPoint from = at(scene, s.wallFrom());
      return List.of(new Locus.Line(from, from.bearingTo(at(scene, s.point())) + aside));
    }
    PlanPoint end = at(scene, s.wallTo());
    PlanPoint seen = at(scene, s.point());
    double away = end.distanceTo(seen);
    double foot = StrictMath.sqrt(Math.max(0, away * away - s.out() * s.out()));
    return List.of(
        new Locus.Circle(seen, reach),
        new Locus.Circle(end, Math.abs(s.along() + foot)),
        new Locus.Circle(end, Math.abs(s.along() - foot)));
  }

  private static List<Locus> angle(Sighting.Angle s, String point, Scene scene) {
    if (point.equals(s.at())) {
      return inscribed(at(scene, s.from()), at(scene, s.to()), s.rad());
    }
    boolean forward = point.equals(s.to());
    Optional<Double> base = scene.bearing(s.at(), forward ? s.from() : s.to());
    double turn = forward ? s.rad() : -s.rad();
    return base.<List<Locus>>map(b -> List.of(new Locus.Line(at(scene, s.at()), b + turn)))
        .orElse(List.of());
  }

  /** The circle from which the way from one point clockwise to another is seen under an angle. */
  private static List<Locus> inscribed(PlanPoint from, PlanPoint to, double rad) {
    double sine = StrictMath.sin(rad);
    if (Math.abs(sine) < STRAIGHT) {
      return List.of(new Locus.Line(from, from.bearingTo(to)));
    }
    double dx = to.x() - from.x();
    double dy = to.y() - from.y();
    double cotangent = StrictMath.cos(rad) / sine;
    var centre =
        new PlanPoint(
            (from.x() + to.x() + dy * cotangent) / 2, (from.y() + to.y() - dx * cotangent) / 2);
    return List.of(new Locus.Circle(centre, Math.abs(from.distanceTo(to) / (2 * sine))));
  }
}
