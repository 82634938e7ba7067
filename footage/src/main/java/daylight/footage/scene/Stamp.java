package daylight.footage.scene;

/** A shape as ink on a small sheet: how much of each pixel is covered, from 0 to 1. */
final class Stamp {
  final int width;
  final int height;
  private final float[] ink;

  Stamp(int width, int height) {
    this.width = width;
    this.height = height;
    ink = new float[width * height];
  }

  /** How much of a pixel is covered; nothing beyond the sheet. */
  float at(int x, int y) {
    return x < 0 || y < 0 || x >= width || y >= height ? 0 : ink[y * width + x];
  }

  void put(int x, int y, double share) {
    if (x >= 0 && y >= 0 && x < width && y < height) {
      ink[y * width + x] = (float) Math.max(ink[y * width + x], Math.clamp(share, 0.0, 1.0));
    }
  }

  /** The same shape grown by so many pixels, on a sheet larger by as many on every side. */
  Stamp grown(int reach) {
    Stamp grown = new Stamp(width + 2 * reach, height + 2 * reach);
    for (int y = 0; y < grown.height; y++) {
      for (int x = 0; x < grown.width; x++) {
        grown.put(x, y, near(x - reach, y - reach, reach));
      }
    }
    return grown;
  }

  private float near(int x, int y, int reach) {
    float most = 0;
    for (int dy = -reach; dy <= reach; dy++) {
      for (int dx = -reach; dx <= reach; dx++) {
        if (dx * dx + dy * dy <= reach * reach + 1) {
          most = Math.max(most, at(x + dx, y + dy));
        }
      }
    }
    return most;
  }
}
