package daylight.line.survey;

import java.util.List;

/**
 * A shift and a turn of one plane onto another: east = east₀ + cos γ·x + sin γ·y, north = north₀ −
 * sin γ·x + cos γ·y.
 *
 * @param east metres
 * @param north metres
 * @param turn γ, radians: where the first plane's north points on the second, clockwise
 */
record Shift(double east, double north, double turn) {

  /** The best over pairs of positions of the same points: turned about their centroids. */
  static Shift between(List<PlanPoint> from, List<PlanPoint> onto) {
    PlanPoint a = centroid(from);
    PlanPoint b = centroid(onto);
    double sine = 0;
    double cosine = 0;
    for (int i = 0; i < from.size(); i++) {
      double x = from.get(i).x() - a.x();
      double y = from.get(i).y() - a.y();
      double e = onto.get(i).x() - b.x();
      double n = onto.get(i).y() - b.y();
      cosine += x * e + y * n;
      sine += y * e - x * n;
    }
    double turn = StrictMath.atan2(sine, cosine);
    PlanPoint turned = new Shift(0, 0, turn).apply(a);
    return new Shift(b.x() - turned.x(), b.y() - turned.y(), turn);
  }

  private static PlanPoint centroid(List<PlanPoint> points) {
    double x = 0;
    double y = 0;
    for (PlanPoint point : points) {
      x += point.x();
      y += point.y();
    }
    return new PlanPoint(x / points.size(), y / points.size());
  }

  PlanPoint apply(PlanPoint p) {
    double c = StrictMath.cos(turn);
    double s = StrictMath.sin(turn);
    return new PlanPoint(east + c * p.x() + s * p.y(), north - s * p.x() + c * p.y());
  }

  PlanPoint back(PlanPoint p) {
    double c = StrictMath.cos(turn);
    double s = StrictMath.sin(turn);
    double e = p.x() - east;
    double n = p.y() - north;
    return new PlanPoint(c * e - s * n, s * e + c * n);
  }
}
