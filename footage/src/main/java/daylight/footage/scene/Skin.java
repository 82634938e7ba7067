package daylight.footage.scene;

import daylight.line.book.Material;

/**
 * How a pipe looks inside. Common practice, no source.
 *
 * @param base its colour as {@code 0xRRGGBB}
 * @param dark what it darkens to in blotches
 * @param accent the colour of what grows on it
 * @param blotch how strong the blotches are, from 0 to 1
 * @param grain how rough it looks close up, from 0 to 1
 * @param lumps how much grows on it, from 0 to 1
 * @param ribs spacing of its ribs in metres; 0 for none
 * @param jointEvery length of one pipe in metres; 0 where it has no joints
 * @param joint half the width of a joint in metres
 * @param soiled how brown its bottom is, from 0 to 1
 */
record Skin(
    int base,
    int dark,
    int accent,
    float blotch,
    float grain,
    float lumps,
    double ribs,
    double jointEvery,
    double joint,
    float soiled) {
  private static final Skin CLAY =
      new Skin(0xB9713F, 0x6E3F26, 0x4A2E1E, .75f, .16f, .10f, 0, .61, .0028, .75f);
  private static final Skin PLASTIC =
      new Skin(0xE0E0D4, 0xB3AE9A, 0x8A7B5C, .45f, .05f, 0, 0, 3.05, .003, .55f);
  private static final Skin SOFT_PLASTIC =
      new Skin(0x73808A, 0x525C64, 0x5A5142, .5f, .06f, 0, 0, 0, .003, .7f);
  private static final Skin BLACK_PLASTIC =
      new Skin(0x4A4B4C, 0x333434, 0x5A5142, .3f, .06f, 0, 0, 3.05, .003, .5f);
  private static final Skin RIBBED =
      new Skin(0x525250, 0x32312F, 0x5A5142, .4f, .07f, 0, .019, 0, .003, .8f);
  private static final Skin IRON =
      new Skin(0x66503F, 0x35291F, 0x94602F, .75f, .28f, .6f, 0, 1.52, .0026, .6f);
  private static final Skin CONCRETE =
      new Skin(0xA09884, 0x756C5B, 0x5F5747, .5f, .30f, .05f, 0, 1.22, .006, .6f);
  private static final Skin FIBRE =
      new Skin(0x3B322B, 0x231E1A, 0x4C4033, .5f, .2f, .15f, 0, 2.44, .004, .6f);
  private static final Skin BRICK =
      new Skin(0x8C4A35, 0x5B3126, 0xA8A08F, .6f, .3f, .1f, .075, .225, .004, .6f);
  private static final Skin LINER =
      new Skin(0xC4CDB8, 0x9DA68F, 0x7C7A58, .25f, .03f, 0, 0, 0, .003, .4f);

  static Skin of(Material material) {
    return switch (material) {
      case CLAY -> CLAY;
      case PVC -> PLASTIC;
      case POLYETHYLENE -> SOFT_PLASTIC;
      case ABS -> BLACK_PLASTIC;
      case CORRUGATED -> RIBBED;
      case CAST_IRON, STEEL -> IRON;
      case CONCRETE, ASBESTOS_CEMENT, UNKNOWN -> CONCRETE;
      case BITUMEN_FIBRE -> FIBRE;
      case BRICK -> BRICK;
      case LINED -> LINER;
    };
  }

  /** Half as deep a shade between ribs as on them. */
  float rib(double in) {
    return ribs == 0 ? 1 : 0.72f + 0.42f * (float) StrictMath.sin(2 * StrictMath.PI * in / ribs);
  }
}
