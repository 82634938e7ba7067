package daylight.line.answer;

import daylight.line.book.FieldBook;
import daylight.line.course.Line;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Statement;
import daylight.line.survey.SurveyKey;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * What the answers of a line still want, as a crew can do it: at most three things before the van
 * leaves, the quickest first, and apart from them what can be looked up later at a desk.
 *
 * <p>Minutes are common practice, no source: they order what to do and promise nothing.
 *
 * @param now at most three, the quickest first
 * @param more what would be worth doing here besides
 * @param later what needs nobody on site
 */
public record Asks(List<Ask> now, List<Ask> more, List<Ask> later) {
  private static final int MOST = 3;

  public Asks {
    now = List.copyOf(now);
    more = List.copyOf(more);
    later = List.copyOf(later);
  }

  /**
   * One thing to do.
   *
   * @param question the first one that wants it
   * @param minutes how long it usually takes; 0 for what needs nobody on site
   * @param gain what it would make of the figure it is for; null where that was not computed
   */
  public record Ask(
      Question question, Statement what, double minutes, NextBest.@Nullable Option gain) {}

  /** What the answers of a line want, and what would make their figures surer. */
  public static Asks of(FieldBook book, Line line, Answers answers, Answers.LineAnswers judged) {
    List<Ask> gains = Gains.of(book, line, answers, judged);
    Map<Statement, Ask> asks = new LinkedHashMap<>();
    gains.forEach(gain -> asks.put(gain.what(), gain));
    for (Answer answer : judged.answers()) {
      for (Statement missing : answer.missing()) {
        if (!said(missing, answer.question(), gains)) {
          double minutes = minutes(missing).orElse(0);
          asks.putIfAbsent(missing, new Ask(answer.question(), missing, minutes, null));
        }
      }
    }
    List<Ask> here = new ArrayList<>();
    List<Ask> later = new ArrayList<>();
    asks.values().forEach(ask -> (ask.minutes() > 0 ? here : later).add(ask));
    here.sort(Comparator.comparingDouble(Ask::minutes));
    int cut = Math.min(MOST, here.size());
    return new Asks(here.subList(0, cut), here.subList(cut, here.size()), later);
  }

  /** "Level the ground" is no more to be said where one measurement was found to tell most. */
  private static boolean said(Statement missing, Question question, List<Ask> gains) {
    return missing.key() == AnswerKey.MISSING_LEVELS
        && gains.stream().anyMatch(gain -> gain.question() == question);
  }

  private static OptionalDouble minutes(CopeKey missing) {
    return switch (missing) {
      case MISSING_FIXTURES, MISSING_PIT_AREA -> OptionalDouble.of(3);
      case MISSING_FIXTURE_FLOW, MISSING_LIFT, MISSING_FALL -> OptionalDouble.of(5);
      case MISSING_PIT_RISE, MISSING_RISE_AGAIN -> OptionalDouble.of(10);
      case MISSING_RUN -> OptionalDouble.of(20);
      default -> OptionalDouble.empty();
    };
  }

  private static double minutes(Argument time) {
    return time instanceof Argument.Quantity(Dimension _, double seconds) ? seconds / 60 : 40;
  }

  /** How long a crew needs for it; empty for what needs no crew. */
  private static OptionalDouble minutes(Statement missing) {
    if (missing.key() instanceof SurveyKey) {
      // A third tape, or a look at which side it is.
      return OptionalDouble.of(2);
    }
    if (missing.key() instanceof CopeKey key) {
      return minutes(key);
    }
    if (!(missing.key() instanceof AnswerKey key)) {
      return OptionalDouble.empty();
    }
    return switch (key) {
      case MISSING_SOIL,
          MISSING_HOLD_REACHES,
          MISSING_HOLD_DURATION,
          MISSING_HOLD_RISER,
          MISSING_HOLD_HEAD ->
          OptionalDouble.of(1);
      case MISSING_SIGHT_NOTES, MISSING_BORE, MISSING_HOLD_LOSS -> OptionalDouble.of(2);
      case MISSING_LENGTH -> OptionalDouble.of(4);
      case MISSING_HOLD_SHORTER, MISSING_DYE_AGAIN, MISSING_TRACE -> OptionalDouble.of(15);
      case MISSING_HOLD, MISSING_HOLD_HIGHER, MISSING_HOLD_LOWER, MISSING_HOLD_FINER ->
          OptionalDouble.of(40);
      case MISSING_HOLD_LONGER -> OptionalDouble.of(minutes(missing.arguments().getLast()));
      case MISSING_DEPTHS -> OptionalDouble.of(4);
      case MISSING_INVERT_LEVEL, MISSING_PUMP -> OptionalDouble.of(5);
      case MISSING_LOCATE_ON, MISSING_SECOND -> OptionalDouble.of(6);
      case MISSING_LOCATES -> OptionalDouble.of(8);
      case MISSING_LEVELS, MISSING_AREA -> OptionalDouble.of(10);
      case MISSING_SIGHT -> OptionalDouble.of(15);
      case MISSING_PASS, MISSING_PASS_TO -> OptionalDouble.of(20);
      default -> OptionalDouble.empty();
    };
  }
}
