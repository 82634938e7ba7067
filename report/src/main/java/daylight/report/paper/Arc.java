package daylight.report.paper;

import java.util.ArrayList;
import java.util.List;

/**
 * A part of an ellipse as path data gives it (SVG 1.1, appendix F.6), told as Bézier curves.
 *
 * @param rx half the first axis
 * @param ry half the second axis
 * @param degrees by which the first axis is turned
 * @param large whether it goes the long way round
 * @param sweep whether its angle grows
 */
record Arc(double rx, double ry, double degrees, boolean large, boolean sweep) {

  /** A curve from where one stands, by its two control points and its end. */
  record Curve(double ax, double ay, double bx, double by, double x, double y) {}

  /** The curves from one point to another; a straight one if the ellipse has no width. */
  List<Curve> between(double x1, double y1, double x2, double y2) {
    if (rx == 0 || ry == 0 || (x1 == x2 && y1 == y2)) {
      return List.of(new Curve(x1, y1, x2, y2, x2, y2));
    }
    double turn = StrictMath.toRadians(degrees);
    double cos = StrictMath.cos(turn);
    double sin = StrictMath.sin(turn);
    double halfX = (cos * (x1 - x2) + sin * (y1 - y2)) / 2;
    double halfY = (cos * (y1 - y2) - sin * (x1 - x2)) / 2;
    double reach = StrictMath.hypot(halfX / rx, halfY / ry);
    double grown = Math.max(1, reach);
    double a = Math.abs(rx) * grown;
    double b = Math.abs(ry) * grown;
    double apart = reach == 0 ? 0 : StrictMath.sqrt(Math.max(0, 1 / (reach * reach) - 1));
    double side = reach >= 1 ? 0 : large == sweep ? -apart : apart;
    double centreX = side * a * halfY / b;
    double centreY = -side * b * halfX / a;
    double from = StrictMath.atan2((halfY - centreY) / b, (halfX - centreX) / a);
    double to = StrictMath.atan2((-halfY - centreY) / b, (-halfX - centreX) / a);
    double angle = to - from;
    if (sweep && angle < 0) {
      angle += 2 * Math.PI;
    } else if (!sweep && angle > 0) {
      angle -= 2 * Math.PI;
    }
    Frame frame =
        new Frame(
            (x1 + x2) / 2 + cos * centreX - sin * centreY,
            (y1 + y2) / 2 + sin * centreX + cos * centreY,
            a,
            b,
            cos,
            sin);
    return frame.curves(from, angle);
  }

  private record Frame(double x, double y, double a, double b, double cos, double sin) {
    List<Curve> curves(double from, double angle) {
      int parts = (int) StrictMath.ceil(Math.abs(angle) / (Math.PI / 2) - 1e-9);
      double step = angle / parts;
      double pull = 4.0 / 3 * StrictMath.tan(step / 4);
      List<Curve> curves = new ArrayList<>();
      for (int i = 0; i < parts; i++) {
        double c1 = StrictMath.cos(from + i * step);
        double s1 = StrictMath.sin(from + i * step);
        double c2 = StrictMath.cos(from + (i + 1) * step);
        double s2 = StrictMath.sin(from + (i + 1) * step);
        double ax = c1 - pull * s1;
        double ay = s1 + pull * c1;
        double bx = c2 + pull * s2;
        double by = s2 - pull * c2;
        curves.add(
            new Curve(
                right(ax, ay),
                down(ax, ay),
                right(bx, by),
                down(bx, by),
                right(c2, s2),
                down(c2, s2)));
      }
      return curves;
    }

    private double right(double u, double v) {
      return x + cos * a * u - sin * b * v;
    }

    private double down(double u, double v) {
      return y + sin * a * u + cos * b * v;
    }
  }
}
