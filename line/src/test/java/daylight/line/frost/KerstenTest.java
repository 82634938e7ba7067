package daylight.line.frost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How well ground conducts. */
class KerstenTest {
  /**
   * The equations as Kersten wrote them (from memory): Btu·in/h·ft²·°F, lb/ft³, per cent. Ours are
   * in SI, rounded to four digits by who quoted them.
   */
  @ParameterizedTest
  @CsvSource({"85, 12", "100, 15", "110, 20", "95, 30"})
  void areTheAmericanOnesInOtherUnits(double pcf, double w) {
    double toWatts = 0.1442279;
    double fineThawed = (0.9 * Math.log10(w) - 0.2) * Math.pow(10, 0.01 * pcf);
    double fineFrozen = 0.01 * Math.pow(10, 0.022 * pcf) + 0.085 * Math.pow(10, 0.008 * pcf) * w;
    double coarseThawed = (0.7 * Math.log10(w) + 0.4) * Math.pow(10, 0.01 * pcf);
    double coarseFrozen =
        0.076 * Math.pow(10, 0.013 * pcf) + 0.032 * Math.pow(10, 0.0146 * pcf) * w;
    double rho = pcf * FrostTest.PCF;
    is(Kersten.thawed(Ground.Grain.FINE, rho, w / 100), fineThawed * toWatts);
    is(Kersten.frozen(Ground.Grain.FINE, rho, w / 100), fineFrozen * toWatts);
    is(Kersten.thawed(Ground.Grain.COARSE, rho, w / 100), coarseThawed * toWatts);
    is(Kersten.frozen(Ground.Grain.COARSE, rho, w / 100), coarseFrozen * toWatts);
  }

  private static void is(double ours, double theirs) {
    assertThat(ours).isCloseTo(theirs, within(0.005 * theirs));
  }

  /**
   * Reference: pavement-interactive-frost (looked up), read off Kersten's charts: silt of 100
   * lb/ft³ with 15 % of water, frozen 0.8 Btu/h·ft·°F; gravel of 135 lb/ft³ with 5 %, thawed 1.65
   * and frozen 1.8, within the quarter that Kersten claimed.
   */
  @Test
  void agreeWithWhatIsReadOffTheCharts() {
    double silt = Kersten.frozen(Ground.Grain.FINE, 100 * FrostTest.PCF, 0.15);
    assertThat(silt / FrostTest.BTU_FOOT).isCloseTo(0.8, within(0.01));
    double gravel = 135 * FrostTest.PCF;
    double thawed = Kersten.thawed(Ground.Grain.COARSE, gravel, 0.05) / FrostTest.BTU_FOOT;
    double frozen = Kersten.frozen(Ground.Grain.COARSE, gravel, 0.05) / FrostTest.BTU_FOOT;
    assertThat(thawed).isCloseTo(1.65, within(0.02));
    assertThat(frozen).isCloseTo(1.8, within(0.25 * 1.8));
  }

  @Test
  void belowTheWaterTheyWereMadeForTheyStayAsThere() {
    assertThat(Kersten.thawed(Ground.Grain.FINE, 1600, 0.01))
        .isEqualTo(Kersten.thawed(Ground.Grain.FINE, 1600, 0.07));
    assertThat(Kersten.thawed(Ground.Grain.COARSE, 1600, 0)).isPositive();
  }
}
