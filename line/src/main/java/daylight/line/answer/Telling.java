package daylight.line.answer;

import daylight.line.book.Entry;
import daylight.line.book.Place;
import daylight.line.book.Reach;
import daylight.line.course.Contribution;
import daylight.line.course.PlacedFinding;
import daylight.line.course.Wanted;
import daylight.line.measure.Argument;
import daylight.line.measure.Key;
import daylight.line.measure.Measured;
import daylight.line.measure.Reading;
import daylight.line.measure.Statement;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * An answer in the making. Every figure that goes into a sentence is laid down as evidence by the
 * same call, so that no sentence can hold a figure without it.
 */
final class Telling {
  private final Question question;
  private final Case of;
  private final List<Statement> reasons = new ArrayList<>();
  private final List<Statement> notes = new ArrayList<>();
  private final Set<Evidence> evidence = new LinkedHashSet<>();
  private final Set<Caution> cautions = new LinkedHashSet<>();
  private final List<Statement> missing = new ArrayList<>();
  private @Nullable Wanted leading;
  private List<Contribution> contributions = List.of();

  Telling(Question question, Case of) {
    this.question = question;
    this.of = of;
  }

  /** A figure for a sentence, laid down as evidence. */
  Argument figure(FigureKey what, Argument value, @Nullable Place at) {
    evidence.add(new Evidence.Figure(what, value, at));
    return value;
  }

  /** The station of a place along its route, laid down as evidence. */
  Argument station(Place place) {
    return figure(FigureKey.STATION, new Argument.Length(of.station(place)), place);
  }

  /** What people call the node at which the stations of a place's route start. */
  Argument from(Place place) {
    return new Argument.Text(of.named(of.route(place).from()));
  }

  Argument node(String label) {
    return new Argument.Text(of.named(label));
  }

  /** The word for a finding's kind, the finding laid down as evidence. */
  Argument finding(PlacedFinding placed) {
    Reading size = placed.finding().quantities().values().stream().findFirst().orElse(null);
    evidence.add(
        new Evidence.Seen(
            placed.finding().label(), placed.finding().kind(), placed.from(), size(placed, size)));
    return new Argument.Term("kind." + placed.finding().kind());
  }

  private @Nullable Argument size(PlacedFinding placed, @Nullable Reading size) {
    if (size == null) {
      return null;
    }
    String name = placed.finding().quantities().firstKey();
    return of.kind(placed)
        .map(kind -> kind.quantities().get(name))
        .map(dimension -> (Argument) new Argument.Quantity(dimension, size.value()))
        .orElse(null);
  }

  void rule(daylight.line.fall.FallLimit limit) {
    evidence.add(
        new Evidence.Rule(
            limit.rules(),
            limit.clause(),
            new Argument.Quantity(daylight.line.measure.Dimension.SLOPE, limit.slope()),
            limit.source()));
  }

  void rule(String rules, String clause, Argument limit, String source) {
    evidence.add(new Evidence.Rule(rules, clause, limit, source));
  }

  void noted(Entry entry, Argument what) {
    evidence.add(new Evidence.Noted(entry.id(), what));
  }

  /** The finding of that label. */
  void noted(String finding, Argument what) {
    of.line().findings().stream()
        .map(PlacedFinding::finding)
        .filter(one -> one.label().equals(finding))
        .findFirst()
        .ifPresent(one -> noted(one, what));
  }

  /** Something to be said, once. */
  void reason(Key key, Argument... arguments) {
    Statement statement = Statement.of(key, arguments);
    if (!reasons.contains(statement)) {
      reasons.add(statement);
    }
  }

  /** What a figure was taken from: said once, after all reasons. */
  void note(Key key, Argument... arguments) {
    Statement statement = Statement.of(key, arguments);
    if (!notes.contains(statement)) {
      notes.add(statement);
    }
  }

  void missing(Key key, Argument... arguments) {
    Statement statement = Statement.of(key, arguments);
    if (!missing.contains(statement)) {
      missing.add(statement);
    }
  }

  /** What another room says is missing. */
  void missing(Statement statement) {
    if (!missing.contains(statement)) {
      missing.add(statement);
    }
  }

  /** What another room found; its figures are laid down as evidence. */
  void contradicted(Statement doubt) {
    for (Argument argument : doubt.arguments()) {
      if (argument instanceof Argument.Length || argument instanceof Argument.Quantity) {
        figure(FigureKey.CONTRADICTED, argument, null);
      }
    }
    reasons.add(doubt);
  }

  boolean misses() {
    return !missing.isEmpty();
  }

  void caution(Caution... more) {
    cautions.addAll(List.of(more));
  }

  /** Roof and yard water alone is no sewage; anything else, known or not, may be. */
  void cautionSewage() {
    boolean storm = of.runs().stream().allMatch(run -> run.reach().use() == Reach.Use.STORM);
    if (!storm) {
      cautions.add(Caution.SEWAGE);
    }
  }

  /** The figure that the answer turns on: what it rests on goes with the answer. */
  void restsOn(Wanted figure) {
    leading = figure;
    contributions = of.line().why(figure);
  }

  static Argument slope(Measured slope) {
    return new Argument.UncertainSlope(slope);
  }

  private List<Statement> said() {
    List<Statement> said = new ArrayList<>(reasons);
    said.addAll(notes);
    return said;
  }

  Answer answer(State state, Sureness sure, Key key, Argument... arguments) {
    return new Answer(
        question,
        state,
        Statement.of(key, arguments),
        sure,
        said(),
        List.copyOf(evidence),
        leading,
        contributions,
        List.copyOf(cautions),
        missing);
  }
}
