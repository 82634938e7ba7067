package daylight.report.exchange;

import daylight.line.survey.PlanPoint;
import daylight.report.map.Atlas;
import daylight.report.map.Layer;
import daylight.report.map.Row;
import daylight.report.map.Shape;
import daylight.report.words.Words;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What stands beside a thing on a drawing. */
final class Labels {
  private Labels() {}

  /** Empty where nothing does. */
  static String of(Atlas atlas, Layer layer, Row row) {
    Words words = atlas.words();
    return switch (layer) {
      case NOTICE, STATION, TIE, BAND -> "";
      case REACH -> row.text("label") + " " + words.word("material." + row.text("material"));
      case NODE, LANDMARK -> joined(row.text("label"), row.text("what"));
      case LOCATE ->
          row.values().get("depth") instanceof Double depth
              ? joined(row.text("label"), words.length(depth))
              : row.text("label");
      case FINDING -> joined(row.text("label"), row.text("sentence"));
      case SERVICE -> joined(words.word("service." + row.text("kind")), row.text("label"));
      case DIG_BOX -> joined(row.text("label"), row.text("ticket"));
    };
  }

  private static String joined(String... parts) {
    return Stream.of(parts).filter(part -> !part.isEmpty()).collect(Collectors.joining(" "));
  }

  /** At a point, the middle of a way, or an area's upper corner. */
  static PlanPoint beside(Shape shape) {
    return switch (shape) {
      case Shape.Dot dot -> dot.at();
      case Shape.Way(List<PlanPoint> points, var _) -> middle(points);
      case Shape.Area(List<List<PlanPoint>> rings) -> upper(rings.getFirst());
    };
  }

  private static PlanPoint middle(List<PlanPoint> points) {
    PlanPoint a = points.get((points.size() - 1) / 2);
    PlanPoint b = points.get(points.size() / 2);
    return new PlanPoint((a.x() + b.x()) / 2, (a.y() + b.y()) / 2);
  }

  private static PlanPoint upper(List<PlanPoint> ring) {
    PlanPoint best = ring.getFirst();
    for (PlanPoint one : ring) {
      if (one.y() > best.y()) {
        best = one;
      }
    }
    return best;
  }
}
