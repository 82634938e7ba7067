package daylight.line.measure;

import java.util.Objects;

/**
 * The door for showing quantities to people. Every text is the same in every locale, and {@link
 * Quantities} reads it back to within the last digit shown, except the texts that begin with {@code
 * <} or {@code >}.
 *
 * <p>Negative values carry the minus sign U+2212. Refused everywhere: values that are not finite.
 */
public final class Print {
  /** Cubic metres per second in a US gallon per minute. */
  public static final double GALLON_PER_MINUTE = UnitNames.US_GALLON / 60;

  /** Cubic metres per second in a litre per second. */
  public static final double LITRE_PER_SECOND = 1e-3;

  private static final double HALF_HOUR_ANGLE = StrictMath.PI / 12;

  private Print() {}

  /** A value of any dimension in its SI unit, in the form this class gives that dimension. */
  public static String of(Dimension dimension, double value, Shown shown) {
    return switch (dimension) {
      case LENGTH -> length(value, shown);
      case AREA -> area(value, shown);
      case VOLUME -> volume(value, shown);
      case FLOW -> flow(value, shown);
      case DURATION -> duration(value);
      case ANGLE -> angle(value);
      case CLOCK -> clock(value);
      case SLOPE -> slope(value);
      case SHARE -> share(value);
      case COUNT -> Digits.fixed(value, 0);
      case TEMPERATURE -> temperature(value, shown);
      case RAINFALL -> rainfall(value, shown);
      case DEGREE_DAYS -> degreeDays(value, shown);
      case DENSITY -> density(value, shown);
      case CONDUCTIVITY -> conductivity(value, shown);
      case SPEED -> speed(value, shown);
    };
  }

  /** To the nearest inch, tenth of a foot or centimetre: {@code 12' 7"}, {@code 12.6 ft}. */
  public static String length(double metres, Shown shown) {
    return switch (shown) {
      case FEET_INCHES -> Digits.feetInches(Math.round(Digits.finite(metres) / Unit.INCH.metres()));
      case DECIMAL_FEET -> Digits.fixed(metres / Unit.FOOT.metres(), 1) + " ft";
      case METRES -> Digits.fixed(metres, 2) + " m";
    };
  }

  /** With its uncertainty and no more digits than that supports. */
  public static Printed length(Measured metres, Shown shown) {
    return LengthWithDoubt.print(metres, shown);
  }

  /** A pipe's bore to the quarter inch or millimetre: {@code 4 in}, {@code 100 mm}. */
  public static String bore(double metres, Shown shown) {
    return shown == Shown.METRES
        ? Digits.fixed(metres * 1000, 0) + " mm"
        : Digits.fraction(metres / Unit.INCH.metres(), 4) + " in";
  }

  /** A crack's width and the like, not negative: to a sixteenth inch or a tenth millimetre. */
  public static String small(double metres, Shown shown) {
    if (!(metres >= 0)) {
      throw new IllegalArgumentException("metres must not be negative, was " + metres);
    }
    if (shown == Shown.METRES) {
      double mm = metres * 1000;
      boolean tooSmall = mm > 0 && mm < 0.05;
      return tooSmall ? "< 0.1 mm" : Digits.fixed(mm, mm < 10 ? 1 : 0) + " mm";
    }
    double inches = metres / Unit.INCH.metres();
    boolean tooSmall = inches > 0 && inches < 1.0 / 32;
    return tooSmall ? "< 1/16 in" : Digits.fraction(inches, 16) + " in";
  }

  /** Rise over run to a tenth per cent: {@code 2.1 %}. */
  public static String slope(double slope) {
    return Digits.fixed(slope * 100, 1) + " %";
  }

  /** Rise over run to a sixteenth inch in a foot: {@code 1/4 in per ft}. */
  public static String slopePerFoot(double slope) {
    return Digits.fraction(slope * 12, 16) + " in per ft";
  }

  /** Radians as degrees, to a tenth: {@code 22.5°}. */
  public static String angle(double radians) {
    return Digits.atMost(StrictMath.toDegrees(radians), 1) + "°";
  }

  /** Radians clockwise from twelve, to the nearest half hour: {@code 3:00}. */
  public static String clock(double radians) {
    long halves = Math.floorMod(Math.round(Digits.finite(radians) / HALF_HOUR_ANGLE), 24);
    long hour = halves < 2 ? 12 : halves / 2;
    return hour + (halves % 2 == 0 ? ":00" : ":30");
  }

  /** Both ends of a clock range, clockwise: {@code 9:00–3:00}. */
  public static String clock(ClockRange range) {
    return clock(range.from()) + "–" + clock(range.to());
  }

  /**
   * A share from 0 to 1 to the nearest per cent: {@code 30 %}. What is not quite nothing or not
   * quite all is never shown as 0 % or 100 %, but as {@code < 1 %} or {@code > 99 %}.
   */
  public static String share(double share) {
    if (!(share >= 0 && share <= 1)) {
      throw new IllegalArgumentException("share must be in 0..1, was " + share);
    }
    if (share > 0 && share < 0.005) {
      return "< 1 %";
    }
    return share >= 0.995 && share < 1 ? "> 99 %" : Digits.fixed(share * 100, 0) + " %";
  }

  /** US gallons per minute or litres per second: {@code 9.5 gpm}, {@code 0.60 L/s}. */
  public static String flow(double cubicMetresPerSecond, Shown shown) {
    return shown == Shown.METRES
        ? Digits.fixed(cubicMetresPerSecond / LITRE_PER_SECOND, 2) + " L/s"
        : tenthBelowTen(cubicMetresPerSecond / GALLON_PER_MINUTE) + " gpm";
  }

  /** US gallons or litres, from a cubic metre up cubic metres; below one to the hundredth. */
  public static String volume(double cubicMetres, Shown shown) {
    if (shown != Shown.METRES) {
      return hundredthBelowOne(cubicMetres / UnitNames.US_GALLON) + " gal";
    }
    return cubicMetres < 1
        ? hundredthBelowOne(cubicMetres * 1000) + " L"
        : Digits.fixed(cubicMetres, 1) + " m³";
  }

  /** Square feet to the nearest one or square metres to a tenth. */
  public static String area(double squareMetres, Shown shown) {
    double squareFoot = Unit.FOOT.metres() * Unit.FOOT.metres();
    return shown == Shown.METRES
        ? Digits.fixed(squareMetres, 1) + " m²"
        : Digits.fixed(squareMetres / squareFoot, 0) + " ft²";
  }

  /**
   * Seconds in the two largest units that matter: {@code 45 s}, {@code 1 min 30 s}, {@code 1 h 20
   * min}, {@code 3 d 4 h}. To the second below ten minutes, to the minute below two days.
   */
  public static String duration(double seconds) {
    if (!(seconds >= 0)) {
      throw new IllegalArgumentException("seconds must not be negative, was " + seconds);
    }
    long whole = Math.round(Digits.finite(seconds));
    if (whole < 600) {
      return twoParts(whole, 60, "min", "s");
    }
    long minutes = Math.round(seconds / 60);
    return minutes < 2 * 24 * 60
        ? twoParts(minutes, 60, "h", "min")
        : twoParts(Math.round(seconds / 3600), 24, "d", "h");
  }

  /** Degrees Celsius to the nearest degree of the scale shown: {@code 68 °F}, {@code 20 °C}. */
  public static String temperature(double celsius, Shown shown) {
    return shown == Shown.METRES
        ? Digits.fixed(celsius, 0) + " °C"
        : Digits.fixed(celsius * 9 / 5 + 32, 0) + " °F";
  }

  /** Metres per second as {@code 25.4 mm/h} or {@code 1.00 in/h}. */
  public static String rainfall(double metresPerSecond, Shown shown) {
    double metresPerHour = metresPerSecond * 3600;
    return shown == Shown.METRES
        ? Digits.fixed(metresPerHour * 1000, 1) + " mm/h"
        : Digits.fixed(metresPerHour / Unit.INCH.metres(), 2) + " in/h";
  }

  /** Degree days in °C·days as {@code 1389 C-days} or {@code 2500 F-days}. */
  public static String degreeDays(double celsiusDays, Shown shown) {
    return shown == Shown.METRES
        ? Digits.fixed(celsiusDays, 0) + " C-days"
        : Digits.fixed(celsiusDays * 9 / 5, 0) + " F-days";
  }

  /** Mass in a volume as {@code 1602 kg/m³} or {@code 100 lb/ft³}. */
  public static String density(double kilogramsPerCubicMetre, Shown shown) {
    double one = Objects.requireNonNull(UnitNames.factor(Dimension.DENSITY, "lb/ft3"));
    return shown == Shown.METRES
        ? Digits.fixed(kilogramsPerCubicMetre, 0) + " kg/m³"
        : Digits.fixed(kilogramsPerCubicMetre / one, 0) + " lb/ft³";
  }

  /** How heat is conducted, as {@code 1.32 W/m·K} or {@code 0.76 Btu/h·ft·°F}. */
  public static String conductivity(double wattsPerMetreKelvin, Shown shown) {
    double one = Objects.requireNonNull(UnitNames.factor(Dimension.CONDUCTIVITY, "btu/hftf"));
    return shown == Shown.METRES
        ? Digits.fixed(wattsPerMetreKelvin, 2) + " W/m·K"
        : Digits.fixed(wattsPerMetreKelvin / one, 2) + " Btu/h·ft·°F";
  }

  /** Metres per second as {@code 2.0 ft/s} or {@code 0.61 m/s}. */
  public static String speed(double metresPerSecond, Shown shown) {
    return shown == Shown.METRES
        ? Digits.fixed(metresPerSecond, 2) + " m/s"
        : Digits.fixed(metresPerSecond / Unit.FOOT.metres(), 1) + " ft/s";
  }

  private static String hundredthBelowOne(double value) {
    if (value > 0 && value < 0.005) {
      return "< 0.01";
    }
    return value > 0 && value < 0.995 ? Digits.fixed(value, 2) : tenthBelowTen(value);
  }

  private static String tenthBelowTen(double value) {
    return Digits.fixed(value, Math.abs(value) < 9.95 ? 1 : 0);
  }

  private static String twoParts(long small, long ratio, String largeUnit, String smallUnit) {
    long large = small / ratio;
    long rest = small % ratio;
    if (large == 0) {
      return rest + " " + smallUnit;
    }
    String first = large + " " + largeUnit;
    return rest == 0 ? first : first + " " + rest + " " + smallUnit;
  }
}
