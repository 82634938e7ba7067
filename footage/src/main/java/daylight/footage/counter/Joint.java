package daylight.footage.counter;

import java.util.ArrayList;
import java.util.List;

/**
 * Parts glyphs that touch: what is wider than its letter can be is cut where the ink is thinnest.
 */
final class Joint {
  /** So many digits wide nothing is but what says so. */
  private static final double WIDE = 1.45;

  /** The same for what is like no letter. */
  private static final double WIDE_FOR_NOTHING = 1.15;

  /** The same for the letters that are wide themselves. */
  private static final double WIDEST = 1.85;

  /** No piece is narrower than this share of a digit. */
  private static final double NARROWEST = 0.2;

  private static final String WIDE_LETTERS = "mM%";

  private final double digit;
  private final int width;
  private final int top;
  private final int bottom;
  private final int threshold;

  /**
   * For a line.
   *
   * @param digit how wide a digit is, pixels; 0 if not known, and nothing is parted then
   * @param width of the picture of ink
   */
  Joint(double digit, int width, int top, int bottom, int threshold) {
    this.digit = digit;
    this.width = width;
    this.top = top;
    this.bottom = bottom;
    this.threshold = threshold;
  }

  /** Whether a glyph is wider than its letter. */
  static boolean tooWide(double wide, char letter, double digit) {
    double most =
        letter == '?' ? WIDE_FOR_NOTHING : WIDE_LETTERS.indexOf(letter) >= 0 ? WIDEST : WIDE;
    return digit > 0 && wide > digit * most;
  }

  /** Whether a glyph is wide enough to be asked for its letter. */
  boolean mayBeTooWide(Cut.Box box) {
    return tooWide(box, '?');
  }

  boolean tooWide(Cut.Box box, char letter) {
    return tooWide(box.width(), letter, digit);
  }

  /** The two pieces of a glyph; itself where it has no thin place. */
  List<Cut.Box> parted(Cut.Box box, int[] ink) {
    int margin = (int) Math.ceil(NARROWEST * digit);
    int thinnest = -1;
    int least = Integer.MAX_VALUE;
    for (int x = box.left() + margin; x <= box.right() - margin; x++) {
      int inked = inked(ink, x);
      if (inked < least) {
        least = inked;
        thinnest = x;
      }
    }
    if (thinnest < 0) {
      return List.of(box);
    }
    List<Cut.Box> pieces = new ArrayList<>();
    piece(box.left(), thinnest, ink, pieces);
    piece(thinnest, box.right(), ink, pieces);
    return pieces;
  }

  private int inked(int[] ink, int x) {
    int inked = 0;
    for (int y = top; y < bottom; y++) {
      inked += ink[y * width + x] >= threshold ? 1 : 0;
    }
    return inked;
  }

  private void piece(int from, int to, int[] ink, List<Cut.Box> into) {
    int left = to;
    int right = from;
    int high = bottom;
    int low = top;
    int pixels = 0;
    for (int y = top; y < bottom; y++) {
      for (int x = from; x < to; x++) {
        if (ink[y * width + x] >= threshold) {
          left = Math.min(left, x);
          right = Math.max(right, x + 1);
          high = Math.min(high, y);
          low = Math.max(low, y + 1);
          pixels++;
        }
      }
    }
    if (pixels > 0) {
      into.add(new Cut.Box(left, high, right, low, pixels));
    }
  }
}
