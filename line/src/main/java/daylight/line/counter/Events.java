package daylight.line.counter;

import daylight.line.book.Finding.Moving;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the camera did, as far as its counter tells: it ran, it rested, its counter was set anew, or
 * nothing is known. Times are seconds from the first frame, readings are metres of the counter.
 *
 * @param stretches by rising time, none within another; a moment that none covers is too short to
 *     say anything of
 * @param reversals where the camera turned back, by rising time
 */
public record Events(List<Stretch> stretches, List<Reversal> reversals) {
  public Events {
    stretches = List.copyOf(stretches);
    reversals = List.copyOf(reversals);
  }

  /**
   * The events of a track. A step back that is no greater than the counter's own flicker is no
   * reversal; a leap that no hand can push is the counter being set.
   *
   * @param step what the last place of the counter is worth in metres; 0 where that is not known
   */
  public static Events of(Track track, double step) {
    return new EventFinder(track.samples(), step).found();
  }

  /** Part of the time. */
  public sealed interface Stretch {
    /** Its first moment. */
    double from();

    /** Its last moment, not before the first. */
    double to();
  }

  /**
   * The camera ran, or crept so that its counter went on.
   *
   * @param before the reading at its first moment
   * @param after the reading at its last
   */
  public record Ran(double from, double to, Moving moving, double before, double after)
      implements Stretch {
    /** Metres of counter a second, never negative; 0 for a stretch without duration. */
    public double speed() {
      return to > from ? Math.abs(after - before) / (to - from) : 0;
    }
  }

  /** The counter stood at a reading, give or take its last place. */
  public record Rested(double from, double to, double counter) implements Stretch {}

  /** Between these moments the counter was zeroed or set. */
  public record SetAnew(double from, double to, double before, double after) implements Stretch {}

  /**
   * Nothing is known of the counter.
   *
   * @param before the last reading before it; null where there is none
   * @param after the first reading after it; null where there is none
   */
  public record Gap(double from, double to, @Nullable Double before, @Nullable Double after)
      implements Stretch {}

  /**
   * The camera turned back.
   *
   * @param seconds when: the middle of the rest, where it rested there
   * @param counter the reading at which it turned
   * @param then which way it went on
   */
  public record Reversal(double seconds, double counter, Moving then) {}

  /** Where the camera rested, by rising time. */
  public List<Rested> rests() {
    return all(Rested.class);
  }

  /** Where the counter was set anew, by rising time. */
  public List<SetAnew> resets() {
    return all(SetAnew.class);
  }

  /** Where nothing is known, by rising time. */
  public List<Gap> gaps() {
    return all(Gap.class);
  }

  /** Where the camera ran, by rising time. */
  public List<Ran> runs() {
    return all(Ran.class);
  }

  private <T extends Stretch> List<T> all(Class<T> kind) {
    return stretches.stream().filter(kind::isInstance).map(kind::cast).toList();
  }
}
