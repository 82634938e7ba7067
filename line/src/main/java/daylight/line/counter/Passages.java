package daylight.line.counter;

import daylight.line.counter.Track.Sample;
import daylight.line.counter.Track.State;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * When the counter of a piece of footage showed a distance. A counter shows steps, not a continuum:
 * it shows a distance where its reading is within half a step of it, or goes through it between one
 * sample and the next. Being set anew is not going through.
 */
public final class Passages {
  /** A camera that moved for less than this has not rested, seconds; common practice, no source. */
  private static final double REST = 2;

  /** A counter so far from nothing has left it for good, metres; common practice, no source. */
  private static final double LEFT = 0.3;

  private static final double ROUNDING = 1e-6;

  private final List<Sample> samples;
  private final Set<Integer> leaps;
  private final double half;

  /**
   * Of a track.
   *
   * @param leaps the samples that first show a counter set anew
   * @param step what the last place of the counter is worth, metres
   */
  public Passages(Track track, Set<Integer> leaps, double step) {
    this.samples = track.samples();
    this.leaps = Set.copyOf(leaps);
    this.half = step / 2 + ROUNDING;
  }

  /**
   * A stretch of samples in which the counter did not move, each number included.
   *
   * @param counter the reading, metres
   */
  public record Stay(int from, int to, double counter) {
    private int middle() {
      return from + (to - from) / 2;
    }
  }

  /** Looks for a reading in metres. */
  public Sought find(double metres, Sought.Which which) {
    int least = extreme(-1);
    if (least < 0) {
      return new Sought.NothingKnown();
    }
    int most = extreme(1);
    if (metres > counter(most) + half || metres < counter(least) - half) {
      return new Sought.Beyond(least, most);
    }
    if (which == Sought.Which.REST) {
      return nearestRest(metres);
    }
    List<Integer> times = times(metres);
    if (times.isEmpty()) {
      return notShown(metres);
    }
    boolean first = which == Sought.Which.FIRST;
    return new Sought.At(
        first ? times.getFirst() : times.getLast(), first ? 1 : times.size(), times.size());
  }

  /** Every time at which a reading in metres was shown, as the sample in the middle of it. */
  public List<Integer> times(double metres) {
    List<Integer> times = new ArrayList<>();
    for (Stay stay : through(metres)) {
      times.add(nearestKnown(stay));
    }
    return times;
  }

  /** Every rest of the camera, in order. */
  public List<Stay> rests() {
    List<Stay> rests = new ArrayList<>();
    int from = 0;
    for (int i = 1; i <= samples.size(); i++) {
      boolean on = i < samples.size() && known(i) && known(from) && !leaps.contains(i);
      if (!on || Math.abs(counter(i) - counter(from)) >= half) {
        if (known(from) && samples.get(i - 1).seconds() - samples.get(from).seconds() >= REST) {
          rests.add(new Stay(from, i - 1, counter(from)));
        }
        from = i;
      }
    }
    return rests;
  }

  /**
   * Where the push begins: the last sample at nothing before the counter first runs out from there.
   * Empty where it never stood at nothing, or never left it.
   */
  public OptionalInt entry() {
    int zero = -1;
    for (int i = 0; i < samples.size(); i++) {
      if (leaps.contains(i)) {
        zero = -1;
      }
      if (known(i) && Math.abs(counter(i)) <= half) {
        zero = i;
      }
      if (zero >= 0 && known(i) && counter(i) >= LEFT) {
        return OptionalInt.of(zero);
      }
    }
    return OptionalInt.empty();
  }

  private Sought nearestRest(double metres) {
    Optional<Stay> nearest =
        rests().stream()
            .min(
                Comparator.comparingDouble(
                        (Stay rest) -> Math.max(half, Math.abs(rest.counter() - metres)))
                    .thenComparingDouble(
                        rest ->
                            samples.get(rest.from()).seconds() - samples.get(rest.to()).seconds()));
    return nearest
        .<Sought>map(rest -> new Sought.At(rest.middle(), 0, times(metres).size()))
        .orElseGet(Sought.NoRest::new);
  }

  private List<Stay> through(double metres) {
    List<Stay> found = new ArrayList<>();
    int before = -1;
    boolean on = false;
    for (int i = 0; i < samples.size(); i++) {
      if (!known(i)) {
        continue;
      }
      boolean shows = Math.abs(counter(i) - metres) <= half;
      if (shows && on && !leaps.contains(i)) {
        Stay last = found.removeLast();
        found.add(new Stay(last.from(), i, metres));
      } else if (shows) {
        found.add(new Stay(i, i, metres));
      } else if (!on && before == i - 1 && before >= 0 && crosses(before, i, metres)) {
        int near = Math.abs(counter(i) - metres) < Math.abs(counter(before) - metres) ? i : before;
        found.add(new Stay(near, near, metres));
      }
      on = shows;
      before = i;
    }
    return found;
  }

  private boolean crosses(int before, int after, double metres) {
    return !leaps.contains(after) && between(before, after, metres);
  }

  private boolean between(int before, int after, double metres) {
    return (counter(before) - metres) * (counter(after) - metres) < 0;
  }

  /** A reading within all that was shown was passed unseen or jumped over. */
  private Sought notShown(double metres) {
    int before = -1;
    Sought.@Nullable SetPast set = null;
    for (int i = 0; i < samples.size(); i++) {
      if (!known(i)) {
        continue;
      }
      if (before >= 0 && between(before, i, metres)) {
        if (!leaps.contains(i)) {
          return new Sought.Unread(before, i);
        }
        set = set == null ? new Sought.SetPast(i) : set;
      }
      before = i;
    }
    if (set == null) {
      throw new IllegalStateException(metres + " m is neither shown nor passed");
    }
    return set;
  }

  private int nearestKnown(Stay stay) {
    int middle = stay.middle();
    for (int away = 0; ; away++) {
      if (middle - away >= stay.from() && known(middle - away)) {
        return middle - away;
      }
      if (middle + away <= stay.to() && known(middle + away)) {
        return middle + away;
      }
    }
  }

  private int extreme(int sign) {
    int found = -1;
    for (int i = 0; i < samples.size(); i++) {
      if (known(i) && (found < 0 || sign * counter(i) > sign * counter(found))) {
        found = i;
      }
    }
    return found;
  }

  private boolean known(int sample) {
    return samples.get(sample).state() != State.UNKNOWN;
  }

  private double counter(int sample) {
    return samples.get(sample).counter();
  }
}
