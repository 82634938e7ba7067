package daylight.line.dig;

import daylight.line.book.Boundary;
import daylight.line.book.Landmark;
import daylight.line.book.Site;
import daylight.line.course.Line;
import daylight.line.measure.Argument;
import daylight.line.measure.Statement;
import daylight.line.survey.Adjusted;
import daylight.line.survey.Covariance2;
import daylight.line.survey.PlanPoint;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Whose ground a place is under, and what stands near it. */
final class Grounds {
  /** Half of what is left out of a 95 % interval. */
  private static final double TAIL = 0.025;

  /** Landmarks that a pipe may harm, or be harmed by. */
  private static final Set<Landmark.Kind> TOUCHY = Set.of(Landmark.Kind.WELL, Landmark.Kind.TREE);

  private Grounds() {}

  /** Where points stand; none at all where one of them has no place. */
  static List<PlanPoint> points(Line line, List<String> labels) {
    if (!(line.survey() instanceof Adjusted plan) || !plan.points().keySet().containsAll(labels)) {
      return List.of();
    }
    return labels.stream().map(plan::point).toList();
  }

  /** The nearest of some points that have a place. */
  static String nearest(Line line, List<String> labels, PlanPoint spot) {
    List<PlanPoint> points = points(line, labels);
    int best = 0;
    for (int i = 1; i < points.size(); i++) {
      if (spot.distanceTo(points.get(i)) < spot.distanceTo(points.get(best))) {
        best = i;
      }
    }
    return labels.get(best);
  }

  static List<GroundSide> sides(Line line, Site site, Here here) {
    List<GroundSide> sides = new ArrayList<>();
    for (Boundary boundary : site.boundaries()) {
      List<PlanPoint> points = points(line, boundary.points());
      if (points.size() >= 2) {
        Covariance2 c = here.from(line, nearest(line, boundary.points(), here.spot()));
        sides.add(new GroundSide(boundary, Sides.left(here.spot(), c, points)));
      }
    }
    return sides;
  }

  static List<Statement> open(Line line, Site site) {
    return site.boundaries().stream()
        .filter(boundary -> points(line, boundary.points()).isEmpty())
        .map(boundary -> Statement.of(DigKey.BOUNDARY_OPEN, new Argument.Label(boundary.label())))
        .toList();
  }

  /** To buildings, wells and trees, nearest first. */
  static List<Clearance> clearances(Line line, Site site, Here here, double limit) {
    List<Clearance> clearances = new ArrayList<>();
    for (Boundary boundary : site.boundaries()) {
      if (boundary.kind() == Boundary.Kind.FOUNDATION) {
        add(
            clearances,
            line,
            here,
            boundary.label(),
            "boundary.foundation",
            boundary.points(),
            limit);
      }
    }
    for (Landmark landmark : site.landmarks()) {
      if (TOUCHY.contains(landmark.kind())) {
        String kind = "landmark." + landmark.kind().name().toLowerCase(Locale.ROOT);
        add(clearances, line, here, landmark.label(), kind, List.of(landmark.label()), limit);
      }
    }
    clearances.sort(
        Comparator.comparingDouble(Clearance::estimate).thenComparing(Clearance::label));
    return clearances;
  }

  private static void add(
      List<Clearance> clearances,
      Line line,
      Here here,
      String label,
      String kind,
      List<String> of,
      double limit) {
    List<PlanPoint> points = points(line, of);
    if (points.isEmpty()) {
      return;
    }
    Covariance2 c = here.from(line, nearest(line, of, here.spot()));
    Distances distances = Distances.of(here.spot(), c, points);
    clearances.add(
        new Clearance(
            label,
            kind,
            Distances.to(here.spot(), points),
            distances.quantile(TAIL),
            distances.quantile(1 - TAIL),
            limit,
            distances.nearer(limit)));
  }
}
