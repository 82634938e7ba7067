package daylight.report.words;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.line.answer.Answer;
import daylight.line.answer.AnswerKey;
import daylight.line.answer.Evidence;
import daylight.line.answer.FigureKey;
import daylight.line.answer.Question;
import daylight.line.answer.State;
import daylight.line.answer.Sureness;
import daylight.line.measure.Argument;
import daylight.line.measure.Shown;
import daylight.line.measure.Statement;
import daylight.report.Example;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class SentenceNumbersTest {

  @ParameterizedTest
  @EnumSource(Shown.class)
  void everyNumberOfASentenceStandsInItsEvidence(Shown shown) {
    for (Language language : Language.values()) {
      everyNumberStandsInTheEvidence(Words.of(language, shown));
    }
  }

  private static void everyNumberStandsInTheEvidence(Words words) {
    List<Answer> answers = Example.usual().answers().lines().getFirst().answers();

    assertThat(answers).hasSize(Question.values().length);
    assertThat(answers)
        .allSatisfy(answer -> assertThat(SentenceNumbers.unfounded(answer, words)).isEmpty());
  }

  @Test
  void aNumberOutOfThinAirIsFound() {
    Words words = Words.of(Language.EN, Shown.METRES);
    Answer answer =
        new Answer(
            Question.DRAIN,
            State.NO,
            Statement.of(AnswerKey.DRAIN_WATER_DEPTH, new Argument.Length(1.25)),
            Sureness.SURE,
            List.of(),
            List.of(new Evidence.Figure(FigureKey.WATER_DEPTH, new Argument.Length(1.26), null)),
            null,
            List.of(),
            List.of(),
            List.of());

    assertThat(SentenceNumbers.unfounded(answer, words)).containsExactly("1.25");
  }
}
