package daylight.line.measure;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** The door for reading quantities as people write them. */
public final class Quantities {
  private Quantities() {}

  /** Reads a length in metres; a bare number needs the unit chosen for it. */
  public static Parsed<Reading> length(String text, @Nullable Unit bareUnit) {
    return parse(Dimension.LENGTH, text, bareUnit);
  }

  public static Parsed<Reading> angle(String text) {
    return parse(Dimension.ANGLE, text, null);
  }

  public static Parsed<Reading> bearing(String text) {
    return parse(Dimension.ANGLE, text, null);
  }

  public static Parsed<Reading> clock(String text) {
    return parse(Dimension.CLOCK, text, null);
  }

  public static Parsed<ClockRange> clockRange(String text) {
    return new Parsed.Refused<>(Refusal.EMPTY, List.of());
  }

  public static Parsed<Reading> slope(String text) {
    return parse(Dimension.SLOPE, text, null);
  }

  public static Parsed<Reading> flow(String text) {
    return parse(Dimension.FLOW, text, null);
  }

  public static Parsed<Reading> volume(String text) {
    return parse(Dimension.VOLUME, text, null);
  }

  public static Parsed<Reading> area(String text) {
    return parse(Dimension.AREA, text, null);
  }

  public static Parsed<Reading> duration(String text) {
    return parse(Dimension.DURATION, text, null);
  }

  public static Parsed<Reading> share(String text) {
    return parse(Dimension.SHARE, text, null);
  }

  public static Parsed<Reading> count(String text) {
    return parse(Dimension.COUNT, text, null);
  }

  public static Parsed<Reading> temperature(String text) {
    return parse(Dimension.TEMPERATURE, text, null);
  }

  public static Parsed<Reading> rainfall(String text) {
    return parse(Dimension.RAINFALL, text, null);
  }

  public static Parsed<Reading> degreeDays(String text) {
    return parse(Dimension.DEGREE_DAYS, text, null);
  }

  /** Reads a quantity of any dimension. */
  public static Parsed<Reading> parse(Dimension dimension, String text, @Nullable Unit bareUnit) {
    return new Parsed.Refused<>(Refusal.EMPTY, List.of());
  }
}
