package daylight.footage.scene;

import daylight.footage.Raster;
import java.util.HashMap;
import java.util.Map;

/** Burns lines of characters into a picture. */
public final class Burner {
  /** Pixels of the picture's edge that stay free. */
  private static final int EDGE = 14;

  /** How much a border covers. */
  private static final double BORDER = 0.875;

  private final Lettering lettering;
  private final Map<Character, Stamp> stamps = new HashMap<>();
  private final Map<Character, Stamp> borders = new HashMap<>();

  /** One that burns in this lettering. */
  public Burner(Lettering lettering) {
    this.lettering = lettering;
  }

  /**
   * Burns a text in and returns the smallest rectangle around all that it inked. Characters stand
   * in cells of one width, so that a figure keeps its place while others change.
   */
  public Region burn(String text, Raster onto) {
    int cell = stamp('0').width + Math.max(1, lettering.height() / 6);
    int free = onto.width() - 2 * EDGE - cell * text.length();
    int left = EDGE + (int) StrictMath.rint(Math.max(0, free) * lettering.place().across());
    int room = onto.height() - 2 * EDGE - lettering.height();
    int top = EDGE + (int) StrictMath.rint(Math.max(0, room) * lettering.place().down());
    Inked inked = new Inked();
    for (int i = 0; i < text.length(); i++) {
      int x = left + i * cell;
      int border = lettering.border();
      char character = text.charAt(i);
      if (border > 0) {
        Stamp shape = borders.computeIfAbsent(character, c -> stamp(c).grown(border));
        print(shape, x - border, top - border, lettering.borderColour(), BORDER, onto, inked);
      }
      print(stamp(character), x, top, lettering.colour(), lettering.ink(), onto, inked);
    }
    return inked.region();
  }

  private Stamp stamp(char character) {
    return stamps.computeIfAbsent(character, c -> lettering.face().stamp(c, lettering.height()));
  }

  /** Prints a shape in one colour where it covers anything. */
  private static void print(
      Stamp shape, int left, int top, int colour, double ink, Raster onto, Inked inked) {
    for (int y = Math.max(0, -top); y < Math.min(shape.height, onto.height() - top); y++) {
      for (int x = Math.max(0, -left); x < Math.min(shape.width, onto.width() - left); x++) {
        int share = (int) (256 * ink * shape.at(x, y));
        if (share > 0) {
          int at = (top + y) * onto.width() + left + x;
          onto.pixels()[at] = Packed.mix(onto.pixels()[at], colour, share);
          inked.add(left + x, top + y);
        }
      }
    }
  }

  /** The rectangle around the pixels that were inked so far. */
  private static final class Inked {
    private int left = Integer.MAX_VALUE;
    private int top = Integer.MAX_VALUE;
    private int right = Integer.MIN_VALUE;
    private int bottom = Integer.MIN_VALUE;

    void add(int x, int y) {
      left = Math.min(left, x);
      top = Math.min(top, y);
      right = Math.max(right, x);
      bottom = Math.max(bottom, y);
    }

    Region region() {
      return right < left
          ? new Region(0, 0, 0, 0)
          : new Region(left, top, right - left + 1, bottom - top + 1);
    }
  }
}
