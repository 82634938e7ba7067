package daylight.report.map;

import daylight.line.answer.Caution;
import daylight.line.course.Run;
import daylight.line.course.Station;
import daylight.line.measure.Measured;
import daylight.line.survey.PlanPoint;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.algorithm.ConvexHull;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.union.UnaryUnionOp;

/**
 * The band of each reach: at every station as far to both sides as the line lies with 95 %, as on
 * the plan. Where the line bends sharply the sides would cross; the pieces between stations are
 * therefore joined as areas.
 */
final class BandRows {
  /** A band is never drawn narrower to either side, metres: an area needs some width. */
  private static final double LEAST = 0.001;

  private static final double HOLDS = 0.95;
  private static final GeometryFactory FACTORY = new GeometryFactory();

  private final Making making;

  BandRows(Making making) {
    this.making = making;
  }

  List<Row> all() {
    return making.subject().line().runs().stream()
        .filter(run -> run.stations().size() > 1)
        .map(this::band)
        .toList();
  }

  private Row band(Run run) {
    double widest = run.stations().stream().mapToDouble(BandRows::half).max().orElse(0);
    return making
        .row(
            Layer.BAND,
            run.reach().label(),
            making.subject().words().word(Caution.LOCATES_APPROXIMATE))
        .text("line", run.reach().line())
        .text("reach", run.reach().label())
        .number("holds", HOLDS)
        .number("widest", widest)
        .shape(area(run.stations()).orElse(null))
        .done();
  }

  private static double half(Station station) {
    return Math.max(LEAST, Measured.Z95 * station.across());
  }

  private static Optional<Shape> area(List<Station> stations) {
    List<Geometry> pieces = new ArrayList<>();
    for (int i = 1; i < stations.size(); i++) {
      Coordinate[] corners = {
        beside(stations.get(i - 1), -1), beside(stations.get(i - 1), 1),
        beside(stations.get(i), -1), beside(stations.get(i), 1)
      };
      Geometry piece = new ConvexHull(corners, FACTORY).getConvexHull();
      if (piece instanceof Polygon) {
        pieces.add(piece);
      }
    }
    Geometry union = UnaryUnionOp.union(pieces);
    return union instanceof Polygon polygon ? Optional.of(Areas.of(polygon)) : Optional.empty();
  }

  /** The edge of the band at a station: to the right of the water with 1, to the left with −1. */
  private static Coordinate beside(Station station, int side) {
    double across = station.bearing() + Math.PI / 2;
    double metres = side * half(station);
    PlanPoint spot = station.spot();
    return new Coordinate(
        spot.x() + metres * StrictMath.sin(across), spot.y() + metres * StrictMath.cos(across));
  }
}
