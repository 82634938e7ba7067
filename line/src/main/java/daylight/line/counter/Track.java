package daylight.line.counter;

import daylight.line.book.Finding;
import daylight.line.book.Pass;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What the counter in a piece of footage showed over time: time from the first frame in seconds,
 * counter reading in metres. A track is a disposable cache; footage makes it and hands it in.
 *
 * @param media the label of the footage in the book
 * @param samples by rising time
 */
public record Track(String media, List<Sample> samples) {
  /** Readings this near to each other are one place, metres; common practice, no source. */
  private static final double SAME = 0.005;

  /** The standard deviation of a value that may lie anywhere between 0 and 1. */
  private static final double ANYWHERE = 1 / StrictMath.sqrt(12);

  public Track {
    samples = List.copyOf(samples);
    for (int i = 1; i < samples.size(); i++) {
      if (!(samples.get(i).seconds() > samples.get(i - 1).seconds())) {
        throw new IllegalArgumentException(media + ": samples must rise in time, sample " + i);
      }
    }
  }

  /**
   * The track that the anchors of a pass give for one piece of its footage; empty when there are
   * fewer than two. Of two anchors at one moment the first counts.
   */
  public static Optional<Track> ofAnchors(Pass pass, String media) {
    List<Sample> samples = new ArrayList<>();
    pass.anchors().stream()
        .filter(anchor -> anchor.media().equals(media))
        .sorted(Comparator.comparingDouble(Pass.Anchor::seconds))
        .forEach(
            anchor -> {
              if (samples.isEmpty() || anchor.seconds() > samples.getLast().seconds()) {
                samples.add(new Sample(anchor.seconds(), anchor.counter().value(), State.READ));
              }
            });
    return samples.size() < 2 ? Optional.empty() : Optional.of(new Track(media, samples));
  }

  /**
   * What the counter read at a moment; empty outside the samples or where they do not know. Between
   * two samples the camera may have rested or run: the reading is taken to have gone evenly, with
   * an uncertainty that is none at either and, halfway, that of a value anywhere between them.
   */
  public Optional<Between> counterAt(double seconds) {
    for (int i = 1; i < samples.size(); i++) {
      Sample a = samples.get(i - 1);
      Sample b = samples.get(i);
      if (a.seconds() <= seconds && seconds <= b.seconds()) {
        return known(a, b)
            ? Optional.of(
                between(
                    (seconds - a.seconds()) / (b.seconds() - a.seconds()),
                    a.counter(),
                    b.counter()))
            : Optional.empty();
      }
    }
    return Optional.empty();
  }

  /**
   * The moment, in seconds, at which the counter showed a reading; empty when it never did. Of
   * several it is the first for a camera that is pushed and the last for one being pulled back;
   * where the camera rested there, the middle of the rest, when the picture stands still.
   */
  public Optional<Between> momentOf(double counter, Finding.Moving moving) {
    List<Stay> stays = stays(counter);
    if (stays.isEmpty()) {
      return Optional.empty();
    }
    Stay stay = moving == Finding.Moving.PUSHING ? stays.getFirst() : stays.getLast();
    return Optional.of(new Between((stay.from() + stay.to()) / 2, stay.sd()));
  }

  /** A stretch of time in which the counter showed one reading, in seconds. */
  private record Stay(double from, double to, double sd) {}

  private List<Stay> stays(double counter) {
    List<Stay> stays = new ArrayList<>();
    for (int i = 1; i < samples.size(); i++) {
      Stay stay = stay(samples.get(i - 1), samples.get(i), counter);
      if (stay == null) {
        continue;
      }
      Stay before = stays.isEmpty() ? null : stays.getLast();
      if (before != null && stay.from() <= before.to()) {
        stays.removeLast();
        stays.add(new Stay(before.from(), stay.to(), Math.min(before.sd(), stay.sd())));
      } else {
        stays.add(stay);
      }
    }
    return stays;
  }

  private static @Nullable Stay stay(Sample a, Sample b, double counter) {
    double low = Math.min(a.counter(), b.counter());
    double high = Math.max(a.counter(), b.counter());
    if (!known(a, b) || counter < low - SAME || counter > high + SAME) {
      return null;
    }
    if (high - low < SAME) {
      return new Stay(a.seconds(), b.seconds(), 0);
    }
    double share = Math.clamp((counter - a.counter()) / (b.counter() - a.counter()), 0.0, 1.0);
    Between at = between(share, a.seconds(), b.seconds());
    return new Stay(at.value(), at.value(), at.sd());
  }

  private static boolean known(Sample a, Sample b) {
    return a.state() != State.UNKNOWN && b.state() != State.UNKNOWN;
  }

  /** A share of the way from a to b, as sure as {@link #counterAt} tells. */
  private static Between between(double share, double a, double b) {
    double doubt = 2 * StrictMath.sqrt(share * (1 - share)) * ANYWHERE;
    return new Between(a + share * (b - a), doubt * Math.abs(b - a));
  }

  /**
   * A figure between two samples: a counter reading in metres or a moment in seconds.
   *
   * @param sd its standard uncertainty, in its own unit; 0 at a sample
   */
  public record Between(double value, double sd) {}

  /** How a sample came about. */
  public enum State {
    /** Read from the picture, or typed by somebody who read it. */
    READ,
    /** Filled in between two readings that leave no room for doubt. */
    BRIDGED,
    /** Not known; its counter figure carries no meaning. */
    UNKNOWN
  }

  /** One moment. */
  public record Sample(double seconds, double counter, State state) {}
}
