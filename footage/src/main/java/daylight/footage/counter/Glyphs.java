package daylight.footage.counter;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** Glyphs of a line from left to right. */
final class Glyphs {
  /** A glyph less high than this share of a digit is none. */
  private static final double SMALL = 0.6;

  /** From so many times on a shape is believed in fully. */
  private static final double OFTEN = 3;

  private final List<Cut.Box> boxes;
  private final int[] labels;

  /**
   * Glyphs.
   *
   * @param boxes where each is
   * @param labels the kind of each, or {@link Strip#STRANGE}
   */
  Glyphs(List<Cut.Box> boxes, List<Integer> labels) {
    this.boxes = boxes;
    this.labels = labels.stream().mapToInt(Integer::intValue).toArray();
  }

  /** How many. */
  int count() {
    return labels.length;
  }

  /** Where each is. */
  List<Cut.Box> boxes() {
    return boxes;
  }

  /** The kind of one. */
  int kind(int glyph) {
    return labels[glyph];
  }

  /** The kind of each. */
  List<Integer> kinds() {
    return Arrays.stream(labels).boxed().toList();
  }

  /** The kinds with {@link Strip#SPACE} between words. */
  int[] line(Spacing spacing, Kinds kinds) {
    int[] line = new int[2 * labels.length];
    int length = 0;
    for (int i = 0; i < labels.length; i++) {
      if (i > 0 && spacing.apart(boxes.get(i - 1), labels[i - 1], boxes.get(i), labels[i], kinds)) {
        line[length++] = Strip.SPACE;
      }
      line[length++] = labels[i];
    }
    return Arrays.copyOf(line, length);
  }

  /** Which glyphs are too small for a digit, in a line so tall. */
  int[] small(int tall) {
    return IntStream.range(0, labels.length)
        .filter(i -> boxes.get(i).height() < SMALL * tall)
        .toArray();
  }

  /** All but those of some whose bits are set, the first of them being bit 0. */
  Glyphs without(int[] some, int bits) {
    List<Cut.Box> left = new ArrayList<>();
    List<Integer> kept = new ArrayList<>();
    int next = 0;
    for (int i = 0; i < labels.length; i++) {
      boolean one = next < some.length && some[next] == i;
      if (!one || (bits >> next & 1) == 0) {
        left.add(boxes.get(i));
        kept.add(labels[i]);
      }
      next += one ? 1 : 0;
    }
    return new Glyphs(left, kept);
  }

  /** Half of the digits of many lines are wider than this, pixels; 0 where there is none. */
  static int digitWidth(List<Glyphs> lines, Kinds kinds, int tall) {
    List<Integer> widths = new ArrayList<>();
    for (Glyphs line : lines) {
      for (int i = 0; i < line.labels.length; i++) {
        char letter = kinds.letter(line.labels[i]);
        Cut.Box box = line.boxes.get(i);
        if (Character.isDigit(letter) && letter != '1' && box.height() > SMALL * tall) {
          widths.add(box.width());
        }
      }
    }
    widths.sort(null);
    return widths.isEmpty() ? 0 : widths.get(widths.size() / 2);
  }

  /** How sure the network is of what it sees in many lines, 0 to 1; seldom shapes count less. */
  static double belief(List<Glyphs> lines, Kinds kinds) {
    double sum = 0;
    double all = 0;
    for (Glyphs line : lines) {
      for (int kind : line.labels) {
        all++;
        if (kinds.letter(kind) != '?') {
          float most = 0;
          for (float one : kinds.opinion(kind)) {
            most = Math.max(most, one);
          }
          sum += most * most * most * Math.min(1, kinds.count(kind) / OFTEN);
        }
      }
    }
    return all == 0 ? 0 : sum / all;
  }

  /** Whether two seem to touch where a digit is so wide. */
  boolean touch(Kinds kinds, int digit) {
    return IntStream.range(0, labels.length)
        .anyMatch(i -> Joint.tooWide(boxes.get(i).width(), kinds.letter(labels[i]), digit));
  }
}
