package daylight.line.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantitiesTest {
  private static final double DEGREE = Math.PI / 180;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
          AREA        | 1200 sq ft      | 111.483648
          AREA        | 10 ft²          | 0.9290304
          AREA        | 110 m2          | 110
          VOLUME      | 12 gal          | 0.045424941408
          VOLUME      | 45 L            | 0.045
          VOLUME      | 2 m³            | 2
          VOLUME      | 1 cu ft         | 0.028316846592
          FLOW        | 10 gpm          | 6.30901964e-4
          FLOW        | 10 gal/min      | 6.30901964e-4
          FLOW        | 0.63 L/s        | 6.3e-4
          FLOW        | 36 L/min        | 6e-4
          FLOW        | 3.6 m3/h        | 1e-3
          FLOW        | 3.6 m³ per hour | 1e-3
          FLOW        | 1 cfs           | 0.028316846592
          FLOW        | 1 ft3/s         | 0.028316846592
          DURATION    | 90 s            | 90
          DURATION    | 10 min          | 600
          DURATION    | 1 h 20 min      | 4800
          DURATION    | 2 days          | 172800
          DURATION    | 1.5 h           | 5400
          SLOPE       | 2 %             | 0.02
          SLOPE       | 2.0%            | 0.02
          SLOPE       | -0.5 %          | -0.005
          SLOPE       | 1:48            | 0.020833333333333332
          SLOPE       | 1 in 48         | 0.020833333333333332
          SLOPE       | -1 : 48         | -0.020833333333333332
          SLOPE       | 1/4 in/ft       | 0.020833333333333332
          SLOPE       | 1/4" per ft     | 0.020833333333333332
          SLOPE       | 1/4" per foot   | 0.020833333333333332
          SLOPE       | ¼ in. per ft.   | 0.020833333333333332
          SLOPE       | 0.02 m/m        | 0.02
          SLOPE       | 20 mm/m         | 0.02
          SHARE       | 30 %            | 0.3
          SHARE       | 30 percent      | 0.3
          SHARE       | 100%            | 1
          COUNT       | 3               | 3
          TEMPERATURE | 41 °F           | 5
          TEMPERATURE | -40 F           | -40
          TEMPERATURE | −5 ℃            | -5
          RAINFALL    | 36 mm/h         | 1e-5
          RAINFALL    | 1 in/hr         | 7.055555555555556e-6
          DEGREE_DAYS | 2500 F-days     | 1388.888888888889
          DEGREE_DAYS | 1389 C-days     | 1389
          DEGREE_DAYS | 1389 °C·days    | 1389
          DENSITY     | 100 lb/ft3      | 1601.8463373960137
          DENSITY     | 1600 kg/m³      | 1600
          CONDUCTIVITY| 0.76 Btu/h·ft·°F | 1.3153583464422574
          CONDUCTIVITY| 1.3 W/m·K       | 1.3
          CONDUCTIVITY| 1 Btu·in/h·ft²·°F | 0.1442278888642826
          CONDUCTIVITY| 10 Btu-in/(h·ft²·°F) | 1.442278888642826
          SPEED       | 2 ft/s          | 0.6096
          SPEED       | 0.6 m/s         | 0.6
          """)
  void understandsEveryDimension(Dimension dimension, String text, double si) {
    assertThat(Reads.value(Quantities.parse(dimension, text, null)).value())
        .isCloseTo(si, within(4e-16 * Math.max(1e-3, Math.abs(si))));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
          45      | 45
          45°     | 45
          45 deg  | 45
          45°30'  | 45.5
          45º 30’ | 45.5
          45° 30' 36" | 45.51
          22 1/2° | 22.5
          -90°    | -90
          360     | 360
          """)
  void understandsAngles(String text, double degrees) {
    assertThat(Reads.value(Quantities.angle(text)).value())
        .isCloseTo(degrees * DEGREE, within(1e-14));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
          N 30 E      | 30
          N30°15'E    | 30.25
          n 30° w     | 330
          S 30 E      | 150
          S 45 W      | 225
          S 0 E       | 180
          N 0 W       | 0
          NW          | 315
          E           | 90
          123.5       | 123.5
          360°        | 0
          """)
  void understandsBearingsClockwiseFromNorth(String text, double degrees) {
    assertThat(Reads.value(Quantities.bearing(text)).value())
        .isCloseTo(degrees * DEGREE, within(1e-14));
  }

  @ParameterizedTest
  @CsvSource({"N 91 E", "-5", "N -5 E", "361"})
  void refusesBearingsBeyondTheirQuadrantOrTurn(String text) {
    assertThat(Reads.refusal(Quantities.bearing(text)).reason()).isEqualTo(Refusal.OUT_OF_RANGE);
  }

  @ParameterizedTest
  @CsvSource({"3,90", "3:00,90", "3 o'clock,90", "12,0", "9:30,285", "12:30,15", "6 O’Clock,180"})
  void understandsClockPositionsClockwiseFromTwelve(String text, double degrees) {
    assertThat(Reads.value(Quantities.clock(text)).value())
        .isCloseTo(degrees * DEGREE, within(1e-14));
  }

  @ParameterizedTest
  @CsvSource({"9-3,270,90", "9–3,270,90", "9 to 3,270,90", "10:30 - 12,315,0", "5-7,150,210"})
  void understandsClockRanges(String text, double from, double to) {
    ClockRange range = Reads.value(Quantities.clockRange(text));
    assertThat(range.from()).isCloseTo(from * DEGREE, within(1e-14));
    assertThat(range.to()).isCloseTo(to * DEGREE, within(1e-14));
    assertThat(range.written()).isEqualTo(text);
  }

  @Test
  void aClockRangeRunsClockwiseAcrossTwelve() {
    assertThat(Reads.value(Quantities.clockRange("9-3")).width()).isCloseTo(Math.PI, within(1e-14));
    assertThat(Reads.value(Quantities.clockRange("3-9")).width()).isCloseTo(Math.PI, within(1e-14));
  }

  @ParameterizedTest
  @CsvSource({"9,PARTS_DO_NOT_FIT", "9-,EMPTY", "-9,EMPTY", "9-13,OUT_OF_RANGE", "'',EMPTY"})
  void refusesHalfAClockRange(String text, Refusal reason) {
    assertThat(Reads.refusal(Quantities.clockRange(text)).reason()).isEqualTo(reason);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      nullValues = "-",
      textBlock =
          """
          SHARE       | 0.3        | UNIT_MISSING              | 30 %; 0.3 %
          SHARE       | 110 %      | OUT_OF_RANGE              | -
          SHARE       | -1 %       | OUT_OF_RANGE              | -
          SHARE       | 3 ft       | UNIT_OF_ANOTHER_DIMENSION | -
          SLOPE       | 0.02       | UNIT_MISSING              | 2 %; 0.02 %; 0.02 in per ft
          SLOPE       | 1:0        | OUT_OF_RANGE              | -
          SLOPE       | 2,0 %      | AMBIGUOUS_COMMA           | 2.0 %
          DURATION    | 0:30       | AMBIGUOUS_COLON           | 0 h 30 min; 0 min 30 s
          DURATION    | 90         | UNIT_MISSING              | 90 s; 90 min; 90 h
          DURATION    | 1 h 90 min | PARTS_DO_NOT_FIT          | -
          DURATION    | 10 minuts  | UNIT_UNKNOWN              | 10 minute
          FLOW        | 10         | UNIT_MISSING              | 10 gpm; 10 L/s
          FLOW        | 10 gal     | UNIT_OF_ANOTHER_DIMENSION | -
          FLOW        | 10 gpm 5   | TRAILING_TEXT             | 10 gpm
          TEMPERATURE | 20         | UNIT_MISSING              | 20 °C; 20 °F
          TEMPERATURE | 20°        | UNIT_MISSING              | 20 °C; 20 °F
          TEMPERATURE | -300 C     | OUT_OF_RANGE              | -
          COUNT       | 3.5        | NOT_WHOLE                 | 3; 4
          COUNT       | 3 m        | UNIT_OF_ANOTHER_DIMENSION | -
          COUNT       | three      | NOT_A_NUMBER              | -
          COUNT       | -3         | OUT_OF_RANGE              | -
          CLOCK       | 3.5        | NOT_WHOLE                 | 3:30
          CLOCK       | 13         | OUT_OF_RANGE              | -
          CLOCK       | 0          | OUT_OF_RANGE              | -
          CLOCK       | 3:60       | OUT_OF_RANGE              | -
          CLOCK       | 3:5        | AMBIGUOUS_COLON           | 3:05; 3:50
          CLOCK       | 3 ft       | UNIT_OF_ANOTHER_DIMENSION | -
          ANGLE       | 361        | OUT_OF_RANGE              | -
          ANGLE       | 45°60'     | PARTS_DO_NOT_FIT          | -
          RAINFALL    | 25 mm      | UNIT_OF_ANOTHER_DIMENSION | -
          DEGREE_DAYS | 2500       | UNIT_MISSING              | 2500 C-days; 2500 F-days
          """)
  void refusesWithAReasonAndNearTexts(
      Dimension dimension, String text, Refusal reason, @Nullable String near) {
    Parsed.Refused<Reading> refused = Reads.refusal(Quantities.parse(dimension, text, null));
    assertThat(refused.reason()).isEqualTo(reason);
    List<String> expected = near == null ? List.of() : Arrays.asList(near.split("; "));
    assertThat(refused.suggestions()).isEqualTo(expected);
  }

  @Test
  void theBareUnitIsForLengthsOnly() {
    assertThat(Reads.refusal(Quantities.parse(Dimension.FLOW, "10", Unit.FOOT)).reason())
        .isEqualTo(Refusal.UNIT_MISSING);
  }

  @Test
  void everyNamedDoorReadsItsOwnDimension() {
    assertThat(Reads.value(Quantities.slope("2 %")).value()).isEqualTo(0.02);
    assertThat(Reads.value(Quantities.share("2 %")).value()).isEqualTo(0.02);
    assertThat(Reads.value(Quantities.flow("1 m3/s")).value()).isEqualTo(1);
    assertThat(Reads.value(Quantities.volume("1 m3")).value()).isEqualTo(1);
    assertThat(Reads.value(Quantities.area("1 m2")).value()).isEqualTo(1);
    assertThat(Reads.value(Quantities.duration("1 min")).value()).isEqualTo(60);
    assertThat(Reads.value(Quantities.count("7")).value()).isEqualTo(7);
    assertThat(Reads.value(Quantities.temperature("7 C")).value()).isEqualTo(7);
    assertThat(Reads.value(Quantities.rainfall("3.6 m/h")).value()).isEqualTo(1e-3);
    assertThat(Reads.value(Quantities.degreeDays("7 C-days")).value()).isEqualTo(7);
  }
}
