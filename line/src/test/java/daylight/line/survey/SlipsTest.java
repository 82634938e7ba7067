package daylight.line.survey;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Parsed;
import daylight.line.measure.Quantities;
import daylight.line.measure.Reading;
import daylight.line.measure.Unit;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Behaviour: which slips a written reading allows when the others say what it ought to be. */
class SlipsTest {
  private static Reading read(Dimension dimension, String text, @Nullable Unit bare) {
    if (Quantities.parse(dimension, text, bare) instanceof Parsed.Value<Reading>(Reading reading)) {
      return reading;
    }
    throw new AssertionError(text);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
          32.0    | FOOT  | 30.2 ft   | LIKELY_SWAPPED 32.0 ft, 30.2 ft
          17' 4"  | FOOT  | 14' 7"    | LIKELY_SWAPPED 17' 4", 14' 7"
          21.7    | METRE | 21.1 m    | LIKELY_FIGURE 21.7 m, 21.1 m
          9.20    | METRE | 9.20 ft   | LIKELY_UNIT 9.20 m, 9.20 ft
          9.20    | FOOT  | 9.20 m    | LIKELY_UNIT 9.20 ft, 9.20 m
          55 in   | FOOT  | 55 cm     | LIKELY_UNIT 55 in, 55 cm
          12.5 ft | FOOT  | 12' 5"    | LIKELY_FEET_INCHES 12.5 ft, 12' 5"
          12.11   | FOOT  | 12' 11"   | LIKELY_FEET_INCHES 12.11 ft, 12' 11"
          38' 9"  | FOOT  | 38.9 ft   | LIKELY_DECIMAL 38' 9", 38.9 ft
          31.2    | FOOT  | 30.2 ft   | LIKELY_OVER 1 ft
          20.2    | FOOT  | 30.2 ft   | LIKELY_UNDER 10 ft
          7.35    | METRE | 6.35 m    | LIKELY_OVER 1 m
          7.35    | METRE | 7.45 m    | LIKELY_UNDER 10 cm
          """)
  void lengths(String written, Unit bare, String truth, String expected) {
    Reading reading = read(Dimension.LENGTH, written, bare);
    double blunder = reading.value() - read(Dimension.LENGTH, truth, null).value();
    assertThat(slips(new Written(reading, Dimension.LENGTH, bare), Quantity.DISTANCE, blunder))
        .contains(expected);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          54.3  | 45.3  | LIKELY_SWAPPED 54.3°, 45.3°
          131.5 | 121.5 | LIKELY_OVER 0.17453292519943295
          5     | 355   | LIKELY_OVER 0.17453292519943295
          """)
  void angles(String written, String truth, String expected) {
    Reading reading = read(Dimension.ANGLE, written, null);
    double blunder = reading.value() - read(Dimension.ANGLE, truth, null).value();
    assertThat(slips(new Written(reading, Dimension.ANGLE, null), Quantity.ANGLE, blunder))
        .contains(expected);
  }

  private static List<String> slips(Written written, Quantity quantity, double blunder) {
    var misread =
        new Suspect.Misread("A–L3", quantity, written.reading().value(), blunder, 0.004, 9);
    return new Slips(written, misread)
        .likely().stream()
            .filter(likely -> likely.misfit() < 2)
            .map(
                likely ->
                    ((SurveyKey) likely.said().key()).name()
                        + " "
                        + likely.said().arguments().stream()
                            .map(SlipsTest::text)
                            .collect(Collectors.joining(", ")))
            .toList();
  }

  private static String text(Argument argument) {
    return switch (argument) {
      case Argument.Text(String text) -> text;
      case Argument.Quantity quantity -> Double.toString(quantity.value());
      default -> argument.toString();
    };
  }
}
