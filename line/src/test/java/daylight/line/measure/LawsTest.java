package daylight.line.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What must hold for any text and any value. */
class LawsTest {
  private static final int CASES = 20_000;
  private static final double SLACK = 1 + 1e-9;

  @ParameterizedTest
  @CsvSource({"FEET_INCHES,0.0127", "DECIMAL_FEET,0.01524", "METRES,0.005"})
  void aPrintedLengthReadsBackToWithinHalfItsLastDigit(Shown shown, double half) {
    SplitMix64 random = new SplitMix64(1);
    for (int i = 0; i < CASES; i++) {
      double metres = random.between(-200, 200);
      String text = Print.length(metres, shown);
      double back = Reads.value(Quantities.length(text, null)).value();
      assertThat(back).as(text).isCloseTo(metres, within(half * SLACK));
      assertThat(Print.length(back, shown)).isEqualTo(text);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "AREA,0,500,0.0464515,0.05",
    "FLOW,0,0.0006,3.154510e-6,5e-6",
    "FLOW,0.0007,0.1,3.154510e-5,5e-6",
    "VOLUME,2e-5,0.009,1.892706e-4,5e-5",
    "VOLUME,0.04,0.99,1.892706e-3,5e-4",
    "DURATION,0,599,0.5,0.5",
    "DURATION,601,172000,30,30",
    "DURATION,173000,1e8,1800,1800",
    "ANGLE,-6.28,6.28,8.726647e-4,8.726647e-4",
    "SLOPE,-1,1,5e-4,5e-4",
    "SHARE,0.005,0.994,0.005,0.005",
    "COUNT,0,1000,0.5,0.5",
    "TEMPERATURE,-40,60,0.27777778,0.5",
    "RAINFALL,0,1e-4,3.527778e-8,1.388889e-8",
    "DEGREE_DAYS,0,5000,0.27777778,0.5",
    "DENSITY,100,2500,8.0093,0.5",
    "CONDUCTIVITY,0.05,4,8.6537e-3,0.005",
    "SPEED,0,20,0.01524,0.005"
  })
  void anyPrintedQuantityReadsBackToWithinHalfItsLastDigit(
      Dimension dimension, double least, double most, double halfUs, double halfMetric) {
    SplitMix64 random = new SplitMix64(2);
    for (int i = 0; i < CASES / 10; i++) {
      double value = random.between(least, most);
      for (Shown shown : Shown.values()) {
        String text = Print.of(dimension, value, shown);
        double back = Reads.value(Quantities.parse(dimension, text, null)).value();
        double half = shown == Shown.METRES ? halfMetric : halfUs;
        assertThat(back).as(text).isCloseTo(value, within(half * SLACK));
      }
    }
  }

  @Test
  void aPrintedClockPositionReadsBackToWithinAQuarterHour() {
    SplitMix64 random = new SplitMix64(3);
    for (int i = 0; i < CASES / 10; i++) {
      double angle = random.between(0, 2 * Math.PI);
      double back = Reads.value(Quantities.clock(Print.clock(angle))).value();
      double apart = Math.abs(Math.IEEEremainder(back - angle, 2 * Math.PI));
      assertThat(apart).isLessThanOrEqualTo(Math.PI / 24 * SLACK);
    }
  }

  @ParameterizedTest
  @EnumSource(Shown.class)
  void theIntervalAsPrintedCoversTheIntervalToWithinTheValuesRounding(Shown shown) {
    SplitMix64 random = new SplitMix64(4);
    for (int i = 0; i < CASES / 10; i++) {
      double sd = StrictMath.exp(random.between(StrictMath.log(1e-4), StrictMath.log(30)));
      Measured length = new Measured(random.between(-50, 50), sd);
      Printed printed = Print.length(length, shown);
      double half = Reads.value(Quantities.length(printed.plusMinus().substring(2), null)).value();
      double value = Reads.value(Quantities.length(printed.value(), null)).value();
      double trueHalf = 1.959963985 * sd;
      assertThat(half).as(printed.toString()).isGreaterThanOrEqualTo(trueHalf * (1 - 1e-9));
      // Half a step is at most a fifth of the half-width, save where the inch is the finest step.
      assertThat(Math.abs(value - length.value()))
          .as(printed.toString())
          .isLessThanOrEqualTo(Math.max(trueHalf * 0.2, 0.0127) * SLACK);
    }
  }

  @Test
  void feetAndInchesAddUp() {
    SplitMix64 random = new SplitMix64(5);
    for (int i = 0; i < CASES; i++) {
      int feet = random.below(500);
      int inches = random.below(12);
      int sixteenths = random.below(16);
      String written = feet + "' " + inches + " " + sixteenths + "/16\"";
      double expected = (feet * 192L + inches * 16L + sixteenths) * 25.4 / 16 / 1000;
      assertThat(Reads.value(Quantities.length(written, null)).value())
          .as(written)
          .isCloseTo(expected, within(1e-13));
      assertThat(Reads.value(Quantities.length("-" + written, null)).value())
          .isEqualTo(-Reads.value(Quantities.length(written, null)).value());
    }
  }

  @Test
  void nothingTypedEverThrowsOrYieldsAnythingButAFiniteValue() {
    SplitMix64 random = new SplitMix64(6);
    for (int i = 0; i < CASES / 4; i++) {
      String text = scribble(random);
      Quantities.bearing(text);
      Quantities.clockRange(text);
      for (Dimension dimension : Dimension.values()) {
        checkOutcome(dimension, text, random.below(2) == 0 ? null : Unit.FOOT);
      }
    }
  }

  private static void checkOutcome(Dimension dimension, String text, @Nullable Unit bare) {
    switch (Quantities.parse(dimension, text, bare)) {
      case Parsed.Value<Reading>(Reading reading) -> {
        assertThat(reading.value()).as(text).isFinite();
        assertThat(reading.written()).isEqualTo(text);
      }
      case Parsed.Refused<Reading>(Refusal reason, List<String> suggestions) -> {
        assertThat(reason).isNotNull();
        for (String suggestion : suggestions) {
          Reads.value(Quantities.parse(dimension, suggestion, bare));
        }
      }
    }
  }

  /** Mostly shards of real entries, sometimes any character at all. */
  private static String scribble(SplitMix64 random) {
    List<String> shards =
        List.of(
            "4",
            "7",
            "12",
            "0",
            "3.5",
            ".",
            ",",
            "/",
            "1/2",
            "½",
            "'",
            "\"",
            "′",
            "″",
            " ",
            "-",
            "−",
            "+",
            "ft",
            "in",
            "m",
            "mm",
            "gal",
            "gpm",
            "L/s",
            "%",
            ":",
            "°",
            "C",
            "F-days",
            "h",
            "min",
            "per",
            "e",
            "E9",
            "NaN",
            "o'clock",
            "N",
            "W",
            "to",
            "m³",
            "^2",
            "\u00a0",
            "٣",
            "99999999999999999999",
            "x");
    StringBuilder text = new StringBuilder();
    int length = random.below(9);
    for (int i = 0; i < length; i++) {
      text.append(
          random.below(10) == 0
              ? Character.toString(random.below(Character.MAX_CODE_POINT + 1))
              : shards.get(random.below(shards.size())));
    }
    return text.toString();
  }
}
