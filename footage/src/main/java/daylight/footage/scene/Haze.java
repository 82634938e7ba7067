package daylight.footage.scene;

import daylight.line.book.Pass;

/** What stands between the lens and the wall: fog, cloudy water, specks adrift. */
final class Haze {
  private static final int AIR = 0x8F8064;
  private static final int WATER = 0x6F5F3A;
  private static final double CELL = 0.02;
  private static final int SPECKS = 3;

  private final Script script;
  private final Bottom bottom;
  private final Lens lens;
  private final Field field;
  private final float[] left = new float[1025];

  Haze(Script script, Bottom bottom, Lens lens, Field field) {
    this.script = script;
    this.bottom = bottom;
    this.lens = lens;
    this.field = field;
    for (int i = 0; i < left.length; i++) {
      left[i] = (float) StrictMath.exp(-i / 128.0);
    }
  }

  /**
   * How thick it is where the lens is: the inverse of the metres in which light falls to a third.
   */
  double thickness(double in) {
    double radius = script.pipeAt(in).radius();
    double thick = 0;
    for (Script.Veil veil : script.veils()) {
      double inside = Math.min(in - veil.from(), veil.to() - in);
      double full = veil.clarity() == Pass.Clarity.BLIND ? 1 / (0.22 * radius) : 1 / (4 * radius);
      thick = Math.max(thick, full * Cloud.ease(inside / 0.15 + 0.5));
    }
    return under(in) ? Math.max(thick, 1 / (1.5 * radius)) : thick;
  }

  /** Whether the lens is below the surface. */
  boolean under(double in) {
    return bottom.waterAt(in) > Tunnel.eye(script, in);
  }

  void veil(double in, double seconds) {
    float thick = (float) thickness(in);
    if (thick < 0.01f) {
      return;
    }
    boolean under = under(in);
    int colour = under ? WATER : AIR;
    float lift = (float) (in * 2500);
    float drift = (float) (seconds * 9);
    for (int pixel = 0; pixel < field.far.length; pixel++) {
      int column = pixel % field.width;
      int row = pixel / field.width;
      float cloud = 0.3f * Cloud.COARSE.between(column * 0.5f + drift, row * 0.5f + lift * 0.1f);
      float depth = thick * field.far[pixel] * (1 + cloud);
      float share = left[(int) Math.min(1024, Math.max(0, depth * 128))];
      field.cover(pixel, colour, (0.3f + 0.1f * lens.beam[pixel]) * (1 + cloud * 0.7f), 1 - share);
    }
    specks(in, seconds, Math.min(1, thick * script.pipeAt(in).radius() * 2));
  }

  /** Specks that stay where they are while the lens passes, drifting a little. */
  private void specks(double in, double seconds, double many) {
    double radius = script.pipeAt(in).radius();
    long first = (long) Math.floor(in / CELL);
    for (long cell = first; cell < first + (long) (3 * radius / CELL); cell++) {
      for (int i = 0; i < SPECKS; i++) {
        double z = (cell + Chance.at(5, cell, i)) * CELL - in;
        boolean there = Chance.at(6, cell, i) < many && z > 0.25 * radius;
        if (there) {
          double x = radius * Chance.between(-0.8, 0.8, 7, cell, i);
          double y = radius * Chance.between(-0.8, 0.8, 8, cell, i);
          double sway = 0.02 * radius * StrictMath.sin(seconds + 6 * Chance.at(9, cell, i));
          double size = 0.0002 + 0.0004 * Chance.at(10, cell, i);
          float share = (float) (0.45 * StrictMath.exp(-z / radius));
          field.dab(
              lens.columnOf(x + sway, y, z),
              lens.rowOf(x + sway, y, z),
              Math.min(3, size * lens.pixelsPerMetre(z)),
              0xD8CBA6,
              0.9f,
              share,
              (float) z);
        }
      }
    }
  }
}
