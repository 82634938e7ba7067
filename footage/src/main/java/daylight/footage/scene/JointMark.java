package daylight.footage.scene;

/** The ring of a joint: a dark groove between two lips that catch the light. */
record JointMark(double at, double half) implements Mark {
  private static final int GROOVE = 0x17110D;
  private static final int LIP = 0xD8CDB8;

  @Override
  public double from() {
    return at - 4 * half;
  }

  @Override
  public double to() {
    return at + 4 * half;
  }

  @Override
  public void paint(Ring ring) {
    int lot = (int) (at * 1000);
    for (int column = 0; column < Ring.COLUMNS; column++) {
      double ragged = 1 + 0.35 * Cloud.COARSE.at(2 * column, lot);
      double off = (ring.in - at) / (half * ragged);
      double from = Math.abs(off);
      ring.mix(column, GROOVE, 0.93f * Mark.rise(1.15, 0.75, from));
      float lip = off > 0 ? 0.34f : 0.13f;
      ring.mix(column, LIP, lip * Mark.rise(1.0, 1.3, from) * Mark.rise(3.2, 1.4, from));
    }
  }
}
