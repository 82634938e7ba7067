package daylight.line.answer;

import daylight.line.book.Place;
import daylight.line.book.Reach;
import daylight.line.course.PlacedFinding;
import daylight.line.course.Run;
import daylight.line.course.Station;
import daylight.line.flow.Backwater;
import daylight.line.flow.Propagated;
import daylight.line.flow.Water;
import daylight.line.measure.Argument;
import daylight.line.measure.Measured;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Where water would back up, and how high, along the pipes as they most likely lie. */
final class CopeBackup {
  /** Pieces of pipe are so long at least, metres. */
  private static final double APART = 1;

  /** Less above the top of the pipe is not worth telling, metres. */
  private static final double TOLD = 0.02;

  private final Case one;
  private final Telling tell;
  private final List<Backwater.Piece> pieces = new ArrayList<>();
  private final List<Station> tops = new ArrayList<>();

  CopeBackup(Case one, Telling tell) {
    this.one = one;
    this.tell = tell;
  }

  /** Whether the outlet was seen under water: then there is something to tell in any case. */
  boolean isDrowned() {
    return one.findings().stream().anyMatch(CopeBackup::drowned);
  }

  private static boolean drowned(PlacedFinding placed) {
    return placed.finding().kind().equals("standing-water")
        && "drowned".equals(placed.finding().words().get("outlet"));
  }

  /**
   * Tells the highest place, if any.
   *
   * @param inflows by the label of a reach; what has none carries nothing
   * @return whether water would come up out of the ground somewhere
   */
  boolean tell(Map<String, Propagated> inflows) {
    Map<String, Integer> ends = new HashMap<>();
    List<Run> rest = new ArrayList<>(one.runs());
    boolean on = true;
    while (on) {
      on = false;
      for (Run run : List.copyOf(rest)) {
        boolean waits =
            rest.stream().anyMatch(o -> o.reach().upstream().equals(run.reach().downstream()));
        if (!waits) {
          rest.remove(run);
          int below = ends.getOrDefault(run.reach().downstream(), Backwater.OUT);
          ends.put(run.reach().upstream(), add(run, below, inflows.get(run.reach().label())));
          on = true;
        }
      }
    }
    if (pieces.isEmpty()) {
      return false;
    }
    List<Backwater.Level> levels = Backwater.of(pieces, outlet(), pipeViscosity());
    highest(levels);
    return comesOut(levels);
  }

  /**
   * How high water stands at the outlet. Where that was seen under water, still water is level: as
   * high as the bottom of the pipe where the water begins, and no lower than the top of the pipe at
   * the outlet. Else it falls free.
   */
  private double outlet() {
    double highest = Double.NEGATIVE_INFINITY;
    Backwater.Piece last = pieces.getFirst();
    for (PlacedFinding placed : one.findings()) {
      if (drowned(placed)) {
        highest = Math.max(highest, last.bottom() + last.bore());
        highest = Math.max(highest, bottom(placed.from()));
        tell.reason(
            CopeKey.OUTLET_DROWNED,
            tell.finding(placed),
            tell.figure(FigureKey.WATER_DEPTH, new Argument.Length(highest - last.bottom()), null));
      }
    }
    return highest;
  }

  private double bottom(Place place) {
    return one.line()
        .findRun(place.reach())
        .map(run -> run.path() instanceof Run.Path.Found found ? found : null)
        .map(found -> found.nearest(place.distance()).invert())
        .map(Measured::value)
        .orElse(Double.NEGATIVE_INFINITY);
  }

  private static double pipeViscosity() {
    return Water.viscosity(Water.USUAL_CELSIUS);
  }

  /** Adds a reach from its lower end up; returns the piece at its upper end. */
  private int add(Run run, int below, @Nullable Propagated inflow) {
    int at = below;
    if (run.reach().use() == Reach.Use.PUMPED) {
      return at;
    }
    for (CopeSection section : CopeSection.of(one, run).reversed()) {
      List<Station> stations =
          run.stations().stream()
              .filter(s -> s.invert() != null)
              .filter(s -> within(section, s.place().distance()))
              .toList()
              .reversed();
      Station low = null;
      for (Station station : stations) {
        boolean last = station.equals(stations.getLast());
        if (low == null) {
          low = station;
        } else if (last || low.place().distance() - station.place().distance() >= APART) {
          pieces.add(piece(section, station, low, inflow, at));
          tops.add(station);
          at = pieces.size() - 1;
          low = station;
        }
      }
    }
    return at;
  }

  private static boolean within(CopeSection section, double distance) {
    return distance >= section.fall().from().distance() - 1e-9
        && distance <= section.fall().to().distance() + 1e-9;
  }

  private static Backwater.Piece piece(
      CopeSection section, Station top, Station low, @Nullable Propagated inflow, int below) {
    return new Backwater.Piece(
        height(top),
        height(low),
        low.place().distance() - top.place().distance(),
        section.pipe().bore().value() * StrictMath.sqrt(section.pipe().free()),
        section.pipe().roughness(),
        inflow == null ? 0 : inflow.value().value(),
        below);
  }

  private static double height(Station station) {
    Measured invert = station.invert();
    if (invert == null) {
      throw new IllegalStateException("only places with a height are asked for");
    }
    return invert.value();
  }

  private void highest(List<Backwater.Level> levels) {
    int most = 0;
    for (int i = 1; i < levels.size(); i++) {
      if (levels.get(i).aboveCrown() > levels.get(most).aboveCrown()) {
        most = i;
      }
    }
    double above = levels.get(most).aboveCrown();
    if (above < TOLD) {
      return;
    }
    Station station = tops.get(most);
    tell.reason(
        CopeKey.BACKS_UP,
        tell.figure(FigureKey.BACKED_UP, new Argument.Length(above), station.place()),
        tell.station(station.place()),
        tell.from(station.place()));
  }

  /** Tells the lowest place at which it would stand above the ground that covers the pipe. */
  private boolean comesOut(List<Backwater.Level> levels) {
    for (int i = 0; i < levels.size(); i++) {
      Measured ground = tops.get(i).ground();
      if (ground != null
          && ground.value() > pieces.get(i).crown()
          && levels.get(i).head() > ground.value()) {
        tell.reason(
            CopeKey.COMES_OUT, tell.station(tops.get(i).place()), tell.from(tops.get(i).place()));
        return true;
      }
    }
    return false;
  }
}
