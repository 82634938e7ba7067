package daylight.report.map;

import daylight.line.survey.PlanPoint;
import daylight.line.survey.SiteTie;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;

/**
 * In which coordinates shapes are written: longitude and latitude on WGS 84 in degrees where the
 * site is tied to the earth, else east and north on the site grid in metres.
 */
public final class Frame {
  private static final GeometryFactory FACTORY = new GeometryFactory();

  /** A micrometre. */
  private static final int METRE_DECIMALS = 6;

  /** A hundredth of a millimetre on the ground. */
  private static final int DEGREE_DECIMALS = 10;

  private final @Nullable SiteTie earth;

  private Frame(@Nullable SiteTie earth) {
    this.earth = earth;
  }

  /** Longitude and latitude where that is possible. */
  public static Frame of(Optional<SiteTie> earth) {
    return new Frame(earth.orElse(null));
  }

  /** Whether these are places on the earth. */
  public boolean onEarth() {
    return earth != null;
  }

  /** A point of a map. */
  public record At(double x, double y) {}

  /**
   * Where a position lies. Longitudes go on beyond ±180° rather than jump there, so that what
   * crosses that meridian stays in one piece.
   */
  public At at(PlanPoint point) {
    if (earth == null) {
      return new At(rounded(point.x(), METRE_DECIMALS), rounded(point.y(), METRE_DECIMALS));
    }
    SiteTie.Geographic on = earth.geographic(point);
    double origin = StrictMath.toDegrees(earth.longitudeRad());
    double longitude = StrictMath.toDegrees(on.longitudeRad());
    double turns = Math.rint((longitude - origin) / 360);
    return new At(
        rounded(longitude - 360 * turns, DEGREE_DECIMALS),
        rounded(StrictMath.toDegrees(on.latitudeRad()), DEGREE_DECIMALS));
  }

  private static double rounded(double value, int decimals) {
    double near = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).doubleValue();
    return near == 0 ? 0 : near;
  }

  /** Where positions lie. */
  public List<At> at(List<PlanPoint> points) {
    return points.stream().map(this::at).toList();
  }

  /**
   * A shape in pieces that each lie within ±180° of longitude (RFC 7946, section 3.1.9): one piece,
   * unless it crosses that meridian. Without heights.
   */
  public List<List<List<At>>> pieces(Shape shape) {
    Geometry whole = geometry(shape);
    if (earth == null) {
      return List.of(rings(whole));
    }
    List<List<List<At>>> pieces = new ArrayList<>();
    for (int turn = -1; turn <= 1; turn++) {
      Envelope window = new Envelope(360.0 * turn - 180, 360.0 * turn + 180, -90, 90);
      boolean all = window.contains(whole.getEnvelopeInternal());
      // What touches the meridian from within is not cut by it.
      Geometry part = all ? whole : whole.intersection(FACTORY.toGeometry(window));
      Geometry back = AffineTransformation.translationInstance(-360.0 * turn, 0).transform(part);
      for (int i = 0; i < back.getNumGeometries(); i++) {
        Geometry piece = back.getGeometryN(i);
        if (!piece.isEmpty() && piece.getDimension() == whole.getDimension()) {
          pieces.add(rings(piece));
        }
      }
      if (all) {
        return pieces;
      }
    }
    return pieces;
  }

  private Geometry geometry(Shape shape) {
    return switch (shape) {
      case Shape.Dot(PlanPoint point, var _) -> FACTORY.createPoint(coordinate(point));
      case Shape.Way(List<PlanPoint> points, var _) -> FACTORY.createLineString(all(points));
      case Shape.Area(List<List<PlanPoint>> rings) ->
          FACTORY.createPolygon(
              FACTORY.createLinearRing(all(rings.getFirst())),
              rings.stream()
                  .skip(1)
                  .map(ring -> FACTORY.createLinearRing(all(ring)))
                  .toArray(LinearRing[]::new));
    };
  }

  private Coordinate coordinate(PlanPoint point) {
    At at = at(point);
    return new Coordinate(at.x(), at.y());
  }

  private Coordinate[] all(List<PlanPoint> points) {
    return points.stream().map(this::coordinate).toArray(Coordinate[]::new);
  }

  private static List<List<At>> rings(Geometry piece) {
    return switch (piece) {
      case Point point -> List.of(ring(point.getCoordinates()));
      case LineString way -> List.of(ring(way.getCoordinates()));
      case Polygon area -> {
        // Cutting may have turned the rings about.
        Shape turned = Areas.of(area);
        yield ((Shape.Area) turned)
            .rings().stream()
                .map(one -> one.stream().map(p -> new At(p.x(), p.y())).toList())
                .toList();
      }
      default -> throw new IllegalStateException("no piece is a " + piece.getGeometryType());
    };
  }

  private static List<At> ring(Coordinate[] coordinates) {
    List<At> ring = new ArrayList<>();
    for (Coordinate one : coordinates) {
      ring.add(new At(one.x, one.y));
    }
    return ring;
  }
}
