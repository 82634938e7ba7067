package daylight.report.draw;

import daylight.line.answer.Answers;
import daylight.line.answer.Rules;
import daylight.line.book.Exposure;
import daylight.line.book.FieldBook;
import daylight.line.book.Locate;
import daylight.line.book.Node;
import daylight.line.book.Place;
import daylight.line.book.Visit;
import daylight.line.condition.CodeTable;
import daylight.line.course.Line;
import daylight.line.course.LocateFit;
import daylight.line.course.Route;
import daylight.line.course.Run;
import daylight.line.measure.Complaint;
import daylight.line.survey.Adjusted;
import daylight.line.survey.PlanPoint;
import daylight.report.shots.Shots;
import daylight.report.words.Words;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.stream.Stream;

/**
 * What is drawn and told, and in whose words.
 *
 * @param codes by which somebody else calls what was found
 * @param shots what footage lends
 * @param complaints about the book that do not stand in the way of answering it
 * @param plan which way up the plan lies
 */
public record Subject(
    FieldBook book,
    Line line,
    Answers answers,
    Rules rules,
    CodeTable codes,
    Shots shots,
    List<Complaint> complaints,
    Words words,
    PlanTurn plan) {
  public Subject {
    complaints = List.copyOf(complaints);
  }

  /** One whose plan lies as it fits. */
  public Subject(
      FieldBook book,
      Line line,
      Answers answers,
      Rules rules,
      CodeTable codes,
      Shots shots,
      List<Complaint> complaints,
      Words words) {
    this(book, line, answers, rules, codes, shots, complaints, words, PlanTurn.AS_IT_FITS);
  }

  /** One in our words alone. */
  public Subject(
      FieldBook book,
      Line line,
      Answers answers,
      Rules rules,
      Shots shots,
      List<Complaint> complaints,
      Words words) {
    this(book, line, answers, rules, CodeTable.NONE, shots, complaints, words);
  }

  /** The same with its plan another way up. */
  public Subject turned(PlanTurn way) {
    return new Subject(book, line, answers, rules, codes, shots, complaints, words, way);
  }

  /** The visit that was judged; empty when the book holds none of that label. */
  public Optional<Visit> visit() {
    return book.visits().stream()
        .filter(visit -> visit.label().equals(answers.visit()))
        .findFirst();
  }

  /** The surveyed points on the site grid, by label; none when the survey has no answer. */
  public SortedMap<String, PlanPoint> points() {
    return line.survey() instanceof Adjusted adjusted
        ? adjusted.points()
        : Collections.emptySortedMap();
  }

  /** The route that distances run along: the longest of the site; one without runs if none. */
  public Route route() {
    return Route.mains(line).stream().findFirst().orElse(new Route("", "", List.of()));
  }

  /** The reaches off a route, by label. */
  List<String> off(Route route) {
    return line.runs().stream()
        .map(run -> run.reach().label())
        .filter(label -> route.runs().stream().noneMatch(run -> run.reach().label().equals(label)))
        .toList();
  }

  /**
   * Whether it is known where a node at an end of a run lies: of a run that nobody followed to its
   * far end only the end where a camera went in is.
   */
  public boolean reached(Run run, String node) {
    return run.length() != null
        || book.visits().stream()
            .flatMap(visit -> visit.passes().stream())
            .anyMatch(pass -> pass.entry().equals(node));
  }

  /** Whether a place on the ground is one where the pipe itself was laid bare. */
  boolean isExposure(LocateFit fit) {
    return book.visits().stream()
        .flatMap(visit -> visit.exposures().stream())
        .anyMatch(exposure -> exposure.id().equals(fit.entry()));
  }

  /** On which visit something was found from the ground; the judged one where no visit has it. */
  public String visitOf(LocateFit fit) {
    return book.visits().stream()
        .filter(
            visit ->
                Stream.concat(
                        visit.locates().stream().map(Locate::id),
                        visit.exposures().stream().map(Exposure::id))
                    .anyMatch(fit.entry()::equals))
        .map(Visit::label)
        .findFirst()
        .orElse(answers.visit());
  }

  /** How far along the main route a place is, or along its own reach where it lies off it. */
  public String distance(Place place) {
    return Captions.distance(words, route(), place);
  }

  /** What a node is; an end where the book does not name it. */
  Node.Kind kind(String node) {
    return book.site().findNode(node).map(Node::kind).orElse(Node.Kind.END);
  }

  /** The id of the symbol of a kind of finding; {@code other} for a kind that is not known. */
  public String symbol(String kind) {
    return rules.catalogue().find(kind).map(found -> found.symbol()).orElse("other");
  }
}
