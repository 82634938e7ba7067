package daylight.footage.counter;

import daylight.line.counter.Track;
import java.util.ArrayList;
import java.util.List;

/** What became of looking for the counter of a recording. */
public sealed interface Found {
  /**
   * A counter that was found and read.
   *
   * @param window where it stands
   * @param unit as it is shown, empty where none is and the one taken is a guess
   * @param metresPerStep what the last place shown is worth
   * @param readings one a frame
   * @param leaps where the counter was zeroed or set: the frames that show the new reading first
   */
  record Counter(
      Window window, String unit, double metresPerStep, List<Reading> readings, List<Integer> leaps)
      implements Found {
    public Counter {
      readings = List.copyOf(readings);
      leaps = List.copyOf(leaps);
    }

    /** Whether the figure stands there without a unit, so that its unit is a guess. */
    public boolean bare() {
      return readings.stream().noneMatch(one -> one.shown().contains("'")) && unit.isEmpty();
    }

    /** As a track of the medium of that label. */
    public Track track(String media) {
      List<Track.Sample> samples = new ArrayList<>();
      for (Reading reading : readings) {
        samples.add(new Track.Sample(reading.seconds(), reading.metres(), reading.state()));
      }
      return new Track(media, samples);
    }
  }

  /** None that is convincingly a distance. */
  record None(Why why) implements Found {}

  /** The one who waited did not want it any more. */
  record Stopped() implements Found {}

  /** Why there is none. */
  enum Why {
    /** Nothing in the picture stays like burned-in letters. */
    NO_LETTERS,
    /** There are letters, but no figure among them that changes as a distance does. */
    NO_DISTANCE,
    /** A figure is there but too seldom legible to be believed. */
    NOT_LEGIBLE
  }
}
