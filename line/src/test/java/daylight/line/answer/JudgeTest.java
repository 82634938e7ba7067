package daylight.line.answer;

import static daylight.line.answer.Straight.LENGTH;
import static daylight.line.answer.Straight.answer;
import static daylight.line.answer.Straight.bare;
import static daylight.line.answer.Straight.book;
import static daylight.line.answer.Straight.judge;
import static daylight.line.answer.Straight.line;
import static daylight.line.answer.Straight.push;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import daylight.line.book.Boundary;
import daylight.line.book.FieldBook;
import daylight.line.book.Finding;
import daylight.line.book.Material;
import daylight.line.book.Node;
import daylight.line.book.Pass;
import daylight.line.book.Place;
import daylight.line.book.Where;
import daylight.line.cause.Strength;
import daylight.line.condition.Grade;
import daylight.line.course.Draft;
import daylight.line.course.Push;
import daylight.line.course.Route;
import daylight.line.measure.Argument;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What each question answers, state by state. */
class JudgeTest {
  @Test
  void aLineThatWasLocatedIsFound() {
    Answer where = answer(book(push()), Question.WHERE);

    assertThat(where.state()).isEqualTo(State.ANSWERED);
    assertThat(where.headline().key()).isEqualTo(AnswerKey.WHERE_FOUND);
    assertThat(where.cautions()).contains(Caution.NOTIFY_BEFORE_DIGGING, Caution.HAND_DIG);
  }

  @Test
  void aLineThatWasNotLocatedAsksForLocates() {
    FieldBook book = bare(push(), Draft.pipe("R1", "N1", "N2", "main", Material.PVC, 0.1)).book();

    Answer where = answer(book, Question.WHERE);

    assertThat(where.state()).isEqualTo(State.CANNOT_SAY_YET);
    assertThat(where.missing()).extracting(s -> s.key()).contains(AnswerKey.MISSING_LOCATES);
    assertThat(answer(book, Question.DRAIN).headline().key()).isEqualTo(AnswerKey.DRAIN_NO_HEIGHTS);
  }

  @Test
  void aBoundaryIsCrossedOnceAndWhereItIs() {
    FieldBook book =
        book(
            push(),
            0.5,
            draft ->
                draft
                    .landmark("C", false)
                    .landmark("D", false)
                    .along("C", 0, 12)
                    .along("D", 9, 12)
                    .boundary(
                        new Boundary(
                            Draft.id("boundary", "the line"),
                            Boundary.Kind.PROPERTY_LINE,
                            List.of("C", "D"),
                            "ours",
                            "theirs")));

    Answer where = answer(book, Question.WHERE);

    List<List<Argument>> crossings =
        where.reasons().stream()
            .filter(r -> r.key() == AnswerKey.WHERE_CROSSES)
            .map(r -> r.arguments())
            .toList();
    assertThat(crossings).hasSize(1);
    double at = ((Argument.Length) crossings.getFirst().get(1)).metres();
    assertThat(at).isBetween(9.5, 10.5);
  }

  @Test
  void aPipeSeenAllTheWayIsClear() {
    Answer clear = answer(book(push()), Question.CLEAR);

    assertThat(clear.state()).isEqualTo(State.WITHIN_LIMITS);
    assertThat(clear.headline().key()).isEqualTo(AnswerKey.CLEAR_YES);
  }

  @Test
  void aPipeSeenInPartIsClearForThePartSeen() {
    Push push =
        new Push("P1", "N1", "R1")
            .end(LENGTH, Pass.Why.OUTLET_REACHED, "N2")
            .sight(0, 15, Pass.Clarity.CLEAR)
            .sight(15, 20, Pass.Clarity.POOR);
    Answers answers = judge(book(push));

    Answer clear = answers.lines().getFirst().to(Question.CLEAR);
    Answer sound = answers.lines().getFirst().to(Question.SOUND);
    assertThat(clear.headline().key()).isEqualTo(AnswerKey.CLEAR_FOR_PART);
    assertThat(clear.missing()).extracting(s -> s.key()).contains(AnswerKey.MISSING_SIGHT);
    assertThat(sound.sure()).isEqualTo(Sureness.OPEN);
  }

  @Test
  void aPipeWhoseEndNobodyReachedIsNeverClearAllTheWay() {
    Push push =
        new Push("P1", "N1", "R1")
            .end(LENGTH, Pass.Why.END_OF_CABLE, null)
            .sight(0, LENGTH, Pass.Clarity.CLEAR);
    Answers answers = judge(book(push));

    Answer clear = answers.lines().getFirst().to(Question.CLEAR);
    assertThat(clear.headline().key()).isEqualTo(AnswerKey.CLEAR_SO_FAR);
    assertThat(clear.missing()).extracting(s -> s.key()).contains(AnswerKey.MISSING_PASS_TO);
    assertThat(answers.lines().getFirst().to(Question.SOUND).sure()).isEqualTo(Sureness.OPEN);
  }

  @Test
  void rootsAreInTheWay() {
    Answer clear = answer(book(push().seen("roots", 7, Map.of("share", 0.4))), Question.CLEAR);

    assertThat(clear.state()).isEqualTo(State.NO);
    assertThat(clear.headline().key()).isEqualTo(AnswerKey.CLEAR_NO_SHARE);
  }

  @Test
  void aPipeNobodyLookedIntoIsNeitherClearNorSound() {
    Push blind = new Push("P1", "N1", "R1").end(LENGTH, Pass.Why.OUTLET_REACHED, "N2");

    assertThat(answer(book(blind), Question.CLEAR).state()).isEqualTo(State.CANNOT_SAY_YET);
    assertThat(answer(book(blind), Question.SOUND).state()).isEqualTo(State.CANNOT_SAY_YET);
  }

  @Test
  void aCameraThatWasStoppedSaysWhereAndWhy() {
    Push push =
        new Push("P1", "N1", "R1")
            .end(12, Pass.Why.OBSTRUCTION, null)
            .sight(0, 12, Pass.Clarity.CLEAR);

    assertThat(answer(book(push), Question.CLEAR).reasons())
        .extracting(s -> s.key())
        .contains(AnswerKey.CLEAR_STOPPED);
  }

  @Test
  void defectsAreToldAndNoneProvesNoTightness() {
    Answer cracked = answer(book(push().seen("crack", 5, Map.of("width", 0.002))), Question.SOUND);
    Answer none = answer(book(push()), Question.SOUND);

    assertThat(cracked.state()).isEqualTo(State.NO);
    assertThat(cracked.reasons())
        .extracting(s -> s.key())
        .contains(AnswerKey.SOUND_WORST)
        .doesNotContain(AnswerKey.SOUND_UNGRADED, AnswerKey.SOUND_AT_ONCE);
    assertThat(none.state()).isEqualTo(State.WITHIN_LIMITS);
    assertThat(none.reasons()).extracting(s -> s.key()).contains(AnswerKey.SOUND_NOT_TIGHT);
  }

  /** Of three cracks that of 12 mm decides, wherever it lies; one without a width has no grade. */
  @Test
  void theWorstDefectIsToldWithItsGradeAndActionAtOnceApart() {
    Push push =
        push()
            .seen("crack", 3, Map.of("width", 0.001))
            .seen("crack", 5, Map.of("width", 0.012))
            .seen("crack", 7, Map.of());
    Answer sound = answer(book(push), Question.SOUND);

    assertThat(sound.evidence())
        .anySatisfy(
            evidence ->
                assertThat(evidence)
                    .isInstanceOfSatisfying(
                        Evidence.Figure.class,
                        figure -> {
                          assertThat(figure.what()).isEqualTo(FigureKey.GRADE);
                          assertThat(figure.figure())
                              .isEqualTo(new Argument.Said(Sound.said(Grade.SHORT_TERM)));
                        }));
    assertThat(sound.reasons()).extracting(s -> s.key()).contains(AnswerKey.SOUND_AT_ONCE);

    Answer open = answer(book(push().seen("crack", 7, Map.of())), Question.SOUND);
    assertThat(open.reasons())
        .extracting(s -> s.key())
        .contains(AnswerKey.SOUND_UNGRADED)
        .doesNotContain(AnswerKey.SOUND_WORST);
  }

  @ParameterizedTest
  @EnumSource(Placed.class)
  void aForeignCableStopsTheWorkWhetherItsPlaceIsKnownOrNot(Placed placed) {
    Where where =
        placed == Placed.BY_COUNTER
            ? new Where.AtCable(Draft.metres(9))
            : new Where.AtMoment("F1", 30);
    Push push =
        push().finding("foreign-cable", where, Finding.Moving.PUSHING, Map.of(), Map.of(), null);

    Answers answers = judge(book(push));

    assertThat(answers.stops()).hasSize(1);
    assertThat(answers.cautions()).contains(Caution.GAS);
    Answer now = answers.lines().getFirst().to(Question.WHAT_NOW);
    assertThat(now.headline().key()).isEqualTo(AnswerKey.NOW_STOP);
  }

  enum Placed {
    BY_COUNTER,
    BY_A_MOMENT_NOBODY_READ
  }

  @Test
  void whatIsToBeDoneFirstIsTheDefectAndHowDeepItLies() {
    Answer now = answer(book(push().seen("crack", 5, Map.of())), Question.WHAT_NOW);
    Answer nothing = answer(book(push()), Question.WHAT_NOW);

    assertThat(now.headline().key()).isEqualTo(AnswerKey.NOW_FIRST_DEEP);
    assertThat(nothing.headline().key()).isIn(AnswerKey.NOW_MEASURE, AnswerKey.NOW_NOTHING);
  }

  @Test
  void copingAndFreezingNameWhatTheyNeed() {
    for (Question question : List.of(Question.COPE, Question.FREEZE)) {
      Answer answer = answer(book(push()), question);
      assertThat(answer.state()).isEqualTo(State.CANNOT_SAY_YET);
      assertThat(answer.missing()).isNotEmpty();
    }
  }

  @Test
  void theComplaintOpensWithAProbableCause() {
    Answers answers = judge(book(push().seen("roots", 7, Map.of("share", 0.4))));

    assertThat(answers.opening().words()).isEqualTo("it backs up when it rains");
    Opening.Ranked first = answers.opening().ranked().getFirst();
    assertThat(first.cause()).isEqualTo("roots");
    assertThat(first.strength()).isEqualTo(Strength.PROBABLE);
    assertThat(first.speaksFor()).extracting(s -> s.key()).containsExactly(OpeningKey.FOUND_SHARE);
  }

  @Test
  void aBookWithoutAVisitIsRefused() {
    FieldBook book = book(push());
    FieldBook empty = new FieldBook(book.id(), book.units(), book.site(), List.of());

    assertThatThrownBy(() -> Judge.judge(empty, line(book), TestRules.rules()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("without a visit");
  }

  @Test
  void theLongestWayWithTheWaterIsTheMainRouteAndABranchEndsWhereItMeetsIt() {
    Draft draft =
        bare(
            new Push("P1", "N1", "R1", "R2")
                .node(12, "J", Finding.Moving.PUSHING)
                .end(20, Pass.Why.OUTLET_REACHED, "N2"),
            Draft.pipe("R1", "N1", "J", "main", Material.PVC, 0.1));
    draft.reach("R2", "J", "N2").reach("R3", "N3", "J");
    draft.node("J", Node.Kind.JUNCTION).node("N3", Node.Kind.ACCESS);
    draft.pass(new Push("P2", "N3", "R3").end(5, Pass.Why.MAIN_REACHED, "J"));

    List<Route> routes = Route.of(line(draft.book()), "main");

    assertThat(routes).hasSize(2);
    assertThat(routes.get(0).from()).isEqualTo("N1");
    assertThat(routes.get(0).to()).isEqualTo("N2");
    assertThat(routes.get(1).from()).isEqualTo("N3");
    assertThat(routes.get(1).to()).isEqualTo("J");
    assertThat(routes.get(0).station(new Place("R2", 1)).orElseThrow()).isBetween(12.8, 13.2);
    assertThat(routes.get(0).station(new Place("R3", 1))).isEmpty();
  }
}
