package daylight.report.draw;

import daylight.line.measure.Argument;
import daylight.line.measure.Shown;
import daylight.line.measure.Unit;
import daylight.report.words.Words;
import java.util.stream.DoubleStream;

/**
 * A scale 1:n that people have on their rulers.
 *
 * @param n how many times larger the ground is
 */
record Scale(double n) {
  static final double POINTS_PER_METRE = 72 / Unit.INCH.metres();
  private static final double[] FEET_TO_AN_INCH = {
    1, 2, 3, 4, 5, 6, 8, 10, 12, 16, 20, 25, 30, 40, 50, 60, 80, 100, 120, 160, 200, 250, 300, 400,
    500, 600, 800, 1000, 1500, 2000, 3000, 5000, 10000
  };
  private static final double[] METRIC = {
    10, 20, 25, 50, 75, 100, 125, 150, 200, 250, 300, 400, 500, 750, 1000, 1250, 1500, 2000, 2500,
    4000, 5000, 7500, 10000, 20000, 50000, 100000
  };

  /** The largest drawing in which so many metres fit into so many points. */
  static Scale fitting(double metres, double points, Shown shown) {
    double least = metres * POINTS_PER_METRE / points;
    DoubleStream offered =
        shown == Shown.METRES
            ? DoubleStream.of(METRIC)
            : DoubleStream.of(FEET_TO_AN_INCH).map(feet -> 12 * feet);
    return new Scale(offered.filter(n -> n >= least).findFirst().orElse(Math.ceil(least)));
  }

  double pointsPerMetre() {
    return POINTS_PER_METRE / n;
  }

  String say(Words words) {
    Argument ratio = new Argument.Count(Math.round(n));
    return words.shown() == Shown.METRES
        ? words.say("draw.scale", ratio)
        : words.say(
            "draw.scale_inch", ratio, new Argument.Number(Math.round(n / 12 * 100) / 100.0));
  }
}
