package daylight.report.cut;

import daylight.line.survey.PlanPoint;
import java.util.List;

/** Which way up a sheet may lie. */
public enum Lie {
  /** Grid north is up. */
  NORTH_UP,
  /** The pipe runs from left to right, the way the water goes. */
  ALONG,
  /** Grid north is up or left, unless a sheet lying along the pipe holds a good deal more of it. */
  AS_IT_FITS;

  private static final double WEST = -Math.PI / 2;

  /** The bearings to try that are the same for every stretch. */
  List<Double> upright() {
    return switch (this) {
      case NORTH_UP -> List.of(0.0);
      case ALONG -> List.of();
      case AS_IT_FITS -> List.of(0.0, WEST);
    };
  }

  /** What is up when these points run to the right. */
  static double lying(List<PlanPoint> points) {
    return Axis.bearing(points) - Math.PI / 2;
  }
}
