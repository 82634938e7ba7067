package daylight.report.map;

import daylight.line.survey.PlanPoint;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/** Areas with their rings the way round that RFC 7946 and KML ask for. */
final class Areas {
  private Areas() {}

  /** An area with one ring, given by its corners in either sense. */
  static Shape of(List<PlanPoint> corners) {
    Coordinate[] ring =
        Stream.concat(corners.stream(), Stream.of(corners.getFirst()))
            .map(corner -> new Coordinate(corner.x(), corner.y()))
            .toArray(Coordinate[]::new);
    return of(new GeometryFactory().createPolygon(ring));
  }

  /** An area as the geometry library has it; it begins at the same corner every time. */
  static Shape of(Polygon polygon) {
    Polygon normal = (Polygon) polygon.norm();
    List<List<PlanPoint>> rings = new ArrayList<>();
    rings.add(ring(normal.getExteriorRing(), true));
    for (int i = 0; i < normal.getNumInteriorRing(); i++) {
      rings.add(ring(normal.getInteriorRingN(i), false));
    }
    return new Shape.Area(rings);
  }

  private static List<PlanPoint> ring(LinearRing ring, boolean counterClockwise) {
    List<PlanPoint> points = new ArrayList<>();
    for (Coordinate one : ring.getCoordinates()) {
      points.add(new PlanPoint(one.x, one.y));
    }
    if (Orientation.isCCW(ring.getCoordinateSequence()) != counterClockwise) {
      Collections.reverse(points);
    }
    return points;
  }
}
