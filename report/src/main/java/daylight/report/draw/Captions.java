package daylight.report.draw;

import daylight.line.answer.StopOrder;
import daylight.line.book.Catalogue;
import daylight.line.book.Node;
import daylight.line.book.Place;
import daylight.line.book.Visit;
import daylight.line.course.LocateFit;
import daylight.line.course.PlacedFinding;
import daylight.line.course.Route;
import daylight.line.dig.ServiceFound;
import daylight.line.measure.Argument;
import daylight.report.words.Words;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** Short texts and choices that drawings, page and files share. */
public final class Captions {
  /** The rank of what is only a feature of the pipe. */
  static final int FEATURE = 3;

  private Captions() {}

  /** Which visit is shown, by its day where it has one. */
  public static String visit(Subject subject) {
    return subject
        .visit()
        .map(visit -> visit(subject.words(), visit))
        .orElseGet(() -> undated(subject.words(), subject.answers().visit()));
  }

  /** The same of any visit. */
  public static String visit(Words words, Visit visit) {
    LocalDate date = visit.date();
    return date == null
        ? undated(words, visit.label())
        : words.say("report.visit", new Argument.Day(date));
  }

  /** Its address and the visit that is judged. */
  public static String under(Subject subject) {
    String address = subject.book().site().address();
    return (address == null ? subject.words().word("report.address_missing") : address)
        + " · "
        + visit(subject);
  }

  /** What a stop order is about and where: a sentence. */
  public static String stop(Subject subject, StopOrder stop) {
    Words words = subject.words();
    Route route = subject.route();
    return Words.capitalised(
        words.say(
            "report.stop.what",
            new Argument.Text(words.kind(stop.finding().finding().kind())),
            new Argument.Text(distance(words, route, stop.finding().from())),
            new Argument.Label(route.from())));
  }

  private static String undated(Words words, String label) {
    return words.say("report.visit_undated", new Argument.Label(label));
  }

  /** The findings of the visit that was judged, by reach in the book's order and by distance. */
  public static List<PlacedFinding> findings(Subject subject) {
    return subject.line().findings().stream()
        .filter(placed -> placed.visit().equals(subject.answers().visit()))
        .sorted(
            Comparator.comparing(PlacedFinding::from, along(subject))
                .thenComparing(p -> p.finding().id()))
        .toList();
  }

  /** The places found from the ground, on every visit, along the line. */
  public static List<LocateFit> locates(Subject subject) {
    return subject.line().locates().stream()
        .sorted(
            Comparator.comparing(LocateFit::place, along(subject)).thenComparing(LocateFit::entry))
        .toList();
  }

  /** Reach by reach in the order of the line, and in each by distance. */
  private static Comparator<Place> along(Subject subject) {
    List<String> reaches = subject.line().runs().stream().map(run -> run.reach().label()).toList();
    return Comparator.comparingInt((Place place) -> reaches.indexOf(place.reach()))
        .thenComparingDouble(Place::distance);
  }

  /** The same without those that are nodes: a node has its own sign. */
  static List<PlacedFinding> drawn(Subject subject) {
    return findings(subject).stream().filter(placed -> placed.finding().node() == null).toList();
  }

  /** Whether a finding may kill whoever goes on working. */
  public static boolean isStop(Subject subject, PlacedFinding placed) {
    return subject
        .rules()
        .catalogue()
        .find(placed.finding().kind())
        .map(kind -> kind.hazard() == Catalogue.Hazard.STOP)
        .orElse(false);
  }

  /** How much a finding matters on a drawing, as a rank of {@link Marks}. */
  static int rank(Subject subject, PlacedFinding placed) {
    Catalogue.Kind kind = subject.rules().catalogue().find(placed.finding().kind()).orElse(null);
    if (kind == null) {
      return 2;
    }
    return switch (kind.hazard()) {
      case STOP -> Marks.STOP;
      case CARE -> Marks.CARE;
      case NONE -> kind.bears() == Catalogue.Bears.FEATURE ? FEATURE : 2;
    };
  }

  /** A node by its label and, where somebody noted it, what it is; its sign tells its kind. */
  public static String node(Subject subject, String label) {
    return subject
        .book()
        .site()
        .findNode(label)
        .map(Node::what)
        .map(what -> label + " " + what)
        .orElse(label);
  }

  /** A finding in a word or two, and where along the route, or along its own reach off it. */
  static String finding(Subject subject, Route route, PlacedFinding placed) {
    Words words = subject.words();
    return words.shortKind(placed.finding().kind()) + " " + distance(words, route, placed.from());
  }

  /** How far along the route a place is, or along its own reach where it lies off the route. */
  public static String distance(Words words, Route route, Place place) {
    OptionalDouble along = route.station(place);
    return along.isPresent()
        ? words.length(along.getAsDouble())
        : place.reach() + " " + words.length(place.distance());
  }

  /** A mark of another service by its word and its label, where the label says more. */
  public static String service(Subject subject, ServiceFound found) {
    String word = subject.words().name(found.mark().service());
    String label = found.mark().label();
    return label.toLowerCase(Locale.ROOT).contains(word) ? label : word + " " + label;
  }
}
