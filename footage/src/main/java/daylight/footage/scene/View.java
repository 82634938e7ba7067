package daylight.footage.scene;

import java.util.List;

/** What each pixel of the field meets: where, how far away and how well lit. */
final class View {
  /** The wall of the pipe. */
  static final byte WALL = 0;

  /** The rim of a pipe that sits askew or is narrower. */
  static final byte RIM = 1;

  /** Loose stuff on the bottom. */
  static final byte SILT = 2;

  /** Nothing as far as light reaches. */
  static final byte DARK = 3;

  private static final float TURN = (float) (1 / (2 * StrictMath.PI));

  /** Metres straight ahead of the lens. */
  final float[] depth;

  /** Metres along the pipe. */
  final float[] ahead;

  /** Clock position, from 0 at twelve clockwise to 1. */
  final float[] turn;

  /** Light that falls on it, from 0 to about 1. */
  final float[] light;

  final byte[] kind;

  private final Lens lens;
  private final float[] glow = new float[1025];

  View(Lens lens) {
    this.lens = lens;
    int pixels = lens.width * lens.height;
    depth = new float[pixels];
    ahead = new float[pixels];
    turn = new float[pixels];
    light = new float[pixels];
    kind = new byte[pixels];
    for (int i = 0; i < glow.length; i++) {
      glow[i] = (float) StrictMath.pow(i / 1024.0, 0.44);
    }
  }

  /** Looks down a pipe of these rings; {@code unit} is the distance at which light is full. */
  void trace(List<Tunnel.Hoop> hoops, double unit) {
    Rings rings = new Rings(hoops);
    for (int pixel = 0; pixel < depth.length; pixel++) {
      trace(rings, pixel, (float) unit);
    }
  }

  /** How bright a surface looks: light spread over distance, slant, and the eye's own scale. */
  float brightness(int pixel, float ahead, float slant, float unit) {
    float far = ahead * lens.length[pixel] / unit;
    float falling = lens.beam[pixel] * slant / (0.15f + far * far);
    return glow[(int) (Math.min(1f, Math.max(0f, falling)) * 1024)];
  }

  private void trace(Rings rings, int pixel, float unit) {
    float right = lens.right[pixel];
    float up = lens.up[pixel];
    float before = 0;
    float x0 = -rings.toRight[0];
    float y0 = -rings.toUp[0];
    for (int k = 1; k < rings.count; k++) {
      float facing = right * rings.alongX[k] + up * rings.alongY[k] + rings.alongZ[k];
      boolean aside = facing < 0.03f;
      float here = aside ? before : rings.toAlong[k] / facing;
      float x = here * rings.dotRight(k, right, up) - rings.toRight[k];
      float y = here * rings.dotUp(k, right, up) - rings.toUp[k];
      float radius = rings.radius[k];
      if (aside || x * x + y * y > radius * radius) {
        if (rings.rim[k]) {
          meetRim(rings, pixel, k, x, y, here, unit);
        } else {
          meetWall(rings, pixel, k, x0, y0, x, y, before, here, unit);
        }
        return;
      }
      before = here;
      x0 = x;
      y0 = y;
    }
    kind[pixel] = DARK;
    depth[pixel] = before;
    ahead[pixel] = rings.ahead[rings.count - 1];
    turn[pixel] = 0;
    light[pixel] = 0;
  }

  private void meetRim(Rings rings, int pixel, int k, float x, float y, float here, float unit) {
    kind[pixel] = RIM;
    depth[pixel] = here;
    ahead[pixel] = rings.ahead[k];
    turn[pixel] = turnOf(x, y);
    light[pixel] = brightness(pixel, here, 1 / lens.length[pixel], unit);
  }

  private void meetWall(
      Rings rings,
      int pixel,
      int k,
      float x0,
      float y0,
      float x1,
      float y1,
      float before,
      float here,
      float unit) {
    float share = crossing(x0, y0, x1 - x0, y1 - y0, rings.radius[k]);
    float x = x0 + share * (x1 - x0);
    float y = y0 + share * (y1 - y0);
    float there = before + share * (here - before);
    float out =
        (x * rings.dotRight(k, lens.right[pixel], lens.up[pixel])
                + y * rings.dotUp(k, lens.right[pixel], lens.up[pixel]))
            / rings.radius[k];
    kind[pixel] = WALL;
    depth[pixel] = there;
    ahead[pixel] = rings.ahead[k - 1] + share * (rings.ahead[k] - rings.ahead[k - 1]);
    turn[pixel] = turnOf(x, y);
    float lost = Math.max(0, 1 - there / ((float) Tunnel.REACH * unit));
    light[pixel] = lost * brightness(pixel, there, Math.abs(out) / lens.length[pixel], unit);
  }

  /** Share of the way at which a point that moves in a straight line leaves a circle. */
  static float crossing(float x, float y, float dx, float dy, float radius) {
    float a = dx * dx + dy * dy;
    float b = x * dx + y * dy;
    float c = x * x + y * y - radius * radius;
    float root = b * b - a * c;
    if (a == 0 || root <= 0) {
      return 0;
    }
    return Math.clamp((-b + (float) Math.sqrt(root)) / a, 0f, 1f);
  }

  /** The clock position of a point from the middle, from 0 at twelve clockwise to 1. */
  static float turnOf(float x, float y) {
    float most = Math.max(Math.abs(x), Math.abs(y));
    float least = Math.min(Math.abs(x), Math.abs(y));
    float t = most == 0 ? 0 : least / most;
    float s = t * t;
    // A polynomial for the arc tangent from 0 to 1, good to 1e-5 (Abramowitz and Stegun 4.4.49).
    float angle =
        t
            * (0.9998660f
                + s * (-0.3302995f + s * (0.1801410f + s * (-0.0851330f + s * 0.0208351f))));
    float fromUp = Math.abs(x) > Math.abs(y) ? 0.25f - angle * TURN : angle * TURN;
    float half = y < 0 ? 0.5f - fromUp : fromUp;
    return x < 0 ? 1 - half : half;
  }

  /** The rings as plain rows of numbers, for speed. */
  private static final class Rings {
    final int count;
    final float[] ahead;
    final float[] radius;
    final boolean[] rim;
    final float[] alongX;
    final float[] alongY;
    final float[] alongZ;
    final float[] toAlong;
    final float[] toRight;
    final float[] toUp;
    private final float[] rightX;
    private final float[] rightY;
    private final float[] rightZ;
    private final float[] upX;
    private final float[] upY;
    private final float[] upZ;

    Rings(List<Tunnel.Hoop> hoops) {
      count = hoops.size();
      ahead = new float[count];
      radius = new float[count];
      rim = new boolean[count];
      alongX = new float[count];
      alongY = new float[count];
      alongZ = new float[count];
      toAlong = new float[count];
      toRight = new float[count];
      toUp = new float[count];
      rightX = new float[count];
      rightY = new float[count];
      rightZ = new float[count];
      upX = new float[count];
      upY = new float[count];
      upZ = new float[count];
      for (int i = 0; i < count; i++) {
        take(i, hoops.get(i));
      }
    }

    private void take(int i, Tunnel.Hoop hoop) {
      Pose pose = hoop.pose();
      ahead[i] = (float) hoop.ahead();
      radius[i] = (float) hoop.radius();
      rim[i] = hoop.rim();
      alongX[i] = (float) pose.along().x();
      alongY[i] = (float) pose.along().y();
      alongZ[i] = (float) pose.along().z();
      toAlong[i] = (float) pose.middle().dot(pose.along());
      toRight[i] = (float) pose.middle().dot(pose.right());
      toUp[i] = (float) pose.middle().dot(pose.upward());
      rightX[i] = (float) pose.right().x();
      rightY[i] = (float) pose.right().y();
      rightZ[i] = (float) pose.right().z();
      upX[i] = (float) pose.upward().x();
      upY[i] = (float) pose.upward().y();
      upZ[i] = (float) pose.upward().z();
    }

    float dotRight(int i, float rayRight, float rayUp) {
      return rayRight * rightX[i] + rayUp * rightY[i] + rightZ[i];
    }

    float dotUp(int i, float rayRight, float rayUp) {
      return rayRight * upX[i] + rayUp * upY[i] + upZ[i];
    }
  }
}
