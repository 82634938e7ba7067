package daylight.report.draw;

import daylight.line.course.Route;
import daylight.line.course.Run;
import daylight.line.course.Station;
import daylight.line.measure.Shown;
import daylight.line.survey.PlanPoint;
import daylight.report.cut.Axis;
import java.util.List;

/**
 * Lays the site grid on the sheet: to scale, nowhere broken, with any bearing up.
 *
 * @param up bearing that points up on the sheet, radians clockwise from grid north
 */
record PlanFrame(Scale scale, double up, double originX, double originY) {
  /** What is shown keeps so far from the edge of a box, points. */
  static final double ROOM_FOR_LABELS = 34;

  /** So many times larger it has to be drawn for north to be anywhere but up or left or right. */
  private static final double WORTH_TURNING = 1.2;

  private static final double WEST = -Math.PI / 2;

  /**
   * Finds the scale, and the way up where that is free.
   *
   * @param along bearing of the line, which is to run to the right where it is turned along it
   */
  static PlanFrame of(List<PlanPoint> points, Box box, Shown shown, PlanTurn turn, double along) {
    double lying = along - Math.PI / 2;
    return switch (turn) {
      case NORTH_UP -> of(points, box, shown, 0);
      case ALONG -> of(points, box, shown, lying);
      case AS_IT_FITS -> {
        PlanFrame north = of(points, box, shown, 0);
        PlanFrame quarter = of(points, box, shown, WEST);
        PlanFrame upright = quarter.scale.n() < north.scale.n() ? quarter : north;
        PlanFrame turned = of(points, box, shown, lying);
        yield turned.scale.n() * WORTH_TURNING <= upright.scale.n() ? turned : upright;
      }
    };
  }

  private static PlanFrame of(List<PlanPoint> points, Box box, Shown shown, double up) {
    PlanFrame unit = new PlanFrame(new Scale(Scale.POINTS_PER_METRE), up, 0, 0);
    List<Point> at = points.stream().map(unit::at).toList();
    double left = at.stream().mapToDouble(Point::x).min().orElse(0);
    double right = at.stream().mapToDouble(Point::x).max().orElse(1);
    double top = at.stream().mapToDouble(Point::y).min().orElse(0);
    double bottom = at.stream().mapToDouble(Point::y).max().orElse(1);
    Scale scale = fitting(Math.max(1, right - left), Math.max(1, bottom - top), box, shown);
    double k = scale.pointsPerMetre();
    return new PlanFrame(
        scale, up, box.middleX() - k * (left + right) / 2, box.middleY() - k * (top + bottom) / 2);
  }

  private static Scale fitting(double wide, double high, Box box, Shown shown) {
    Scale x = Scale.fitting(wide, box.width() - 2 * ROOM_FOR_LABELS, shown);
    Scale y = Scale.fitting(high, box.height() - 2 * ROOM_FOR_LABELS, shown);
    return x.n() > y.n() ? x : y;
  }

  /**
   * The bearing that a route has on the whole, to whole degrees: the axis about which its stations
   * lie closest, pointing the way the water goes. East where nothing is known of it.
   */
  static double bearing(Route route) {
    return Axis.bearing(
        route.runs().stream().map(Run::stations).flatMap(List::stream).map(Station::spot).toList());
  }

  /** One at a scale, with a point of the ground in the middle of a box. */
  static PlanFrame about(PlanPoint middle, Box box, Scale scale, double up) {
    Point at = new PlanFrame(scale, up, 0, 0).at(middle);
    return new PlanFrame(scale, up, box.middleX() - at.x(), box.middleY() - at.y());
  }

  Point at(PlanPoint p) {
    double k = scale.pointsPerMetre();
    double e = StrictMath.sin(up);
    double n = StrictMath.cos(up);
    return new Point(originX + k * (n * p.x() - e * p.y()), originY - k * (e * p.x() + n * p.y()));
  }

  /** Whether grid north is up. */
  boolean isNorthUp() {
    return up == 0;
  }

  /** How far a line of that bearing, radians, is turned on the sheet: degrees clockwise. */
  double turn(double bearing) {
    return StrictMath.toDegrees(bearing - up) - 90;
  }

  /** A length on the ground, in points. */
  double length(double metres) {
    return metres * scale.pointsPerMetre();
  }
}
