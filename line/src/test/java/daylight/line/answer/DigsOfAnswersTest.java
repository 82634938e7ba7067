package daylight.line.answer;

import static daylight.line.answer.Straight.book;
import static daylight.line.answer.Straight.judge;
import static daylight.line.answer.Straight.line;
import static daylight.line.answer.Straight.push;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import daylight.line.book.FieldBook;
import daylight.line.book.Place;
import daylight.line.course.Extra;
import daylight.line.course.Line;
import daylight.line.course.Wanted;
import daylight.line.dig.DigTarget;
import daylight.line.dig.DigTicket;
import daylight.line.measure.Argument;
import daylight.line.measure.Measured;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** Where to dig for what was found, and what would make that surer. */
class DigsOfAnswersTest {
  private static final FieldBook CRACKED =
      book(push().seen("roots", 5, Map.of("share", 0.4)).seen("crack", 11, Map.of("width", 0.002)));

  /** Roots that nobody can give a class come before a crack that has a year. */
  @Test
  void everyPieceOfWorkHasItsDigTheFirstOneFirst() {
    Answers answers = judge(CRACKED);

    assertThat(answers.digs())
        .extracting(dig -> dig.finding().finding().kind())
        .containsExactly("roots", "crack");
    assertThat(answers.digs())
        .allSatisfy(
            dig -> {
              assertThat(dig.ticket()).isInstanceOf(DigTicket.None.class);
              assertThat(dig.dig()).isInstanceOf(DigTarget.class);
            });
  }

  @Test
  void nobodyDigsForWhatACleaningTakesAway() {
    FieldBook greased =
        book(push().seen("grease", 5, Map.of("share", 0.2)).seen("roots", 11, Map.of()));

    assertThat(judge(greased).digs())
        .extracting(dig -> dig.finding().finding().kind() + " " + dig.cleaned())
        .containsExactlyInAnyOrder("grease true", "roots false");
  }

  @Test
  void whatNowTakesItsDepthAndItsTapesFromTheDig() {
    Answers answers = judge(CRACKED);
    DigTarget target = (DigTarget) answers.digs().getFirst().dig();
    Answer now = answers.lines().getFirst().to(Question.WHAT_NOW);
    Measured depth = Objects.requireNonNull(target.invert());

    assertThat(now.headline().key()).isEqualTo(AnswerKey.NOW_FIRST_DEEP);
    assertThat(now.headline().arguments().getLast()).isEqualTo(new Argument.UncertainLength(depth));
    assertThat(now.reasons().getFirst().key()).isEqualTo(AnswerKey.NOW_SPOT);
    assertThat(now.evidence())
        .filteredOn(one -> one instanceof Evidence.Figure f && f.what() == FigureKey.TAPE)
        .hasSize(2);
  }

  @Test
  void aLineWithAStopOrderIsNotDugFor() {
    Answers answers =
        judge(book(push().seen("foreign-cable", 3, Map.of()).seen("crack", 11, Map.of())));

    assertThat(answers.stops()).hasSize(1);
    assertThat(answers.digs()).isEmpty();
  }

  @Test
  void theAskBeforeLeavingSaysWhatItChangesAndToWhat() {
    Line line = line(CRACKED);
    Answers answers = Judge.judge(CRACKED, line, TestRules.rules());
    Asks asks = Asks.of(CRACKED, line, answers, answers.lines().getFirst());
    List<Asks.Ask> gains = asks.now().stream().filter(ask -> ask.gain() != null).toList();

    assertThat(gains).isNotEmpty();
    for (Asks.Ask ask : gains) {
      NextBest.Option gain = Objects.requireNonNull(ask.gain());
      List<Argument> told = ask.what().arguments();
      assertThat(((Argument.Length) told.get(3)).metres())
          .isCloseTo(Measured.Z95 * gain.now().sd(), within(1e-9));
      assertThat(((Argument.Length) told.get(4)).metres())
          .isCloseTo(Measured.Z95 * gain.then(), within(1e-9));
      assertThat(gain.then()).isLessThanOrEqualTo(0.8 * gain.now().sd());
      assertThat(ask.minutes()).isEqualTo(gain.kind().minutes());
    }
  }

  @Test
  void whatIsToldOfAnAskIsWhatTheMeasurementWouldDo() {
    Line line = line(CRACKED);
    Wanted wanted = new Wanted.Depth(new Place("R1", 11));
    NextBest.Option first = NextBest.of(line, wanted).getFirst();
    Extra extra = first.extra();

    assertThat(line.after(wanted, extra).orElseThrow().sd()).isEqualTo(first.then());
  }
}
