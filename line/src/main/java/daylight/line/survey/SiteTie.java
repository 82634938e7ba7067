package daylight.line.survey;

import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicData;

/**
 * How the site grid lies on the earth (WGS 84). East and north are geodesic distance times sine and
 * cosine of azimuth from an origin (azimuthal equidistant): true to 0.1 mm between points within 1
 * km of it.
 *
 * @param latitudeRad of the origin, radians
 * @param longitudeRad of the origin, radians
 * @param east of the grid's zero, metres from the origin
 * @param north of the grid's zero, metres from the origin
 * @param gridNorth true bearing of grid north at the origin, radians clockwise
 * @param gridNorthSd its standard deviation, radians
 * @param eastSd standard deviation of {@code east}, metres: how well the fixes place the grid's
 *     zero
 * @param northSd standard deviation of {@code north}, metres
 */
public record SiteTie(
    double latitudeRad,
    double longitudeRad,
    double east,
    double north,
    double gridNorth,
    double gridNorthSd,
    double eastSd,
    double northSd) {

  /** A position on WGS 84, radians. */
  public record Geographic(double latitudeRad, double longitudeRad) {}

  /** Where a grid position lies on the earth. */
  public Geographic geographic(PlanPoint point) {
    GeodesicData end = fromOrigin(point);
    return new Geographic(StrictMath.toRadians(end.lat2), StrictMath.toRadians(end.lon2));
  }

  /**
   * The true bearing, in [0, 2π), of what bears so many radians clockwise from grid north at a
   * position: the meridian there is not quite parallel to that of the origin.
   */
  public double trueBearing(PlanPoint point, double gridBearing) {
    GeodesicData end = fromOrigin(point);
    double turned = gridBearing + gridNorth + StrictMath.toRadians(end.azi2 - end.azi1);
    double full = 2 * Math.PI;
    return turned - full * Math.floor(turned / full);
  }

  private GeodesicData fromOrigin(PlanPoint point) {
    double c = StrictMath.cos(gridNorth);
    double s = StrictMath.sin(gridNorth);
    double e = east + c * point.x() + s * point.y();
    double n = north - s * point.x() + c * point.y();
    return Geodesic.WGS84.Direct(
        StrictMath.toDegrees(latitudeRad),
        StrictMath.toDegrees(longitudeRad),
        StrictMath.toDegrees(StrictMath.atan2(e, n)),
        StrictMath.hypot(e, n));
  }
}
