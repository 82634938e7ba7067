package daylight.line.answer;

import static daylight.line.answer.Straight.answer;
import static daylight.line.answer.Straight.bare;
import static daylight.line.answer.Straight.book;
import static daylight.line.answer.Straight.push;
import static org.assertj.core.api.Assertions.assertThat;

import daylight.line.book.FieldBook;
import daylight.line.book.Finding;
import daylight.line.book.Level;
import daylight.line.book.Material;
import daylight.line.book.Node;
import daylight.line.book.Reach;
import daylight.line.book.Test.Kind;
import daylight.line.book.Where;
import daylight.line.course.Draft;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Whether it drains, state by state. */
class DrainTest {
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

  private static Answer watered(Map<String, String> words) {
    return answer(
        book(
            push()
                .finding(
                    "standing-water",
                    new Where.FromTo(Draft.metres(6), Draft.metres(9)),
                    Finding.Moving.PUSHING,
                    Map.of("depth", 0.03),
                    words,
                    null)),
        Question.DRAIN);
  }

  @Test
  void standingWaterBeatsAComputedFall() {
    Answer drain = watered(Map.of("still", "yes", "after-waiting", "stays"));

    assertThat(drain.state()).isEqualTo(State.NO);
    assertThat(drain.headline().key()).isEqualTo(AnswerKey.DRAIN_WATER_STANDS);
  }

  @Test
  void waterThatMayOnlyHaveBeenRunningOffAsksForASecondLook() {
    Answer drain = watered(Map.of());

    assertThat(drain.state()).isEqualTo(State.CANNOT_SAY_YET);
    assertThat(drain.headline().key()).isEqualTo(AnswerKey.DRAIN_WATER_STANDS);
    assertThat(drain.missing()).extracting(s -> s.key()).contains(AnswerKey.MISSING_WATER_TEST);
  }

  @Test
  void waterThatWasGoneAfterAWhileLeavesTheFallToAnswer() {
    Answer drain = watered(Map.of("after-waiting", "gone"));

    assertThat(drain.state()).isNotEqualTo(State.NO);
    assertThat(drain.headline().key()).isNotEqualTo(AnswerKey.DRAIN_WATER_STANDS);
    assertThat(drain.reasons()).extracting(s -> s.key()).contains(AnswerKey.DRAIN_RAN_OFF);
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
                    daylight.line.book.Test.Held.UNRECORDED,
                    List.of(
                        new daylight.line.book.Test.Seen(
                            where, arrived, arrived ? Draft.metres(90) : null, null)),
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
}
