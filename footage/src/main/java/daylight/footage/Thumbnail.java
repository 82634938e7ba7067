package daylight.footage;

/** A picture made small: each pixel the mean of those it stands for, so that nothing glitters. */
public final class Thumbnail {
  private static final int CHANNELS = 3;
  private static final int BITS = 8;

  private Thumbnail() {}

  /**
   * The picture at most so many pixels across, in its own proportions; the same one where it is no
   * wider.
   */
  public static Raster of(Raster picture, int across) {
    if (across < 2) {
      throw new IllegalArgumentException("a thumbnail is 2 pixels across or more, was " + across);
    }
    if (picture.width() <= across) {
      return picture;
    }
    int width = across - across % 2;
    int down = (int) Math.max(2, Math.round((double) picture.height() * width / picture.width()));
    int height = down - down % 2;
    Raster small = new Raster(width, height);
    for (int y = 0; y < height; y++) {
      int top = (int) ((long) y * picture.height() / height);
      int bottom = Math.max(top + 1, (int) ((y + 1L) * picture.height() / height));
      for (int x = 0; x < width; x++) {
        int left = (int) ((long) x * picture.width() / width);
        int right = Math.max(left + 1, (int) ((x + 1L) * picture.width() / width));
        small.pixels()[y * width + x] = mean(picture, left, top, right, bottom);
      }
    }
    return small;
  }

  private static int mean(Raster picture, int left, int top, int right, int bottom) {
    long[] sums = new long[CHANNELS];
    for (int y = top; y < bottom; y++) {
      for (int x = left; x < right; x++) {
        int pixel = picture.pixels()[y * picture.width() + x];
        for (int c = 0; c < CHANNELS; c++) {
          sums[c] += pixel >> (BITS * c) & 0xFF;
        }
      }
    }
    long count = (long) (right - left) * (bottom - top);
    int mean = 0;
    for (int c = 0; c < CHANNELS; c++) {
      mean |= (int) ((sums[c] + count / 2) / count) << (BITS * c);
    }
    return mean;
  }
}
