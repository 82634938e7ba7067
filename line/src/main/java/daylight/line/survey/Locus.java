package daylight.line.survey;

import java.util.ArrayList;
import java.util.List;

/** Where one tie alone allows a point to be. */
sealed interface Locus {

  /** On a circle. */
  record Circle(PlanPoint centre, double radius) implements Locus {}

  /** On the line through a point along a bearing, on either side of it. */
  record Line(PlanPoint through, double bearing) implements Locus {
    /** The position so far along the bearing. */
    PlanPoint at(double distance) {
      return new PlanPoint(
          through.x() + distance * StrictMath.sin(bearing),
          through.y() + distance * StrictMath.cos(bearing));
    }
  }

  /** At one place. */
  record Place(PlanPoint at) implements Locus {}

  /** Every place the loci allow in pairs: start values, good and bad, to be weighed afterwards. */
  static List<PlanPoint> meetings(List<Locus> loci) {
    var places = new ArrayList<PlanPoint>();
    for (int i = 0; i < loci.size(); i++) {
      if (loci.get(i) instanceof Place(PlanPoint at)) {
        places.add(at);
      }
      for (int j = i + 1; j < loci.size(); j++) {
        places.addAll(meet(loci.get(i), loci.get(j)));
      }
    }
    return places;
  }

  private static List<PlanPoint> meet(Locus a, Locus b) {
    return switch (a) {
      case Place _ -> List.of();
      case Circle c ->
          switch (b) {
            case Circle d -> circles(c, d);
            case Line l -> lineAndCircle(l, c);
            case Place _ -> List.of();
          };
      case Line l ->
          switch (b) {
            case Circle c -> lineAndCircle(l, c);
            case Line m -> lines(l, m);
            case Place _ -> List.of();
          };
    };
  }

  /** Two points, or the point between where they miss each other. */
  private static List<PlanPoint> circles(Circle a, Circle b) {
    double d = a.centre.distanceTo(b.centre);
    if (d < 1e-6) {
      return List.of();
    }
    double along = (d * d + a.radius * a.radius - b.radius * b.radius) / (2 * d);
    double square = a.radius * a.radius - along * along;
    if (square <= 0) {
      along = between(a.radius, b.radius, d);
      square = 0;
    }
    double half = StrictMath.sqrt(square);
    double ux = (b.centre.x() - a.centre.x()) / d;
    double uy = (b.centre.y() - a.centre.y()) / d;
    var left =
        new PlanPoint(a.centre.x() + along * ux - half * uy, a.centre.y() + along * uy + half * ux);
    var right =
        new PlanPoint(a.centre.x() + along * ux + half * uy, a.centre.y() + along * uy - half * ux);
    return List.of(left, right);
  }

  /** How far from the first centre toward the second two missing circles come nearest. */
  private static double between(double a, double b, double d) {
    if (a > d + b) {
      return (a + d + b) / 2;
    }
    return b > d + a ? (d - a - b) / 2 : (a + d - b) / 2;
  }

  private static List<PlanPoint> lineAndCircle(Line line, Circle circle) {
    double dx = circle.centre.x() - line.through.x();
    double dy = circle.centre.y() - line.through.y();
    double s = StrictMath.sin(line.bearing);
    double c = StrictMath.cos(line.bearing);
    double foot = dx * s + dy * c;
    double off = dx * c - dy * s;
    double half = StrictMath.sqrt(Math.max(0, circle.radius * circle.radius - off * off));
    return List.of(line.at(foot - half), line.at(foot + half));
  }

  private static List<PlanPoint> lines(Line a, Line b) {
    double sine = StrictMath.sin(b.bearing - a.bearing);
    if (Math.abs(sine) < 1e-4) {
      return List.of();
    }
    double dx = b.through.x() - a.through.x();
    double dy = b.through.y() - a.through.y();
    double distance = (dx * StrictMath.cos(b.bearing) - dy * StrictMath.sin(b.bearing)) / -sine;
    return List.of(a.at(distance));
  }
}
