package daylight.line.frost;

import daylight.line.book.Place;
import daylight.line.book.Priors;
import daylight.line.book.Reach;
import daylight.line.course.Line;
import daylight.line.course.Run;
import daylight.line.course.Station;
import daylight.line.fall.Fall;
import daylight.line.fall.Ponding;
import daylight.line.fall.WaterCause;
import daylight.line.fall.WaterSeen;
import daylight.line.measure.Filled;
import daylight.line.measure.Measured;
import daylight.line.measure.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * The door to frost along the pipes: cover as the course has it, with its uncertainty, and water
 * where it was seen or would stand by the grade.
 */
public final class Froster {
  /** The bore that is taken where none was written: a usual drain's, metres; common practice. */
  private static final Measured USUAL_BORE = new Measured(0.1, 0.025);

  /** Water less likely than this is not looked at; as {@link Ponding} counts what is ruled out. */
  private static final double RULED_OUT = 0.05;

  private final Line line;
  private final FrostDepth.Reaches frost;
  private final double season;
  private final Priors priors;
  private final Predicate<Place> warm;
  private final List<FrostAlong.Wet> wet = new ArrayList<>();

  private Froster(
      Line line, FrostDepth.Reaches frost, double season, Priors priors, Predicate<Place> warm) {
    this.warm = warm;
    this.line = line;
    this.frost = frost;
    this.season = season;
    this.priors = priors;
  }

  /**
   * Along the reaches of one line.
   *
   * @param fall the water of the visit that counts
   * @param season how long it freezes, seconds
   * @param name the label of the line
   * @param warm where no frost comes, as under a heated building
   */
  public static FrostAlong along(
      Line line,
      Fall fall,
      FrostDepth.Reaches frost,
      double season,
      Priors priors,
      String name,
      Predicate<Place> warm) {
    return new Froster(line, frost, season, priors, warm).along(fall, name);
  }

  private FrostAlong along(Fall fall, String name) {
    List<FrostAlong.Spot> spots = new ArrayList<>();
    List<String> unknown = new ArrayList<>();
    for (Run run : line.runs()) {
      if (run.reach().line().equals(name)) {
        List<FrostAlong.Spot> here = crowns(run);
        spots.addAll(here);
        if (run.stations().stream().noneMatch(station -> station.depth() != null)) {
          unknown.add(run.reach().label());
        }
        fall.water().forEach(seen -> seen(run, seen));
        pooled(run, fall);
      }
    }
    return new FrostAlong(frost, spots, wet, unknown);
  }

  private List<FrostAlong.Spot> crowns(Run run) {
    Measured bore = bore(run.reach());
    List<FrostAlong.Spot> spots = new ArrayList<>();
    for (Station station : run.stations()) {
      Measured depth = station.depth();
      if (depth != null && !warm.test(station.place())) {
        spots.add(new FrostAlong.Spot(station.place(), Margin.of(depth.minus(bore), frost)));
      }
    }
    return spots;
  }

  private Measured bore(Reach reach) {
    Reading bore = reach.bore();
    return bore == null
        ? USUAL_BORE
        : new Measured(bore.value(), priors.sd(Priors.Kind.BORE, bore));
  }

  /**
   * Water that was seen. Its greatest depth is taken all along, which is on the safe side; where it
   * was not judged, half the bore.
   */
  private void seen(Run run, WaterSeen seen) {
    if (!seen.from().reach().equals(run.reach().label())) {
      return;
    }
    Place end = seen.to();
    double from = seen.from().distance();
    double to = end == null ? from : end.distance();
    Measured deep = seen.depth();
    double depth = deep == null ? bore(run.reach()).value() / 2 : deep.value();
    double there = 1 - seen.held().of(WaterCause.NOT_SETTLED);
    add(run, seen.finding(), there, depth, Math.min(from, to), Math.max(from, to));
  }

  private void add(Run run, String finding, double there, double depth, double from, double to) {
    stationNear(run, from).ifPresent(near -> wet(run, near, finding, there, depth));
    for (Station station : run.stations()) {
      double at = station.place().distance();
      if (at > from && at <= to) {
        wet(run, station, finding, there, depth);
      }
    }
  }

  private static Optional<Station> stationNear(Run run, double distance) {
    return run.path() instanceof Run.Path.Found found
        ? Optional.of(found.nearest(distance))
        : Optional.empty();
  }

  /**
   * Water that would stand by the grade; it is at least a film where it stands at all. Where water
   * was seen, what holds it has been weighed with the grade already.
   */
  private void pooled(Run run, Fall fall) {
    for (Ponding.Spot spot : fall.ponding().spots()) {
      boolean here = spot.place().reach().equals(run.reach().label());
      if (here && spot.deeper() > RULED_OUT && !wasSeen(fall, spot.place())) {
        double depth = Math.max(Ponding.FILM, spot.depth().middle());
        stationNear(run, spot.place().distance())
            .ifPresent(near -> wet(run, near, "", spot.deeper(), depth));
      }
    }
  }

  private static boolean wasSeen(Fall fall, Place place) {
    for (WaterSeen seen : fall.water()) {
      Place to = seen.to();
      double from = seen.from().distance();
      double end = to == null ? from : to.distance();
      boolean within =
          Math.min(from, end) <= place.distance() && place.distance() <= Math.max(from, end);
      if (within && seen.from().reach().equals(place.reach())) {
        return true;
      }
    }
    return false;
  }

  private void wet(Run run, Station station, String finding, double there, double depth) {
    @Nullable Measured invert = station.depth();
    if (invert == null || !(there > 0) || warm.test(station.place())) {
      return;
    }
    Measured bore = bore(run.reach());
    double deep = Math.min(depth, bore.value());
    double radius = bore.value() / 2;
    Underground ground =
        Underground.of(
            frost,
            season,
            invert.plus(-deep),
            invert.plus(-radius),
            radius,
            new Filled(bore.value(), deep).area());
    wet.add(new FrostAlong.Wet(station.place(), finding, there, ground));
  }
}
