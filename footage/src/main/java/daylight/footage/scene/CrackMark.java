package daylight.footage.scene;

/** A jagged dark line along the pipe, or around it where it covers a part of the clock. */
record CrackMark(Thing.Crack crack, double radius) implements Mark {
  private static final int DARK = 0x0E0A08;
  private static final double THINNEST = 0.0016;

  @Override
  public double from() {
    return crack.at() - (around() ? 0.02 : 0);
  }

  @Override
  public double to() {
    return crack.to() + (around() ? 0.02 : 0);
  }

  private boolean around() {
    return crack.from() != crack.upTo();
  }

  @Override
  public void paint(Ring ring) {
    if (around()) {
      paintAround(ring);
    } else {
      paintAlong(ring);
    }
  }

  private double half() {
    return Math.max(THINNEST, crack.width()) * 0.7;
  }

  private void paintAlong(Ring ring) {
    double share = (ring.in - crack.at()) / (crack.to() - crack.at());
    double taper = Math.min(1, 5 * Math.min(share, 1 - share));
    line(ring, wander(ring.row, 40) + wander(ring.row * 7, 90) * 0.25, half() * taper);
    double branch = share - 0.55;
    if (branch > 0 && branch < 0.3) {
      double away = branch * (crack.to() - crack.at()) * 0.45;
      line(ring, wander(ring.row, 40) + away + wander(ring.row * 5, 7) * 0.2, half() * 0.6 * taper);
    }
  }

  /** How far the line strays from its clock position, in metres. */
  private double wander(int row, int lane) {
    return 0.16 * radius * Cloud.COARSE.at(row, lane) + 0.05 * radius * Cloud.FINE.at(row, lane);
  }

  private void line(Ring ring, double off, double half) {
    int middle = Ring.column(crack.from() + off / radius);
    int reach = (int) StrictMath.ceil(4 * half / radius / (2 * StrictMath.PI) * Ring.COLUMNS) + 2;
    for (int i = -reach; i <= reach; i++) {
      int column = (middle + i) & (Ring.COLUMNS - 1);
      double from = Math.abs(ring.across(column, crack.from()) - off) / half;
      ring.mix(column, DARK, 0.95f * Mark.rise(1.5, 0.8, from));
      ring.mix(column, DARK, 0.25f * Mark.rise(4, 1, from));
    }
  }

  private void paintAround(Ring ring) {
    double middle = (crack.at() + crack.to()) / 2;
    double width = crack.upTo() - crack.from();
    double sweep = width > 0 ? width : width + 2 * StrictMath.PI;
    for (int column = 0; column < Ring.COLUMNS; column++) {
      double along = ring.across(column, crack.from()) / radius;
      double clockwise = along < 0 ? along + 2 * StrictMath.PI : along;
      if (clockwise <= sweep) {
        double off = ring.in - middle - wander(column, 130);
        ring.mix(column, DARK, 0.95f * Mark.rise(1.5, 0.8, Math.abs(off) / half()));
      }
    }
  }
}
