package daylight.report.draw;

import daylight.line.measure.Print;
import daylight.line.measure.Shown;
import daylight.line.measure.Unit;
import daylight.report.markup.Tag;
import daylight.report.words.Words;

/**
 * What the marks of an axis are counted in.
 *
 * @param size of one in SI
 * @param symbol written behind a number
 */
record AxisUnit(double size, String symbol) {
  private static final double MINUTE = 60;
  private static final double HOUR = 3600;

  static AxisUnit length(Shown shown) {
    Unit unit = shown == Shown.METRES ? Unit.METRE : Unit.FOOT;
    return new AxisUnit(unit.metres(), unit.symbol());
  }

  static AxisUnit flow(Shown shown) {
    return shown == Shown.METRES
        ? new AxisUnit(Print.LITRE_PER_SECOND, "L/s")
        : new AxisUnit(Print.GALLON_PER_MINUTE, "gpm");
  }

  /** Seconds, minutes or hours, for an axis of so many seconds. */
  static AxisUnit time(double seconds) {
    if (seconds < 3 * MINUTE) {
      return new AxisUnit(1, "s");
    }
    return seconds < 3 * HOUR ? new AxisUnit(MINUTE, "min") : new AxisUnit(HOUR, "h");
  }

  /** The largest of 1, 2 and 5 with any power of ten of this unit that is no more than that. */
  double step(double most) {
    double power = StrictMath.pow(10, StrictMath.floor(StrictMath.log10(most / size)));
    double times = most / size / power;
    return (times >= 5 ? 5 : times >= 2 ? 2 : 1) * power * size;
  }

  /** A round value without needless digits: {@code 10 ft}, {@code 0.5 L/s}. */
  String tick(double value, Words words) {
    return words.written(Tag.number(value / size).replace('-', '−') + " " + symbol);
  }
}
