package daylight.line.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Laws of friction against worked examples and tables. */
class FrictionTest {
  private static final double FOOT = 0.3048;

  /** Colebrook by an equation solver (standards 3.5, derived). */
  @ParameterizedTest
  @CsvSource({
    "128000, 0.0013, 0.022716",
    "270000, 0.0008, 0.019844",
    "100000, 0.0001, 0.018514",
    "100000, 0, 0.017990",
    "50000, 0.001, 0.024021",
    "1000000, 0.01, 0.037965"
  })
  void colebrook(double reynolds, double relative, double factor) {
    assertThat(Friction.factor(reynolds, relative)).isCloseTo(factor, within(5e-7));
    double rest =
        1 / Math.sqrt(factor)
            + 2 * Math.log10(relative / 3.7 + 2.51 / (reynolds * Math.sqrt(factor)));
    assertThat(rest).isCloseTo(0, within(2e-4));
  }

  /** Explicit forms of Swamee and Jain (1976) and Haaland (1983), from memory: within 1.5 %. */
  @ParameterizedTest
  @CsvSource({
    "128000, 0.0013, 0.022903, 0.022568",
    "270000, 0.0008, 0.019984, 0.019735",
    "100000, 0.0001, 0.018452, 0.018265",
    "100000, 0, 0.017863, 0.017825",
    "50000, 0.001, 0.024181, 0.023730",
    "1000000, 0.01, 0.038012, 0.038036"
  })
  void asExplicitFormsSay(double reynolds, double relative, double swameeJain, double haaland) {
    assertThat(Friction.factor(reynolds, relative)).isCloseTo(swameeJain, withPercentage(1.5));
    assertThat(Friction.factor(reynolds, relative)).isCloseTo(haaland, withPercentage(1.5));
  }

  /**
   * White, <em>Fluid Mechanics</em>, Ex. 6.7 (coursehero.com/file/5650355, looked up): oil in 200
   * mm cast iron, 0.2 m³/s over 500 m, Re 128 000, f 0.0225 read off a chart; h about 117 m.
   */
  @Test
  void oilInCastIron() {
    double speed = 0.2 / (Math.PI / 4 * 0.04);
    assertThat(speed).isCloseTo(6.4, withPercentage(1));
    assertThat(speed * 0.2 / 1e-5).isCloseTo(128_000, withPercentage(1));
    double slope = FrictionLaw.DARCY_WEISBACH.slope(0.00026, speed, 0.05, 1e-5);
    assertThat(slope * 500).isBetween(116.0, 118.5);
  }

  /**
   * White, Ex. 6.6 and 6.9 (the same address, looked up): 6 in asphalted cast iron, 200 ft, ε/d
   * 0.0008; 6 ft/s loses 4.5 ft (two digits), and 4.5 ft lost gives 6.05 ft/s at Re 274 900.
   */
  @Test
  void waterInAsphaltedCastIronThereAndBack() {
    double viscosity = 6.05 * 0.5 / 274_900 * FOOT * FOOT;
    double radius = 0.5 * FOOT / 4;
    double wall = 0.0008 * 0.5 * FOOT;
    double slope = FrictionLaw.DARCY_WEISBACH.slope(wall, 6 * FOOT, radius, viscosity);
    assertThat(slope * 200).isCloseTo(4.5, withPercentage(1.5));
    double speed = FrictionLaw.DARCY_WEISBACH.speed(wall, 4.5 / 200, radius, viscosity);
    assertThat(speed / FOOT).isCloseTo(6.05, withPercentage(0.7));
  }

  /**
   * San Diego State University, CIVE 444, solution of 2009 (looked up at the address in SOURCES):
   * 10 in, slope 0.008, k/D 0.0005: 4.88 ft/s, 2.66 cfs, Re 356 711, f 0.018 (rounded).
   */
  @Test
  void tenInchesAtEightInAThousand() {
    double bore = 10.0 / 12 * FOOT;
    double viscosity = 1.14e-5 * FOOT * FOOT;
    double speed =
        FrictionLaw.DARCY_WEISBACH.speed(0.0005 * bore, 0.008, bore / 4, viscosity) / FOOT;
    assertThat(speed).isCloseTo(4.88, withPercentage(0.5));
    assertThat(speed * Math.PI / 4 * 100 / 144).isCloseTo(2.66, withPercentage(0.5));
  }

  /** Hagen and Poiseuille: the slope lost is 32 ν V ÷ (g D²). */
  @Test
  void laminarIsHagenAndPoiseuille() {
    double slope = FrictionLaw.DARCY_WEISBACH.slope(0.001, 0.01, 0.01, 1e-6);
    assertThat(slope).isCloseTo(32 * 1e-6 * 0.01 / (Water.GRAVITY * 0.0016), within(1e-12));
    assertThat(Regime.of(0.01 * 0.04 / 1e-6)).isEqualTo(Regime.LAMINAR);
  }

  /** Through all three regimes head rises with speed, and the way back is the way there. */
  @ParameterizedTest
  @EnumSource(FrictionLaw.class)
  void everyLawGoesBothWays(FrictionLaw law) {
    double figure =
        switch (law) {
          case MANNING -> 0.011;
          case DARCY_WEISBACH -> 0.0003;
          case HAZEN_WILLIAMS -> 130;
        };
    double before = 0;
    for (double speed = 0.005; speed < 4; speed *= 1.07) {
      double slope = law.slope(figure, speed, 0.02, 1.3e-6);
      assertThat(slope).isGreaterThan(before);
      assertThat(law.speed(figure, slope, 0.02, 1.3e-6)).isCloseTo(speed, withPercentage(1e-6));
      before = slope;
    }
  }

  @Test
  void theBridgeMeetsBothBanks() {
    assertThat(Friction.factor(2000, 0.001)).isCloseTo(0.032, within(1e-9));
    assertThat(Friction.factor(3999.999, 0.001))
        .isCloseTo(Friction.factor(4000, 0.001), within(1e-7));
  }

  /** Square millimetres per second at 0, 10, 20 and 40 °C (engineersedge.com, looked up). */
  @ParameterizedTest
  @CsvSource({"0, 1.787", "10, 1.307", "20, 1.004", "40, 0.658"})
  void viscosityOfWater(double celsius, double table) {
    double tolerance = celsius == 0 ? 2 : 0.6;
    assertThat(Water.viscosity(celsius) * 1e6).isCloseTo(table, withPercentage(tolerance));
  }
}
