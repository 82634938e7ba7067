package daylight.line.measure;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The names people give units, in lower case and without blanks, and what one of each is in SI.
 *
 * <p>Feet and inches: NIST SP 811; the US gallon of 231 cubic inches: NIST Handbook 44 (both from
 * memory, both exact). Rates such as {@code gal/min} or {@code mm per m} are composed from their
 * two halves.
 */
final class UnitNames {
  /** Cubic metres in a US gallon: 231 in³, which is 3.785411784 L exactly. */
  static final double US_GALLON = 3.785411784e-3;

  private static final double LITRE = 1e-3;
  private static final double FOOT = Unit.FOOT.metres();
  private static final double INCH = Unit.INCH.metres();
  private static final double HOUR = 3600;
  private static final double POUND = 0.45359237;

  /**
   * Watts per metre and kelvin in a Btu (International Table, 1055.05585262 J) per hour, foot and
   * degree Fahrenheit.
   */
  private static final double BTU_FOOT = 1055.05585262 / HOUR / FOOT * 9 / 5;

  private static final double DEGREE = StrictMath.PI / 180;

  private static final Map<String, Double> LENGTHS =
      table(
          row(FOOT, "ft", "'", "foot", "feet"),
          row(INCH, "in", "\"", "inch", "inches", "''"),
          row(1, "m", "metre", "metres", "meter", "meters"),
          row(0.01, "cm", "centimetre", "centimetres", "centimeter", "centimeters"),
          row(0.001, "mm", "millimetre", "millimetres", "millimeter", "millimeters"));
  private static final Map<String, Double> AREAS =
      table(
          row(1, "m2", "m^2", "sqm", "squaremetres", "squaremeters"),
          row(FOOT * FOOT, "ft2", "ft^2", "sqft", "squarefeet"),
          row(INCH * INCH, "in2", "in^2", "sqin"),
          row(1e-4, "cm2", "cm^2"));
  private static final Map<String, Double> VOLUMES =
      table(
          row(US_GALLON, "gal", "usgal", "gallon", "gallons", "usgallons"),
          row(LITRE, "l", "litre", "litres", "liter", "liters"),
          row(LITRE / 1000, "ml"),
          row(1, "m3", "m^3", "cubicmetres", "cubicmeters"),
          row(FOOT * FOOT * FOOT, "ft3", "ft^3", "cuft", "cf", "cubicfeet"));
  private static final Map<String, Double> TIMES =
      table(
          row(1, "s", "sec", "secs", "second", "seconds"),
          row(60, "min", "mins", "minute", "minutes"),
          row(HOUR, "h", "hr", "hrs", "hour", "hours"),
          row(24 * HOUR, "d", "day", "days"));
  private static final Map<String, Double> FLOWS =
      table(
          row(US_GALLON / 60, "gpm", "usgpm"),
          row(US_GALLON / HOUR, "gph"),
          row(FOOT * FOOT * FOOT, "cfs"),
          row(FOOT * FOOT * FOOT / 60, "cfm"),
          row(LITRE, "lps"),
          row(LITRE / 60, "lpm"));
  private static final Map<String, Double> ANGLES =
      table(
          row(DEGREE, "°", "deg", "degree", "degrees"),
          row(DEGREE / 60, "'"),
          row(DEGREE / 3600, "\""),
          row(1, "rad"));
  private static final Map<String, Double> PER_CENT = table(row(0.01, "%", "percent", "pct"));
  private static final Map<String, Double> DEGREE_DAYS =
      table(
          row(1, "c-days", "°c-days", "c·days", "°c·days", "cdays", "°cdays"),
          row(5.0 / 9, "f-days", "°f-days", "f·days", "°f·days", "fdays", "°fdays"));
  private static final Map<String, Double> DENSITIES =
      table(
          row(1, "kg/m3", "kg/m^3", "kgperm3"),
          row(POUND / (FOOT * FOOT * FOOT), "lb/ft3", "lb/ft^3", "lb/cuft", "pcf"));
  private static final Map<String, Double> CONDUCTIVITIES =
      table(
          row(1, "w/m·k", "w/mk", "w/(m·k)", "w/(mk)", "w/m·°c", "w/m/k"),
          row(
              BTU_FOOT,
              "btu/h·ft·°f",
              "btu/hftf",
              "btu/(h·ft·°f)",
              "btu/hr·ft·°f",
              "btu/h·ft·f",
              "btu/h/ft/f"),
          row(
              BTU_FOOT / 12,
              "btu·in/h·ft2·°f",
              "btu·in/(h·ft2·°f)",
              "btu·in/hr·ft2·°f",
              "btu·in/(hr·ft2·°f)",
              "btu-in/h·ft2·°f",
              "btu-in/(h·ft2·°f)",
              "btuin/hft2f"));
  private static final Map<String, Double> NONE = Map.of();

  private UnitNames() {}

  /**
   * What one of the named unit is in the SI unit of a dimension, or null when the dimension has no
   * such unit. Temperatures and clock positions have none: they are not multiples of a unit.
   */
  static @Nullable Double factor(Dimension dimension, String name) {
    Double direct = own(dimension).get(name);
    if (direct != null) {
      return direct;
    }
    return switch (dimension) {
      case SLOPE -> ratio(LENGTHS, LENGTHS, name);
      case FLOW -> ratio(VOLUMES, TIMES, name);
      case RAINFALL, SPEED -> ratio(LENGTHS, TIMES, name);
      default -> null;
    };
  }

  /** Whether any dimension but the given one has a unit of this name. */
  static boolean knownElsewhere(Dimension dimension, String name) {
    if (dimension != Dimension.TEMPERATURE && Temperatures.isScale(name)) {
      return true;
    }
    for (Dimension other : Dimension.values()) {
      if (other != dimension && factor(other, name) != null) {
        return true;
      }
    }
    return false;
  }

  /** The names a dimension's units go by, in order of the tables, to find the nearest one. */
  static Set<String> names(Dimension dimension) {
    return own(dimension).keySet();
  }

  /** The units offered when one is missing, the likeliest first. */
  static List<String> offered(Dimension dimension) {
    return switch (dimension) {
      case LENGTH -> List.of(" ft", " in", " m");
      case AREA -> List.of(" ft2", " m2");
      case VOLUME -> List.of(" gal", " L");
      case FLOW -> List.of(" gpm", " L/s");
      case DURATION -> List.of(" s", " min", " h");
      case SLOPE -> List.of(" %", " in per ft", " m/m");
      case SHARE -> List.of(" %");
      case TEMPERATURE -> List.of(" °C", " °F");
      case RAINFALL -> List.of(" mm/h", " in/h");
      case DEGREE_DAYS -> List.of(" C-days", " F-days");
      case DENSITY -> List.of(" kg/m3", " lb/ft3");
      case CONDUCTIVITY -> List.of(" W/mK", " Btu/hftF");
      case SPEED -> List.of(" ft/s", " m/s");
      case ANGLE, CLOCK, COUNT -> List.of("");
    };
  }

  private static Map<String, Double> own(Dimension dimension) {
    return switch (dimension) {
      case LENGTH -> LENGTHS;
      case AREA -> AREAS;
      case VOLUME -> VOLUMES;
      case FLOW -> FLOWS;
      case DURATION -> TIMES;
      case ANGLE -> ANGLES;
      case SLOPE, SHARE -> PER_CENT;
      case DEGREE_DAYS -> DEGREE_DAYS;
      case DENSITY -> DENSITIES;
      case CONDUCTIVITY -> CONDUCTIVITIES;
      case CLOCK, COUNT, TEMPERATURE, RAINFALL, SPEED -> NONE;
    };
  }

  private static @Nullable Double ratio(
      Map<String, Double> tops, Map<String, Double> bottoms, String name) {
    int slash = name.indexOf('/');
    int per = name.indexOf("per");
    int at = slash >= 0 ? slash : per;
    if (at < 0) {
      return null;
    }
    Double top = tops.get(name.substring(0, at));
    Double bottom = bottoms.get(name.substring(at + (slash >= 0 ? 1 : 3)));
    return top == null || bottom == null ? null : Double.valueOf(top / bottom);
  }

  private record Row(double size, List<String> names) {}

  private static Row row(double size, String... names) {
    return new Row(size, List.of(names));
  }

  private static Map<String, Double> table(Row... rows) {
    Map<String, Double> table = new LinkedHashMap<>();
    for (Row row : rows) {
      for (String name : row.names()) {
        table.put(name, row.size());
      }
    }
    return table;
  }
}
