package daylight.line.answer;

import daylight.line.book.Boundary;
import daylight.line.book.Node;
import daylight.line.book.Place;
import daylight.line.course.CourseKey;
import daylight.line.course.Route;
import daylight.line.course.Run;
import daylight.line.course.Station;
import daylight.line.course.Wanted;
import daylight.line.dig.Crossing;
import daylight.line.dig.Digger;
import daylight.line.dig.Overlap;
import daylight.line.measure.Argument;
import daylight.line.measure.Measured;
import daylight.line.measure.Statement;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Where does it run? */
final class Where {
  /**
   * A line known to this much is known as well as a tolerance zone of 24 in either side asks
   * (Florida, as published by its notification centre; looked up), metres.
   */
  private static final double TIGHT = 0.61;

  /** Beyond this, metres, a spot is open; common practice, no source. */
  private static final double LOOSE = 1.5;

  /** A depth less certain than this, metres, bounds nothing where a better one is known. */
  private static final double WORTH_TELLING = 0.3;

  /** A chance of lying beyond a boundary from which it is told; common practice, no source. */
  private static final double WORTH_A_WORD = 0.05;

  /** How sure a course can be at most that is contradicted so. */
  private static final Map<CourseKey, Sureness> UNSURE =
      Map.of(
          CourseKey.CABLE_TOO_SHORT, Sureness.OPEN,
          CourseKey.NOT_SETTLED, Sureness.OPEN,
          CourseKey.CABLE_UNACCOUNTED, Sureness.LIKELY,
          CourseKey.UNSEEN_BEND, Sureness.LIKELY);

  private final Case one;
  private final Telling tell;

  private Where(Case one) {
    this.one = one;
    this.tell = new Telling(Question.WHERE, one);
  }

  static Answer answer(Case one) {
    return new Where(one).answer();
  }

  private Answer answer() {
    List<Station> stations = new ArrayList<>();
    for (Run run : one.runs()) {
      stations.addAll(run.stations());
    }
    if (stations.isEmpty()) {
      Unfound.missing(tell, one);
      return tell.answer(State.CANNOT_SAY_YET, Sureness.OPEN, AnswerKey.WHERE_NOT_FOUND);
    }
    one.runs().stream().filter(run -> run.path() instanceof Run.Path.NotFound).forEach(this::open);
    tell.caution(
        Caution.NOTIFY_BEFORE_DIGGING,
        Caution.HAND_DIG,
        Caution.LOCATES_APPROXIMATE,
        Caution.LOCAL_CODES);
    Station worst =
        stations.stream().max(Comparator.comparingDouble(Station::across)).orElseThrow();
    double halfWidth = Measured.Z95 * worst.across();
    tell.restsOn(new Wanted.Across(worst.place()));
    tell.reason(
        AnswerKey.WHERE_CORRIDOR,
        tell.station(worst.place()),
        tell.from(worst.place()),
        tell.figure(FigureKey.CORRIDOR, new Argument.Length(halfWidth), worst.place()));
    boolean through = one.main().runs().stream().allMatch(run -> run.length() != null);
    if (through) {
      outlet();
    } else {
      tell.reason(AnswerKey.WHERE_OUTLET_NOT_SEEN);
      tell.missing(AnswerKey.MISSING_PASS_TO, tell.node(one.main().to()));
    }
    crossings();
    Sureness sure =
        halfWidth <= TIGHT ? Sureness.SURE : halfWidth <= LOOSE ? Sureness.LIKELY : Sureness.OPEN;
    return headline(stations, contradicted(sure), through);
  }

  /** What contradicts the course is told with it, and nothing is sure of it then. */
  private Sureness contradicted(Sureness sure) {
    Sureness least = sure;
    for (Statement doubt : one.line().doubts()) {
      if (doubt.key() instanceof CourseKey key && UNSURE.containsKey(key) && isOfThisLine(doubt)) {
        tell.contradicted(doubt);
        Sureness most = UNSURE.getOrDefault(key, least);
        least = most.compareTo(least) > 0 ? most : least;
      }
    }
    return least;
  }

  private boolean isOfThisLine(Statement doubt) {
    return doubt.arguments().getFirst() instanceof Argument.Label(String label)
        && (label.equals(one.name())
            || one.runs().stream()
                .anyMatch(run -> run.reach().from().equals(label) || run.reach().to().equals(label))
            || one.line().locates().stream()
                .anyMatch(
                    fit -> fit.entry().label().equals(label) && one.has(fit.place().reach())));
  }

  private void open(Run run) {
    tell.reason(AnswerKey.WHERE_REACH_OPEN, new Argument.Label(run.reach().label()));
    tell.missing(AnswerKey.MISSING_LOCATE_ON, new Argument.Label(run.reach().label()));
  }

  private Answer headline(List<Station> stations, Sureness sure, boolean through) {
    Route main = one.main();
    Argument length = tell.figure(FigureKey.LENGTH, new Argument.Length(main.length()), null);
    List<Station> deep = stations.stream().filter(s -> s.depth() != null).toList();
    if (deep.isEmpty()) {
      tell.missing(AnswerKey.MISSING_DEPTHS);
      return tell.answer(
          State.ANSWERED,
          sure,
          through ? AnswerKey.WHERE_FOUND_FLAT : AnswerKey.WHERE_FOLLOWED_FLAT,
          length,
          tell.node(main.from()),
          tell.node(main.to()));
    }
    if (upper(deep) >= one.rules().limits().trenchNotice()) {
      tell.caution(Caution.TRENCH);
    }
    List<Station> known = deep.stream().filter(s -> depthSd(s) <= WORTH_TELLING).toList();
    List<Station> told = known.isEmpty() ? deep : known;
    Station least = told.stream().min(Comparator.comparingDouble(Where::depth)).orElseThrow();
    Station most = told.stream().max(Comparator.comparingDouble(Where::depth)).orElseThrow();
    return tell.answer(
        State.ANSWERED,
        sure,
        through ? AnswerKey.WHERE_FOUND : AnswerKey.WHERE_FOLLOWED,
        length,
        tell.node(main.from()),
        tell.node(main.to()),
        tell.figure(FigureKey.DEPTH_LEAST, depthOf(least), least.place()),
        tell.figure(FigureKey.DEPTH_MOST, depthOf(most), most.place()));
  }

  private static double depth(Station station) {
    Measured depth = station.depth();
    return depth == null ? 0 : depth.value();
  }

  private static double depthSd(Station station) {
    Measured depth = station.depth();
    return depth == null ? Double.POSITIVE_INFINITY : depth.sd();
  }

  private static Argument depthOf(Station station) {
    Measured depth = station.depth();
    return depth == null ? new Argument.Text("") : new Argument.UncertainLength(depth);
  }

  private static double upper(List<Station> stations) {
    double upper = 0;
    for (Station station : stations) {
      Measured depth = station.depth();
      if (depth != null) {
        upper = Math.max(upper, depth.upper95());
      }
    }
    return upper;
  }

  private void outlet() {
    Optional<Node> end =
        one.book().site().findNode(one.main().to()).filter(n -> n.kind() == Node.Kind.OUTLET);
    if (end.isPresent()) {
      tell.reason(AnswerKey.WHERE_OUTLET, tell.node(end.get().label()));
    } else {
      tell.reason(AnswerKey.WHERE_OUTLET_NOT_SEEN);
    }
  }

  private void crossings() {
    for (Boundary boundary : one.book().site().boundaries()) {
      for (Run run : one.runs()) {
        for (Crossing crossing : Digger.crossings(one.line(), run, boundary)) {
          Place place = crossing.place();
          tell.reason(
              AnswerKey.WHERE_CROSSES,
              named(boundary),
              tell.station(place),
              tell.from(place),
              tell.figure(
                  FigureKey.CROSSING,
                  new Argument.Length(Measured.Z95 * crossing.along().sd()),
                  place));
        }
        Digger.overlap(one.line(), run, boundary)
            .filter(overlap -> overlap.beyond() >= WORTH_A_WORD)
            .ifPresent(overlap -> mayCross(boundary, overlap));
      }
    }
  }

  private void mayCross(Boundary boundary, Overlap overlap) {
    Place place = overlap.place();
    tell.reason(
        AnswerKey.WHERE_MAY_CROSS,
        named(boundary),
        tell.station(place),
        tell.from(place),
        tell.figure(FigureKey.BESIDE, new Argument.Length(overlap.away()), place),
        tell.figure(FigureKey.BEYOND, new Argument.Probability(overlap.beyond()), place));
  }

  private static Argument named(Boundary boundary) {
    String kind = "boundary." + boundary.kind().name().toLowerCase(Locale.ROOT);
    return new Argument.Several(
        List.of(new Argument.Term(kind), new Argument.Label(boundary.label())));
  }
}
