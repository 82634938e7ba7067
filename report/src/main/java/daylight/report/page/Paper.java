package daylight.report.page;

/** The sheet that a report is set on. */
public enum Paper {
  /** 8½ × 11 in. */
  LETTER(612, 792),
  /** 210 × 297 mm (ISO 216). */
  A4(595.276, 841.89);

  private final double width;
  private final double height;

  Paper(double width, double height) {
    this.width = width;
    this.height = height;
  }

  /** Its shorter side in points of 1/72 in. */
  public double width() {
    return width;
  }

  /** Its longer side in points of 1/72 in. */
  public double height() {
    return height;
  }
}
