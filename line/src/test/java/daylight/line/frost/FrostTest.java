package daylight.line.frost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import daylight.line.measure.Measured;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleSupplier;
import java.util.stream.IntStream;
import org.hipparchus.random.RandomGenerator;
import org.hipparchus.random.Well19937c;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How deep the frost of a winter goes. */
class FrostTest {
  static final double FOOT = 0.3048;
  static final double PCF = 16.018463373960138;
  static final double BTU_FOOT = 1055.05585262 / 3600 / FOOT * 1.8;
  private static final double DAY = 86_400;
  private static final Measured EXACTLY = new Measured(1, 1e-6);

  static Measured sure(double value) {
    return new Measured(value, 1e-6 * Math.abs(value) + 1e-12);
  }

  static Winter winter(double fahrenheitDays, double meanFahrenheit, double days) {
    return new Winter(
        sure(fahrenheitDays / 1.8), sure((meanFahrenheit - 32) / 1.8), sure(days * DAY));
  }

  static Ground ground(double pcf, double water, @Nullable Double conductivity) {
    return new Ground(
        Ground.Grain.FINE,
        sure(pcf * PCF),
        sure(water),
        conductivity == null ? null : sure(conductivity * BTU_FOOT));
  }

  private static FrostDepth.Reaches reaches(FrostDepth depth) {
    assertThat(depth).isInstanceOf(FrostDepth.Reaches.class);
    return (FrostDepth.Reaches) depth;
  }

  /**
   * Reference: ufc-3-130-06 (TM 5-852-6), ¶3-3, sandy silt, the example from memory: L 2160
   * Btu/ft³, C 28.3 Btu/ft³·°F, v_s 15.6 °F, α 0.33, μ 0.20, λ 0.89 read off a chart, 5.8 ft.
   * Recomputed apart from this program: Stefan 6.498 ft, λ 0.8956, 5.819 ft.
   */
  @Test
  void agreesWithTheWorkedExampleOfTheManual() {
    FrostDepth.Reaches frost =
        reaches(
            Frost.depth(
                winter(2500, 37.2, 160),
                ground(100, 0.15, 0.76),
                new Surface(sure(1), null),
                EXACTLY));
    FrostDepth.Terms terms = frost.terms();
    double btuPerCubicFoot = 1055.05585262 / (FOOT * FOOT * FOOT);
    assertThat(terms.latentHeat() / btuPerCubicFoot).isCloseTo(2160, within(0.5));
    assertThat(terms.heatCapacity() / (btuPerCubicFoot * 1.8)).isCloseTo(28.25, within(0.05));
    assertThat(terms.surfaceCold() * 1.8).isCloseTo(15.6, within(0.05));
    assertThat(terms.alpha()).isCloseTo(0.33, within(0.005));
    assertThat(terms.mu()).isCloseTo(0.20, within(0.005));
    assertThat(terms.stefan() / FOOT).isCloseTo(6.498, within(0.002));
    assertThat(terms.lambda()).isCloseTo(0.8956, within(0.0005));
    assertThat(frost.depth().value() / FOOT).isCloseTo(5.819, within(0.005));
    // With the chart's λ.
    assertThat(0.89 * terms.stefan() / FOOT).isCloseTo(5.8, within(0.05));
  }

  /** The manual took 0.72 and 0.80 for that soil, read off Kersten's charts (from memory). */
  @Test
  void withoutAConductivityItIsThatOfKersten() {
    FrostDepth.Reaches frost =
        reaches(
            Frost.depth(
                winter(2500, 37.2, 160),
                ground(100, 0.15, null),
                new Surface(sure(1), null),
                EXACTLY));
    assertThat(frost.terms().conductivity() / BTU_FOOT).isCloseTo(0.76, within(0.005));
    assertThat(frost.deciding()).isEqualTo(Input.CONDUCTIVITY);
  }

  @Test
  void tellsWhatTheFormulaDoesNotHoldFor() {
    Surface bare = new Surface(sure(0.7), null);
    Ground silt = ground(100, 0.15, null);
    assertThat(Frost.depth(winter(0, 50, 90), silt, bare, EXACTLY))
        .isEqualTo(new FrostDepth.None(FrostDepth.NoFrost.NO_COLD));
    assertThat(Frost.depth(winter(5000, 32, 200), silt, bare, EXACTLY))
        .isEqualTo(new FrostDepth.Beyond(FrostDepth.NotHeld.PERMAFROST));
    assertThat(Frost.depth(winter(5000, 26, 200), silt, bare, EXACTLY))
        .isEqualTo(new FrostDepth.Beyond(FrostDepth.NotHeld.PERMAFROST));
    assertThat(Frost.depth(winter(1000, 40, 100), ground(100, 0, 0.5), bare, EXACTLY))
        .isEqualTo(new FrostDepth.Beyond(FrostDepth.NotHeld.DRY_GROUND));
  }

  @Test
  void refusesWhatCannotBe() {
    assertThatThrownBy(() -> winter(-1, 40, 100)).hasMessageContaining("freezing index");
    assertThatThrownBy(() -> winter(100, 40, 0)).hasMessageContaining("season");
    assertThatThrownBy(() -> ground(0, 0.1, null)).hasMessageContaining("density");
    assertThatThrownBy(() -> ground(100, -0.1, null)).hasMessageContaining("water");
    assertThatThrownBy(() -> new Surface(sure(0), null)).hasMessageContaining("factor");
  }

  private static Surface under(double snow) {
    return new Surface(sure(1), new Surface.Snow(sure(snow), sure(0.225)));
  }

  @Test
  void snowHoldsTheColdOffAndMuchSnowAltogether() {
    Winter cold = winter(1500, 45, 120);
    Ground silt = ground(100, 0.15, null);
    double last =
        reaches(Frost.depth(cold, silt, new Surface(sure(1), null), EXACTLY)).depth().value();
    for (double snow : new double[] {0.02, 0.05, 0.1, 0.2}) {
      double depth = reaches(Frost.depth(cold, silt, under(snow), EXACTLY)).depth().value();
      assertThat(depth).isLessThan(last);
      last = depth;
    }
    assertThat(Frost.depth(cold, silt, under(2), EXACTLY))
        .isEqualTo(new FrostDepth.None(FrostDepth.NoFrost.SNOW));
  }

  /**
   * ufc-3-130-06, several layers (from memory): the part of the index that a layer takes is L·d/λ²
   * times the resistances above it and half its own. For frost that is not deep, which has a small
   * γ, snow above one soil is the same.
   */
  @Test
  void snowIsALayerOfTheManualsSum() {
    Winter cold = new Winter(sure(300), sure(0.5), sure(150 * DAY));
    Ground silt = ground(100, 0.15, null);
    FrostDepth.Reaches frost = reaches(Frost.depth(cold, silt, under(0.1), EXACTLY));
    FrostDepth.Terms terms = frost.terms();
    double x = frost.depth().value();
    double sum =
        terms.latentHeat()
            * x
            / (terms.lambda() * terms.lambda())
            * (0.1 / 0.225 + x / terms.conductivity() / 2);
    assertThat(sum / DAY).isCloseTo(300, within(0.01 * 300));
  }

  /** Every input drawn from its own doubt: the spread of what is left above the frost. */
  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void theMarginsUncertaintyIsThatOfDraws(boolean snowy) {
    Winter winter =
        new Winter(
            new Measured(900, 120), new Measured(5.5, 0.8), new Measured(120 * DAY, 8 * DAY));
    Ground ground =
        new Ground(Ground.Grain.FINE, new Measured(1550, 60), new Measured(0.22, 0.03), null);
    Surface surface =
        snowy
            ? new Surface(
                new Measured(1, 0.05),
                new Surface.Snow(new Measured(0.08, 0.02), new Measured(0.225, 0.03)))
            : new Surface(new Measured(0.6, 0.07), null);
    Measured formula = new Measured(1, 0.1);
    Measured cover = new Measured(1.3, 0.12);
    Margin margin = Margin.of(cover, reaches(Frost.depth(winter, ground, surface, formula)));
    RandomGenerator random = new Well19937c(7);
    double[] left =
        drawn(
            () -> {
              double frost = one(random, winter, ground, surface, formula);
              return draw(random, cover) - frost;
            });
    double mean = Arrays.stream(left).average().orElseThrow();
    double variance =
        Arrays.stream(left).map(x -> (x - mean) * (x - mean)).sum() / (left.length - 1);
    assertThat(margin.left().sd())
        .isCloseTo(Math.sqrt(variance), within(0.05 * Math.sqrt(variance)));
    assertThat(margin.left().value()).isCloseTo(mean, within(0.15 * Math.sqrt(variance)));
    double reached = Arrays.stream(left).filter(x -> x < 0).count() / (double) left.length;
    assertThat(margin.reached()).isCloseTo(reached, within(0.03));
  }

  private static double[] drawn(DoubleSupplier one) {
    double[] all = new double[20_000];
    for (int i = 0; i < all.length; i++) {
      all[i] = one.getAsDouble();
    }
    return all;
  }

  private static double draw(RandomGenerator random, Measured one) {
    return one.value() + one.sd() * random.nextGaussian();
  }

  private static Measured drawnOf(RandomGenerator random, Measured one) {
    return sure(Math.max(1e-3 * one.value(), draw(random, one)));
  }

  private static double one(
      RandomGenerator random, Winter winter, Ground ground, Surface surface, Measured formula) {
    Surface.Snow snow = surface.snow();
    double density = drawnOf(random, ground.dryDensity()).value();
    double moisture = drawnOf(random, ground.moisture()).value();
    double conducts =
        Kersten.mean(ground.grain(), density, moisture) * (1 + 0.125 * random.nextGaussian());
    Map<Input, Double> at = new EnumMap<>(Input.class);
    at.put(Input.FREEZING_INDEX, drawnOf(random, winter.freezingIndex()).value());
    at.put(Input.MEAN_TEMPERATURE, drawnOf(random, winter.meanTemperature()).value());
    at.put(Input.SEASON, drawnOf(random, winter.season()).value());
    at.put(Input.DRY_DENSITY, density);
    at.put(Input.MOISTURE, moisture);
    at.put(Input.SURFACE, drawnOf(random, surface.factor()).value());
    at.put(Input.FORMULA, draw(random, formula));
    if (snow != null) {
      at.put(Input.SNOW, drawnOf(random, snow.depth()).value());
      at.put(Input.SNOW_CONDUCTIVITY, drawnOf(random, snow.conductivity()).value());
    }
    Ground drawn = new Ground(ground.grain(), sure(density), sure(moisture), sure(conducts));
    return new Berggren(drawn, at).depth();
  }

  @Test
  void sharesAddUpAndTheGreatestDecides() {
    FrostDepth.Reaches frost =
        reaches(
            Frost.depth(
                new Winter(new Measured(900, 300), sure(5), sure(120 * DAY)),
                ground(100, 0.15, 0.76),
                new Surface(sure(0.7), null),
                new Measured(1, 0.05)));
    double sum = frost.shares().stream().mapToDouble(Share::variance).sum();
    assertThat(Math.sqrt(sum)).isCloseTo(frost.depth().sd(), within(1e-12));
    assertThat(frost.deciding()).isEqualTo(Input.FREEZING_INDEX);
    Margin sure = Margin.of(new Measured(1, 0.01), frost);
    assertThat(sure.deciding()).isEqualTo(Input.FREEZING_INDEX);
    assertThat(Margin.of(new Measured(1, 2), frost).deciding()).isEqualTo(Input.COVER);
  }

  /**
   * The curve of a year that swings as a cosine: mean 5 °C, swing 15 °C, is below freezing for
   * 365.25·acos(1/3)/π days, and what is below is 365.25/π·(15·sin φ − 5·φ), φ = acos(1/3).
   */
  @Test
  void monthlyMeansGiveTheColdOfAMeanWinter() {
    double phi = Math.acos(1.0 / 3);
    List<Double> months =
        IntStream.range(0, 12).mapToObj(i -> 5 - 15 * Math.cos(2 * Math.PI * i / 12)).toList();
    Monthly cold = Monthly.of(months);
    assertThat(cold.meanTemperature()).isCloseTo(5, within(1e-9));
    assertThat(cold.season() / DAY).isCloseTo(365.25 * phi / Math.PI, within(3.0));
    double index = 365.25 / Math.PI * (15 * Math.sin(phi) - 5 * phi);
    assertThat(cold.freezingIndex()).isCloseTo(index, within(0.05 * index));
    assertThat(Monthly.of(Collections.nCopies(12, 8.0))).isEqualTo(new Monthly(0, 8, 0));
    assertThat(Monthly.of(Collections.nCopies(12, -8.0)).freezingIndex())
        .isCloseTo(8 * 365.25, within(1e-9));
    assertThatThrownBy(() -> Monthly.of(List.of(1.0))).hasMessageContaining("twelve");
  }
}
