package daylight.line.counter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import daylight.line.book.Pass;
import daylight.line.counter.Track.Sample;
import daylight.line.counter.Track.State;
import daylight.line.course.Draft;
import daylight.line.course.Push;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

/** When a recording began, by what ties it to the clock. */
class ByClockTest {
  private static final Instant TOLD = Instant.parse("2026-04-18T10:00:00Z");

  private static final Fitted.OfPass RECORDING =
      new Fitted.OfPass(
          "P1",
          new Track(
              "M1",
              List.of(
                  new Sample(0, 0, State.READ),
                  new Sample(30, 4, State.READ),
                  new Sample(90, 4, State.READ))),
          0.01);

  private static Pass pass() {
    Push push = new Push("P1", "N1", "R1");
    return new Draft().pass(push).book().visits().getFirst().passes().getFirst();
  }

  @Test
  void nothingTiesItToTheClock() {
    assertThat(ByClock.began(pass(), List.of(), RECORDING, true, null)).isEmpty();
  }

  @Test
  void theRecordersClockPutRightTiesIt() {
    ByClock.Began began = ByClock.began(pass(), List.of(), RECORDING, false, TOLD).orElseThrow();

    assertThat(began.middle()).isEqualTo(TOLD);
    assertThat(began.giveOrTake()).isCloseTo(120, within(1e-9));
    assertThat(began.witnesses()).isEqualTo(1);
  }
}
