package daylight.footage.scene;

/** Water and loose stuff on the bottom, laid over what the lens would see without them. */
final class Pond {
  private static final int MUD = 0x55452F;
  private static final int MURK = 0x5C4B2E;

  /** Metres of water through which half the light of what lies below is lost. */
  private static final float CLEAR = 0.022f;

  /**
   * A surface that the lens is above stays below it, by this share of the lens's height: where the
   * pipe sags under level water, the pipe goes down and not the water up.
   */
  private static final double LEVEL = 0.96;

  private final Lens lens;
  private final View view;
  private final Field field;
  private final Unrolled wall;
  private final Bottom bottom;

  Pond(Lens lens, View view, Field field, Unrolled wall, Bottom bottom) {
    this.lens = lens;
    this.view = view;
    this.field = field;
    this.wall = wall;
    this.bottom = bottom;
  }

  /**
   * A moment of the pond: how far in the lens is, radius, height of the lens, time, water at rest.
   */
  record Moment(double in, double radius, double eye, double seconds, boolean still) {}

  void lay(Moment now) {
    double[] silt = heights(now, false);
    double[] water = heights(now, true);
    for (int pixel = 0; pixel < view.depth.length; pixel++) {
      if (lens.up[pixel] < 0) {
        pixel(now, pixel, silt, water);
      }
    }
  }

  private static final int SAMPLES = 256;

  private double[] heights(Moment now, boolean water) {
    double[] heights = new double[SAMPLES + 1];
    for (int i = 0; i <= SAMPLES; i++) {
      double in = now.in + i * Tunnel.REACH * now.radius / SAMPLES;
      heights[i] = water ? bottom.waterAt(in) : bottom.siltAt(in);
    }
    return heights;
  }

  private static double height(double[] heights, double ahead, Moment now) {
    double at = ahead / (Tunnel.REACH * now.radius) * SAMPLES;
    int i = Math.clamp((int) at, 0, SAMPLES - 1);
    double share = Math.clamp(at - i, 0.0, 1.0);
    return heights[i] + share * (heights[i + 1] - heights[i]);
  }

  private void pixel(Moment now, int pixel, double[] silt, double[] water) {
    double onSilt = meets(now, pixel, silt);
    if (onSilt > 0) {
      mud(now, pixel, (float) onSilt, height(silt, onSilt, now));
    }
    double onWater = meets(now, pixel, water);
    if (onWater > 0) {
      surface(now, pixel, (float) onWater, height(water, onWater, now));
    }
  }

  /** Metres ahead at which a ray meets a surface above the wall; 0 where it does not. */
  private double meets(Moment now, int pixel, double[] heights) {
    double wall = view.depth[pixel];
    double up = lens.up[pixel];
    double above = wall * up + now.eye;
    double there = height(heights, wall, now);
    if (there <= 0 || above >= there || heights[0] >= now.eye) {
      return 0;
    }
    double most = LEVEL * now.eye;
    double ahead = (Math.min(most, there) - now.eye) / up;
    for (int i = 0; i < 3; i++) {
      double surface = Math.min(most, height(heights, ahead, now));
      ahead = Math.min(wall, (surface - now.eye) / up);
    }
    return height(heights, ahead, now) > 0 ? ahead : 0;
  }

  private void mud(Moment now, int pixel, float ahead, double high) {
    double wall = view.depth[pixel] * lens.up[pixel] + now.eye;
    float cover = Mark.rise(0, 0.006, high - wall);
    float x = ahead * lens.right[pixel] * 1400;
    float y = (float) (now.in + ahead) * 1400;
    float coarse = Cloud.COARSE.between(x, y);
    float fine = Cloud.FINE.between(4 * x, 4 * y) + Cloud.COARSE.between(3 * x, 3 * y);
    float slope = Cloud.COARSE.between(x, y - 5) - coarse;
    float slant = -lens.up[pixel] / lens.length[pixel];
    float light = view.brightness(pixel, ahead, Math.min(1, slant + 0.12f), (float) now.radius);
    float relief = Math.clamp(1 + 0.35f * fine - 2.5f * slope, 0.4f, 1.6f);
    field.cover(pixel, MUD, light * relief * (0.95f + 0.3f * coarse), cover);
    view.depth[pixel] = ahead;
    view.kind[pixel] = View.SILT;
    field.far[pixel] = ahead * lens.length[pixel];
  }

  private void surface(Moment now, int pixel, float ahead, double deep) {
    float length = lens.length[pixel];
    float below = (view.depth[pixel] - ahead) * length;
    float clear = CLEAR / (CLEAR + below);
    float light = view.brightness(pixel, ahead, 0.45f, (float) now.radius);
    field.cover(pixel, MURK, light * 0.75f, 1 - clear);
    boolean still = now.still;
    float x = ahead * lens.right[pixel] * 900;
    float y = (float) (now.in + ahead) * 500 + (still ? 0 : (float) now.seconds * 160);
    float drift = still ? (float) now.seconds * 6 : 0;
    float waves = still ? 0.018f : 0.09f;
    float tilt = waves * Cloud.COARSE.between(x + drift, y);
    float pitch = waves * Cloud.COARSE.between(x + 171, y + drift);
    float facing = -lens.up[pixel] / length;
    float miss = 1 - Math.clamp(facing + pitch, 0f, 1f);
    float mirror = 0.04f + 0.96f * miss * miss * miss * miss * miss;
    int seen = reflected(now, pixel, ahead, deep, tilt, pitch);
    field.cover(pixel, seen, reflectedLight, Math.min(1, mirror * 1.15f));
    field.far[pixel] = ahead * length;
  }

  private float reflectedLight;

  /** The wall that the surface mirrors, and how bright it is. */
  private int reflected(Moment now, int pixel, float ahead, double deep, float tilt, float pitch) {
    float radius = (float) now.radius;
    float x = ahead * lens.right[pixel];
    float y = (float) deep - radius;
    float dx = lens.right[pixel] + tilt;
    float dy = Math.max(0.002f, -lens.up[pixel] + pitch);
    float far = View.crossing(x, y, dx * 30 * radius, dy * 30 * radius, radius) * 30 * radius;
    float there = ahead + far;
    reflectedLight =
        view.brightness(
            pixel, there, Math.min(1, radius / (there * lens.length[pixel] + 0.01f)), radius);
    float turn = View.turnOf(x + far * dx, y + far * dy);
    return wall.at(now.in + there, turn, there < 4 * radius ? 1 : 2);
  }
}
