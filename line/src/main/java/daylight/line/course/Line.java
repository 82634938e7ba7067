package daylight.line.course;

import daylight.line.book.Place;
import daylight.line.measure.Argument;
import daylight.line.measure.Measured;
import daylight.line.measure.Statement;
import daylight.line.survey.Adjustment;
import daylight.line.survey.Covariance2;
import daylight.line.survey.LevelAdjustment;
import java.util.List;
import java.util.Optional;

/**
 * Where the pipes of a site run and how sure that is: everything {@link Estimator} computed from a
 * field book, in metres on the site grid, with covariance. Nothing in it is ever read back from
 * disk.
 *
 * @param survey the adjusted plane network of landmarks and located spots
 * @param levels the adjusted level network
 * @param runs one for each reach, in the book's order
 * @param findings what was seen, each at its place
 * @param sights how well the pipe could be seen, stretch by stretch
 * @param passes where each push of the camera went, and the bends it saw
 * @param locates how each locate and exposure fits
 * @param gaps cable against ground between neighbouring locates
 * @param doubts what contradicts what, or could not be used
 * @param joint the covariance of everything with everything
 */
public record Line(
    Adjustment survey,
    LevelAdjustment levels,
    List<Run> runs,
    List<PlacedFinding> findings,
    List<PlacedSight> sights,
    List<PlacedPass> passes,
    List<LocateFit> locates,
    List<CableGap> gaps,
    List<Statement> doubts,
    Joint joint) {
  public Line {
    runs = List.copyOf(runs);
    findings = List.copyOf(findings);
    sights = List.copyOf(sights);
    passes = List.copyOf(passes);
    locates = List.copyOf(locates);
    gaps = List.copyOf(gaps);
    doubts = List.copyOf(doubts);
  }

  /** The run of the reach of that label. */
  public Optional<Run> findRun(String reach) {
    return runs.stream().filter(run -> run.reach().label().equals(reach)).findFirst();
  }

  /**
   * How far the invert falls from one place to another, in metres, positive when the second is
   * lower; empty where heights are not known.
   */
  public Optional<Measured> fall(Place from, Place to) {
    return joint.fall(from, to);
  }

  /**
   * Heights of the invert at places that hang together, and how they err together; empty where
   * heights are not known or a place is of another line.
   */
  public Optional<Profile> profile(List<Place> places) {
    return joint.profile(places);
  }

  /**
   * The same as if no still water had been seen: by what the water seen itself may be weighed. The
   * places are given by the line as it was estimated.
   */
  public Optional<Profile> dryProfile(List<Place> places) {
    return joint.dryProfile(places);
  }

  /** Many figures at once: how sure they are, why, and what would make them surer. */
  public Outlook outlook() {
    return joint.outlook();
  }

  /**
   * The readings and assumptions that a figure rests on, largest share of its variance first; none
   * where it is not known.
   */
  public List<Contribution> why(Wanted wanted) {
    return outlook().why(wanted);
  }

  /**
   * The covariance of the vector from a surveyed point to a place, square metres: how well the
   * place is found from there. What both err by together falls out. Empty where either has no place
   * in plan.
   */
  public Optional<Covariance2> relative(Place place, String point) {
    boolean placed =
        findRun(place.reach()).map(run -> run.path() instanceof Run.Path.Found).orElse(false);
    return placed ? joint.relative(place, point) : Optional.empty();
  }

  /** A figure as it is known now; empty where it is not known. */
  public Optional<Measured> now(Wanted wanted) {
    return outlook().now(wanted);
  }

  /**
   * What one more measurement would make of a figure: its value now with the uncertainty it would
   * have. Empty where the figure is not known or the measurement would tell nothing.
   */
  public Optional<Measured> after(Wanted wanted, Extra extra) {
    return outlook().after(wanted, extra);
  }

  /** The spots that nothing else checks; empty where there are none. */
  public Optional<Statement> unchecked() {
    List<Argument> unchecked =
        locates.stream()
            .filter(fit -> fit.spot() != null && fit.spotShows() == null)
            .<Argument>map(fit -> new Argument.Label(fit.entry().label()))
            .toList();
    return unchecked.isEmpty()
        ? Optional.empty()
        : Optional.of(Statement.of(CourseKey.NOTHING_CHECKS, new Argument.Several(unchecked)));
  }
}
