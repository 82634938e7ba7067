package daylight.line.dig;

import daylight.line.survey.PlanPoint;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** Boxes as shapes of the geometry library. */
final class Boxes {
  private static final GeometryFactory SHAPES = new GeometryFactory();

  private Boxes() {}

  /** How far a box is from a line or a point, metres; 0 where that crosses it. */
  static double distance(DigBox box, List<PlanPoint> points) {
    List<PlanPoint> corners = new ArrayList<>(box.corners());
    corners.add(corners.getFirst());
    Geometry shape = SHAPES.createPolygon(coordinates(corners));
    Geometry other =
        points.size() == 1
            ? SHAPES.createPoint(coordinates(points)[0])
            : SHAPES.createLineString(coordinates(points));
    return shape.distance(other);
  }

  private static Coordinate[] coordinates(List<PlanPoint> points) {
    return points.stream().map(p -> new Coordinate(p.x(), p.y())).toArray(Coordinate[]::new);
  }
}
