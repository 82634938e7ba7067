package daylight.line.dig;

import daylight.line.book.Exposure;
import daylight.line.book.FieldBook;
import daylight.line.book.Locate;
import daylight.line.book.Place;
import daylight.line.book.Visit;
import daylight.line.course.Line;
import daylight.line.course.LocateFit;
import daylight.line.survey.Adjusted;
import daylight.line.survey.ErrorEllipse;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Letters a place by how it was found. */
final class Grading {
  /** A pit tells of the pipe so far to either side, metres; common practice, no source. */
  private static final double LAID_BARE = 0.5;

  /** 0.2 ft in plan (asce-38-22), taken for the 95 % radius, metres. */
  private static final double SURVEYED = 0.061;

  /**
   * A grid that lies on the earth to this much, radians, hangs on survey control and not on a
   * telephone's fixes; common practice, no source.
   */
  private static final double CONTROLLED = 0.005;

  private Grading() {}

  static LocatedQuality of(FieldBook book, Line line, Here here) {
    Place place = here.place();
    List<LocateFit> found =
        line.locates().stream().filter(f -> f.place().reach().equals(place.reach())).toList();
    boolean controlled = controlled(line);
    Set<String> bared =
        book.visits().stream()
            .flatMap(visit -> visit.exposures().stream())
            .map(Exposure::label)
            .collect(Collectors.toSet());
    boolean laidBare =
        found.stream()
            .anyMatch(f -> bared.contains(f.entry().label()) && away(f, place) <= LAID_BARE);
    boolean surveyed = ErrorEllipse.of(here.spread(), 0.95).semiMajor() <= SURVEYED;
    if (laidBare && controlled && surveyed) {
      return LocatedQuality.A;
    }
    if (!between(line, book, place)) {
      return LocatedQuality.D;
    }
    return controlled ? LocatedQuality.B : LocatedQuality.C;
  }

  private static double away(LocateFit fit, Place place) {
    return Math.abs(fit.place().distance() - place.distance());
  }

  /** Whether anything was found on both sides of a place, an end that has a spot included. */
  private static boolean between(Line line, FieldBook book, Place place) {
    Set<String> entries =
        book.visits().stream().flatMap(visit -> labels(visit).stream()).collect(Collectors.toSet());
    boolean before = false;
    boolean after = false;
    for (LocateFit fit : line.locates()) {
      if (fit.place().reach().equals(place.reach()) && entries.contains(fit.entry().label())) {
        before |= fit.place().distance() <= place.distance() + LAID_BARE;
        after |= fit.place().distance() >= place.distance() - LAID_BARE;
      }
    }
    var reach = book.site().findReach(place.reach()).orElseThrow();
    return (before || seen(line, reach.upstream())) && (after || seen(line, reach.downstream()));
  }

  private static List<String> labels(Visit visit) {
    List<String> labels = visit.locates().stream().map(Locate::label).collect(Collectors.toList());
    visit.exposures().forEach(exposure -> labels.add(exposure.label()));
    return labels;
  }

  private static boolean seen(Line line, String node) {
    return line.survey() instanceof Adjusted plan && plan.points().containsKey(node);
  }

  private static boolean controlled(Line line) {
    return line.survey() instanceof Adjusted plan
        && plan.siteTie().filter(tie -> tie.gridNorthSd() <= CONTROLLED).isPresent();
  }
}
