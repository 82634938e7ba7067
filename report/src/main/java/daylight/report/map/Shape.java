package daylight.report.map;

import daylight.line.survey.PlanPoint;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Where something lies on the site grid, metres. */
public sealed interface Shape {
  /**
   * A point.
   *
   * @param height of the inside bottom of the pipe above the site datum, metres; null where nothing
   *     tells it, or it is no point of a pipe
   */
  record Dot(PlanPoint at, @Nullable Double height) implements Shape {}

  /**
   * A line through points, at least two.
   *
   * @param heights of the inside bottom of the pipe at each; none where one of them is not known
   */
  record Way(List<PlanPoint> points, List<Double> heights) implements Shape {
    public Way {
      points = List.copyOf(points);
      heights = List.copyOf(heights);
      if (points.size() < 2) {
        throw new IllegalArgumentException("a way needs two points, had " + points.size());
      }
      if (!heights.isEmpty() && heights.size() != points.size()) {
        throw new IllegalArgumentException(
            "a way of " + points.size() + " points had " + heights.size() + " heights");
      }
    }

    static Way flat(List<PlanPoint> points) {
      return new Way(points, List.of());
    }
  }

  /**
   * An area.
   *
   * @param rings the outer one first, counter-clockwise, then those of its holes, clockwise; the
   *     last point of each is the first again
   */
  record Area(List<List<PlanPoint>> rings) implements Shape {
    public Area {
      rings = rings.stream().map(List::copyOf).toList();
    }
  }
}
