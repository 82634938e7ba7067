package daylight.line.answer;

import daylight.line.book.Catalogue;
import daylight.line.book.FieldBook;
import daylight.line.book.Landmark;
import daylight.line.book.Node;
import daylight.line.book.Place;
import daylight.line.book.Site;
import daylight.line.book.Surroundings;
import daylight.line.book.Visit;
import daylight.line.course.Line;
import daylight.line.course.PlacedFinding;
import daylight.line.course.Route;
import daylight.line.course.Run;
import daylight.line.fall.Fall;
import daylight.line.proving.Proving;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What there is to judge one line by.
 *
 * @param proving what the tests of the visit proved
 * @param name the label of the line
 * @param visit the visit whose findings count
 * @param routes the routes of the line, the main one first
 */
record Case(
    FieldBook book,
    Line line,
    Rules rules,
    Fall fall,
    Proving proving,
    Visit visit,
    String name,
    List<Route> routes) {

  static Case of(
      FieldBook book,
      Line line,
      Rules rules,
      Fall fall,
      Proving proving,
      Visit visit,
      String name) {
    return new Case(book, line, rules, fall, proving, visit, name, Route.of(line, name));
  }

  Route main() {
    return routes.getFirst();
  }

  List<Run> runs() {
    return line.runs().stream().filter(run -> run.reach().line().equals(name)).toList();
  }

  boolean has(String reach) {
    return runs().stream().anyMatch(run -> run.reach().label().equals(reach));
  }

  /** Whether a node is an end of one of its reaches. */
  boolean touches(String node) {
    return runs().stream()
        .anyMatch(run -> run.reach().from().equals(node) || run.reach().to().equals(node));
  }

  /** The findings of the visit on this line, upstream first along each route. */
  List<PlacedFinding> findings() {
    return line.findings().stream()
        .filter(placed -> placed.visit().equals(visit.label()) && has(placed.from().reach()))
        .sorted(
            Comparator.comparingInt((PlacedFinding p) -> routes.indexOf(route(p.from())))
                .thenComparingDouble(p -> station(p.from()))
                .thenComparing(p -> p.finding().id()))
        .toList();
  }

  /** The findings of the visit that bear on something, in that order. */
  List<PlacedFinding> findings(Catalogue.Bears bears) {
    return findings().stream()
        .filter(placed -> kind(placed).filter(kind -> kind.bears() == bears).isPresent())
        .toList();
  }

  Optional<Catalogue.Kind> kind(PlacedFinding placed) {
    return rules.catalogue().find(placed.finding().kind());
  }

  /** The route that a place is on. */
  Route route(Place place) {
    return routes.stream()
        .filter(route -> route.station(place).isPresent())
        .findFirst()
        .orElseThrow(
            () -> new IllegalArgumentException("no route of " + name + " passes " + place));
  }

  /** The station of a place along its route, metres. */
  double station(Place place) {
    return route(place).station(place).orElseThrow();
  }

  /**
   * What people call a node, fixture or landmark: its words where there are any, with its label.
   */
  String named(String node) {
    return named(book, node);
  }

  /** The same in a book. */
  static String named(FieldBook book, String node) {
    Site site = book.site();
    Optional<String> what =
        site.findNode(node).isPresent()
            ? site.findNode(node).map(Node::what)
            : site.surroundings().fixtures().stream()
                .filter(one -> one.label().equals(node))
                .map(Surroundings.Fixture::kind)
                .findFirst()
                .or(() -> landmark(site, node));
    return what.filter(words -> !words.equals(node))
        .map(words -> words + " (" + node + ")")
        .orElse(node);
  }

  private static Optional<String> landmark(Site site, String label) {
    return site.landmarks().stream()
        .filter(one -> one.label().equals(label))
        .findFirst()
        .map(Landmark::what);
  }
}
