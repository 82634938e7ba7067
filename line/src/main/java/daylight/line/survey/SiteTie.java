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
 */
public record SiteTie(
    double latitudeRad,
    double longitudeRad,
    double east,
    double north,
    double gridNorth,
    double gridNorthSd) {

  /** A position on WGS 84, radians. */
  public record Geographic(double latitudeRad, double longitudeRad) {}

  /** Where a grid position lies on the earth. */
  public Geographic geographic(PlanPoint point) {
    double c = StrictMath.cos(gridNorth);
    double s = StrictMath.sin(gridNorth);
    double e = east + c * point.x() + s * point.y();
    double n = north - s * point.x() + c * point.y();
    GeodesicData end =
        Geodesic.WGS84.Direct(
            StrictMath.toDegrees(latitudeRad),
            StrictMath.toDegrees(longitudeRad),
            StrictMath.toDegrees(StrictMath.atan2(e, n)),
            StrictMath.hypot(e, n));
    return new Geographic(StrictMath.toRadians(end.lat2), StrictMath.toRadians(end.lon2));
  }
}
