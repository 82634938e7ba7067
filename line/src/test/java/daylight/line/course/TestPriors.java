package daylight.line.course;

import daylight.line.book.Priors;
import daylight.line.book.Priors.Kind;
import daylight.line.book.Priors.Prior;
import daylight.line.book.Priors.Typical;
import daylight.line.measure.Mark;
import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The figures of the priors that are shipped, written out so that this room can be tested alone.
 */
public final class TestPriors {
  private TestPriors() {}

  /** The shipped figures. */
  public static Priors shipped() {
    Map<Kind, Prior> rows = new EnumMap<>(Kind.class);
    plain(rows, Kind.TAPE, 0.010, 1 / 2000.0);
    plain(rows, Kind.ALONG, 0.020, 1 / 2000.0);
    plain(rows, Kind.OUT, 0.030, 0.02);
    plain(rows, Kind.BEARING, degrees(5), 0);
    plain(rows, Kind.ANGLE, degrees(0.5), 0);
    plain(rows, Kind.GNSS, 3, 0);
    plain(rows, Kind.SKETCH, 1.5, 0);
    plain(rows, Kind.COUNTER_READING, 0.050, 0);
    plain(rows, Kind.COUNTER_SCALE, 0.01, 0);
    plain(rows, Kind.COUNTER_ZERO, 0.050, 0);
    plain(rows, Kind.SLACK, 0, 0.005);
    row(rows, Kind.SONDE_BEHIND_LENS, 0.050, 0, 0, 1, 1, new Typical(0.4, 0.12));
    row(rows, Kind.SONDE_ABOVE_INVERT, 0.015, 0, 0, 1, 1, new Typical(0.040, 0.015));
    row(rows, Kind.LOCATE_SPOT, 0.050, 0.05, 0, 1.5, 3, null);
    row(rows, Kind.DEPTH_READING, 0.030, 0.03, 0, 1.5, 3, null);
    row(rows, Kind.DEPTH_DISTORTION, 0, 0.04, 3, 1.5, 3, null);
    plain(rows, Kind.RECEIVER_SCALE, 0.03, 0);
    plain(rows, Kind.EXPOSURE, 0.015, 0);
    plain(rows, Kind.LEVEL, 0.005, 0);
    row(rows, Kind.GROUND_YARD, 0.15, 0, 10, 1, 1, null);
    row(rows, Kind.GROUND_SLAB, 0.020, 0, 10, 1, 1, null);
    plain(rows, Kind.BEND_ANGLE, degrees(5), 0);
    plain(rows, Kind.STRAIGHT_RIGID, degrees(1.5), 0);
    plain(rows, Kind.STRAIGHT_FLEXIBLE, degrees(4), 0);
    plain(rows, Kind.GRADE_RIGID, degrees(0.5), 0);
    plain(rows, Kind.GRADE_FLEXIBLE, degrees(1.5), 0);
    plain(rows, Kind.FALL, 0.05, 0);
    plain(rows, Kind.WATER_DEPTH, 0.010, 0.10);
    plain(rows, Kind.BORE, 0.002, 0);
    plain(rows, Kind.JUNCTION_TURN, degrees(30), 0);
    plain(rows, Kind.GROUND_STEP, 1, 0);
    row(rows, Kind.NULL_MARK, 0.020, 0.02, 0, 1.5, 3, null);
    plain(rows, Kind.SONDE_TILT, degrees(5), 0);
    row(rows, Kind.ANTENNA_ABOVE_FOOT, 0.010, 0, 0, 1, 1, new Typical(0.050, 0.025));
    plain(rows, Kind.SIGNAL, 0.02, 0);
    plain(rows, Kind.FREEZING_INDEX, 0, 0.2);
    plain(rows, Kind.MEAN_TEMPERATURE, 1, 0);
    plain(rows, Kind.SEASON, 864_000, 0);
    plain(rows, Kind.SOIL_WATER, 0.03, 0);
    plain(rows, Kind.SNOW_DEPTH, 0.02, 0.25);
    plain(rows, Kind.WATER_DROP, 0.0015, 0);
    plain(rows, Kind.WATCH, 5, 0);
    plain(rows, Kind.VOLUME, 0.00005, 0.05);
    return new Priors(rows);
  }

  static double degrees(double degrees) {
    return StrictMath.toRadians(degrees);
  }

  private static void plain(Map<Kind, Prior> rows, Kind kind, double a, double b) {
    row(rows, kind, a, b, 0, 1, 1, null);
  }

  private static void row(
      Map<Kind, Prior> rows,
      Kind kind,
      double a,
      double b,
      double correlation,
      double fair,
      double poor,
      @Nullable Typical typical) {
    rows.put(
        kind,
        new Prior(
            kind,
            a,
            b,
            correlation,
            fair,
            poor,
            typical,
            "common-practice",
            Mark.COMMON_PRACTICE,
            null));
  }
}
