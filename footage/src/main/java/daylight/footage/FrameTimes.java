package daylight.footage;

import java.util.Arrays;
import java.util.OptionalInt;

/**
 * When each frame of a recording appears, in seconds from the first. A moment shows the last frame
 * that has appeared by then; a frame that is due within a quarter of the interval before it counts
 * as there, because people and files round times. Moments before the first frame or after the end
 * of the last show nothing.
 */
public final class FrameTimes {
  private static final double TOLERANCE = 0.25;
  private static final double STEADY = 0.25;

  private final long[] ticks;
  private final double secondsPerTick;
  private final long lastTicks;

  /**
   * Times counted in ticks.
   *
   * @param ticks rising, at least one
   * @param secondsPerTick the length of a tick
   * @param lastTicks how long the last frame is shown
   */
  public FrameTimes(long[] ticks, double secondsPerTick, long lastTicks) {
    if (ticks.length == 0) {
      throw new IllegalArgumentException("a recording has at least one frame");
    }
    if (!(secondsPerTick > 0) || lastTicks < 0) {
      throw new IllegalArgumentException("a tick lasts, was " + secondsPerTick + " s");
    }
    for (int i = 1; i < ticks.length; i++) {
      if (ticks[i] <= ticks[i - 1]) {
        throw new IllegalArgumentException("times rise, frame " + i + " does not");
      }
    }
    this.ticks = ticks.clone();
    this.secondsPerTick = secondsPerTick;
    this.lastTicks = lastTicks;
  }

  /** How many frames. */
  public int count() {
    return ticks.length;
  }

  /** When a frame appears. */
  public double secondsOf(int frame) {
    return (ticks[frame] - ticks[0]) * secondsPerTick;
  }

  /** When the last frame ends. */
  public double seconds() {
    return (ticks[ticks.length - 1] - ticks[0] + lastTicks) * secondsPerTick;
  }

  /** Which frame is on display at a moment. */
  public OptionalInt shownAt(double seconds) {
    double tick = seconds / secondsPerTick + ticks[0];
    double slack = TOLERANCE * averageTicks();
    if (!(tick >= ticks[0] - slack && tick <= ticks[ticks.length - 1] + lastTicks + slack)) {
      return OptionalInt.empty();
    }
    int next = Arrays.binarySearch(ticks, (long) Math.floor(tick));
    int shown = Math.max(0, next >= 0 ? next : -next - 2);
    if (shown + 1 < ticks.length) {
      double interval = ticks[shown + 1] - ticks[shown];
      if (ticks[shown + 1] - TOLERANCE * interval <= tick) {
        return OptionalInt.of(shown + 1);
      }
    }
    return OptionalInt.of(shown);
  }

  /** Which frame has exactly that time in the ticks of the recording, or a negative number. */
  public int numberOf(long tick) {
    return Arrays.binarySearch(ticks, tick);
  }

  /** Whether some interval differs from the usual one by more than a quarter. */
  public boolean variable() {
    long[] intervals = new long[ticks.length - 1];
    for (int i = 0; i < intervals.length; i++) {
      intervals[i] = ticks[i + 1] - ticks[i];
    }
    Arrays.sort(intervals);
    if (intervals.length == 0) {
      return false;
    }
    double usual = intervals[intervals.length / 2];
    // One tick either way is only the container's rounding.
    double room = Math.max(STEADY * usual, 1);
    return usual - intervals[0] > room || intervals[intervals.length - 1] - usual > room;
  }

  private double averageTicks() {
    return (double) (ticks[ticks.length - 1] - ticks[0] + lastTicks) / ticks.length;
  }
}
