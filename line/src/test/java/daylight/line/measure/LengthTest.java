package daylight.line.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** 1 ft = 0.3048 m and 1 in = 25.4 mm exactly: NIST Special Publication 811, from memory. */
class LengthTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
          4' 7"            | 1.397
          4'7"             | 1.397
          4'-7"            | 1.397
          4' - 7"          | 1.397
          4 ft 7 in        | 1.397
          4 ft, 7 in       | 1.397
          4 ft. 7 in.      | 1.397
          4ft7in           | 1.397
          4ft 3 in         | 1.2954
          4ft3"            | 1.2954
          4ft2in           | 1.27
          4 feet 7 inches  | 1.397
          1 foot 1 inch    | 0.3302
          4’ 7”            | 1.397
          4′ 7″            | 1.397
          4' 7''           | 1.397
          55in             | 1.397
          55"              | 1.397
          4.58 ft          | 1.395984
          .5 ft            | 0.1524
          1.40 m           | 1.4
          1.40m            | 1.4
          1.40\u00a0m      | 1.4
          140 cm           | 1.4
          1 m 40 cm        | 1.4
          1397 mm          | 1.397
          1397 MM          | 1.397
          12 metres        | 12
          12 meters        | 12
          1 1/2 in         | 0.0381
          1-1/2 in         | 0.0381
          4' 7 1/2"        | 1.4097
          4' 7½"           | 1.4097
          ½"               | 0.0127
          3/4"             | 0.01905
          ¾ in             | 0.01905
          1 ⅛"             | 0.028575
          1⁄2 in           | 0.0127
          1/2 ft           | 0.1524
          -4' 7"           | -1.397
          − 4' 7"          | -1.397
          –1.40 m          | -1.4
          +1.40 m          | 1.4
          0 m              | 0
          1000000 m        | 1000000
          ４ ft            | 1.2192
          """)
  void understandsLengthsAsPeopleWriteThem(String text, double metres) {
    Reading reading = Reads.value(Quantities.length(text.replace("\\u00a0", "\u00a0"), null));
    assertThat(reading.value()).isCloseTo(metres, within(1e-15 * Math.max(1, Math.abs(metres))));
    assertThat(reading.sd()).isNull();
  }

  @ParameterizedTest
  @CsvSource({"4.5,FOOT,1.3716", "55,INCH,1.397", "-0.3,METRE,-0.3", "1397,MILLIMETRE,1.397"})
  void readsABareNumberInTheUnitChosenForIt(String text, Unit unit, double metres) {
    assertThat(Reads.value(Quantities.length(text, unit)).value()).isCloseTo(metres, within(1e-15));
  }

  @Test
  void keepsTheTextAsTyped() {
    assertThat(Reads.value(Quantities.length("  4′ 7½″ ", null)).written()).isEqualTo("  4′ 7½″ ");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      nullValues = "-",
      textBlock =
          """
          ~~               | -    | EMPTY                     | -
          ~   ~            | FOOT | EMPTY                     | -
          4                | -    | UNIT_MISSING              | 4 ft; 4 in; 4 m
          4 7              | FOOT | UNIT_MISSING              | 4' 7"
          -4' 7            | -    | UNIT_MISSING              | −4' 7"
          1,40 m           | -    | AMBIGUOUS_COMMA           | 1.40 m
          1,40             | METRE | AMBIGUOUS_COMMA          | 1.40
          1,234 mm         | -    | AMBIGUOUS_COMMA           | 1234 mm; 1.234 mm
          1,234.5 mm       | -    | AMBIGUOUS_COMMA           | 1234.5 mm
          4' 13"           | -    | INCHES_NOT_BELOW_TWELVE   | 5' 1"
          -4' 13 1/2"      | -    | INCHES_NOT_BELOW_TWELVE   | −5' 1 1/2"
          4' 12"           | -    | INCHES_NOT_BELOW_TWELVE   | 5' 0"
          4.5' 7"          | -    | PARTS_DO_NOT_FIT          | 5' 1"
          7" 4'            | -    | PARTS_DO_NOT_FIT          | 4' 7"
          4 ft 5 ft        | -    | PARTS_DO_NOT_FIT          | 9' 0"
          4 ft 10 mm       | -    | PARTS_DO_NOT_FIT          | -
          1 m 140 cm       | -    | PARTS_DO_NOT_FIT          | -
          3.x ft           | -    | NOT_A_NUMBER              | 3.5 ft; 3' 6"
          3.x              | FOOT | NOT_A_NUMBER              | 3.5 ft; 3' 6"
          3.x mm           | -    | NOT_A_NUMBER              | 3.5 mm
          5.5.5 ft         | -    | NOT_A_NUMBER              | 5.5 ft; 5' 6"
          1e3 ft           | -    | NOT_A_NUMBER              | 1000 ft
          2.5e-1 m         | -    | NOT_A_NUMBER              | 0.25 m
          1e999999999 ft   | -    | NOT_A_NUMBER              | -
          about 4 ft       | -    | NOT_A_NUMBER              | 4 ft; 4' 0"
          NaN              | FOOT | NOT_A_NUMBER              | -
          Infinity         | FOOT | NOT_A_NUMBER              | -
          --4 ft           | -    | NOT_A_NUMBER              | −4 ft; −4' 0"
          4/0 in           | -    | NOT_A_NUMBER              | -
          1 5/4 in         | -    | NOT_A_NUMBER              | -
          1/2/3 in         | -    | NOT_A_NUMBER              | -
          4 fet            | -    | UNIT_UNKNOWN              | 4 ft
          4 metrs          | -    | UNIT_UNKNOWN              | 4 metre
          4 q              | -    | UNIT_UNKNOWN              | 4 ft; 4 in; 4 m
          4 gpm            | -    | UNIT_OF_ANOTHER_DIMENSION | -
          4 °F             | -    | UNIT_OF_ANOTHER_DIMENSION | -
          4 ft3            | -    | UNIT_OF_ANOTHER_DIMENSION | -
          4 ft or so       | -    | TRAILING_TEXT             | 4 ft
          4' 7" about      | -    | TRAILING_TEXT             | 4' 7"
          1000001 m        | -    | OUT_OF_RANGE              | -
          """)
  void refusesWithAReasonAndNearTexts(
      String text, @Nullable Unit bare, Refusal reason, @Nullable String near) {
    Parsed.Refused<Reading> refused = Reads.refusal(Quantities.length(text, bare));
    assertThat(refused.reason()).isEqualTo(reason);
    List<String> expected = near == null ? List.of() : Arrays.asList(near.split("; "));
    assertThat(refused.suggestions()).isEqualTo(expected);
  }

  @Test
  void refusesALoneSignAndNumbersTooLongToHold() {
    assertThat(Reads.refusal(Quantities.length("-", Unit.FOOT)).reason())
        .isEqualTo(Refusal.NOT_A_NUMBER);
    String digits = "9".repeat(400);
    assertThat(Reads.refusal(Quantities.length(digits + " ft", null)).reason())
        .isEqualTo(Refusal.OUT_OF_RANGE);
    assertThat(Reads.refusal(Quantities.length(digits + "/" + digits + " ft", null)).reason())
        .isEqualTo(Refusal.OUT_OF_RANGE);
  }

  @Test
  void refusesEndlessTextsWithoutLookingIntoThem() {
    for (String shard : new String[] {"1,234", ",234", "4 ft ", "1 ", "e", "1/", "½"}) {
      assertThat(Reads.refusal(Quantities.length("4" + shard.repeat(100_000), null)).reason())
          .isEqualTo(Refusal.TOO_LONG);
    }
  }
}
