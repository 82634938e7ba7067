package daylight.report.cut;

/**
 * How much ground a sheet holds, margins left out.
 *
 * @param width from left to right, metres
 * @param height from bottom to top, metres
 */
public record Ground(double width, double height) {
  public Ground {
    if (!(Math.min(width, height) > 4 * Cutter.OVERLAP)) {
      throw new IllegalArgumentException(
          "a sheet must hold more than its overlaps, holds " + width + " m by " + height + " m");
    }
  }

  boolean holds(Extent extent) {
    return extent.width() <= width && extent.height() <= height;
  }
}
