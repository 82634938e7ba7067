package daylight.report.cut;

import daylight.line.survey.PlanPoint;
import java.util.List;

/** Which way points run on the whole. */
public final class Axis {
  private Axis() {}

  /**
   * The bearing of the axis about which points lie closest, to whole degrees, pointing from the
   * first to the last; radians clockwise from grid north, east where there are fewer than two.
   */
  public static double bearing(List<PlanPoint> spots) {
    if (spots.size() < 2) {
      return Math.PI / 2;
    }
    double x = spots.stream().mapToDouble(PlanPoint::x).average().orElse(0);
    double y = spots.stream().mapToDouble(PlanPoint::y).average().orElse(0);
    double xx = 0;
    double xy = 0;
    double yy = 0;
    for (PlanPoint spot : spots) {
      xx += (spot.x() - x) * (spot.x() - x);
      xy += (spot.x() - x) * (spot.y() - y);
      yy += (spot.y() - y) * (spot.y() - y);
    }
    double axis = StrictMath.atan2(2 * xy, yy - xx) / 2;
    PlanPoint first = spots.getFirst();
    PlanPoint last = spots.getLast();
    double onward =
        (last.x() - first.x()) * StrictMath.sin(axis)
            + (last.y() - first.y()) * StrictMath.cos(axis);
    double degrees = StrictMath.toDegrees(onward < 0 ? axis + Math.PI : axis);
    return StrictMath.toRadians(Math.rint(degrees));
  }
}
