package daylight.footage.scene;

/** Roots: hairs that come through a joint, hang into the pipe and branch. */
final class Strands {
  private static final int PIECES = 16;
  private static final int[] COLOURS = {0xB08A5C, 0x8C6840, 0xC9A878, 0x6F5030};

  private final Lens lens;
  private final Field field;

  Strands(Lens lens, Field field) {
    this.lens = lens;
    this.field = field;
  }

  /** Draws the roots, given how far in the lens is, the pipe's radius and the lens's height. */
  void draw(Thing.Roots roots, double in, double radius, double eye) {
    double width = roots.upTo() - roots.from();
    double sweep = width > 0 ? width : width + 2 * StrictMath.PI;
    double stretch = roots.to() - roots.at();
    int hairs = (int) ((14 + 170 * roots.share()) * (1 + Math.min(stretch, 2) * 3));
    long seed = (long) (roots.at() * 1000);
    for (int i = 0; i < hairs; i++) {
      double at = roots.at() + stretch * Chance.at(seed, i, 1) + 0.012 * Chance.at(seed, i, 2);
      double ahead = at - in;
      if (ahead > 0.1 * radius && ahead < Tunnel.REACH * radius) {
        double clock = roots.from() + sweep * Chance.at(seed, i, 3);
        double thick = StrictMath.pow(Chance.at(seed, i, 4), 4);
        double length =
            radius * (0.18 + 1.5 * StrictMath.sqrt(roots.share()) * Chance.at(seed, i, 5));
        Hair hair = new Hair(seed * 1000 + i, length * (1 + thick), 0.0003 + 0.0016 * thick);
        grow(hair, ahead, clock, radius, eye);
      }
    }
  }

  private record Hair(long seed, double length, double half) {}

  private void grow(Hair hair, double ahead, double clock, double radius, double eye) {
    double x = radius * StrictMath.sin(clock);
    double y = radius * StrictMath.cos(clock);
    double z = ahead;
    double dx = -StrictMath.sin(clock);
    double dy = -StrictMath.cos(clock);
    double dz = Chance.between(-0.5, 0.4, hair.seed, 0, 7);
    double piece = hair.length / PIECES;
    int colour = COLOURS[(int) (Chance.at(hair.seed, 0, 8) * COLOURS.length)];
    for (int i = 0; i < PIECES && z > 0.08 * radius; i++) {
      dx += Chance.between(-0.42, 0.42, hair.seed, i, 10);
      dy += Chance.between(-0.42, 0.42, hair.seed, i, 11) - 0.07;
      dz += Chance.between(-0.3, 0.3, hair.seed, i, 12);
      double norm = piece / StrictMath.sqrt(dx * dx + dy * dy + dz * dz);
      double toX = x + dx * norm;
      double toY = y + dy * norm;
      double toZ = z + dz * norm;
      if (toX * toX + toY * toY > radius * radius) {
        double back = 0.97 * radius / StrictMath.sqrt(toX * toX + toY * toY);
        toX *= back;
        toY *= back;
      }
      double taper = 1 - 0.8 * i / PIECES;
      stroke(x, y, z, toX, toY, toZ, radius, eye, hair.half * taper, colour);
      x = toX;
      y = toY;
      z = toZ;
    }
  }

  private void stroke(
      double x0,
      double y0,
      double z0,
      double x1,
      double y1,
      double z1,
      double radius,
      double eye,
      double half,
      int colour) {
    double rise = radius - eye;
    if (z0 <= 0.05 * radius || z1 <= 0.05 * radius) {
      return;
    }
    double fromX = lens.columnOf(x0, y0 + rise, z0);
    double fromY = lens.rowOf(x0, y0 + rise, z0);
    double toX = lens.columnOf(x1, y1 + rise, z1);
    double toY = lens.rowOf(x1, y1 + rise, z1);
    double span = Math.max(Math.abs(toX - fromX), Math.abs(toY - fromY));
    if (span > field.width) {
      return;
    }
    double far = StrictMath.sqrt(x0 * x0 + (y0 + rise) * (y0 + rise) + z0 * z0);
    double pixels = half * lens.pixelsPerMetre(far);
    float share = (float) Math.min(1, 0.25 + pixels * 1.6);
    double unit = far / radius;
    float light = (float) Math.min(0.95, StrictMath.pow(0.62 / (0.15 + unit * unit), 0.44));
    double drawn = Math.max(0.2, pixels);
    int steps = (int) StrictMath.ceil(span / Math.max(0.7, drawn)) + 1;
    for (int i = 0; i < steps; i++) {
      double s = (double) i / steps;
      double column = fromX + s * (toX - fromX);
      double row = fromY + s * (toY - fromY);
      field.dab(column, row, drawn, colour, light, share, (float) far);
      if (drawn > 0.8) {
        field.dab(
            column + drawn * 0.5,
            row + drawn * 0.5,
            drawn * 0.4,
            0x2E1E12,
            light,
            0.5f,
            (float) far);
      }
    }
  }
}
