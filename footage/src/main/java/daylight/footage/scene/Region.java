package daylight.footage.scene;

/** A rectangle of pixels: left, top, width, height. */
public record Region(int left, int top, int width, int height) {
  /** Whether a pixel is in it. */
  public boolean holds(int x, int y) {
    return x >= left && y >= top && x < left + width && y < top + height;
  }
}
