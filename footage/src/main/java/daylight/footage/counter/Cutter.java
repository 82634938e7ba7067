package daylight.footage.counter;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/** Cuts a line of ink into glyphs and tells their kinds; parts those that touch. */
final class Cutter {
  private final Cut cut;
  private final Kinds kinds;
  private final int width;
  private final int top;
  private final int bottom;
  private final int threshold;
  private final int reach;
  private Joint joint;

  /**
   * For a line.
   *
   * @param threshold ink at least this strong counts
   * @param reach pixels this far apart still hang together
   */
  Cutter(Window window, Kinds kinds, int top, int bottom, int threshold, int reach) {
    cut = new Cut(window.width(), window.height());
    this.kinds = kinds;
    width = window.width();
    this.top = top;
    this.bottom = bottom;
    this.threshold = threshold;
    this.reach = reach;
    joint = new Joint(0, width, top, bottom, threshold);
  }

  /** From now on glyphs are parted that are wider than their letter where a digit is so wide. */
  void part(int digit) {
    joint = new Joint(digit, width, top, bottom, threshold);
  }

  /** The glyphs as they are cut, whatever they are. */
  List<Cut.Box> boxes(int[] strokes) {
    return cut.glyphs(strokes, top, bottom, threshold, reach);
  }

  /**
   * The glyphs of a picture of ink.
   *
   * @param near so near a glyph must be to its kind, or it is strange
   */
  Glyphs glyphs(int[] strokes, float near) {
    List<Cut.Box> boxes = new ArrayList<>();
    List<Integer> labels = new ArrayList<>();
    Deque<Cut.Box> open = new ArrayDeque<>(boxes(strokes));
    while (!open.isEmpty()) {
      Cut.Box box = open.removeFirst();
      float[] shape = Shape.of(strokes, width, box.left(), box.right(), top, bottom);
      List<Cut.Box> pieces =
          joint.mayBeTooWide(box) && joint.tooWide(box, kinds.seemingly(shape))
              ? joint.parted(box, strokes)
              : List.of(box);
      if (pieces.size() > 1) {
        pieces.reversed().forEach(open::addFirst);
      } else {
        int kind = kinds.of(shape);
        boxes.add(box);
        labels.add(kinds.near() >= near ? kind : Strip.STRANGE);
      }
    }
    return new Glyphs(boxes, labels);
  }
}
