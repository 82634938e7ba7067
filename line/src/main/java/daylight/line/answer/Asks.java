package daylight.line.answer;

import daylight.line.book.FieldBook;
import daylight.line.cause.Strength;
import daylight.line.course.Line;
import daylight.line.measure.Statement;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What the answers of a line still want, as a crew can do it: at most three things before the van
 * leaves, the quickest first, and apart from them what can be looked up later at a desk.
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
          asks.putIfAbsent(missing, ask(answer.question(), missing));
        }
      }
    }
    if (answers.lines().getFirst().equals(judged)) {
      complaint(answers.opening())
          .forEach(missing -> asks.putIfAbsent(missing, ask(Question.WHAT_NOW, missing)));
    }
    List<Ask> here = new ArrayList<>();
    List<Ask> later = new ArrayList<>();
    asks.values().forEach(ask -> (ask.minutes() > 0 ? here : later).add(ask));
    here.sort(Comparator.comparingDouble(Ask::minutes));
    int cut = Math.min(MOST, here.size());
    return new Asks(here.subList(0, cut), here.subList(cut, here.size()), later);
  }

  private static Ask ask(Question question, Statement missing) {
    return new Ask(question, missing, Minutes.of(missing).orElse(0), null);
  }

  /** What would tell more of the causes that may well be behind the complaint. */
  private static List<Statement> complaint(Opening opening) {
    return opening.ranked().stream()
        .filter(cause -> cause.strength() == Strength.POSSIBLE)
        .flatMap(cause -> cause.missing().stream())
        .distinct()
        .toList();
  }

  /** "Level the ground" is no more to be said where one measurement was found to tell most. */
  private static boolean said(Statement missing, Question question, List<Ask> gains) {
    return missing.key() == AnswerKey.MISSING_LEVELS
        && gains.stream().anyMatch(gain -> gain.question() == question);
  }
}
