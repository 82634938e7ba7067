package daylight.report.view;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.line.book.Finding;
import daylight.line.book.Place;
import daylight.line.counter.Track;
import daylight.line.counter.Track.Sample;
import daylight.line.counter.Track.State;
import daylight.line.course.Camera;
import daylight.report.Example;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Which place a recording shows when. The example's first reach is 14.1 m long. */
class RideTest {
  /** The counter is the distance; pulled back, the cable is half a metre further. */
  private static final Camera CAMERA =
      (reading, moving) ->
          Optional.of(
              new Place("R1", Math.max(0, reading + (moving == Finding.Moving.PULLING ? 0.5 : 0))));

  private final Views views = Views.of(Example.usual().subject());

  private double shown(Ride ride, double seconds) {
    int sample = -1;
    for (Ride.Moment moment : ride.moments()) {
      sample = moment.seconds() <= seconds ? moment.sample() : sample;
    }
    return sample < 0 ? Double.NaN : views.samples().get(sample).place().distance();
  }

  private static Track frames(int from, int to) {
    List<Sample> samples = new ArrayList<>();
    for (int i = from; i <= to; i++) {
      // Out at a tenth of a metre a tenth of a second, and from ten seconds on back.
      double out = i <= 100 ? 0.1 * i : 0.1 * (200 - i);
      State state =
          i >= 40 && i < 50 ? State.UNKNOWN : i >= 60 && i < 70 ? State.BRIDGED : State.READ;
      samples.add(new Sample(0.1 * i, state == State.UNKNOWN ? 0 : out, state));
    }
    return new Track("M1", samples);
  }

  @Test
  void itFollowsTheCounterOutAndBack() {
    Ride ride = Ride.of("m", frames(0, 200), CAMERA, views);

    assertThat(shown(ride, 2)).isBetween(1.7, 2.3);
    assertThat(shown(ride, 8)).isBetween(7.7, 8.3);
    assertThat(shown(ride, 16)).as("4 m out, pulled back").isBetween(4.2, 4.8);
    assertThat(shown(ride, -1)).isNaN();
    assertThat(shown(ride, 25)).as("beyond its end").isNaN();
  }

  @Test
  void whatIsNotReadIsNotKnownAndWhatIsFilledInSaysSo() {
    Ride ride = Ride.of("m", frames(0, 200), CAMERA, views);

    assertThat(shown(ride, 4.5)).isNaN();
    assertThat(ride.moments().stream().filter(one -> one.bridged()))
        .isNotEmpty()
        .allMatch(one -> one.seconds() > 5.9 && one.seconds() < 7);
  }

  @Test
  void betweenTypedReadingsTheCounterIsTakenToHaveGoneEvenly() {
    Track typed =
        new Track("M1", List.of(new Sample(0, 0, State.READ), new Sample(10, 10, State.READ)));
    Ride ride = Ride.of("m", typed, CAMERA, views);

    assertThat(shown(ride, 5)).isBetween(4.6, 5.2);
    assertThat(ride.moments().stream().filter(one -> one.seconds() > 1 && one.seconds() < 9))
        .allMatch(Ride.Moment::bridged);
  }

  @Test
  void severalPushesInOneRecordingAreToldTogether() {
    Ride first = Ride.of("m", frames(0, 30), CAMERA, views);
    Ride second = Ride.of("m", frames(70, 90), CAMERA, views);
    Ride both = Ride.together("m", List.of(first, second));

    assertThat(shown(both, 2)).isBetween(1.7, 2.3);
    assertThat(shown(both, 5)).isNaN();
    assertThat(shown(both, 8)).isBetween(7.7, 8.3);
    assertThat(Ride.together("m", List.of()).isEmpty()).isTrue();
    assertThat(both.isEmpty()).isFalse();
  }
}
