package daylight.footage.scene;

/** Things that stand in the bore: what blocks it, and what was put through it. */
final class Bodies {
  private static final int STONE = 0x8A7A63;
  private static final int PLASTIC = 0xC9A53A;
  private static final int SHEATH = 0x2C2C2E;

  private final Lens lens;
  private final View view;
  private final Field field;

  Bodies(Lens lens, View view, Field field) {
    this.lens = lens;
    this.view = view;
    this.field = field;
  }

  /** Draws a body, given how far in the lens is, the pipe's radius and the lens's height. */
  void draw(Thing body, double in, double radius, double eye) {
    double ahead = body.at() - in;
    if (ahead < 0.15 * radius || ahead > Tunnel.REACH * radius) {
      return;
    }
    for (int pixel = 0; pixel < view.depth.length; pixel++) {
      if (view.depth[pixel] > ahead) {
        double x = lens.right[pixel] * ahead;
        double y = lens.up[pixel] * ahead - (radius - eye);
        switch (body) {
          case Thing.Plug plug -> block(plug, pixel, x, y, ahead, radius);
          case Thing.Crossing crossing -> cross(crossing, pixel, x, y, ahead, radius);
          default -> {}
        }
      }
    }
  }

  private void block(Thing.Plug plug, int pixel, double x, double y, double ahead, double radius) {
    double out = x * StrictMath.sin(plug.clock()) + y * StrictMath.cos(plug.clock());
    double side = x * StrictMath.cos(plug.clock()) - y * StrictMath.sin(plug.clock());
    double top = radius * (1 - Bottom.segment(plug.share()));
    int lot = (int) (plug.at() * 997);
    float u = (float) (side / radius * 90);
    float v = (float) (out / radius * 90);
    double edge = 0.16 * radius * Cloud.COARSE.between(u * 1.4f, lot);
    double bulge = 0.22 * radius * (1 - side * side / (radius * radius));
    double inside = out - top - edge + bulge;
    if (inside > 0) {
      float bump = Cloud.COARSE.between(u * 2, v * 2 + lot);
      float slope = Cloud.COARSE.between(u * 2, v * 2 + lot + 3) - bump;
      float round = (float) Math.min(1, 0.45 + inside / (0.25 * radius));
      float grain = 1 + 0.25f * Cloud.FINE.between(u * 3, v * 3);
      float light = view.brightness(pixel, (float) ahead, 0.75f, (float) radius);
      field.set(pixel, STONE, light * round * grain * Math.clamp(1 - 2.2f * slope, 0.4f, 1.5f));
      field.far[pixel] = (float) ahead * lens.length[pixel];
    }
  }

  private void cross(
      Thing.Crossing crossing, int pixel, double x, double y, double ahead, double radius) {
    double half = crossing.diameter() / 2;
    double sag = crossing.cable() ? 0.3 * radius * (x * x / (radius * radius) - 0.5) : 0.12 * x;
    double off = (y - 0.1 * radius - sag) / half;
    if (Math.abs(off) < 1) {
      float facing = (float) Math.sqrt(1 - off * off);
      float shine = (float) Math.max(0, 1 - 18 * (off - 0.25) * (off - 0.25));
      float light = view.brightness(pixel, (float) ahead, facing, (float) radius);
      field.set(pixel, crossing.cable() ? SHEATH : PLASTIC, light * (0.75f + 0.5f * shine));
      field.far[pixel] = (float) ahead * lens.length[pixel];
    }
  }
}
