package daylight.line.counter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import daylight.line.book.Finding.Moving;
import daylight.line.counter.Track.Sample;
import daylight.line.counter.Track.State;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a track tells of what the camera did. */
class EventsTest {
  private static final double TENTH = 0.03048;

  /** Twenty-five samples a second along corners of time and reading, shown in steps. */
  private static Track shown(double step, double... corners) {
    List<Sample> samples = new ArrayList<>();
    double end = corners[corners.length - 2];
    for (int i = 0; i <= end * 25; i++) {
      double seconds = i / 25.0;
      samples.add(new Sample(seconds, stepped(at(seconds, corners), step), State.READ));
    }
    return new Track("M1", samples);
  }

  private static double stepped(double metres, double step) {
    return StrictMath.floor(metres / step + 1e-9) * step;
  }

  /** Of two corners at one moment the second holds from there on. */
  private static double at(double seconds, double... corners) {
    int i = 0;
    while (i + 4 < corners.length && corners[i + 2] <= seconds) {
      i += 2;
    }
    double share = (seconds - corners[i]) / (corners[i + 2] - corners[i]);
    return corners[i + 1] + share * (corners[i + 3] - corners[i + 1]);
  }

  @Test
  void aPushWithARestIsThreeStretches() {
    Events events = Events.of(shown(TENTH, 0, 0, 10, 3, 13, 3, 20, 6), TENTH);

    assertThat(events.reversals()).isEmpty();
    assertThat(events.stretches()).hasSize(3);
    Events.Rested rest = events.rests().getFirst();
    assertThat(rest.from()).isCloseTo(10, within(0.1));
    assertThat(rest.to()).isCloseTo(13, within(0.2));
    assertThat(rest.counter()).isCloseTo(3, within(TENTH));
    assertThat(events.runs()).extracting(Events.Ran::moving).containsOnly(Moving.PUSHING);
    assertThat(events.runs().getFirst().speed()).isCloseTo(0.3, within(0.01));
  }

  @Test
  void turningBackIsToldOnceAtTheFurthestReading() {
    Events events = Events.of(shown(TENTH, 0, 0, 10, 3, 20, 1), TENTH);

    assertThat(events.reversals()).hasSize(1);
    Events.Reversal turn = events.reversals().getFirst();
    assertThat(turn.then()).isEqualTo(Moving.PULLING);
    assertThat(turn.counter()).isCloseTo(3, within(TENTH));
    assertThat(turn.seconds()).isCloseTo(10, within(0.3));
    assertThat(events.runs())
        .extracting(Events.Ran::moving)
        .containsExactly(Moving.PUSHING, Moving.PULLING);
  }

  @Test
  void turningBackAtARestIsToldInItsMiddle() {
    Events events = Events.of(shown(0.01, 0, 0, 10, 3, 14, 3, 20, 1), 0.01);

    assertThat(events.reversals().getFirst().seconds()).isCloseTo(12, within(0.1));
  }

  @Test
  void aStepBackAndForthIsNoReversal() {
    List<Sample> samples = new ArrayList<>(shown(TENTH, 0, 0, 10, 3, 16, 3, 26, 6).samples());
    for (int i = 100; i < samples.size(); i += 7) {
      Sample was = samples.get(i);
      double to = was.counter() + (i % 2 == 0 ? TENTH : -TENTH);
      samples.set(i, new Sample(was.seconds(), to, State.READ));
    }
    Events events = Events.of(new Track("M1", samples), TENTH);

    assertThat(events.reversals()).isEmpty();
    assertThat(events.resets()).isEmpty();
    assertThat(events.rests()).hasSize(1);
    assertThat(events.rests().getFirst().to() - events.rests().getFirst().from())
        .isCloseTo(6, within(0.5));
  }

  @Test
  void aCounterZeroedOnTheWayIsNoReversal() {
    Events events = Events.of(shown(TENTH, 0, 0, 10, 3, 12, 3, 12, 0, 14, 0, 20, 2), TENTH);

    assertThat(events.reversals()).isEmpty();
    assertThat(events.resets()).hasSize(1);
    Events.SetAnew reset = events.resets().getFirst();
    assertThat(reset.from()).isCloseTo(12, within(0.05));
    assertThat(reset.before()).isCloseTo(3, within(TENTH));
    assertThat(reset.after()).isZero();
    assertThat(events.rests()).hasSize(2);
  }

  @Test
  void whatIsNotKnownIsAGapAndNothingIsSaidOfIt() {
    List<Sample> samples = new ArrayList<>(shown(TENTH, 0, 0, 20, 6).samples());
    for (int i = 0; i < samples.size(); i++) {
      double t = samples.get(i).seconds();
      if (t < 1 || (t > 8 && t < 12) || t > 19) {
        samples.set(i, new Sample(t, 0, State.UNKNOWN));
      }
    }
    Events events = Events.of(new Track("M1", samples), TENTH);

    assertThat(events.gaps()).hasSize(3);
    assertThat(events.gaps().getFirst().before()).isNull();
    assertThat(events.gaps().getLast().after()).isNull();
    Events.Gap gap = events.gaps().get(1);
    assertThat(gap.from()).isCloseTo(8, within(0.05));
    assertThat(gap.to()).isCloseTo(12, within(0.05));
    assertThat(gap.before()).isCloseTo(2.4, within(TENTH));
    assertThat(gap.after()).isCloseTo(3.6, within(TENTH));
    assertThat(events.runs()).noneMatch(ran -> ran.from() < 8.1 && ran.to() > 11.9);
    assertThat(events.reversals()).isEmpty();
    assertThat(events.resets()).isEmpty();
  }

  @Test
  void aCoarseCounterThatCreepsDoesNotRestAtEveryFoot() {
    Events events = Events.of(shown(0.3048, 0, 0, 60, 9), 0.3048);

    assertThat(events.rests()).isEmpty();
    assertThat(events.runs()).hasSize(1);
  }

  @Test
  void typedReadingsTellRestsToo() {
    Track typed =
        new Track(
            "M1",
            List.of(
                new Sample(2, 0, State.READ),
                new Sample(12, 4, State.READ),
                new Sample(15, 4, State.READ),
                new Sample(30, 1, State.READ)));
    Events events = Events.of(typed, 0);

    assertThat(events.rests()).containsExactly(new Events.Rested(12, 15, 4));
    assertThat(events.reversals()).containsExactly(new Events.Reversal(13.5, 4, Moving.PULLING));
    assertThat(events.runs().getLast().speed()).isCloseTo(0.2, within(1e-9));
  }

  @Test
  void aTrackThatKnowsNothingIsOneGap() {
    Track blind =
        new Track("M1", List.of(new Sample(0, 0, State.UNKNOWN), new Sample(1, 0, State.UNKNOWN)));

    assertThat(Events.of(blind, TENTH).stretches()).hasSize(1);
    assertThat(Events.of(blind, TENTH).gaps()).hasSize(1);
    assertThat(Events.of(new Track("M1", List.of()), TENTH).stretches()).isEmpty();
  }
}
