package daylight.line.answer;

import static daylight.line.answer.Straight.LENGTH;
import static daylight.line.answer.Straight.answer;
import static daylight.line.answer.Straight.book;
import static org.assertj.core.api.Assertions.assertThat;

import daylight.line.book.Pass;
import daylight.line.course.Push;
import daylight.line.measure.Argument;
import daylight.line.measure.Statement;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** From where to where a pipe of 20 m was seen, by however many passes. */
class SightTest {
  /** From either end, as in: seen 0–8 and 15–20; 8–12 not seen; blind under water 12–15. */
  private static Statement fromBothEnds() {
    Push down =
        new Push("P1", "N1", "R1").end(8, Pass.Why.FRICTION, null).sight(0, 8, Pass.Clarity.CLEAR);
    Push up =
        new Push("P2", "N2", "R1")
            .end(8, Pass.Why.UNDER_WATER, null)
            .sight(0, 5, Pass.Clarity.CLEAR)
            .sight(5, 8, Pass.Clarity.BLIND);
    return seen(
        answer(book(down, 0.5, draft -> draft.along("N2", 3, 22).pass(up)), Question.CLEAR));
  }

  private static Statement seen(Answer answer) {
    return answer.reasons().stream()
        .filter(reason -> reason.key() == AnswerKey.SEEN)
        .findFirst()
        .orElseThrow();
  }

  /** From and to of each stretch of one sort, metres, to a tenth. */
  private static List<Double> stretches(Statement seen, Sight.Seen how) {
    Argument list = seen.arguments().get(1 + List.of(Sight.Seen.values()).indexOf(how));
    return ((Argument.Several) list)
        .items().stream()
            .map(item -> ((Argument.Said) item).statement())
            .flatMap(stretch -> stretch.arguments().stream())
            .map(end -> Math.rint(((Argument.Length) end).metres() * 2) / 2)
            .toList();
  }

  @Test
  void passesFromBothEndsMakeOneSentence() {
    Statement seen = fromBothEnds();

    assertThat(stretches(seen, Sight.Seen.CLEAR)).containsExactly(0.0, 8.0, 15.0, 20.0);
    assertThat(stretches(seen, Sight.Seen.UNDER_WATER)).containsExactly(12.0, 15.0);
    assertThat(stretches(seen, Sight.Seen.NOT_SEEN)).containsExactly(8.0, 12.0);
    assertThat(stretches(seen, Sight.Seen.POOR)).isEmpty();
    assertThat(stretches(seen, Sight.Seen.BLIND)).isEmpty();
  }

  @Test
  void theBetterSightOfTwoPassesCounts() {
    Push first =
        new Push("P1", "N1", "R1")
            .end(LENGTH, Pass.Why.OUTLET_REACHED, "N2")
            .sight(0, 20, Pass.Clarity.POOR);
    Push cleaned =
        new Push("P2", "N1", "R1")
            .end(LENGTH, Pass.Why.OUTLET_REACHED, "N2")
            .sight(0, 14, Pass.Clarity.CLEAR);
    Statement seen = seen(answer(book(first, 0.5, draft -> draft.pass(cleaned)), Question.CLEAR));

    assertThat(stretches(seen, Sight.Seen.CLEAR)).containsExactly(0.0, 14.0);
    assertThat(stretches(seen, Sight.Seen.POOR)).containsExactly(14.0, 20.0);
  }

  @Test
  void blindInStandingWaterIsBlindUnderWater() {
    Push push =
        new Push("P1", "N1", "R1")
            .end(LENGTH, Pass.Why.OUTLET_REACHED, "N2")
            .sight(0, 10, Pass.Clarity.CLEAR)
            .sight(10, 16, Pass.Clarity.BLIND)
            .sight(16, 20, Pass.Clarity.CLEAR)
            .stretch("standing-water", 11, 15, Map.of("depth", 0.08));
    Statement seen = seen(answer(book(push), Question.CLEAR));

    assertThat(stretches(seen, Sight.Seen.UNDER_WATER)).containsExactly(11.0, 15.0);
    assertThat(stretches(seen, Sight.Seen.BLIND)).containsExactly(10.0, 11.0, 15.0, 16.0);
  }
}
