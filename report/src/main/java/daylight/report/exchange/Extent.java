package daylight.report.exchange;

import daylight.line.survey.PlanPoint;
import daylight.report.map.Atlas;
import daylight.report.map.Layer;
import daylight.report.map.Row;
import daylight.report.map.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** The upright rectangle around everything on the grid; a point where there is nothing. */
record Extent(PlanPoint least, PlanPoint most) {
  static Extent of(Atlas atlas) {
    List<PlanPoint> all = new ArrayList<>();
    for (Layer layer : Layer.values()) {
      atlas.of(layer).stream()
          .map(Row::shape)
          .filter(Objects::nonNull)
          .forEach(shape -> all.addAll(points(shape)));
    }
    if (all.isEmpty()) {
      return new Extent(new PlanPoint(0, 0), new PlanPoint(0, 0));
    }
    return new Extent(
        new PlanPoint(
            all.stream().mapToDouble(PlanPoint::x).min().orElseThrow(),
            all.stream().mapToDouble(PlanPoint::y).min().orElseThrow()),
        new PlanPoint(
            all.stream().mapToDouble(PlanPoint::x).max().orElseThrow(),
            all.stream().mapToDouble(PlanPoint::y).max().orElseThrow()));
  }

  private static List<PlanPoint> points(Shape shape) {
    return switch (shape) {
      case Shape.Dot dot -> List.of(dot.at());
      case Shape.Way way -> way.points();
      case Shape.Area area -> area.rings().getFirst();
    };
  }
}
