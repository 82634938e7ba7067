package daylight.report.draw;

import daylight.line.answer.Sight;
import daylight.line.book.Node;
import daylight.line.book.Place;
import daylight.line.book.Reach;
import daylight.line.course.PlacedFinding;
import daylight.line.course.PlacedPass;
import daylight.line.course.PlacedSight;
import daylight.line.course.Route;
import daylight.line.course.Run;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * A way with the water that one strip shows, and what the judged visit saw on it.
 *
 * @param route in which stations are counted
 * @param length of what is drawn, metres
 * @param known how far anything is known of it, metres; less than the length where nobody followed
 *     it to its end
 */
record StripRoute(Subject subject, Route route, double length, double known) {

  /** An end of a reach on the strip. */
  record End(String node, double station, Run run) {}

  /** The main route and whatever else was looked into. */
  static List<StripRoute> of(Subject subject) {
    Route main = subject.route();
    Stream<Route> others =
        subject.line().runs().stream()
            .map(run -> run.reach().line())
            .distinct()
            .flatMap(name -> Route.of(subject.line(), name).stream())
            .filter(route -> !route.equals(main));
    List<StripRoute> strips = new ArrayList<>();
    Stream.concat(Stream.of(main), others)
        .flatMap(route -> parts(route).stream())
        .map(route -> of(subject, route))
        .filter(strip -> strip.length() > 0)
        .filter(strip -> strip.isOn(main) || strip.looked())
        .forEach(strips::add);
    return strips;
  }

  /** How well it was seen, stretch by stretch, from one end to the other. */
  List<Sight> sight() {
    return SeenStroke.of(subject, route, length);
  }

  /** A route is cut after a reach of which nobody knows how long it is. */
  private static List<Route> parts(Route route) {
    List<Route> parts = new ArrayList<>();
    int from = 0;
    for (int i = 0; i < route.runs().size(); i++) {
      if (i + 1 == route.runs().size() || Route.extent(route.runs().get(i)) <= 0) {
        List<Run> runs = route.runs().subList(from, i + 1);
        parts.add(
            new Route(
                runs.getFirst().reach().upstream(), runs.getLast().reach().downstream(), runs));
        from = i + 1;
      }
    }
    return parts;
  }

  private static StripRoute of(Subject subject, Route route) {
    StripRoute seen = new StripRoute(subject, route, 0, 0);
    double furthest = seen.places().flatMapToDouble(place -> seen.stations(place)).max().orElse(0);
    if (route.runs().isEmpty()) {
      return seen;
    }
    boolean measured = route.runs().getLast().length() != null;
    double length = measured ? route.length() : Math.max(route.length(), furthest);
    boolean open = !measured && !subject.reached(route.runs().getLast(), route.to());
    return new StripRoute(subject, route, length, open ? furthest : length);
  }

  private DoubleStream stations(Place place) {
    OptionalDouble station = route.station(place);
    return station.isPresent() ? DoubleStream.of(station.getAsDouble()) : DoubleStream.empty();
  }

  private Stream<Place> places() {
    return Stream.of(
            findings().stream()
                .flatMap(f -> Stream.of(f.from(), f.to() == null ? f.from() : f.to())),
            sights().stream().map(PlacedSight::to),
            passes().stream()
                .flatMap(p -> p.legs().stream())
                .flatMap(l -> Stream.of(l.from(), l.to())))
        .flatMap(all -> all);
  }

  private boolean isOn(Route main) {
    return !route.runs().isEmpty() && main.runs().contains(route.runs().getFirst());
  }

  private boolean looked() {
    return !findings().isEmpty() || !sights().isEmpty() || !passes().isEmpty();
  }

  /** The findings of the judged visit that begin on it, those that are nodes among them. */
  List<PlacedFinding> findings() {
    return Captions.findings(subject).stream().filter(f -> holds(f.from())).toList();
  }

  List<PlacedSight> sights() {
    return subject.line().sights().stream()
        .filter(sight -> sight.visit().equals(subject.answers().visit()))
        .filter(sight -> holds(sight.from()))
        .toList();
  }

  /** The passes of the judged visit that came through it. */
  List<PlacedPass> passes() {
    return subject.line().passes().stream()
        .filter(pass -> pass.visit().equals(subject.answers().visit()))
        .filter(pass -> pass.legs().stream().anyMatch(leg -> holds(leg.from())))
        .toList();
  }

  boolean holds(Place place) {
    return route.station(place).isPresent();
  }

  /** The station of a place, no further than the strip goes; refuses one that is not on it. */
  double station(Place place) {
    double station =
        route.station(place).orElseThrow(() -> new IllegalArgumentException("not on " + route));
    return Math.min(station, length);
  }

  /** The station where a finding ends; beyond the strip's own end, that end. */
  double end(PlacedFinding placed) {
    Place to = placed.to() == null ? placed.from() : placed.to();
    return Math.max(station(placed.from()), holds(to) ? station(to) : length);
  }

  /** The start of the strip and the end of each of its reaches that anybody came to. */
  List<End> ends() {
    List<End> ends = new ArrayList<>();
    Run first = route.runs().getFirst();
    if (subject.reached(first, route.from())) {
      ends.add(new End(route.from(), 0, first));
    }
    for (Run run : route.runs()) {
      if (subject.reached(run, run.reach().downstream())) {
        double at = Math.min(length, station(run.at(0)) + Route.extent(run));
        ends.add(new End(run.reach().downstream(), at, run));
      }
    }
    return ends;
  }

  /** Whether every reach of it is known to run the way it is drawn. */
  boolean flowKnown() {
    return route.runs().stream().noneMatch(r -> r.reach().water() instanceof Reach.Water.Unknown);
  }

  Node.Kind kind(String node) {
    return subject.book().site().findNode(node).map(Node::kind).orElse(Node.Kind.END);
  }
}
