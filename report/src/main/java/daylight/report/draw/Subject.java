package daylight.report.draw;

import daylight.line.answer.Answers;
import daylight.line.answer.Rules;
import daylight.line.book.FieldBook;
import daylight.line.book.Place;
import daylight.line.book.Visit;
import daylight.line.course.Line;
import daylight.line.measure.Complaint;
import daylight.line.survey.Adjusted;
import daylight.line.survey.PlanPoint;
import daylight.report.words.Words;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;

/**
 * What is drawn and told, and in whose words.
 *
 * @param complaints about the book that do not stand in the way of answering it
 */
public record Subject(
    FieldBook book,
    Line line,
    Answers answers,
    Rules rules,
    List<Complaint> complaints,
    Words words) {
  public Subject {
    complaints = List.copyOf(complaints);
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

  /** How far along the main route a place is, or along its own reach where it lies off it. */
  public String distance(Place place) {
    return Captions.distance(words, Route.main(this), place);
  }

  /** The id of the symbol of a kind of finding; {@code other} for a kind that is not known. */
  public String symbol(String kind) {
    return rules.catalogue().find(kind).map(found -> found.symbol()).orElse("other");
  }
}
