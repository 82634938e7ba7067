package daylight.report.draw;

import daylight.line.course.Run;
import daylight.line.course.Station;
import daylight.line.measure.Measured;
import daylight.line.survey.PlanPoint;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Values between two stations of a run, by straight interpolation; ends hold beyond the ends. */
public final class Between {
  private Between() {}

  /** The place in plan. */
  public static PlanPoint spot(Run run, double distance) {
    Pair pair = pair(run, distance);
    PlanPoint a = pair.a().spot();
    PlanPoint b = pair.b().spot();
    return new PlanPoint(a.x() + pair.t() * (b.x() - a.x()), a.y() + pair.t() * (b.y() - a.y()));
  }

  /** A measured value of the stations; null where either neighbour lacks it. */
  public static @Nullable Measured measured(
      Run run, double distance, Function<Station, @Nullable Measured> of) {
    Pair pair = pair(run, distance);
    Measured a = of.apply(pair.a());
    Measured b = of.apply(pair.b());
    return a == null || b == null
        ? null
        : new Measured(
            a.value() + pair.t() * (b.value() - a.value()), a.sd() + pair.t() * (b.sd() - a.sd()));
  }

  private record Pair(Station a, Station b, double t) {}

  private static Pair pair(Run run, double distance) {
    List<Station> stations = run.stations();
    for (int i = 1; i < stations.size(); i++) {
      double from = stations.get(i - 1).place().distance();
      double to = stations.get(i).place().distance();
      if (distance <= to || i == stations.size() - 1) {
        double t = to > from ? Math.clamp((distance - from) / (to - from), 0.0, 1.0) : 0;
        return new Pair(stations.get(i - 1), stations.get(i), t);
      }
    }
    return new Pair(stations.getFirst(), stations.getFirst(), 0);
  }
}
