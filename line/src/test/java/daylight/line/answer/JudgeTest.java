package daylight.line.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import daylight.line.book.Boundary;
import daylight.line.book.FieldBook;
import daylight.line.book.Finding;
import daylight.line.book.Level;
import daylight.line.book.Material;
import daylight.line.book.Node;
import daylight.line.book.Pass;
import daylight.line.book.Place;
import daylight.line.book.Reach;
import daylight.line.book.Test.Kind;
import daylight.line.book.Where;
import daylight.line.counter.Tracks;
import daylight.line.course.Draft;
import daylight.line.course.Estimator;
import daylight.line.course.Line;
import daylight.line.course.Push;
import daylight.line.course.Route;
import daylight.line.course.TestPriors;
import daylight.line.measure.Argument;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What each question answers, state by state. */
class JudgeTest {
  private static final double LENGTH = 20;

  private static Push push() {
    return new Push("P1", "N1", "R1")
        .end(LENGTH, Pass.Why.OUTLET_REACHED, "N2")
        .sight(0, LENGTH, Pass.Clarity.CLEAR);
  }

  /**
   * A pipe straight out from the wall, 1 m deep at N1, whose inverts were levelled at both ends.
   */
  private static FieldBook book(Push push, double drop, Consumer<Draft> more) {
    Draft draft = bare(push, Draft.pipe("R1", "N1", "N2", "main", Material.PVC, 0.1));
    for (double at : new double[] {2, 8, 14, 19}) {
      String label = "L" + (int) at;
      draft.locate(label, "P1", at, 1 + drop * at / LENGTH).along(label, 3, 2 + at);
    }
    draft.height("N1", Level.Part.INVERT, 99).height("N2", Level.Part.INVERT, 99 - drop);
    more.accept(draft);
    return draft.book();
  }

  private static Draft bare(Push push, Reach reach) {
    return new Draft()
        .landmark("A", true)
        .landmark("B", true)
        .tape("A", "B", 10)
        .node("N1", Node.Kind.ACCESS)
        .node("N2", Node.Kind.OUTLET)
        .kit(0.0, 0.0)
        .reach(reach)
        .pass(push);
  }

  private static FieldBook book(Push push) {
    return book(push, 0.5, draft -> {});
  }

  private static Line line(FieldBook book) {
    return Estimator.estimate(book, Tracks.NONE, TestPriors.shipped());
  }

  private static Answers judge(FieldBook book) {
    return Judge.judge(book, line(book), TestRules.rules());
  }

  private static Answer answer(FieldBook book, Question question) {
    return judge(book).lines().getFirst().to(question);
  }

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
    assertThat(clear.headline().key()).isEqualTo(AnswerKey.CLEAR_FOR_PART);
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
    assertThat(none.state()).isEqualTo(State.WITHIN_LIMITS);
    assertThat(none.reasons()).extracting(s -> s.key()).contains(AnswerKey.SOUND_NOT_TIGHT);
  }

  @Test
  void aSteepPipeDrainsAFlatOneDoesNotAndABackwardOneEvenLess() {
    Answer steep = answer(book(push(), 0.5, d -> {}), Question.DRAIN);
    Answer flat = answer(book(push(), 0.1, d -> {}), Question.DRAIN);
    Answer backward = answer(book(push(), -0.2, d -> {}), Question.DRAIN);

    // The stretches between locates hang on depths alone, so that the worst of them stays open.
    assertThat(flat.state()).isEqualTo(State.NO);
    assertThat(flat.headline().key()).isEqualTo(AnswerKey.DRAIN_TOO_FLAT);
    assertThat(backward.headline().key()).isEqualTo(AnswerKey.DRAIN_BACKWARD);
    assertThat(steep.state()).isNotEqualTo(State.NO);
  }

  @Test
  void aPipeLevelledAllAlongIsWithinLimits() {
    Answer drain =
        answer(
            book(
                push(),
                0.8,
                draft -> {
                  for (double at : new double[] {2, 8, 14, 19}) {
                    draft.exposure("X" + (int) at, at, null, 1 + 0.04 * at, "slab");
                    draft.height("X" + (int) at, Level.Part.GROUND, 100);
                    draft.height("L" + (int) at, Level.Part.GROUND, 100);
                  }
                }),
            Question.DRAIN);

    assertThat(drain.state()).isEqualTo(State.WITHIN_LIMITS);
    assertThat(drain.headline().key()).isEqualTo(AnswerKey.DRAIN_FALLS);
  }

  @Test
  void depthsAloneLeaveAGentleFallOpenAndAskForLevels() {
    Draft draft = bare(push(), Draft.pipe("R1", "N1", "N2", "main", Material.PVC, 0.1));
    for (double at : new double[] {4, 16}) {
      String label = "L" + (int) at;
      draft.locate(label, "P1", at, 1 + at / 100).along(label, 3, 2 + at);
    }

    Answer drain = answer(draft.book(), Question.DRAIN);

    assertThat(drain.state()).isEqualTo(State.CANNOT_SAY_YET);
    assertThat(drain.headline().key()).isEqualTo(AnswerKey.DRAIN_OPEN);
    assertThat(drain.missing())
        .extracting(s -> s.key())
        .contains(AnswerKey.MISSING_LEVELS, AnswerKey.MISSING_INVERT_LEVEL);
  }

  @Test
  void standingWaterBeatsAComputedFall() {
    Answer drain =
        answer(book(push().stretch("standing-water", 6, 9, Map.of("depth", 0.03))), Question.DRAIN);

    assertThat(drain.state()).isEqualTo(State.NO);
    assertThat(drain.headline().key()).isEqualTo(AnswerKey.DRAIN_WATER_STANDS);
  }

  @Test
  void waterThatDidNotComeOutIsNoAnswerOfDraining() {
    Answer drain = answer(tested(false, "N2"), Question.DRAIN);

    assertThat(drain.state()).isEqualTo(State.NO);
    assertThat(drain.headline().key()).isEqualTo(AnswerKey.TEST_DID_NOT_ARRIVE);
  }

  @Test
  void waterThatCameOutIsToldAndProvesLittle() {
    Answer drain = answer(tested(true, "N2"), Question.DRAIN);

    assertThat(drain.headline().key()).isNotEqualTo(AnswerKey.TEST_DID_NOT_ARRIVE);
    assertThat(drain.reasons())
        .extracting(s -> s.key())
        .contains(AnswerKey.TEST_ARRIVED_AFTER, AnswerKey.TEST_PROVES_LITTLE);
  }

  private static FieldBook tested(boolean arrived, String where) {
    return book(
        push(),
        0.5,
        draft ->
            draft.test(
                new daylight.line.book.Test(
                    Draft.id("test", "W1"),
                    Kind.WATER_RUN,
                    "N1",
                    null,
                    null,
                    null,
                    null,
                    List.of(
                        new daylight.line.book.Test.Seen(
                            where, arrived, arrived ? Draft.metres(90) : null)),
                    null)));
  }

  @Test
  void aPumpedLineHasNoSmallestSlope() {
    Reach pipe = Draft.pipe("R1", "N1", "N2", "main", Material.PVC, 0.05);
    Reach pumped =
        new Reach(
            pipe.id(),
            pipe.line(),
            pipe.from(),
            pipe.to(),
            pipe.water(),
            Reach.Use.PUMPED,
            pipe.material(),
            pipe.bore(),
            null);
    FieldBook book = bare(push(), pumped).book();

    assertThat(answer(book, Question.DRAIN).state()).isEqualTo(State.DOES_NOT_APPLY);
  }

  @Test
  void aReachThatNobodyMeasuredKeepsALineFromBeingWithinLimits() {
    FieldBook book =
        book(push(), 4, draft -> draft.node("N3", Node.Kind.ACCESS).reach("R2", "N3", "N1"));

    Answer drain = answer(book, Question.DRAIN);

    assertThat(drain.state()).isEqualTo(State.CANNOT_SAY_YET);
    assertThat(drain.missing()).extracting(s -> s.key()).contains(AnswerKey.MISSING_LOCATE_ON);
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
    assertThat(answers.opening().causes())
        .extracting(s -> s.key())
        .containsExactly(AnswerKey.CAUSE_FINDING);
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
