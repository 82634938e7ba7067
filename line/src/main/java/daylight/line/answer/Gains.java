package daylight.line.answer;

import daylight.line.book.FieldBook;
import daylight.line.book.Place;
import daylight.line.course.Line;
import daylight.line.course.Route;
import daylight.line.course.Wanted;
import daylight.line.dig.DigTarget;
import daylight.line.fall.FallStretch;
import daylight.line.measure.Argument;
import daylight.line.measure.Measured;
import daylight.line.measure.Statement;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Measurements that would make the figures behind the answers of a line surer: where it is least
 * sure to run, whether it falls enough, how deep the first dig goes. For each the one that tells
 * most for its minutes.
 */
final class Gains {
  /**
   * A measurement that leaves more than this of the doubt is not worth the van's waiting; common
   * practice, no source.
   */
  private static final double WORTH_IT = 0.8;

  /** A depth known to this, metres, is known well enough to dig; common practice, no source. */
  private static final double DEEP_ENOUGH = 0.15;

  /**
   * A chance of being too flat between this and one less it leaves the question open; common
   * practice, no source.
   */
  private static final double OPEN = 0.05;

  private final FieldBook book;
  private final Line line;
  private final List<Route> routes;

  private Gains(FieldBook book, Line line, String name) {
    this.book = book;
    this.line = line;
    this.routes = Route.of(line, name);
  }

  static List<Asks.Ask> of(FieldBook book, Line line, Answers answers, Answers.LineAnswers judged) {
    Gains gains = new Gains(book, line, judged.line());
    List<Asks.Ask> asks = new ArrayList<>();
    gains.where(judged.to(Question.WHERE)).ifPresent(asks::add);
    gains.drain(judged.to(Question.DRAIN), answers).ifPresent(asks::add);
    gains.dig(judged.line(), answers).ifPresent(asks::add);
    return asks;
  }

  private Optional<Asks.Ask> where(Answer where) {
    if (where.sure() == Sureness.SURE) {
      return Optional.empty();
    }
    return where.evidence().stream()
        .filter(Evidence.Figure.class::isInstance)
        .map(Evidence.Figure.class::cast)
        .filter(figure -> figure.what() == FigureKey.CORRIDOR)
        .findFirst()
        .flatMap(figure -> Optional.ofNullable(figure.at()))
        .flatMap(
            at ->
                best(
                    Question.WHERE,
                    new Wanted.Across(at),
                    Statement.of(AnswerKey.KNOWN_PLACE, station(at), from(at))));
  }

  private Optional<Asks.Ask> drain(Answer drain, Answers answers) {
    if (drain.state() == State.DOES_NOT_APPLY || drain.state() == State.NO) {
      return Optional.empty();
    }
    return answers.fall().stretches().stream()
        .filter(stretch -> on(stretch.from()))
        .filter(stretch -> chance(stretch) > OPEN && chance(stretch) < 1 - OPEN)
        .min(Comparator.comparingDouble(stretch -> Math.abs(chance(stretch) - 0.5)))
        .flatMap(
            stretch ->
                best(
                    Question.DRAIN,
                    new Wanted.Fall(stretch.from(), stretch.to()),
                    Statement.of(
                        AnswerKey.KNOWN_FALL,
                        station(stretch.from()),
                        station(stretch.to()),
                        from(stretch.from()))));
  }

  private static double chance(FallStretch stretch) {
    Double below = stretch.belowLimit();
    return below == null ? stretch.adverse() : below;
  }

  private Optional<Asks.Ask> dig(String name, Answers answers) {
    return answers.digs().stream()
        .filter(dig -> dig.line().equals(name) && !dig.cleaned())
        .map(DigPlace::dig)
        .findFirst()
        .filter(DigTarget.class::isInstance)
        .map(DigTarget.class::cast)
        .filter(target -> doubt(target.invert()) > DEEP_ENOUGH)
        .flatMap(
            target ->
                best(
                    Question.WHAT_NOW,
                    new Wanted.Depth(target.place()),
                    Statement.of(
                        AnswerKey.KNOWN_DEPTH, station(target.place()), from(target.place()))));
  }

  private static double doubt(@Nullable Measured depth) {
    return depth == null ? 0 : Measured.Z95 * depth.sd();
  }

  private Optional<Asks.Ask> best(Question question, Wanted wanted, Statement known) {
    return NextBest.of(line, wanted).stream()
        .filter(option -> option.then() <= WORTH_IT * option.now().sd())
        .findFirst()
        .map(option -> ask(question, known, option));
  }

  private Asks.Ask ask(Question question, Statement known, NextBest.Option option) {
    Place at = option.extra().place();
    AnswerKey key =
        switch (option.kind()) {
          case LOCATE -> AnswerKey.ASK_LOCATE;
          case LEVEL -> AnswerKey.ASK_LEVEL;
          case PROBE -> AnswerKey.ASK_PROBE;
        };
    Statement what =
        Statement.of(
            key,
            station(at),
            from(at),
            new Argument.Said(known),
            new Argument.Length(Measured.Z95 * option.now().sd()),
            new Argument.Length(Measured.Z95 * option.then()));
    return new Asks.Ask(question, what, option.kind().minutes(), option);
  }

  private boolean on(Place place) {
    return routes.stream().anyMatch(route -> route.station(place).isPresent());
  }

  private Route route(Place place) {
    return routes.stream()
        .filter(route -> route.station(place).isPresent())
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no route passes " + place));
  }

  private Argument station(Place place) {
    return new Argument.Length(route(place).station(place).orElseThrow());
  }

  private Argument from(Place place) {
    return new Argument.Text(Case.named(book, route(place).from()));
  }
}
