package daylight.line.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PrintTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
          3.84    | 12' 7"  | 12.6 ft  | 3.84 m
          0       | 0"      | 0.0 ft   | 0.00 m
          0.1778  | 7"      | 0.6 ft   | 0.18 m
          0.3     | 1' 0"   | 1.0 ft   | 0.30 m
          3.65    | 12' 0"  | 12.0 ft  | 3.65 m
          -1.397  | −4' 7"  | −4.6 ft  | −1.40 m
          -0.001  | 0"      | 0.0 ft   | 0.00 m
          """)
  void showsLengthsAsThePersonChose(double metres, String inches, String feet, String metric) {
    assertThat(Print.length(metres, Shown.FEET_INCHES)).isEqualTo(inches);
    assertThat(Print.length(metres, Shown.DECIMAL_FEET)).isEqualTo(feet);
    assertThat(Print.length(metres, Shown.METRES)).isEqualTo(metric);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
          3.84  | 0.0005 | METRES       | 3.840 m  | ± 0.001 m
          3.84  | 0.005  | METRES       | 3.840 m  | ± 0.010 m
          3.84  | 0.1    | METRES       | 3.84 m   | ± 0.20 m
          3.84  | 0.2    | METRES       | 3.8 m    | ± 0.4 m
          38.4  | 20     | METRES       | 40 m     | ± 40 m
          3.84  | 0.1    | DECIMAL_FEET | 12.6 ft  | ± 0.7 ft
          3.84  | 0.001  | FEET_INCHES  | 12' 7"   | ± 1"
          3.84  | 0.1    | FEET_INCHES  | 12' 7"   | ± 8"
          3.84  | 0.3    | FEET_INCHES  | 12' 7"   | ± 2' 0"
          3.84  | 0.5    | FEET_INCHES  | 13 ft    | ± 4 ft
          -3.84 | 0.5    | FEET_INCHES  | −13 ft   | ± 4 ft
          """)
  void showsNoMoreDigitsThanTheUncertaintySupports(
      double metres, double sd, Shown shown, String value, String plusMinus) {
    assertThat(Print.length(new Measured(metres, sd), shown))
        .isEqualTo(new Printed(value, plusMinus));
  }

  @ParameterizedTest
  @CsvSource({
    "0.1016,4 in,102 mm",
    "0.1,4 in,100 mm",
    "0.0381,1 1/2 in,38 mm",
    "0.01905,3/4 in,19 mm"
  })
  void showsBores(double metres, String inches, String metric) {
    assertThat(Print.bore(metres, Shown.FEET_INCHES)).isEqualTo(inches);
    assertThat(Print.bore(metres, Shown.METRES)).isEqualTo(metric);
  }

  @ParameterizedTest
  @CsvSource({
    "0,0 in,0.0 mm",
    "0.00001,< 1/16 in,< 0.1 mm",
    "0.0005,< 1/16 in,0.5 mm",
    "0.003,1/8 in,3.0 mm",
    "0.0238,15/16 in,24 mm"
  })
  void neverShowsASmallWidthAsNothing(double metres, String inches, String metric) {
    assertThat(Print.small(metres, Shown.DECIMAL_FEET)).isEqualTo(inches);
    assertThat(Print.small(metres, Shown.METRES)).isEqualTo(metric);
  }

  /** 1/4 in/ft = 1:48 = 2.0833 %, 1/8 = 1:96 = 1.0417 %, 1/16 = 1:192 = 0.5208 %: derived. */
  @ParameterizedTest
  @CsvSource({
    "48,1/4 in per ft,2.1 %,2.0833",
    "96,1/8 in per ft,1.0 %,1.0417",
    "192,1/16 in per ft,0.5 %,0.5208",
    "-48,−1/4 in per ft,−2.1 %,-2.0833"
  })
  void showsSlopesBothWays(double run, String perFoot, String perCent, double exact) {
    assertThat(Print.slopePerFoot(1 / run)).isEqualTo(perFoot);
    assertThat(Print.slope(1 / run)).isEqualTo(perCent);
    assertThat(Reads.value(Quantities.slope(perFoot)).value() * 100)
        .isCloseTo(exact, within(0.00005));
  }

  @ParameterizedTest
  @CsvSource({"0,12:00", "90,3:00", "-90,9:00", "97.4,3:00", "97.6,3:30", "359,12:00", "15,12:30"})
  void showsClockPositionsToTheHalfHour(double degrees, String expected) {
    assertThat(Print.clock(Math.toRadians(degrees))).isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource({
    "0,0 s",
    "45,45 s",
    "90,1 min 30 s",
    "599.7,10 min",
    "4800,1 h 20 min",
    "86400,24 h",
    "273600,3 d 4 h",
    "172800,2 d"
  })
  void showsDurationsInTheTwoUnitsThatMatter(double seconds, String expected) {
    assertThat(Print.duration(seconds)).isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource({"0,0 %", "0.001,< 1 %", "0.3,30 %", "0.994,99 %", "0.999,> 99 %", "1,100 %"})
  void neverRoundsAShareToNothingOrAll(double share, String expected) {
    assertThat(Print.share(share)).isEqualTo(expected);
  }

  @Test
  void showsTheOtherQuantitiesInEitherSystem() {
    assertThat(Print.flow(6e-4, Shown.FEET_INCHES)).isEqualTo("9.5 gpm");
    assertThat(Print.flow(6e-4, Shown.METRES)).isEqualTo("0.60 L/s");
    assertThat(Print.volume(0.045, Shown.DECIMAL_FEET)).isEqualTo("12 gal");
    assertThat(Print.volume(0.045, Shown.METRES)).isEqualTo("45 L");
    assertThat(Print.volume(2, Shown.METRES)).isEqualTo("2.0 m³");
    assertThat(Print.area(111.483648, Shown.FEET_INCHES)).isEqualTo("1200 ft²");
    assertThat(Print.area(111.483648, Shown.METRES)).isEqualTo("111.5 m²");
    assertThat(Print.temperature(-5, Shown.METRES)).isEqualTo("−5 °C");
    assertThat(Print.temperature(-5, Shown.FEET_INCHES)).isEqualTo("23 °F");
    assertThat(Print.angle(Math.toRadians(22.5))).isEqualTo("22.5°");
    assertThat(Print.angle(Math.toRadians(45))).isEqualTo("45°");
    assertThat(Print.rainfall(7.055555555555556e-6, Shown.FEET_INCHES)).isEqualTo("1.00 in/h");
    assertThat(Print.rainfall(7.055555555555556e-6, Shown.METRES)).isEqualTo("25.4 mm/h");
    assertThat(Print.degreeDays(1388.9, Shown.FEET_INCHES)).isEqualTo("2500 F-days");
    assertThat(Print.clock(new ClockRange(1.5 * Math.PI, 0, ""))).isEqualTo("9:00–12:00");
  }

  @Test
  void showsTheSameInEveryLocale() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertThat(Print.length(1234.5, Shown.METRES)).isEqualTo("1234.50 m");
      Locale.setDefault(Locale.forLanguageTag("tr"));
      assertThat(Reads.value(Quantities.length("4 FT 7 INCHES", null)).value())
          .isCloseTo(1.397, within(1e-15));
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void refusesWhatIsNoNumber() {
    for (Dimension dimension : Dimension.values()) {
      for (Shown shown : Shown.values()) {
        assertThatIllegalArgumentException()
            .isThrownBy(() -> Print.of(dimension, Double.NaN, shown));
        assertThatIllegalArgumentException()
            .isThrownBy(() -> Print.of(dimension, Double.POSITIVE_INFINITY, shown));
      }
    }
    assertThatIllegalArgumentException().isThrownBy(() -> Print.small(-0.001, Shown.METRES));
    assertThatIllegalArgumentException().isThrownBy(() -> Print.share(1.01));
  }
}
