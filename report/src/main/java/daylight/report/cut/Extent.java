package daylight.report.cut;

import daylight.line.survey.PlanPoint;
import java.util.List;

/** What points take up on a sheet with some bearing up: right and up, metres. */
record Extent(double up, double left, double bottom, double right, double top) {
  static Extent of(List<PlanPoint> points, double up) {
    PlanPoint first = turned(points.getFirst(), up);
    Extent extent = new Extent(up, first.x(), first.y(), first.x(), first.y());
    for (PlanPoint point : points) {
      extent = extent.with(point);
    }
    return extent;
  }

  Extent with(PlanPoint point) {
    PlanPoint p = turned(point, up);
    return new Extent(
        up,
        Math.min(left, p.x()),
        Math.min(bottom, p.y()),
        Math.max(right, p.x()),
        Math.max(top, p.y()));
  }

  double width() {
    return right - left;
  }

  double height() {
    return top - bottom;
  }

  /** How far a point lies outside, metres. */
  double away(PlanPoint point) {
    PlanPoint p = turned(point, up);
    double x = Math.max(0, Math.max(left - p.x(), p.x() - right));
    double y = Math.max(0, Math.max(bottom - p.y(), p.y() - top));
    return StrictMath.hypot(x, y);
  }

  PlanPoint middle() {
    return turned(new PlanPoint((left + right) / 2, (bottom + top) / 2), -up);
  }

  /** A point in a grid turned so that a bearing is up. */
  static PlanPoint turned(PlanPoint p, double up) {
    double e = StrictMath.sin(up);
    double n = StrictMath.cos(up);
    return new PlanPoint(n * p.x() - e * p.y(), e * p.x() + n * p.y());
  }
}
