package daylight.line.counter;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.line.book.Pass;
import daylight.line.counter.Track.Sample;
import daylight.line.counter.Track.State;
import daylight.line.course.Draft;
import daylight.line.course.Push;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Recordings of one pass, joined. */
class FilmedTest {
  private static Fitted.OfPass recording(String media, double from, double to) {
    List<Sample> samples = new ArrayList<>();
    for (int i = 0; i <= 100; i++) {
      samples.add(new Sample(i, from + i * (to - from) / 100, State.READ));
    }
    return new Fitted.OfPass("P1", new Track(media, samples), 0.01);
  }

  private static Pass pass() {
    Push push = new Push("P1", "N1", "R1").sight(0, 12, Pass.Clarity.CLEAR);
    return new Draft().pass(push).book().visits().getFirst().passes().getFirst();
  }

  @Test
  void recordingsThatFollowOneAnotherLeaveNothingOut() {
    Filmed filmed = Filmed.of(pass(), List.of(recording("M1", 0, 6), recording("M2", 6, 12)));

    assertThat(filmed.breaks()).isEmpty();
    assertThat(filmed.missing()).isEmpty();
  }

  @Test
  void whatLiesBetweenTwoRecordingsIsMissing() {
    Filmed filmed = Filmed.of(pass(), List.of(recording("M1", 0, 5), recording("M2", 7, 12)));

    assertThat(filmed.breaks()).containsExactly(new Filmed.Break("M1", "M2", 5, 7));
    assertThat(filmed.missing()).containsExactly(new Filmed.Missing(5, 7));
  }

  @Test
  void whatIsShownOnTheWayBackIsNotMissing() {
    Filmed filmed =
        Filmed.of(
            pass(), List.of(recording("M1", 0, 5), recording("M2", 7, 12), recording("M3", 12, 4)));

    assertThat(filmed.breaks()).hasSize(1);
    assertThat(filmed.missing()).isEmpty();
  }

  @Test
  void aRecordingThatEndsEarlyLeavesTheRestOut() {
    assertThat(Filmed.of(pass(), List.of(recording("M1", 0, 9))).missing())
        .containsExactly(new Filmed.Missing(9, 12));
    assertThat(Filmed.of(pass(), List.of()).missing()).isEmpty();
  }
}
