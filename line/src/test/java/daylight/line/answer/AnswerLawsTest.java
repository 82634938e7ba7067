package daylight.line.answer;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.line.book.FieldBook;
import daylight.line.counter.Tracks;
import daylight.line.course.Estimator;
import daylight.line.course.OddBooksTest;
import daylight.line.course.SimulatedProperty;
import daylight.line.course.TestPriors;
import daylight.line.measure.Argument;
import daylight.line.measure.Statement;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What holds of every answer, whatever was measured. */
class AnswerLawsTest {
  @Test
  void noSentenceHoldsAFigureWithoutEvidence() {
    for (int seed = 201; seed <= 206; seed++) {
      lawful(SimulatedProperty.of(seed).book());
    }
    for (int seed = 1; seed <= 40; seed++) {
      lawful(OddBooksTest.odd(seed));
    }
  }

  @Test
  @Tag("long")
  void norOverHundredsOfBooks() {
    for (int seed = 207; seed <= 260; seed++) {
      lawful(SimulatedProperty.of(seed).book());
    }
    for (int seed = 41; seed <= 400; seed++) {
      lawful(OddBooksTest.odd(seed));
    }
  }

  private static void lawful(FieldBook book) {
    Answers answers =
        Judge.judge(
            book, Estimator.estimate(book, Tracks.NONE, TestPriors.shipped()), TestRules.rules());
    lawful(answers.opening());
    for (Answers.LineAnswers line : answers.lines()) {
      assertThat(line.answers()).extracting(Answer::question).containsExactly(Question.values());
      line.answers().forEach(AnswerLawsTest::lawful);
    }
  }

  private static void lawful(Opening opening) {
    List<Statement> told = new ArrayList<>(opening.told());
    told.addAll(opening.causes());
    told.addAll(opening.against());
    for (Opening.Ranked cause : opening.ranked()) {
      told.addAll(cause.speaksFor());
      told.addAll(cause.speaksAgainst());
      told.addAll(cause.missing());
    }
    founded(told, opening.evidence());
  }

  private static void lawful(Answer answer) {
    List<Statement> told = new ArrayList<>(answer.reasons());
    told.add(answer.headline());
    told.addAll(answer.missing());
    founded(told, answer.evidence());
    if (answer.state() == State.CANNOT_SAY_YET) {
      assertThat(answer.missing()).isNotEmpty();
    }
  }

  private static void founded(List<Statement> told, List<Evidence> laid) {
    Set<Argument> known = new HashSet<>();
    for (Evidence evidence : laid) {
      switch (evidence) {
        case Evidence.Figure figure -> known.add(figure.figure());
        case Evidence.Seen seen -> {
          if (seen.size() != null) {
            known.add(seen.size());
          }
        }
        case Evidence.Noted noted -> known.add(noted.what());
        case Evidence.Rule rule -> known.add(rule.limit());
      }
    }
    for (Statement statement : told) {
      for (Argument argument : statement.arguments()) {
        figures(argument).forEach(figure -> assertThat(known).as("%s", statement).contains(figure));
      }
    }
  }

  /** The arguments that are figures rather than words. */
  private static List<Argument> figures(Argument argument) {
    return switch (argument) {
      case Argument.Several several ->
          several.items().stream().flatMap(item -> figures(item).stream()).toList();
      case Argument.Either either ->
          either.items().stream().flatMap(item -> figures(item).stream()).toList();
      case Argument.Said(var statement) ->
          statement.arguments().stream().flatMap(item -> figures(item).stream()).toList();
      case Argument.Text _,
          Argument.Term _,
          Argument.Label _,
          Argument.Choices _,
          Argument.Reason _,
          Argument.Day _ ->
          List.of();
      default -> List.of(argument);
    };
  }
}
