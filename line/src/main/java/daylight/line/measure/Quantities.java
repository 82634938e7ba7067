package daylight.line.measure;

import org.jspecify.annotations.Nullable;

/**
 * The door for reading quantities as people write them. Never guesses: what could mean two things
 * is refused with both as suggestions. Never throws for any text, and never yields a value that is
 * not finite.
 */
public final class Quantities {
  private Quantities() {}

  /**
   * A length in metres: {@code 4' 7 1/2"}, {@code 4 ft 7 in}, {@code 4.58 ft}, {@code 55in}, {@code
   * 1.40 m}, {@code 1397 mm}, {@code −3/4"}.
   *
   * @param bareUnit what a bare number means, or null to refuse bare numbers
   */
  public static Parsed<Reading> length(String text, @Nullable Unit bareUnit) {
    return parse(Dimension.LENGTH, text, bareUnit);
  }

  /** An angle in radians: {@code 45}, {@code 22 1/2°}, {@code 45°30'}; bare numbers are degrees. */
  public static Parsed<Reading> angle(String text) {
    return parse(Dimension.ANGLE, text, null);
  }

  /**
   * A bearing in radians clockwise from grid north, from 0 to below 2π: {@code N 30 E}, {@code SW},
   * {@code 123.5}; bare numbers are degrees.
   */
  public static Parsed<Reading> bearing(String text) {
    return Bearings.radians(PlainText.of(text)).map(value -> new Reading(value, null, text));
  }

  /**
   * A clock position in radians clockwise from twelve as the head looks, from 0 to below 2π: {@code
   * 3}, {@code 9:30}, {@code 12 o'clock}.
   */
  public static Parsed<Reading> clock(String text) {
    return parse(Dimension.CLOCK, text, null);
  }

  /** A range of clock positions, clockwise from the first to the second: {@code 9-3}. */
  public static Parsed<ClockRange> clockRange(String text) {
    return ClockFace.range(PlainText.of(text), text);
  }

  /**
   * Rise over run with its sign: {@code 2 %}, {@code 1:48}, {@code 1 in 50}, {@code 1/4 in/ft},
   * {@code 20 mm/m}.
   */
  public static Parsed<Reading> slope(String text) {
    return parse(Dimension.SLOPE, text, null);
  }

  /** A flow in cubic metres per second; gallons are US gallons: {@code 10 gpm}, {@code 0.6 L/s}. */
  public static Parsed<Reading> flow(String text) {
    return parse(Dimension.FLOW, text, null);
  }

  /** A volume in cubic metres; gallons are US gallons: {@code 12 gal}, {@code 45 L}. */
  public static Parsed<Reading> volume(String text) {
    return parse(Dimension.VOLUME, text, null);
  }

  /** An area in square metres: {@code 1200 sq ft}, {@code 110 m²}. */
  public static Parsed<Reading> area(String text) {
    return parse(Dimension.AREA, text, null);
  }

  /** A duration in seconds: {@code 90 s}, {@code 1 h 20 min}, {@code 2 days}. */
  public static Parsed<Reading> duration(String text) {
    return parse(Dimension.DURATION, text, null);
  }

  /** A share from 0 to 1, written as a percentage: {@code 30 %} is 0.3. */
  public static Parsed<Reading> share(String text) {
    return parse(Dimension.SHARE, text, null);
  }

  /** A whole number, not negative. */
  public static Parsed<Reading> count(String text) {
    return parse(Dimension.COUNT, text, null);
  }

  /** A temperature in degrees Celsius: {@code 41 °F}, {@code −5 C}. */
  public static Parsed<Reading> temperature(String text) {
    return parse(Dimension.TEMPERATURE, text, null);
  }

  /** A rainfall intensity in metres per second: {@code 25 mm/h}, {@code 1 in/hr}. */
  public static Parsed<Reading> rainfall(String text) {
    return parse(Dimension.RAINFALL, text, null);
  }

  /** Degree days in °C·days: {@code 2500 F-days}, {@code 1389 C-days}. */
  public static Parsed<Reading> degreeDays(String text) {
    return parse(Dimension.DEGREE_DAYS, text, null);
  }

  /** A speed in metres per second: {@code 2 ft/s}, {@code 0.6 m/s}. */
  public static Parsed<Reading> speed(String text) {
    return parse(Dimension.SPEED, text, null);
  }

  /**
   * A quantity of any dimension, in the unit {@link Dimension} states.
   *
   * @param bareUnit what a bare length means; of no effect elsewhere
   */
  public static Parsed<Reading> parse(Dimension dimension, String text, @Nullable Unit bareUnit) {
    String plain = PlainText.of(text);
    return switch (Meaning.of(dimension, plain, bareUnit)) {
      case Parsed.Value<Double>(Double value) -> new Parsed.Value<>(new Reading(value, null, text));
      case Parsed.Refused<Double> refused ->
          new Parsed.Refused<>(
              refused.reason(), Suggestions.near(dimension, plain, bareUnit, refused.reason()));
    };
  }
}
