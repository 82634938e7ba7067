package daylight.footage.scene;

/**
 * How a line of characters is burned into the picture.
 *
 * @param face the typeface
 * @param height of a capital, in pixels
 * @param colour as {@code 0xRRGGBB}
 * @param ink how much the characters cover, from above 0 to 1; the less, the lower the contrast
 * @param border width of a border around each character, in pixels; 0 for none
 * @param borderColour as {@code 0xRRGGBB}
 * @param place where in the picture it stands
 */
public record Lettering(
    Typeface face, int height, int colour, double ink, int border, int borderColour, Place place) {
  public Lettering {
    if (height < 7 || height > 120) {
      throw new IllegalArgumentException("height in pixels from 7 to 120, was " + height);
    }
    if (!(ink > 0 && ink <= 1)) {
      throw new IllegalArgumentException("ink from above 0 to 1, was " + ink);
    }
    if (border < 0 || border > 4) {
      throw new IllegalArgumentException("border in pixels from 0 to 4, was " + border);
    }
  }

  /**
   * A place in the picture.
   *
   * @param across share of the free width to its left, from 0 (at the left) to 1
   * @param down share of the free height above it, from 0 (at the top) to 1
   */
  public record Place(double across, double down) {
    public Place {
      if (!(across >= 0 && across <= 1 && down >= 0 && down <= 1)) {
        throw new IllegalArgumentException("place from 0 to 1, was " + across + ", " + down);
      }
    }
  }
}
