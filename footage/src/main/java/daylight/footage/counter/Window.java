package daylight.footage.counter;

/**
 * A rectangle of the picture as coded, in pixels from the top left.
 *
 * @param left its leftmost column
 * @param top its topmost row
 * @param width at least 1
 * @param height at least 1
 */
public record Window(int left, int top, int width, int height) {
  public Window {
    if (left < 0 || top < 0 || width < 1 || height < 1) {
      throw new IllegalArgumentException(
          "a window lies in the picture, was %d,%d %d × %d".formatted(left, top, width, height));
    }
  }

  int right() {
    return left + width;
  }

  int bottom() {
    return top + height;
  }

  /** Whether most of another's height and width is in this one. */
  boolean covers(Window other) {
    int down = Math.min(bottom(), other.bottom()) - Math.max(top, other.top);
    int across = Math.min(right(), other.right()) - Math.max(left, other.left);
    return 2 * down > other.height && 2 * across > other.width;
  }

  /** Copies what a picture shows there, row by row. */
  void copy(byte[] picture, int pictureWidth, byte[] into) {
    for (int y = 0; y < height; y++) {
      System.arraycopy(picture, (top + y) * pictureWidth + left, into, y * width, width);
    }
  }

  /** The same grown on every side, cut at the picture's edge. */
  Window grown(int across, int down, int pictureWidth, int pictureHeight) {
    int l = Math.max(0, left - across);
    int t = Math.max(0, top - down);
    return new Window(
        l,
        t,
        Math.min(pictureWidth, right() + across) - l,
        Math.min(pictureHeight, bottom() + down) - t);
  }

  /** The smallest window around both. */
  Window with(Window other) {
    int l = Math.min(left, other.left);
    int t = Math.min(top, other.top);
    return new Window(
        l, t, Math.max(right(), other.right()) - l, Math.max(bottom(), other.bottom()) - t);
  }
}
