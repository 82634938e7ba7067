package daylight.footage.scene;

/** The picture while it is painted: light at each pixel of the field, and how far off it comes. */
final class Field {
  final int width;
  final int height;
  final float[] red;
  final float[] green;
  final float[] blue;

  /** Metres to what is seen. */
  final float[] far;

  Field(Lens lens) {
    width = lens.width;
    height = lens.height;
    red = new float[width * height];
    green = new float[width * height];
    blue = new float[width * height];
    far = new float[width * height];
  }

  /** Sets a colour {@code 0xRRGGBB} under a light. */
  void set(int pixel, int colour, float light) {
    float scale = light / 255;
    red[pixel] = ((colour >> 16) & 255) * scale;
    green[pixel] = ((colour >> 8) & 255) * scale;
    blue[pixel] = (colour & 255) * scale;
  }

  /** Lays a colour under a light over what is there, from not at all (0) to fully (1). */
  void cover(int pixel, int colour, float light, float share) {
    float scale = light / 255;
    red[pixel] += share * (((colour >> 16) & 255) * scale - red[pixel]);
    green[pixel] += share * (((colour >> 8) & 255) * scale - green[pixel]);
    blue[pixel] += share * ((colour & 255) * scale - blue[pixel]);
  }

  /** A round dab with a soft edge, {@code half} pixels in radius, at a distance in metres. */
  void dab(double x, double y, double half, int colour, float light, float share, float distance) {
    double reach = half + 0.7;
    int left = Math.max(0, (int) Math.floor(x - reach));
    int top = Math.max(0, (int) Math.floor(y - reach));
    int right = Math.min(width - 1, (int) Math.floor(x + reach));
    int bottom = Math.min(height - 1, (int) Math.floor(y + reach));
    for (int row = top; row <= bottom; row++) {
      for (int column = left; column <= right; column++) {
        double dx = column + 0.5 - x;
        double dy = row + 0.5 - y;
        double inside = half + 0.5 - Math.sqrt(dx * dx + dy * dy);
        if (inside > 0) {
          int pixel = row * width + column;
          float part = share * (float) Math.min(1, inside);
          cover(pixel, colour, light, part);
          far[pixel] += part * (Math.min(distance, far[pixel]) - far[pixel]);
        }
      }
    }
  }
}
