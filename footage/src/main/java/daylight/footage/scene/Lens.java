package daylight.footage.scene;

/**
 * Where each pixel of the field looks: the field is the picture at half its size with a margin, so
 * that it can be shaken a little. Wide, as lenses for narrow pipes are: the stereographic
 * projection, which bends what is straight but keeps round what is round.
 */
final class Lens {
  /** Pixels of the field beyond the picture on every side. */
  static final int MARGIN = 4;

  /** Angle between the axis and the middle of the picture's side, in radians. */
  private static final double HALF_WIDTH = StrictMath.toRadians(56);

  final int width;
  final int height;

  /** Slopes of the rays: metres right and up for every metre ahead. */
  final float[] right;

  final float[] up;

  /** Metres along the ray for every metre ahead. */
  final float[] length;

  /** Light that the lamps around the lens send this way, from 0 to 1. */
  final float[] beam;

  private final double focus;

  Lens(int pictureWidth, int pictureHeight) {
    width = pictureWidth / 2 + 2 * MARGIN;
    height = pictureHeight / 2 + 2 * MARGIN;
    right = new float[width * height];
    up = new float[width * height];
    length = new float[width * height];
    beam = new float[width * height];
    focus = pictureWidth / 4.0 / (2 * StrictMath.tan(HALF_WIDTH / 2));
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        look(y * width + x, x + 0.5 - width / 2.0, height / 2.0 - y - 0.5);
      }
    }
  }

  private void look(int pixel, double x, double y) {
    double from = StrictMath.sqrt(x * x + y * y);
    double angle = 2 * StrictMath.atan(from / (2 * focus));
    double slope = StrictMath.tan(angle);
    right[pixel] = (float) (slope * x / from);
    up[pixel] = (float) (slope * y / from);
    length[pixel] = (float) StrictMath.sqrt(1 + slope * slope);
    double side = angle / StrictMath.toRadians(75);
    beam[pixel] = (float) (1 - 0.75 * side * side);
  }

  /**
   * Pixels from the middle of the field, for each unit of slope times one; see {@link #columnOf}.
   */
  private double scale(double slope) {
    double angle = StrictMath.atan(slope);
    return slope == 0 ? focus : 2 * focus * StrictMath.tan(angle / 2) / slope;
  }

  /** The column at which a point is seen, given metres to the right, up and ahead (positive). */
  double columnOf(double x, double y, double z) {
    return width / 2.0 + x / z * scale(StrictMath.sqrt(x * x + y * y) / z);
  }

  /** The row at which a point is seen. */
  double rowOf(double x, double y, double z) {
    return height / 2.0 - y / z * scale(StrictMath.sqrt(x * x + y * y) / z);
  }

  /** Pixels that a metre across takes at a distance ahead. */
  double pixelsPerMetre(double ahead) {
    return focus / ahead;
  }
}
