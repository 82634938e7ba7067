package daylight.report.draw;

/** An upright rectangle on the sheet, points right and down from its upper left corner. */
record Box(double x, double y, double width, double height) {
  double right() {
    return x + width;
  }

  double bottom() {
    return y + height;
  }

  double middleX() {
    return x + width / 2;
  }

  double middleY() {
    return y + height / 2;
  }

  static Box around(double x, double y, double radius) {
    return new Box(x - radius, y - radius, 2 * radius, 2 * radius);
  }

  /** The space a text takes whose first letter stands at a point. */
  static Box ofText(double x, double baseline, String text, double size, boolean bold) {
    return new Box(
        x,
        baseline - Typeface.ASCENT * size,
        Typeface.width(text, size, bold),
        (Typeface.ASCENT + Typeface.DESCENT) * size);
  }

  Box grown(double by) {
    return new Box(x - by, y - by, width + 2 * by, height + 2 * by);
  }

  boolean overlaps(Box other) {
    return x < other.right() && other.x < right() && y < other.bottom() && other.y < bottom();
  }

  boolean holds(Box other) {
    return other.x >= x && other.y >= y && other.right() <= right() && other.bottom() <= bottom();
  }

  /** Whether a straight stroke runs through it (Liang and Barsky's clipping, from memory). */
  boolean crossedBy(Stroke s) {
    if (Math.max(s.x1(), s.x2()) < x
        || Math.min(s.x1(), s.x2()) > right()
        || Math.max(s.y1(), s.y2()) < y
        || Math.min(s.y1(), s.y2()) > bottom()) {
      return false;
    }
    double dx = s.x2() - s.x1();
    double dy = s.y2() - s.y1();
    double[] p = {-dx, dx, -dy, dy};
    double[] q = {s.x1() - x, right() - s.x1(), s.y1() - y, bottom() - s.y1()};
    double enter = 0;
    double leave = 1;
    for (int i = 0; i < 4; i++) {
      if (p[i] == 0) {
        if (q[i] < 0) {
          return false;
        }
      } else if (p[i] < 0) {
        enter = Math.max(enter, q[i] / p[i]);
      } else {
        leave = Math.min(leave, q[i] / p[i]);
      }
    }
    return enter <= leave;
  }
}
