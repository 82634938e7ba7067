package daylight.footage.scene;

/** The dark fringe on the wall where roots come through a joint. */
record RootMark(Thing.Roots roots) implements Mark {
  private static final double REACH = 0.03;

  @Override
  public double from() {
    return roots.at() - REACH;
  }

  @Override
  public double to() {
    return roots.to() + REACH;
  }

  @Override
  public void paint(Ring ring) {
    double width = roots.upTo() - roots.from();
    double sweep = width > 0 ? width : width + 2 * StrictMath.PI;
    double half = sweep / 2 * ring.radius + 0.006;
    double middle = roots.from() + sweep / 2;
    double off = Math.max(0, Math.max(roots.at() - ring.in, ring.in - roots.to()));
    for (int column = 0; column < Ring.COLUMNS; column++) {
      double inside = half - Math.abs(ring.across(column, middle));
      if (inside > 0) {
        float fibre = 0.5f + 0.5f * Cloud.FINE.at(4 * column, ring.row / 3);
        float near = Mark.rise(REACH, 0, off) * Mark.rise(0, 0.012, inside);
        ring.mix(column, 0x3A2414, 0.75f * near * fibre);
      }
    }
  }
}
