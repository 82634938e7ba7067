package daylight.line.counter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import daylight.line.book.FieldBook;
import daylight.line.book.Finding;
import daylight.line.book.Pass;
import daylight.line.book.Visit;
import daylight.line.course.Draft;
import daylight.line.course.Push;
import daylight.line.course.TestPriors;
import org.junit.jupiter.api.Test;

/** From what the counter reads to how much cable is out. */
class CounterTest {
  private static Counter counter(Push push) {
    FieldBook book = new Draft().pass(push).book();
    Visit visit = book.visits().getFirst();
    return Counter.of(visit, visit.passes().getFirst(), TestPriors.shipped());
  }

  private static Push push() {
    return new Push("P1", "N1", "R1");
  }

  @Test
  void withoutAnyCheckTheScaleIsOneGiveOrTakeThePrior() {
    assertThat(counter(push()).scale().value()).isEqualTo(1);
    assertThat(counter(push()).scale().sd()).isCloseTo(0.01, within(1e-12));
  }

  /**
   * The mean of two normal densities weighs each with its inverse variance. Here the ratio 1.02 is
   * good to √(0.05² + 0.05² + 0.010² + 0.01²)/20.
   */
  @Test
  void aTapeAgainstTheCounterMovesTheScale() {
    Counter counter = counter(push().check(20.4, 20));

    double tape = Math.hypot(0.010, 20 / 2000.0);
    double ratio = Math.sqrt(2 * 0.05 * 0.05 + tape * tape) / 20;
    double weight = 1 / (ratio * ratio);
    double prior = 1 / (0.01 * 0.01);
    assertThat(counter.scale().value())
        .isCloseTo((prior + 1.02 * weight) / (prior + weight), within(1e-12));
    assertThat(counter.scale().sd()).isCloseTo(Math.sqrt(1 / (prior + weight)), within(1e-12));
  }

  @Test
  void aCheckTellsLittleWhereNobodyKnowsTheZero() {
    Pass.Zero unknown = new Pass.Zero.Unknown("nobody looked");
    Counter counter = counter(push().zero(unknown).check(20.4, 20));

    // The zero may be off by twenty times its usual 50 mm: a metre in twenty.
    assertThat(counter.scale().value()).isLessThan(1.001);
    assertThat(counter.zeroSd()).isCloseTo(1, within(1e-12));
  }

  @Test
  void readingsCountFromTheMouthOfTheEntry() {
    Counter counter = counter(push().zero(new Pass.Zero.Reads(Draft.metres(1.5))));

    assertThat(counter.sinceEntry(1.5)).isZero();
    assertThat(counter.sinceEntry(11.5)).isCloseTo(10, within(1e-12));
  }

  @Test
  void aSlipForwardIsTakenOffAllThatFollows() {
    Counter counter = counter(push().reset(10, 12).reset(15, 15.5));

    assertThat(counter.sinceEntry(9)).isCloseTo(9, within(1e-12));
    assertThat(counter.sinceEntry(13)).isCloseTo(11, within(1e-12));
    assertThat(counter.sinceEntry(20)).isCloseTo(17.5, within(1e-12));
  }

  /** Mean and standard deviation of a half-normal quantity of scale 1: 0.79788, 0.60281. */
  @Test
  void slackIsHalfNormalAndOnlyOfAPushedCable() {
    assertThat(counter(push()).slack().value()).isCloseTo(0.005 * 0.79788, within(1e-7));
    assertThat(counter(push()).slack().sd()).isCloseTo(0.005 * 0.60281, within(1e-7));
    assertThat(Counter.slackens(Finding.Moving.PUSHING)).isTrue();
    assertThat(Counter.slackens(Finding.Moving.PULLING)).isFalse();
  }
}
