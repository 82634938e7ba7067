package daylight.line.counter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import daylight.line.book.FieldBook;
import daylight.line.book.Finding.Moving;
import daylight.line.book.Pass;
import daylight.line.course.Draft;
import daylight.line.course.Push;
import java.util.List;
import org.junit.jupiter.api.Test;

/** From moments of the footage to counter readings and back. */
class TrackTest {
  /** In to 10 m, a rest of 4 s there, on to 20 m, back to 10 m. */
  private static final Track TRACK = track(0, 0, 20, 10, 24, 10, 34, 20, 44, 10);

  private static Track track(double... pairs) {
    Push push = new Push("P1", "N1", "R1");
    for (int i = 0; i < pairs.length; i += 2) {
      push.anchor("M1", pairs[i], pairs[i + 1]);
    }
    return Track.ofAnchors(pass(push), "M1").orElseThrow();
  }

  private static Pass pass(Push push) {
    FieldBook book = new Draft().pass(push).book();
    return book.visits().getFirst().passes().getFirst();
  }

  @Test
  void atAnAnchorTheReadingIsTheAnchors() {
    assertThat(TRACK.counterAt(20)).contains(new Track.Between(10, 0));
    assertThat(TRACK.counterAt(22)).contains(new Track.Between(10, 0));
  }

  /** The standard deviation of a uniform density of width w is w/√12 (any textbook). */
  @Test
  void halfwayTheReadingMayBeAnywhereBetween() {
    Track.Between half = TRACK.counterAt(10).orElseThrow();

    assertThat(half.value()).isEqualTo(5);
    assertThat(half.sd()).isCloseTo(10 / Math.sqrt(12), within(1e-12));
  }

  @Test
  void outsideTheAnchorsNothingIsKnown() {
    assertThat(TRACK.counterAt(-0.1)).isEmpty();
    assertThat(TRACK.counterAt(44.1)).isEmpty();
    assertThat(TRACK.momentOf(21, Moving.PUSHING)).isEmpty();
  }

  @Test
  void aPushedCameraCameByFirstAndAPulledOneLast() {
    assertThat(TRACK.momentOf(15, Moving.PUSHING).orElseThrow().value()).isEqualTo(29);
    assertThat(TRACK.momentOf(15, Moving.PULLING).orElseThrow().value()).isEqualTo(39);
  }

  @Test
  void whereTheCameraRestedTheMomentIsTheMiddleOfTheRest() {
    assertThat(TRACK.momentOf(10, Moving.PUSHING)).contains(new Track.Between(22, 0));
    assertThat(TRACK.momentOf(10, Moving.PULLING)).contains(new Track.Between(44, 0));
  }

  @Test
  void thereAndBackAgainIsTheSameReading() {
    for (double counter = 0; counter <= 20; counter += 0.7) {
      for (Moving moving : Moving.values()) {
        double moment = TRACK.momentOf(counter, moving).orElseThrow().value();
        assertThat(TRACK.counterAt(moment).orElseThrow().value()).isCloseTo(counter, within(1e-9));
      }
    }
  }

  @Test
  void whatIsNotKnownIsNotFilledIn() {
    Track track =
        new Track(
            "M1",
            List.of(
                new Track.Sample(0, 0, Track.State.READ),
                new Track.Sample(5, 0, Track.State.UNKNOWN),
                new Track.Sample(9, 9, Track.State.READ)));

    assertThat(track.counterAt(3)).isEmpty();
    assertThat(track.momentOf(4, Moving.PUSHING)).isEmpty();
  }

  @Test
  void oneAnchorOrThoseOfOtherFootageMakeNoTrack() {
    Push push = new Push("P1", "N1", "R1").anchor("M1", 3, 1).anchor("M2", 3, 1).anchor("M2", 9, 4);

    assertThat(Track.ofAnchors(pass(push), "M1")).isEmpty();
    assertThat(Track.ofAnchors(pass(push), "M2")).isPresent();
    assertThat(Track.ofAnchors(pass(push), "M3")).isEmpty();
  }

  @Test
  void anchorsMayStandInAnyOrderAndOfTwoAtOneMomentTheFirstCounts() {
    assertThat(track(9, 4, 0, 0, 9, 5).counterAt(9)).contains(new Track.Between(4, 0));
  }

  @Test
  void samplesThatGoBackInTimeAreRefused() {
    List<Track.Sample> back =
        List.of(new Track.Sample(3, 0, Track.State.READ), new Track.Sample(3, 1, Track.State.READ));

    assertThatThrownBy(() -> new Track("F1", back))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("F1: samples must rise in time, sample 1");
  }

  @Test
  void oneRecordingOfTwoPushesIsReadFromWhicheverTrackKnows() {
    Tracks tracks = new Tracks(List.of(track(0, 0, 10, 5), track(20, 0, 30, 8)));

    assertThat(tracks.counterAt("M1", 10)).contains(new Track.Between(5, 0));
    assertThat(tracks.counterAt("M1", 30)).contains(new Track.Between(8, 0));
    assertThat(tracks.counterAt("M1", 15)).isEmpty();
    assertThat(tracks.counterAt("M2", 10)).isEmpty();
  }
}
