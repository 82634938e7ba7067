package daylight.line.sonde;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import daylight.line.measure.Measured;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** From a depth reading to invert and cover. */
class BurialTest {
  private static Measured at(double value, double sd) {
    return new Measured(value, sd);
  }

  private static final Measured RIDE = at(0.04, 0.015);

  @Test
  void takesOffWhatLayBetweenAndAddsUpEveryDoubt() {
    DepthShown reading =
        new DepthShown(
            at(1.5, 0.06), at(0.3, 0.01), at(0.1, 0.02), at(0.12, 0.01), RIDE, at(0.1, 0.002));
    Burial.Buried buried = (Burial.Buried) Sonde.buried(reading);
    assertThat(buried.sonde().value()).isCloseTo(1.1, within(1e-12));
    assertThat(buried.invert().value()).isCloseTo(1.14, within(1e-12));
    double variance = 0.06 * 0.06 + 0.01 * 0.01 + 0.02 * 0.02 + 0.015 * 0.015;
    assertThat(buried.invert().sd()).isCloseTo(StrictMath.sqrt(variance), within(1e-12));
    assertThat(Objects.requireNonNull(buried.crown()).value()).isCloseTo(1.04, within(1e-12));
    assertThat(Objects.requireNonNull(buried.soil()).value()).isCloseTo(0.92, within(1e-12));
    assertThat(buried.parts().stream().mapToDouble(Burial.Part::share).sum())
        .isCloseTo(1, within(1e-12));
    assertThat(buried.parts().getFirst().share()).isCloseTo(0.0036 / variance, within(1e-12));
  }

  @Test
  void saysLessWhereLessIsKnown() {
    DepthShown reading = new DepthShown(at(1.5, 0.06), null, null, at(0.1, 0.01), RIDE, null);
    Burial.Buried buried = (Burial.Buried) Sonde.buried(reading);
    assertThat(buried.crown()).isNull();
    assertThat(buried.soil()).isNull();
    assertThat(buried.parts()).hasSize(2);
  }

  @Test
  void refusesWhatCannotBe() {
    DepthShown above = new DepthShown(at(0.4, 0.05), at(0.5, 0.01), null, null, RIDE, null);
    assertThat(Sonde.buried(above))
        .isInstanceOfSatisfying(
            Burial.NotBuried.class, no -> assertThat(no.above()).isCloseTo(0.1, within(1e-12)));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new DepthShown(at(1, 0.1), null, null, null, RIDE, at(0.03, 0.001)))
        .withMessageContaining("ride must be within the bore");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new DepthShown(at(1, 0.1), at(-1, 0.1), null, null, RIDE, null))
        .withMessageContaining("receiverHeight must not be negative");
  }
}
