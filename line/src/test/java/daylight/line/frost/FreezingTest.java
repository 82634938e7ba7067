package daylight.line.frost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import daylight.line.measure.Filled;
import daylight.line.measure.Measured;
import java.util.Arrays;
import org.hipparchus.random.RandomGenerator;
import org.hipparchus.random.Well19937c;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How long standing water takes to freeze. */
class FreezingTest {
  private static final double INCH = 0.0254;
  private static final double HOUR = 3600;
  private static final double BTU_INCH = FrostTest.BTU_FOOT / 12;

  private static Measured sure(double value) {
    return FrostTest.sure(value);
  }

  private static FreezeTime.Freezes freezes(FreezeTime time) {
    assertThat(time).isInstanceOf(FreezeTime.Freezes.class);
    return (FreezeTime.Freezes) time;
  }

  /**
   * Reference: warren-freeze (looked up), after ashrae-23.1: a 2 in pipe (bore 2.067 in, 2.375 in
   * outside) under 1½ in of insulation of 0.30 Btu·in/h·ft²·°F, water of 42 °F: 1.4 h at −18 °F,
   * 4.6 h at 20 °F. Recomputed apart from this program: R 5.200 h·ft·°F/Btu, 1.378 h and 4.583 h,
   * and from there to ice 21.8 h and 90.7 h.
   */
  @ParameterizedTest
  @CsvSource({"-18, 1.4, 1.378, 21.8", "20, 4.6, 4.583, 90.7"})
  void agreesWithTheHandbook(double outside, double told, double exact, double ice) {
    Around layer = new Around.Insulated(2.375 * INCH, sure(5.375 * INCH), sure(0.30 * BTU_INCH));
    assertThat(layer.resistance().value() * FrostTest.BTU_FOOT).isCloseTo(5.200, within(0.001));
    StandingWater water = StandingWater.in(sure(2.067 * INCH), null, sure((42 - 32) / 1.8));
    FreezeTime.Freezes time = freezes(Freezing.time(water, layer, sure((outside - 32) / 1.8)));
    assertThat(time.cooling().value() / HOUR).isCloseTo(told, within(0.05));
    assertThat(time.cooling().value() / HOUR).isCloseTo(exact, within(0.002));
    assertThat(time.solid().value() / HOUR).isCloseTo(ice, within(0.1));
    assertThat(time.whole().value())
        .isCloseTo(time.cooling().value() + time.solid().value(), within(1e-6));
  }

  /**
   * Reference: carslaw-jaeger (from memory), incropera-4.1 (looked up: 2πL/acosh(2z/D)): 3 ft down,
   * radius 0.1724 ft, 0.76 Btu/h·ft·°F gives 0.743 h·ft·°F/Btu (recomputed apart).
   */
  @Test
  void aBuriedPipeHasTheShapeFactorOfTheHandbooks() {
    double foot = FrostTest.FOOT;
    Around ground =
        new Around.Buried(sure(3 * foot), 0.1724 * foot, sure(0.76 * FrostTest.BTU_FOOT));
    assertThat(ground.resistance().value() * FrostTest.BTU_FOOT).isCloseTo(0.743, within(0.0005));
    // Far below, acosh(z/r) is ln(2z/r).
    Around deep = new Around.Buried(sure(100), 0.05, sure(1));
    assertThat(deep.resistance().value()).isCloseTo(Math.log(4000) / (2 * Math.PI), within(1e-6));
  }

  @Test
  void whereItIsNotBelowFreezingItNeverDoes() {
    StandingWater water = StandingWater.in(sure(0.1), sure(0.03), sure(4));
    Around ground = new Around.Buried(sure(1), 0.05, sure(1.3));
    assertThat(Freezing.time(water, ground, new Measured(0, 0.1)))
        .isEqualTo(new FreezeTime.Never());
    assertThat(Freezing.time(water, ground, sure(2))).isEqualTo(new FreezeTime.Never());
  }

  @Test
  void waterDeeperThanThePipeFillsIt() {
    assertThat(StandingWater.in(sure(0.1), sure(0.2), sure(4)).section().value())
        .isCloseTo(Math.PI / 4 * 0.01, within(1e-9));
  }

  @Test
  void itsUncertaintyIsThatOfDraws() {
    Measured bore = new Measured(0.1, 0.003);
    Measured deep = new Measured(0.04, 0.003);
    Measured warm = new Measured(4, 0.5);
    Measured outside = new Measured(-8, 0.6);
    Measured depth = new Measured(0.6, 0.05);
    Measured conducts = new Measured(1.3, 0.13);
    FreezeTime.Freezes time =
        freezes(
            Freezing.time(
                StandingWater.in(bore, deep, warm),
                new Around.Buried(depth, 0.055, conducts),
                outside));
    RandomGenerator random = new Well19937c(3);
    double[] whole = new double[20_000];
    for (int i = 0; i < whole.length; i++) {
      whole[i] =
          freezes(
                  Freezing.time(
                      StandingWater.in(
                          drawn(random, bore), drawn(random, deep), drawn(random, warm)),
                      new Around.Buried(drawn(random, depth), 0.055, drawn(random, conducts)),
                      drawn(random, outside)))
              .whole()
              .value();
    }
    double mean = Arrays.stream(whole).average().orElseThrow();
    double variance =
        Arrays.stream(whole).map(x -> (x - mean) * (x - mean)).average().orElseThrow();
    double sd = Math.sqrt(variance);
    assertThat(time.whole().sd()).isCloseTo(sd, within(0.05 * sd));
  }

  private static Measured drawn(RandomGenerator random, Measured one) {
    return sure(one.value() + one.sd() * random.nextGaussian());
  }

  /** The closed form of a winter in the ground against its integral, a step at a time. */
  @Test
  void overAWinterItIsTheIntegralOfTheGroundsCold() {
    FrostDepth depth =
        Frost.depth(
            FrostTest.winter(2500, 40, 150),
            FrostTest.ground(100, 0.15, 0.76),
            new Surface(sure(0.7), null),
            sure(1));
    FrostDepth.Reaches frost = (FrostDepth.Reaches) depth;
    double season = 150 * 86_400.0;
    double axis = 0.7;
    double section = new Filled(0.1, 0.03).area();
    Underground ground = Underground.of(frost, season, sure(0.72), sure(axis), 0.05, section);
    double resistance =
        new Around.Buried(sure(axis), 0.05, sure(frost.terms().conductivity()))
            .resistance()
            .value();
    double needed = Freezing.DENSITY * Berggren.LATENT * section * resistance;
    double x = frost.depth().value();
    double step = 60;
    double got = 0;
    double arrived = season * (axis / x) * (axis / x);
    double t = arrived;
    while (got < needed) {
      t += step;
      got += frost.terms().surfaceCold() * (1 - axis / (x * Math.sqrt(t / season))) * step;
    }
    assertThat(ground.time()).isCloseTo(t - arrived, within(3 * step));
    assertThat(ground.margin().reached()).isGreaterThan(0.999);
    assertThat(ground.solid()).isGreaterThan(0.999);
    Underground deep = Underground.of(frost, season, sure(1.9), sure(1.9), 0.05, section);
    assertThat(deep.time()).isNull();
    assertThat(deep.margin().reached()).isLessThan(0.001);
    assertThat(deep.solid()).isLessThan(0.001);
  }

  @Test
  void refusesWhatCannotBe() {
    assertThatThrownBy(() -> new Around.Buried(sure(0.05), 0.05, sure(1)))
        .hasMessageContaining("below the surface");
    assertThatThrownBy(() -> new Around.Insulated(0.1, sure(0.09), sure(1)))
        .hasMessageContaining("round a pipe");
    assertThatThrownBy(() -> new StandingWater(sure(0.001), sure(-1)))
        .hasMessageContaining("not frozen yet");
  }
}
