package daylight.line.sonde;

import daylight.line.book.Material;

/**
 * The iron wall around a sonde. Skin depth √(2/(ωμσ)) (griffiths-9.4); conductivity and
 * permeability of the metals are from memory, and the walls are of usual small drains, common
 * practice.
 *
 * @param thickness in metres
 * @param conductivity in siemens per metre
 * @param permeability relative to that of air
 */
record Wall(double thickness, double conductivity, double permeability) {
  /** Of nearly every such transmitter, in hertz. */
  static final double FREQUENCY = 512;

  /** Of free space, in henry per metre. */
  static final double MU_0 = 4e-7 * StrictMath.PI;

  /** The usual wall of a ferrous material; refuses others. */
  static Wall of(Material material) {
    return switch (material) {
      case CAST_IRON -> new Wall(0.0055, 1.4e6, 100);
      case STEEL -> new Wall(0.0036, 6e6, 100);
      default -> throw new IllegalArgumentException("material must be iron, was " + material);
    };
  }

  /** In metres, at 512 Hz. */
  double skinDepth() {
    return StrictMath.sqrt(1 / (StrictMath.PI * FREQUENCY * MU_0 * permeability * conductivity));
  }

  /** How many skin depths thick, to half of one: more is not known. */
  double inSkinDepths() {
    return StrictMath.rint(2 * thickness / skinDepth()) / 2;
  }
}
