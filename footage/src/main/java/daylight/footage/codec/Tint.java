package daylight.footage.codec;

/**
 * A colour without its brightness, as coded.
 *
 * @param blue the difference to blue, 0 to 255; 128 for none
 * @param red the difference to red, the same
 */
public record Tint(int blue, int red) {
  /** No colour. */
  public static final Tint GREY = new Tint(128, 128);
}
