package daylight.footage.scene;

/** A ragged part of the wall that looks otherwise than the rest. */
record PatchMark(Thing.Patch patch, double radius) implements Mark {
  /** How far its edge frays, in metres. */
  private static final double FRAY = 0.018;

  @Override
  public double from() {
    return patch.at() - FRAY;
  }

  @Override
  public double to() {
    return patch.to() + FRAY;
  }

  @Override
  public void paint(Ring ring) {
    double width = patch.upTo() - patch.from();
    double sweep = width > 0 ? width : width + 2 * StrictMath.PI;
    double middle = patch.from() + sweep / 2;
    double half = sweep / 2 * radius;
    double ends = Math.min(ring.in - patch.at(), patch.to() - ring.in);
    for (int column = 0; column < Ring.COLUMNS; column++) {
      double inside = Math.min(ends, half - Math.abs(ring.across(column, middle)));
      double edge = inside + FRAY * Cloud.COARSE.at(2 * column, 2 * ring.row + 91);
      if (edge > -FRAY) {
        paint(ring, column, edge);
      }
    }
  }

  private void paint(Ring ring, int column, double edge) {
    float cover = Mark.rise(-0.003, 0.003, edge);
    float coarse = Cloud.COARSE.at(4 * column, 3 * ring.row);
    float fine = Cloud.FINE.at(3 * column, 3 * ring.row);
    switch (patch.sort()) {
      case HOLE -> {
        ring.mix(column, 0x9A8468, 0.5f * Mark.rise(-0.008, 0, edge));
        ring.mix(column, 0x0A0806, cover * (0.95f + 0.1f * coarse));
      }
      case SOIL -> {
        ring.mix(column, 0x2A1D13, 0.8f * Mark.rise(-0.006, 0, edge));
        ring.mix(column, coarse + fine > 0.15f ? 0x7A5B3A : 0x4B3623, cover * 0.9f);
      }
      case RUST -> {
        ring.mix(column, 0x8E451A, cover * (0.6f + 0.4f * coarse));
        ring.mix(column, 0x2B1A12, cover * 0.8f * Mark.rise(0.1, 0.4, fine));
      }
      case WORN -> ring.mix(column, 0xB8AD98, cover * (0.35f + 0.5f * fine));
      case WET -> {
        ring.mix(column, 0x57432C, cover * (0.5f + 0.3f * coarse));
        ring.mix(column, 0xFFFFF4, cover * 0.9f * Mark.rise(0.35, 0.6, fine));
      }
      case GREASE -> ring.mix(column, 0xCDBE93, cover * (0.8f + 0.25f * fine));
      case SCALE ->
          ring.mix(column, coarse > 0 ? 0xD9CFB8 : 0xA8977A, cover * (0.8f + 0.4f * fine));
      case MENDED -> ring.mix(column, 0xBFC6BE, cover * (0.85f + 0.1f * fine));
    }
  }
}
