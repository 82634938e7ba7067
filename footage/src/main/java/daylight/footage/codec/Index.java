package daylight.footage.codec;

import daylight.footage.FrameTimes;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Every frame of a recording with its time, and where decoding can start.
 *
 * @param times of all frames
 * @param keys by rising number, thinned to be some frames apart
 * @param told whether the container tells the time of every frame; otherwise frames are known by
 *     counting them from a key
 * @param missingSeconds what the container announces beyond the end; not above 0 for nothing
 */
record Index(FrameTimes times, List<Key> keys, boolean told, double missingSeconds) {
  private static final int APART = 12;

  Index {
    List<Key> thinned = new ArrayList<>();
    int next = 0;
    for (Key key : keys) {
      if (key.frame() >= next) {
        thinned.add(key);
        next = key.frame() + APART;
      }
    }
    keys = List.copyOf(thinned);
  }

  /** The middle one of all intervals between rising times. */
  static long usualInterval(long[] rising, long otherwise) {
    long[] intervals = new long[rising.length - 1];
    for (int i = 0; i < intervals.length; i++) {
      intervals[i] = rising[i + 1] - rising[i];
    }
    Arrays.sort(intervals);
    return intervals.length == 0 ? otherwise : intervals[intervals.length / 2];
  }

  /** The last key at or before a frame. */
  Optional<Key> keyBefore(int frame) {
    int low = 0;
    int high = keys.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (keys.get(middle).frame() <= frame) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low == 0 ? Optional.empty() : Optional.of(keys.get(low - 1));
  }
}
