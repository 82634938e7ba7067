package daylight.footage.scene;

/** The mouth of another pipe: a dark hole with a rim, its far side faintly lit. */
record OpeningMark(Thing.Opening opening, double radius) implements Mark {
  private static final int DARK = 0x0B0908;
  private static final int FAR_SIDE = 0x6B4F3A;
  private static final int RIM = 0xE6D8C0;
  private static final int SHADE = 0x1C140F;

  private double half() {
    return Math.min(opening.bore() / 2, 0.85 * radius);
  }

  @Override
  public double from() {
    return opening.at() - 1.4 * half();
  }

  @Override
  public double to() {
    return opening.at() + 1.4 * half();
  }

  @Override
  public void paint(Ring ring) {
    double along = (ring.in - opening.at()) / half();
    for (int column = 0; column < Ring.COLUMNS; column++) {
      double across = ring.across(column, opening.clock()) / half();
      double from = StrictMath.sqrt(along * along + across * across);
      if (from < 1.4) {
        double ragged = from + 0.03 * Cloud.COARSE.at(2 * column, ring.row);
        ring.mix(column, SHADE, 0.5f * Mark.rise(1.35, 1.1, ragged));
        ring.mix(column, RIM, 0.55f * Mark.rise(1.16, 1.1, ragged));
        ring.mix(column, DARK, Mark.rise(1.04, 0.98, ragged));
        float lit = 0.6f * Mark.rise(0.2, 1, along) * Mark.rise(0.45, 1, ragged);
        ring.mix(column, FAR_SIDE, lit * Mark.rise(1.02, 0.97, ragged));
      }
    }
  }
}
