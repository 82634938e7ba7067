package daylight.line.answer;

import daylight.line.measure.Statement;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

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
   */
  public record Ask(Question question, Statement what, double minutes) {}

  /** What the answers of a line want. */
  public static Asks of(Answers.LineAnswers line) {
    Map<Statement, Ask> asks = new LinkedHashMap<>();
    for (Answer answer : line.answers()) {
      for (Statement missing : answer.missing()) {
        OptionalDouble minutes = minutes(missing);
        asks.putIfAbsent(missing, new Ask(answer.question(), missing, minutes.orElse(0)));
      }
    }
    List<Ask> here = new ArrayList<>();
    List<Ask> later = new ArrayList<>();
    asks.values().forEach(ask -> (ask.minutes() > 0 ? here : later).add(ask));
    here.sort(Comparator.comparingDouble(Ask::minutes));
    int cut = Math.min(MOST, here.size());
    return new Asks(here.subList(0, cut), here.subList(cut, here.size()), later);
  }

  /** How long a crew needs for it; empty for what needs no crew. */
  private static OptionalDouble minutes(Statement missing) {
    if (!(missing.key() instanceof AnswerKey key)) {
      return OptionalDouble.empty();
    }
    return switch (key) {
      case MISSING_SOIL -> OptionalDouble.of(1);
      case MISSING_SIGHT_NOTES, MISSING_BORE -> OptionalDouble.of(2);
      case MISSING_DEPTHS -> OptionalDouble.of(4);
      case MISSING_INVERT_LEVEL, MISSING_PUMP -> OptionalDouble.of(5);
      case MISSING_LOCATE_ON -> OptionalDouble.of(6);
      case MISSING_LOCATES -> OptionalDouble.of(8);
      case MISSING_LEVELS, MISSING_AREA -> OptionalDouble.of(10);
      case MISSING_SIGHT -> OptionalDouble.of(15);
      case MISSING_PASS, MISSING_PASS_TO -> OptionalDouble.of(20);
      default -> OptionalDouble.empty();
    };
  }
}
