package daylight.report.captions;

import daylight.line.counter.Passages;
import daylight.line.counter.Track;
import java.util.Set;

/**
 * A recording whose counter was read.
 *
 * @param track a sample a frame
 * @param leaps the samples that first show the counter set anew
 * @param step what the last place of the counter is worth, metres
 * @param seconds how long the recording runs
 */
public record Counted(Track track, Set<Integer> leaps, double step, double seconds) {
  public Counted {
    leaps = Set.copyOf(leaps);
  }

  /** When it showed which distance. */
  public Passages passages() {
    return new Passages(track, leaps, step);
  }

  boolean known(int sample) {
    return track.samples().get(sample).state() != Track.State.UNKNOWN;
  }

  double counter(int sample) {
    return track.samples().get(sample).counter();
  }

  double at(int sample) {
    return track.samples().get(sample).seconds();
  }

  int samples() {
    return track.samples().size();
  }

  /** When a sample is over. */
  double until(int sample) {
    return sample + 1 < samples() ? at(sample + 1) : Math.max(seconds, at(sample));
  }
}
