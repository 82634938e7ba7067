package daylight.report.geopackage;

import daylight.report.map.Frame;
import daylight.report.map.Row;
import daylight.report.map.Shape;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The smallest upright rectangle around points of a map. */
record Bounds(double left, double bottom, double right, double top) {

  static Bounds of(List<Frame.At> points) {
    return new Bounds(
        points.stream().mapToDouble(Frame.At::x).min().orElseThrow(),
        points.stream().mapToDouble(Frame.At::y).min().orElseThrow(),
        points.stream().mapToDouble(Frame.At::x).max().orElseThrow(),
        points.stream().mapToDouble(Frame.At::y).max().orElseThrow());
  }

  /** Around all rows that have a place; empty where none has. */
  static Optional<Bounds> of(Frame frame, List<Row> rows) {
    List<Frame.At> points =
        rows.stream().flatMap(row -> points(frame, row.shape()).stream()).toList();
    return points.isEmpty() ? Optional.empty() : Optional.of(of(points));
  }

  private static List<Frame.At> points(Frame frame, @Nullable Shape shape) {
    return switch (shape) {
      case null -> List.of();
      case Shape.Dot dot -> List.of(frame.at(dot.at()));
      case Shape.Way way -> frame.at(way.points());
      case Shape.Area area -> frame.at(area.rings().getFirst());
    };
  }
}
