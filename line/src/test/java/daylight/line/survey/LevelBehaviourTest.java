package daylight.line.survey;

import static daylight.line.survey.Networks.levelled;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Behaviour: levelling with rods, rises, heights and benchmarks. Metres. */
class LevelBehaviourTest {
  private static final double SD = 0.003;

  private static LevelSighting rod(String setup, String point, double reading) {
    return new LevelSighting.Rod(setup + ":" + point, setup, point, reading, SD);
  }

  private static final List<LevelSighting> TWO_SETUPS =
      List.of(
          rod("S1", "slab", 1.200),
          rod("S1", "yard", 1.850),
          rod("S2", "yard", 1.100),
          rod("S2", "outlet", 3.400));

  @Test
  void aHigherReadingIsALowerPoint() {
    LevelAdjusted levelled =
        levelled(
            List.of(
                new LevelSighting.Benchmark("slab", 100),
                rod("S1", "slab", 1.200),
                rod("S1", "yard", 1.850)));
    assertThat(levelled.height("yard")).isCloseTo(99.350, within(1e-9));
    assertThat(levelled.sd("yard")).isCloseTo(SD * Math.sqrt(2), within(1e-12));
    assertThat(levelled.sd("slab")).isZero();
  }

  @Test
  void withoutABenchmarkTheFirstPointByLabelIsZero() {
    LevelAdjusted levelled = levelled(TWO_SETUPS);
    assertThat(levelled.heights().firstKey()).isEqualTo("outlet");
    assertThat(levelled.height("outlet")).isZero();
    assertThat(levelled.height("yard")).isCloseTo(2.300, within(1e-9));
    assertThat(levelled.height("slab")).isCloseTo(2.950, within(1e-9));
  }

  @Test
  void anotherPointMayBeTheDatumAndRisesKeepTheirUncertainty() {
    var told =
        (LevelAdjusted) Surveyor.adjust(new LevelNetwork(TWO_SETUPS, "slab", Snooping.USUAL));
    assertThat(told.height("slab")).isZero();
    assertThat(told.height("outlet")).isCloseTo(-2.950, within(1e-9));
    assertThat(told.riseSd("outlet", "slab"))
        .isCloseTo(levelled(TWO_SETUPS).riseSd("outlet", "slab"), within(1e-12))
        .isCloseTo(2 * SD, within(1e-12));
  }

  @Test
  void pointsNoLevellingReachesAreListedBesideTheRest() {
    LevelAdjusted levelled =
        levelled(
            List.of(
                new LevelSighting.Benchmark("slab", 100),
                new LevelSighting.Rise("r", "slab", "yard", -0.65, SD),
                rod("S9", "far", 1.0),
                rod("S9", "away", 2.0)));
    assertThat(levelled.heights()).containsOnlyKeys("slab", "yard");
    assertThat(levelled.unreached()).containsExactly("away", "far");
  }

  @Test
  void marksReadOnceFromOneSetUpErrIndependentlyOnceItsHeightIsGiven() {
    LevelAdjusted levelled =
        levelled(
            List.of(
                new LevelSighting.Benchmark("slab", 100),
                rod("S1", "slab", 1.200),
                rod("S1", "yard", 1.850),
                rod("S1", "outlet", 3.400)));
    assertThat(levelled.setups().get("S1")).isCloseTo(101.200, within(1e-9));
    double setup = levelled.covarianceOfSetups("S1", "S1");
    assertThat(setup).isCloseTo(SD * SD, within(1e-12));
    double given =
        levelled.covariance("yard", "outlet")
            - levelled.covarianceWithSetup("S1", "yard")
                * levelled.covarianceWithSetup("S1", "outlet")
                / setup;
    assertThat(given).isCloseTo(0, within(1e-12));
  }

  @Test
  void anUncertainHeightCarriesItsUncertaintyOn() {
    LevelAdjusted levelled =
        levelled(
            List.of(
                new LevelSighting.Height("map", "slab", 100, 0.5),
                new LevelSighting.Rise("r", "slab", "yard", -0.65, SD)));
    assertThat(levelled.sd("yard")).isCloseTo(Math.hypot(0.5, SD), within(1e-11));
    assertThat(levelled.riseSd("slab", "yard")).isCloseTo(SD, within(1e-9));
  }

  @Test
  void sharesSumToTheVarianceOfARise() {
    LevelAdjusted levelled = levelled(TWO_SETUPS);
    Shares shares =
        levelled.sharesOf(List.of(new HeightWeight("slab", 1), new HeightWeight("outlet", -1)));
    assertThat(shares.variance()).isCloseTo(4 * SD * SD, within(1e-15));
    assertThat(shares.byEntry()).containsOnlyKeys("S1:slab", "S1:yard", "S2:outlet", "S2:yard");
    assertThat(shares.byEntry().values())
        .allSatisfy(share -> assertThat(share).isCloseTo(SD * SD, within(1e-15)));
  }

  @Test
  void aMisreadRodIsNamed() {
    LevelAdjusted levelled =
        levelled(
            List.of(
                new LevelSighting.Benchmark("slab", 100),
                rod("S1", "slab", 1.200),
                rod("S1", "yard", 1.850),
                rod("S2", "slab", 1.300),
                rod("S2", "yard", 1.950),
                new LevelSighting.Rise("hose", "slab", "yard", -0.65, SD),
                new LevelSighting.Rise("tube", "yard", "slab", 0.85, SD)));
    Suspect suspect = levelled.fit().suspects().getFirst();
    assertThat(suspect.entry()).isEqualTo("tube");
    assertThat(suspect.blunder()).isCloseTo(0.2, within(1e-6));
    assertThat(suspect.setAside()).isTrue();
    assertThat(levelled.height("yard")).isCloseTo(99.35, within(1e-9));
  }

  @Test
  void nothingAndAStrangeDatumAreAnswered() {
    assertThat(Surveyor.adjust(new LevelNetwork(List.of())))
        .isEqualTo(
            new LevelAdjustment.Unadjustable(LevelAdjustment.Reason.NOTHING_TO_ADJUST, List.of()));
    assertThat(Surveyor.adjust(new LevelNetwork(TWO_SETUPS, "moon", Snooping.USUAL)))
        .isEqualTo(
            new LevelAdjustment.Unadjustable(
                LevelAdjustment.Reason.DATUM_MISSING, List.of("moon")));
  }
}
