package daylight.footage.scene;

/**
 * The typefaces of the counters: drawn here, pixel by pixel or stroke by stroke, after no camera's.
 */
public enum Typeface {
  /** Five by seven square dots. */
  MATRIX(0, false),
  /** The same, zero slashed. */
  MATRIX_SLASHED(0, true),
  /** Five by seven round dots that do not touch. */
  DOTS(0, false),
  /** The matrix with its corners rounded off. */
  SMOOTH(0, true),
  /** Seven bars; letters in strokes. */
  SEGMENTS(0.15, false),
  /** Thin strokes. */
  THIN(0.075, false),
  /** Thin strokes, zero slashed, leaning. */
  LEANING(0.085, true),
  /** Strokes of common width. */
  PLAIN(0.125, false),
  /** Thick strokes. */
  BOLD(0.185, false);

  /** Width of a stroke, in heights of a capital; 0 for what is made of dots. */
  private final double pen;

  private final boolean slashed;

  Typeface(double pen, boolean slashed) {
    this.pen = pen;
    this.slashed = slashed;
  }

  /**
   * A character drawn so that a capital is {@code height} pixels high; what it cannot draw is
   * blank.
   */
  Stamp stamp(char character, int height) {
    return switch (this) {
      case MATRIX, MATRIX_SLASHED -> MatrixFace.square(character, height, slashed);
      case DOTS -> MatrixFace.round(character, height, slashed);
      case SMOOTH -> MatrixFace.smooth(character, height, slashed);
      case SEGMENTS -> StrokeFace.segments(character, height, pen);
      case LEANING -> StrokeFace.strokes(character, height, pen, 0.2, slashed);
      case THIN, PLAIN, BOLD -> StrokeFace.strokes(character, height, pen, 0, slashed);
    };
  }
}
