package daylight.footage.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

/** How counters write their readings. */
class CounterFormatTest {
  private static final double FOOT = 0.3048;

  @Test
  void writesFeetMetresAndInches() {
    assertThat(CounterFormat.feet(1, 1, " ft").text(12.4 * FOOT)).isEqualTo("12.4 ft");
    assertThat(CounterFormat.feet(1, 3, " FT").text(52.8 * FOOT)).isEqualTo("052.8 FT");
    assertThat(CounterFormat.feet(0, 1, " FT").text(52.5 * FOOT)).isEqualTo("53 FT");
    assertThat(CounterFormat.metres(2, 2, " m").text(6.09)).isEqualTo("06.09 m");
    assertThat(CounterFormat.metres(1, 4, "").withSign().text(12.3)).isEqualTo("+0012.3");
    assertThat(CounterFormat.feetInches(2).text(12 * FOOT + 7 * 0.0254)).isEqualTo("12' 07\"");
  }

  @Test
  void carriesTwelveInchesIntoAFoot() {
    assertThat(CounterFormat.feetInches(1).text(5 * FOOT - 0.01)).isEqualTo("5' 00\"");
    assertThat(CounterFormat.feetInches(1).text(5 * FOOT - 0.02)).isEqualTo("4' 11\"");
  }

  @Test
  void marksWhatIsBelowZeroUnlessItRoundsToZero() {
    assertThat(CounterFormat.metres(1, 1, "m").text(-0.26)).isEqualTo("-0.3m");
    assertThat(CounterFormat.metres(1, 1, "m").text(-0.04)).isEqualTo("0.0m");
  }

  @Test
  void everyStepOfTheCounterIsWrittenAsItself() {
    CounterFormat tenths = CounterFormat.feet(1, 1, "");
    for (int i = 0; i < 5000; i++) {
      assertThat(tenths.text(i * tenths.step())).isEqualTo(i / 10 + "." + i % 10);
    }
  }

  @Test
  void refusesUnitsOfNothingAndTooManyDigits() {
    assertThatThrownBy(() -> new CounterFormat(0, 1, 1, false, "", false))
        .hasMessageContaining("unit in metres must be positive, was 0.0");
    assertThatThrownBy(() -> CounterFormat.metres(4, 1, "")).hasMessageContaining("were 4 and 1");
  }
}
