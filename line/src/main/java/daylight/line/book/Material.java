package daylight.line.book;

/** What a pipe is made of, as far as it matters for how it can bend and what it feels like. */
public enum Material {
  CLAY(true),
  CONCRETE(true),
  CAST_IRON(true),
  STEEL(true),
  ASBESTOS_CEMENT(true),
  PVC(true),
  ABS(true),
  POLYETHYLENE(false),
  CORRUGATED(false),
  BITUMEN_FIBRE(true),
  BRICK(true),
  LINED(true),
  UNKNOWN(true);

  private final boolean rigid;

  Material(boolean rigid) {
    this.rigid = rigid;
  }

  /** Whether it comes in straight lengths that turn only at joints and bends. */
  public boolean rigid() {
    return rigid;
  }

  /** Whether it weakens and distorts the field of a transmitter inside it. */
  public boolean ferrous() {
    return this == CAST_IRON || this == STEEL;
  }
}
