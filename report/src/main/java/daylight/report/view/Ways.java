package daylight.report.view;

import daylight.line.book.Place;
import daylight.line.course.LocateFit;
import daylight.line.course.PlacedFinding;
import daylight.line.course.PlacedPass;
import daylight.line.course.Route;
import daylight.line.course.Run;
import daylight.line.course.Station;
import daylight.report.draw.Captions;
import daylight.report.draw.Subject;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;
import java.util.stream.Stream;

/** The places at which a site is told: every station of the line, and wherever there is a thing. */
final class Ways {
  /** What lies nearer than this to another place is told there, metres: half of what is shown. */
  private static final double SAME = 0.005;

  /** Where no station was estimated, a place so often, metres: as often as there are stations. */
  private static final double STEP = 0.3;

  private final Subject subject;

  private Ways(Subject subject) {
    this.subject = subject;
  }

  /**
   * A route with the places along it.
   *
   * @param route the main one of the site first
   */
  record Way(Route route, List<Place> places) {}

  /** Every route of the site that has a length, the longest line first. */
  static List<Way> of(Subject subject) {
    Ways ways = new Ways(subject);
    return Route.mains(subject.line()).stream()
        .flatMap(main -> Route.of(subject.line(), line(main)).stream())
        .map(route -> new Way(route, route.runs().stream().flatMap(ways::places).toList()))
        .filter(way -> !way.places().isEmpty())
        .toList();
  }

  private static String line(Route main) {
    return main.runs().getFirst().reach().line();
  }

  private Stream<Place> places(Run run) {
    TreeSet<Double> things = new TreeSet<>();
    Stream.of(findings(), locates(), ends())
        .flatMap(all -> all)
        .filter(place -> place.reach().equals(run.reach().label()))
        .forEach(place -> add(things, place.distance()));
    double length = Math.max(Route.extent(run), things.isEmpty() ? 0 : things.last());
    if (!(length > 0)) {
      return Stream.empty();
    }
    List<Double> between = new ArrayList<>(List.of(0.0, length));
    if (run.stations().isEmpty()) {
      for (int i = 1; i * STEP < length; i++) {
        between.add(i * STEP);
      }
    } else {
      run.stations().stream().map(Station::place).map(Place::distance).forEach(between::add);
    }
    between.forEach(distance -> add(things, distance));
    return things.stream().map(run::at);
  }

  /** Adds a distance unless there is one next to it; what was there first stays. */
  private static void add(NavigableSet<Double> distances, double distance) {
    Double below = distances.floor(distance);
    Double above = distances.ceiling(distance);
    if ((below == null || distance - below > SAME) && (above == null || above - distance > SAME)) {
      distances.add(distance);
    }
  }

  private Stream<Place> findings() {
    return Captions.findings(subject).stream().flatMap(Ways::ends);
  }

  private static Stream<Place> ends(PlacedFinding placed) {
    Place to = placed.to();
    return to == null ? Stream.of(placed.from()) : Stream.of(placed.from(), to);
  }

  private Stream<Place> locates() {
    return subject.line().locates().stream().map(LocateFit::place);
  }

  private Stream<Place> ends() {
    return subject.line().passes().stream()
        .flatMap(pass -> pass.legs().stream())
        .map(PlacedPass.Leg::to);
  }
}
