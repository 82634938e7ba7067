package daylight.footage.scene;

import daylight.footage.Raster;

/**
 * From light to a picture: exposure as a small camera finds it, a soft shoulder, corners that fall
 * off, grain; then enlarged to twice the size, as soft as such pictures are.
 */
final class Darkroom {
  private static final int LEVELS = 1024;
  private static final float BRIGHTEST = 4;

  /** Mean light that exposure aims at, and how far it can go. */
  private static final double AIM = 0.46;

  private static final double LEAST = 0.5;
  private static final double MOST = 1.9;
  private static final int GRAINS = 1 << 16;

  private final Field field;
  private final int[] film;
  private final int[] row;
  private final float[] corner;
  private final int[] tone = new int[LEVELS + 1];
  private final byte[] grain = new byte[GRAINS];

  Darkroom(Lens lens, Field field, double noise) {
    this.field = field;
    film = new int[field.width * field.height];
    row = new int[field.width];
    corner = new float[film.length];
    for (int i = 0; i < film.length; i++) {
      int line = i / field.width;
      double x = (i % field.width - field.width / 2.0) / (field.width / 2.0);
      double y = (line - field.height / 2.0) / (field.width / 2.0);
      double from = x * x + y * y;
      corner[i] = (float) (1 - 0.22 * from * from);
    }
    for (int i = 0; i <= LEVELS; i++) {
      double light = BRIGHTEST * i / LEVELS;
      tone[i] = (int) (255 * (1 - StrictMath.exp(-1.5 * light - 0.45 * light * light)) + 0.5);
    }
    for (int i = 0; i < GRAINS; i++) {
      double sum = Chance.at(31, i, 0) + Chance.at(31, i, 1) + Chance.at(31, i, 2) - 1.5;
      grain[i] = (byte) StrictMath.rint(sum * 2 * noise);
    }
  }

  /** Fills the raster; the picture sits that many pixels of the field off its place. */
  void develop(int frame, double shakeX, double shakeY, Raster onto) {
    expose(frame);
    enlarge(shakeX, shakeY, onto);
  }

  private float exposure() {
    double sum = 0;
    int count = 0;
    for (int i = 0; i < film.length; i += 37) {
      sum += Math.min(1.2f, 0.3f * field.red[i] + 0.59f * field.green[i] + 0.11f * field.blue[i]);
      count++;
    }
    double mean = Math.max(1e-3, sum / count);
    return (float) Math.clamp(StrictMath.pow(AIM / mean, 0.75), LEAST, MOST);
  }

  private void expose(int frame) {
    float gain = exposure() * LEVELS / BRIGHTEST;
    int start = (int) (Chance.at(32, frame, 0) * GRAINS);
    for (int i = 0; i < film.length; i++) {
      float scale = gain * corner[i];
      int g = grain[(start + i * 7) & (GRAINS - 1)];
      int r = level(field.red[i] * scale, g);
      int gr = level(field.green[i] * scale, g);
      int b = level(field.blue[i] * scale, g);
      film[i] = (r << 16) | (gr << 8) | b;
    }
  }

  private int level(float light, int grain) {
    int i = (int) Math.min(LEVELS, Math.max(0f, light));
    return Math.min(255, Math.max(6, tone[i] + 6 + grain));
  }

  private void enlarge(double shakeX, double shakeY, Raster onto) {
    int width = onto.width();
    int[] pixels = onto.pixels();
    for (int y = 0; y < onto.height(); y++) {
      double from = (y + 0.5) / 2 - 0.5 + Lens.MARGIN + shakeY;
      int upper = (int) from;
      int share = (int) ((from - upper) * 256);
      int a = upper * field.width;
      for (int x = 0; x < field.width; x++) {
        row[x] = Packed.mix(film[a + x], film[a + field.width + x], share);
      }
      double even = -0.25 + Lens.MARGIN + shakeX;
      double odd = 0.25 + Lens.MARGIN + shakeX;
      int evenAt = (int) even;
      int oddAt = (int) odd;
      int evenShare = (int) ((even - evenAt) * 256);
      int oddShare = (int) ((odd - oddAt) * 256);
      for (int x = 0; x < width / 2; x++) {
        int at = y * width + 2 * x;
        pixels[at] = Packed.mix(row[evenAt + x], row[evenAt + x + 1], evenShare);
        pixels[at + 1] = Packed.mix(row[oddAt + x], row[oddAt + x + 1], oddShare);
      }
    }
  }
}
