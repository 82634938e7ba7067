package daylight.line.sonde;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import daylight.line.course.SplitMix64;
import daylight.line.measure.Measured;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Two antennas one above the other, and the receiver raised. */
class HeightsTest {
  private static Measured at(double value, double sd) {
    return new Measured(value, sd);
  }

  /** Reference rows derived from the cube law (pease-1997) outside this program. */
  @ParameterizedTest
  @CsvSource({
    "1.0, 0.5, 3.3750, 10.565, 0.2105, -0.0195",
    "1.5, 0.5, 2.3704, 7.496, 0.3649, -0.0387",
    "2.0, 0.5, 1.9531, 5.815, 0.5246, -0.0641",
    "3.0, 0.4, 1.4557, 3.261, 0.8778, -0.1599"
  })
  void tellTheDepthByTheCubeLaw(
      double depth, double apart, double ratio, double decibel, double asCable, double off) {
    Dipole sonde = new Dipole(0, 0, depth, 0.3, 0.1, 1);
    double low = sonde.at(0, 0, 0).total();
    double high = sonde.at(0, 0, apart).total();
    assertThat(low / high).isCloseTo(ratio, within(5.1e-5));
    assertThat(20 * StrictMath.log10(low / high)).isCloseTo(decibel, within(5.1e-4));
    TwoHeights.Depth told =
        (TwoHeights.Depth) Sonde.heights(at(low, 1e-6 * low), at(high, 1e-9), at(apart, 1e-9));
    assertThat(told.depth().value()).isCloseTo(depth, within(1e-9));
    assertThat(told.asCable()).isCloseTo(asCable, within(5.1e-5));
    TwoHeights.Depth louder =
        (TwoHeights.Depth) Sonde.heights(at(1.02 * low, 1e-6), at(high, 1e-9), at(apart, 1e-9));
    assertThat(louder.depth().value() - depth).isCloseTo(off, within(5.1e-5));
    // First order: d (d + s) / (3 s) for each part of the ratio.
    double slope = depth * (depth + apart) / (3 * apart);
    assertThat(told.depth().sd()).isCloseTo(1e-6 * slope, within(2e-8 * slope));
  }

  @Test
  void setNoUpperEndWhereTheStrengthsAreTooAlike() {
    TwoHeights.Depth told =
        (TwoHeights.Depth) Sonde.heights(at(1.1, 0.05), at(1, 0.05), at(0.3, 0.005));
    assertThat(told.upper95()).isEmpty();
    assertThat(told.lower95()).isBetween(0.5, told.depth().value());
    assertThat(Sonde.heights(at(1, 0.1), at(1, 0.1), at(0.3, 0.01)))
        .isInstanceOf(TwoHeights.NotBelow.class);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Sonde.heights(at(1, 0.1), at(0, 0.1), at(0.3, 0.01)))
        .withMessageContaining("high must be positive");
  }

  @Test
  void holdTheTruthAsOftenAsTheySay() {
    SplitMix64 dice = new SplitMix64(99);
    int held = 0;
    int runs = 4000;
    for (int i = 0; i < runs; i++) {
      double depth = dice.between(0.6, 2.5);
      double low = StrictMath.pow(depth, -3);
      double high = StrictMath.pow(depth + 0.5, -3);
      Measured shownLow = at(low * (1 + 0.03 * dice.normal()), 0.03 * low);
      Measured shownHigh = at(high * (1 + 0.03 * dice.normal()), 0.03 * high);
      Measured apart = at(0.5 + 0.01 * dice.normal(), 0.01);
      if (Sonde.heights(shownLow, shownHigh, apart) instanceof TwoHeights.Depth told) {
        held += depth >= told.lower95() && depth <= told.upper95().orElse(100) ? 1 : 0;
      }
    }
    assertThat(held / (double) runs).isBetween(0.935, 0.965);
  }

  @Test
  void aReceiverThatGrowsAsItShouldAgrees() {
    LiftCheck check =
        Sonde.lift(at(1.20, 0.03), List.of(new Lifted(at(0.5, 0.01), at(1.71, 0.03))));
    assertThat(check.growth().value()).isCloseTo(1.02, within(1e-12));
    double sd = StrictMath.sqrt(0.03 * 0.03 * 2 + 0.01 * 0.01) / 0.5;
    assertThat(check.growth().sd()).isCloseTo(sd, within(1e-12));
    assertThat(check.statistic()).isCloseTo(0.02 / sd, within(1e-9));
    assertThat(check.verdict()).isEqualTo(LiftCheck.Verdict.AGREES);
    assertThat(check.power(check.detectable())).isCloseTo(0.95, within(1e-6));
    assertThat(check.power(0)).isCloseTo(0.05, within(1e-6));
    assertThat(check.detectable()).isCloseTo(3.604817612 * sd, within(1e-9));
    assertThat(check.vote(0.04).value()).isCloseTo(0.02, within(1e-12));
    assertThat(check.vote(0.04).sd()).isCloseTo(StrictMath.hypot(sd, 0.04), within(1e-12));
  }

  @Test
  void aReceiverThatGrowsTooMuchOrTooLittleIsCalledSo() {
    Measured shown = at(1.2, 0.01);
    assertThat(Sonde.lift(shown, List.of(new Lifted(at(0.5, 0.005), at(1.9, 0.01)))).verdict())
        .isEqualTo(LiftCheck.Verdict.TOO_MUCH);
    assertThat(Sonde.lift(shown, List.of(new Lifted(at(0.5, 0.005), at(1.5, 0.01)))).verdict())
        .isEqualTo(LiftCheck.Verdict.TOO_LITTLE);
    assertThatIllegalArgumentException().isThrownBy(() -> Sonde.lift(shown, List.of()));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Lifted(at(0, 0.01), at(1, 0.01)))
        .withMessageContaining("by must be positive");
  }

  /** The power stated is the power there is, with one lift and with three. */
  @Test
  void aWrongScaleIsFoundAsOftenAsTheCheckSays() {
    double[][] heights = {{0.5}, {0.3, 0.6, 0.9}};
    for (double[] lifts : heights) {
      for (double wrong : new double[] {0, 0.15, 0.3}) {
        SplitMix64 dice = new SplitMix64(4711);
        int found = 0;
        int runs = 6000;
        double said = 0;
        for (int i = 0; i < runs; i++) {
          double depth = 1.4;
          List<Lifted> raised =
              java.util.Arrays.stream(lifts)
                  .mapToObj(
                      h ->
                          new Lifted(
                              at(h + 0.01 * dice.normal(), 0.01),
                              at((1 + wrong) * (depth + h) + 0.03 * dice.normal(), 0.03)))
                  .toList();
          Measured shown = at((1 + wrong) * depth + 0.03 * dice.normal(), 0.03);
          LiftCheck check = Sonde.lift(shown, raised);
          found += check.verdict() == LiftCheck.Verdict.AGREES ? 0 : 1;
          said += check.power(wrong) / runs;
        }
        double share = found / (double) runs;
        assertThat(share).as(lifts.length + " lifts, " + wrong).isCloseTo(said, within(0.03));
      }
    }
  }
}
