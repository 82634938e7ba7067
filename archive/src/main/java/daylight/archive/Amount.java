package daylight.archive;

import daylight.line.book.Finding;
import daylight.line.measure.Dimension;
import daylight.line.measure.Parsed;
import daylight.line.measure.Quantities;
import daylight.line.measure.Reading;
import daylight.line.measure.Unit;
import java.math.BigDecimal;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Texts of quantities that read back to the same bits. Shares and bearings that nobody typed may
 * come back a last bit away: per cent and degrees do not name every value.
 */
record Amount(Dimension dimension, @Nullable Unit bare) {
  /** Decimal places are not enough to name every double in another unit; neighbours are tried. */
  private static final int NEIGHBOURS = 8;

  /** The words a reading was written in where they still mean its value; else its exact text. */
  String written(Reading reading) {
    return reads(reading.written(), reading.value(), this::parse)
        ? reading.written()
        : exact(reading.value());
  }

  /** A value in the SI unit of its dimension. */
  String exact(double value) {
    return switch (dimension) {
      case LENGTH -> plain(value) + " m";
      case AREA -> plain(value) + " m2";
      case VOLUME -> plain(value) + " m3";
      case FLOW -> plain(value) + " m3/s";
      case DURATION -> plain(value) + " s";
      case ANGLE -> plain(value) + " rad";
      case SLOPE -> plain(value) + " m/m";
      case SHARE -> scaled(value, 100, " %", this::parse);
      case COUNT -> plain(value);
      case TEMPERATURE -> plain(value) + " °C";
      case RAINFALL -> plain(value) + " m/s";
      case DEGREE_DAYS -> plain(value) + " C-days";
      case DENSITY -> plain(value) + " kg/m3";
      case CONDUCTIVITY -> plain(value) + " W/mK";
      case SPEED -> plain(value) + " m/s";
      case CLOCK -> clock(value);
    };
  }

  private Parsed<Reading> parse(String text) {
    return Quantities.parse(dimension, text, bare);
  }

  /** A bearing in its own words or in degrees. */
  static String bearing(Reading reading) {
    return reads(reading.written(), reading.value(), Quantities::bearing)
        ? reading.written()
        : scaled(reading.value(), 180 / StrictMath.PI, "", Quantities::bearing);
  }

  /** Seconds that may be negative, in their own words or plainly. */
  static String shift(Reading reading) {
    boolean negative = reading.value() < 0;
    String size = plain(StrictMath.abs(reading.value())) + " s";
    String own = reading.written();
    boolean signed = own.startsWith("-") || own.startsWith("−");
    String bare = signed || own.startsWith("+") ? own.substring(1).strip() : own;
    boolean same =
        signed == negative && reads(bare, StrictMath.abs(reading.value()), Quantities::duration);
    return same ? own : (negative ? "-" : "") + size;
  }

  /** A position or a range on the clock, to the minute. */
  static String clock(Finding.Clock clock) {
    String from = clock(clock.from());
    return clock.from() == clock.to() ? from : from + "-" + clock(clock.to());
  }

  private static String clock(double radians) {
    long minutes = StrictMath.round(radians * 360 / StrictMath.PI) % 720;
    long hour = minutes / 60 == 0 ? 12 : minutes / 60;
    long rest = minutes % 60;
    return rest == 0 ? Long.toString(hour) : hour + (rest < 10 ? ":0" : ":") + rest;
  }

  private static boolean reads(
      String text, double value, Function<String, Parsed<Reading>> parser) {
    return parser.apply(text) instanceof Parsed.Value<Reading>(Reading read)
        && read.value() == value;
  }

  private static String scaled(
      double value, double factor, String unit, Function<String, Parsed<Reading>> parser) {
    double up = value * factor;
    double down = up;
    String first = plain(up) + unit;
    for (int i = 0; i < NEIGHBOURS; i++) {
      for (double candidate : new double[] {up, down}) {
        String text = plain(candidate) + unit;
        if (reads(text, value, parser)) {
          return text;
        }
      }
      up = StrictMath.nextUp(up);
      down = StrictMath.nextDown(down);
    }
    return first;
  }

  /** A number in decimal digits without an exponent. */
  static String plain(double value) {
    String digits = new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
    return value == 0 ? "0" : digits;
  }
}
