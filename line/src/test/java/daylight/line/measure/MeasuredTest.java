package daylight.line.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MeasuredTest {
  @Test
  void anExactShiftKeepsTheUncertaintyAndAFactorScalesIt() {
    assertThat(new Measured(3, 0.5).plus(2)).isEqualTo(new Measured(5, 0.5));
    assertThat(new Measured(3, 0.5).times(-2)).isEqualTo(new Measured(-6, 1));
  }

  @Test
  void variancesOfIndependentValuesAdd() {
    assertThat(new Measured(10, 3).minus(new Measured(4, 4))).isEqualTo(new Measured(6, 5));
  }

  /** The standard normal distribution function, from any printed table, from memory. */
  @ParameterizedTest
  @CsvSource({
    "0,0.5",
    "1,0.8413447461",
    "-1,0.1586552539",
    "1.644853627,0.95",
    "1.959963985,0.975",
    "-3,0.0013498980",
    "-6,9.865876e-10"
  })
  void theProbabilityBelowALimitIsTheNormalDistribution(double z, double probability) {
    assertThat(new Measured(7, 0.5).probabilityBelow(7 + 0.5 * z))
        .isCloseTo(probability, within(1e-6 * probability));
  }

  @Test
  void theIntervalHoldsNinetyFivePerCent() {
    Measured depth = new Measured(1.2, 0.08);
    assertThat(depth.probabilityBelow(depth.upper95()) - depth.probabilityBelow(depth.lower95()))
        .isCloseTo(0.95, within(1e-9));
  }

  @Test
  void refusesWhatIsNoUncertainty() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Measured(1, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> new Measured(1, -1));
    assertThatIllegalArgumentException().isThrownBy(() -> new Measured(1, Double.NaN));
    assertThatIllegalArgumentException().isThrownBy(() -> new Measured(Double.NaN, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> new Measured(1, 1).times(0));
    assertThatIllegalArgumentException().isThrownBy(() -> new Reading(Double.NaN, null, ""));
    assertThatIllegalArgumentException().isThrownBy(() -> new Reading(1, 0.0, ""));
    assertThatIllegalArgumentException().isThrownBy(() -> new ClockRange(7, 0, ""));
  }

  @Test
  void aStatedUncertaintyIsAddedToAReading() {
    assertThat(new Reading(1.4, null, "1.40 m").withSd(0.1))
        .isEqualTo(new Reading(1.4, 0.1, "1.40 m"));
  }
}
