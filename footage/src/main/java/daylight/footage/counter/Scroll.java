package daylight.footage.counter;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What one line said on every frame, as kinds of glyphs; a few bytes a frame. */
final class Scroll {
  private static final int NOTHING = -1;

  /** So much is kept of frames to be looked at again, bytes. */
  private static final long MOST_KEPT = 48_000_000;

  private final Strip strip;
  private final int[] said;
  private int[] seemed;
  private final List<int[]> lines = new ArrayList<>();
  private final Map<String, Integer> known = new HashMap<>();
  private final Map<Integer, byte[]> kept = new HashMap<>();
  private long bytes;

  Scroll(Strip strip, int frames) {
    this.strip = strip;
    said = new int[frames];
    Arrays.fill(said, NOTHING);
    seemed = said;
  }

  Strip strip() {
    return strip;
  }

  /** Takes what a frame says; where that is not sure, what it shows. */
  void add(int frame, int[] line) {
    if (!strip.sure()) {
      byte[] seen = strip.seen();
      bytes += seen.length;
      if (bytes < MOST_KEPT) {
        kept.put(frame, seen);
      }
    }
    if (line.length == 0) {
      return;
    }
    char[] key = new char[line.length];
    for (int i = 0; i < line.length; i++) {
      key[i] = (char) (line[i] + 8);
    }
    said[frame] =
        known.computeIfAbsent(
            new String(key),
            _ -> {
              lines.add(line);
              return lines.size() - 1;
            });
  }

  /** Takes back what holds something that did not come again. */
  void settle() {
    seemed = said.clone();
    boolean[] holds = new boolean[lines.size()];
    for (int i = 0; i < holds.length; i++) {
      holds[i] = strip.holds(lines.get(i));
    }
    for (int frame = 0; frame < said.length; frame++) {
      if (said[frame] >= 0 && !holds[said[frame]]) {
        said[frame] = NOTHING;
      }
    }
  }

  /** What a frame shows that could not be read at once; null for one that could. */
  byte @Nullable [] kept(int frame) {
    return kept.get(frame);
  }

  int frames() {
    return said.length;
  }

  /** Which line a frame says; negative for none. */
  int at(int frame) {
    return said[frame];
  }

  /** Which line a frame seemed to say, whether it came again or not; negative for none. */
  int seemed(int frame) {
    return seemed[frame];
  }

  /** How many lines there are. */
  int distinct() {
    return lines.size();
  }

  /** On how many frames each line stands. */
  int[] framesOfLines() {
    int[] frames = new int[lines.size()];
    for (int line : said) {
      if (line >= 0) {
        frames[line]++;
      }
    }
    return frames;
  }

  /** A line as kinds. */
  int[] line(int line) {
    return lines.get(line);
  }

  /** The letters each kind is likeliest to be. */
  char[] names() {
    char[] names = new char[strip.kinds().size()];
    for (int i = 0; i < names.length; i++) {
      names[i] = strip.kinds().letter(i);
    }
    return names;
  }

  /** A line as text. */
  String text(int line, char[] names) {
    StringBuilder text = new StringBuilder();
    for (int kind : lines.get(line)) {
      text.append(kind == Strip.SPACE ? ' ' : kind < 0 ? '?' : names[kind]);
    }
    return text.toString();
  }
}
