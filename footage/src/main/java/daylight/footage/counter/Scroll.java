package daylight.footage.counter;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What one line said on every frame, as kinds of glyphs; a few bytes a frame. */
final class Scroll {
  private static final int NOTHING = -1;

  private final Strip strip;
  private final int[] said;
  private final List<int[]> lines = new ArrayList<>();
  private final Map<String, Integer> known = new HashMap<>();

  Scroll(Strip strip, int frames) {
    this.strip = strip;
    said = new int[frames];
    Arrays.fill(said, NOTHING);
  }

  Strip strip() {
    return strip;
  }

  void add(int frame, int[] line) {
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

  int frames() {
    return said.length;
  }

  /** Which line a frame says; negative for none. */
  int at(int frame) {
    return said[frame];
  }

  /** How many lines there are. */
  int distinct() {
    return lines.size();
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
