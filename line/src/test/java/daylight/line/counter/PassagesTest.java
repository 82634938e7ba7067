package daylight.line.counter;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.line.counter.Track.Sample;
import daylight.line.counter.Track.State;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class PassagesTest {
  private static final double STEP = 0.1;

  /** Ten samples a second; a reading that is not a number is not known. */
  private static Track track(double... readings) {
    List<Sample> samples = new ArrayList<>();
    for (int i = 0; i < readings.length; i++) {
      boolean known = !Double.isNaN(readings[i]);
      samples.add(
          new Sample(i / 10.0, known ? readings[i] : 0, known ? State.READ : State.UNKNOWN));
    }
    return new Track("M1", samples);
  }

  private static Sought find(Track track, double metres, Sought.Which which, Integer... leaps) {
    return new Passages(track, Set.of(leaps), STEP).find(metres, which);
  }

  @Test
  void theMiddleOfTheTimeItWasShownOnTheWayOutAndBack() {
    Track outAndBack = track(0, 0.1, 0.2, 0.2, 0.2, 0.3, 0.4, 0.3, 0.2, 0.1);

    assertThat(find(outAndBack, 0.2, Sought.Which.FIRST)).isEqualTo(new Sought.At(3, 1, 2));
    assertThat(find(outAndBack, 0.2, Sought.Which.LAST)).isEqualTo(new Sought.At(8, 2, 2));
  }

  @Test
  void theNearestSampleWhereItWentThroughTooFastToBeShown() {
    Track fast = track(0, 0.4, 1.0, 1.4);

    assertThat(find(fast, 0.6, Sought.Which.FIRST)).isEqualTo(new Sought.At(1, 1, 1));
    assertThat(find(fast, 0.8, Sought.Which.FIRST)).isEqualTo(new Sought.At(2, 1, 1));
  }

  @Test
  void whatLiesBeyondIsToldWithTheFurthest() {
    Track track = track(0.3, 0.4, 0.5, 0.4);

    assertThat(find(track, 0.7, Sought.Which.FIRST)).isEqualTo(new Sought.Beyond(0, 2));
    assertThat(find(track, 0.1, Sought.Which.REST)).isEqualTo(new Sought.Beyond(0, 2));
    assertThat(find(track(Double.NaN), 0.1, Sought.Which.LAST))
        .isEqualTo(new Sought.NothingKnown());
  }

  @Test
  void whatWasPassedUnreadIsNotInvented() {
    Track smudged = track(0, 0.1, Double.NaN, Double.NaN, 0.5, 0.6);

    assertThat(find(smudged, 0.3, Sought.Which.FIRST)).isEqualTo(new Sought.Unread(1, 4));
  }

  @Test
  void whatTheCounterWasSetPastWasNotPassed() {
    Track zeroed = track(0.8, 0.9, 0, 0.1);

    assertThat(find(zeroed, 0.5, Sought.Which.FIRST, 2)).isEqualTo(new Sought.SetPast(2));
    assertThat(find(zeroed, 0.9, Sought.Which.FIRST, 2)).isEqualTo(new Sought.At(1, 1, 1));
  }

  @Test
  void restsLastTwoSecondsAndTheNearestIsTaken() {
    double[] readings = new double[80];
    for (int i = 0; i < readings.length; i++) {
      // At 1 m from sample 5 to 29, at 2 m from 40 to 69.
      readings[i] = i < 5 ? 0.2 * i : i < 30 ? 1 : i < 40 ? 1 + 0.1 * (i - 30) : i < 70 ? 2 : 2.5;
    }
    Track track = track(readings);

    assertThat(new Passages(track, Set.of(), STEP).rests())
        .extracting(Passages.Stay::counter)
        .containsExactly(1.0, 2.0);
    assertThat(find(track, 1.2, Sought.Which.REST)).isEqualTo(new Sought.At(17, 0, 1));
    assertThat(find(track, 2.3, Sought.Which.REST)).isEqualTo(new Sought.At(54, 0, 1));
    assertThat(find(track(0, 0.1, 0.2), 0.1, Sought.Which.REST)).isEqualTo(new Sought.NoRest());
  }

  @Test
  void thePushBeginsWhereTheCounterLastStoodAtNothingBeforeItRanOut() {
    Track handled = track(0, 0.1, 0, 0, 0.1, 0.2, 0.3, 0.1, 0, 0.4);

    assertThat(new Passages(handled, Set.of(), STEP).entry()).hasValue(3);
    assertThat(new Passages(track(7.4, 7.4, 0, 0, 0.3), Set.of(2), STEP).entry()).hasValue(3);
    assertThat(new Passages(track(0, 7.4, 7.5), Set.of(1), STEP).entry()).isEmpty();
    assertThat(new Passages(track(2, 2.1), Set.of(), STEP).entry()).isEmpty();
  }
}
