package daylight.report.draw;

/** A straight stroke on the sheet. */
record Stroke(double x1, double y1, double x2, double y2) {

  /** The upright rectangle it lies in. */
  Box bounds() {
    return new Box(Math.min(x1, x2), Math.min(y1, y2), Math.abs(x2 - x1), Math.abs(y2 - y1));
  }

  /** Whether two strokes cross, touching ends left aside. */
  boolean crosses(Stroke o) {
    double a = side(o.x1, o.y1);
    double b = side(o.x2, o.y2);
    double c = o.side(x1, y1);
    double d = o.side(x2, y2);
    return a * b < 0 && c * d < 0;
  }

  private double side(double x, double y) {
    return (x2 - x1) * (y - y1) - (y2 - y1) * (x - x1);
  }
}
