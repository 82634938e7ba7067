package daylight.line.counter;

import java.util.List;
import java.util.Optional;

/**
 * What the counter in a piece of footage showed over time: time from the first frame in seconds,
 * counter reading in metres. A track is a disposable cache; footage makes it and hands it in.
 *
 * @param media the label of the footage in the book
 * @param samples by rising time
 */
public record Track(String media, List<Sample> samples) {
  public Track {
    samples = List.copyOf(samples);
    for (int i = 1; i < samples.size(); i++) {
      if (!(samples.get(i).seconds() > samples.get(i - 1).seconds())) {
        throw new IllegalArgumentException(media + ": samples must rise in time, sample " + i);
      }
    }
  }

  /** The counter reading at a moment, between its neighbours; empty outside or where not known. */
  public Optional<Double> counterAt(double seconds) {
    for (int i = 1; i < samples.size(); i++) {
      Sample a = samples.get(i - 1);
      Sample b = samples.get(i);
      if (a.seconds() <= seconds && seconds <= b.seconds()) {
        if (a.state() == State.UNKNOWN || b.state() == State.UNKNOWN) {
          return Optional.empty();
        }
        double share = (seconds - a.seconds()) / (b.seconds() - a.seconds());
        return Optional.of(a.counter() + share * (b.counter() - a.counter()));
      }
    }
    return Optional.empty();
  }

  /** How a sample came about. */
  public enum State {
    /** Read from the picture. */
    READ,
    /** Filled in between two readings that leave no room for doubt. */
    BRIDGED,
    /** Not known; its counter figure carries no meaning. */
    UNKNOWN
  }

  /** One moment. */
  public record Sample(double seconds, double counter, State state) {}
}
