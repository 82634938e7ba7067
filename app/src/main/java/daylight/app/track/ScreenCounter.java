package daylight.app.track;

import daylight.footage.counter.Found;
import daylight.footage.counter.Reading;
import daylight.line.counter.Track;
import daylight.line.counter.Track.State;
import java.util.ArrayList;
import java.util.List;

/** What came of reading the counter of a recording, as it can be kept. */
sealed interface ScreenCounter {
  /**
   * It was read.
   *
   * @param bare whether it shows no unit, so that metres are a guess
   * @param step what its last place is worth, metres
   * @param samples one a frame
   */
  record Told(boolean bare, double step, List<Track.Sample> samples) implements ScreenCounter {
    public Told {
      samples = List.copyOf(samples);
    }

    /** The same where a unit is worth so many times what was guessed. */
    Told times(double factor) {
      return new Told(
          bare,
          step * factor,
          samples.stream()
              .map(one -> new Track.Sample(one.seconds(), one.counter() * factor, one.state()))
              .toList());
    }
  }

  /** There is none that can be read, and why. */
  record Untold(Found.Why why) implements ScreenCounter {}

  /** What is kept of a counter that was found. */
  static Told of(Found.Counter counter) {
    List<Track.Sample> samples = new ArrayList<>();
    for (Reading one : counter.readings()) {
      double metres = one.state() == State.UNKNOWN ? 0 : one.metres();
      if (samples.isEmpty() || one.seconds() > samples.getLast().seconds()) {
        samples.add(new Track.Sample(one.seconds(), metres, one.state()));
      }
    }
    return new Told(counter.bare(), counter.metresPerStep(), samples);
  }
}
