package daylight.report.draw;

import daylight.line.measure.Shown;
import daylight.line.survey.PlanPoint;
import java.util.List;

/**
 * Lays the site grid on the sheet: to scale, north up, or turned a quarter where that draws it
 * larger.
 */
record PlanFrame(Scale scale, boolean turned, double originX, double originY) {
  private static final double ROOM_FOR_LABELS = 34;

  static PlanFrame of(List<PlanPoint> points, Box box, Shown shown) {
    double west = points.stream().mapToDouble(PlanPoint::x).min().orElse(0);
    double east = points.stream().mapToDouble(PlanPoint::x).max().orElse(1);
    double south = points.stream().mapToDouble(PlanPoint::y).min().orElse(0);
    double north = points.stream().mapToDouble(PlanPoint::y).max().orElse(1);
    double wide = Math.max(1, east - west);
    double high = Math.max(1, north - south);
    Scale upright = fitting(wide, high, box, shown);
    Scale across = fitting(high, wide, box, shown);
    boolean turned = across.n() < upright.n();
    PlanFrame atOrigin = new PlanFrame(turned ? across : upright, turned, 0, 0);
    Point middle = atOrigin.at(new PlanPoint((west + east) / 2, (south + north) / 2));
    return new PlanFrame(
        atOrigin.scale, turned, box.middleX() - middle.x(), box.middleY() - middle.y());
  }

  private static Scale fitting(double wide, double high, Box box, Shown shown) {
    Scale x = Scale.fitting(wide, box.width() - 2 * ROOM_FOR_LABELS, shown);
    Scale y = Scale.fitting(high, box.height() - 2 * ROOM_FOR_LABELS, shown);
    return x.n() > y.n() ? x : y;
  }

  Point at(PlanPoint p) {
    double k = scale.pointsPerMetre();
    return turned
        ? new Point(originX + k * p.y(), originY + k * p.x())
        : new Point(originX + k * p.x(), originY - k * p.y());
  }

  /** How far a line of that bearing, radians, is turned on the sheet: degrees clockwise. */
  double turn(double bearing) {
    double degrees = StrictMath.toDegrees(bearing) - 90;
    return turned ? -degrees - 90 : degrees;
  }

  /** A length on the ground, in points. */
  double length(double metres) {
    return metres * scale.pointsPerMetre();
  }
}
