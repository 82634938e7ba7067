package daylight.line.frost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import org.hipparchus.special.Erf;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** λ by Neumann's exact solution. */
class NeumannTest {
  private static final MathContext FORTY = new MathContext(40);

  /**
   * Reference: the exact values were worked out apart from this program (scipy), the closed form is
   * that of aldrich-paynter-1953, eq. 2-33, as an open notebook cites it.
   */
  @ParameterizedTest
  @CsvSource({
    "0,   0.1, 0.9839, 0.9759",
    "0,   0.2, 0.9690, 0.9535",
    "0.5, 0.1, 0.9111, 0.9535",
    "1.0, 0.2, 0.7762, 0.8771",
    "1.0, 0.5, 0.6492, 0.7559",
    "2.0, 0.3, 0.5756, 0.7559"
  })
  void agreesWithTheTable(double alpha, double mu, double exact, double closed) {
    assertThat(Neumann.lambda(alpha, mu)).isCloseTo(exact, within(5e-5));
    assertThat(1 / Math.sqrt(1 + mu * (alpha + 0.5))).isCloseTo(closed, within(5e-5));
  }

  /** Another route to the same root: the error function by its series, halved in forty digits. */
  @ParameterizedTest
  @CsvSource({"0, 0.1", "0.33, 0.2", "1, 0.5", "2, 0.3", "5, 0.05", "0.01, 1.5", "10, 1"})
  void agreesWithABisectionInFortyDigits(double alpha, double mu) {
    double gamma = Neumann.lambda(alpha, mu) * Math.sqrt(mu / 2);
    assertThat(gamma).isCloseTo(gammaInFortyDigits(alpha, mu), within(1e-13));
  }

  private static double gammaInFortyDigits(double alpha, double mu) {
    BigDecimal low = BigDecimal.ZERO;
    BigDecimal high = new BigDecimal(3);
    for (int i = 0; i < 100; i++) {
      BigDecimal middle = low.add(high).divide(BigDecimal.TWO, FORTY);
      if (balance(middle, alpha, mu).signum() > 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low.doubleValue();
  }

  /** The balance of heats at the front times erf·erfc, so that nothing is divided by. */
  private static BigDecimal balance(BigDecimal gamma, double alpha, double mu) {
    BigDecimal erf = erf(gamma);
    BigDecimal erfc = BigDecimal.ONE.subtract(erf);
    BigDecimal fades = BigDecimal.ONE.divide(exp(gamma.multiply(gamma, FORTY)), FORTY);
    BigDecimal given =
        rootPi()
            .multiply(gamma, FORTY)
            .divide(new BigDecimal(mu), FORTY)
            .multiply(erf, FORTY)
            .multiply(erfc, FORTY);
    return fades
        .multiply(erfc.subtract(new BigDecimal(alpha).multiply(erf, FORTY)), FORTY)
        .subtract(given);
  }

  private static BigDecimal rootPi() {
    return new BigDecimal("3.1415926535897932384626433832795028841972").sqrt(FORTY);
  }

  private static BigDecimal erf(BigDecimal x) {
    BigDecimal sum = BigDecimal.ZERO;
    BigDecimal term = x;
    BigDecimal square = x.multiply(x, FORTY);
    for (int n = 0; n < 200; n++) {
      sum = sum.add(term.divide(new BigDecimal(2 * n + 1), FORTY), FORTY);
      term = term.multiply(square, FORTY).divide(new BigDecimal(-(n + 1)), FORTY);
    }
    return sum.multiply(BigDecimal.TWO).divide(rootPi(), FORTY);
  }

  private static BigDecimal exp(BigDecimal x) {
    BigDecimal sum = BigDecimal.ONE;
    BigDecimal term = BigDecimal.ONE;
    for (int n = 1; n < 200; n++) {
      term = term.multiply(x, FORTY).divide(new BigDecimal(n), FORTY);
      sum = sum.add(term, FORTY);
    }
    return sum;
  }

  /** Abramowitz and Stegun, Table 7.1 (from memory): the library's error function. */
  @Test
  void theErrorFunctionIsThatOfTheHandbook() {
    assertThat(Erf.erf(0.5)).isCloseTo(0.5204998778, within(5e-11));
    assertThat(Erf.erf(1.0)).isCloseTo(0.8427007929, within(5e-11));
    assertThat(Erf.erfc(1.0)).isCloseTo(0.1572992071, within(5e-11));
    assertThat(Erf.erfc(2.0)).isCloseTo(0.0046777350, within(5e-11));
  }

  /**
   * The equation of heat itself, with the heat of freezing, stepped in time (enthalpy method): as
   * much ground is frozen as Neumann says, to one per cent.
   */
  @ParameterizedTest
  @CsvSource({"0, 0.2", "0.33, 0.2", "1, 0.5", "2, 0.3"})
  void theEquationOfHeatFreezesAsMuch(double alpha, double mu) {
    double gamma = Neumann.lambda(alpha, mu) * Math.sqrt(mu / 2);
    assertThat(frozenByEnthalpy(alpha, mu)).isCloseTo(2 * gamma, within(0.01 * 2 * gamma));
  }

  /** Depth frozen after a time of 1 where the diffusivity is 1 and the surface is at −1. */
  private static double frozenByEnthalpy(double alpha, double mu) {
    double latent = 1 / mu;
    int cells = 600;
    double dx = 6.0 / cells;
    double dt = 0.4 * dx * dx;
    double[] heat = new double[cells];
    Arrays.fill(heat, latent + alpha);
    double[] t = new double[cells];
    long steps = Math.round(1 / dt);
    for (long step = 0; step < steps; step++) {
      for (int i = 0; i < cells; i++) {
        t[i] = heat[i] < 0 ? heat[i] : Math.max(0, heat[i] - latent);
      }
      for (int i = 0; i < cells; i++) {
        double above = i == 0 ? 2 * (-1 - t[0]) : t[i - 1] - t[i];
        double below = i == cells - 1 ? 0 : t[i + 1] - t[i];
        heat[i] += dt / (dx * dx) * (above + below);
      }
    }
    double frozen = 0;
    for (double h : heat) {
      frozen += dx * (1 - Math.clamp(h / latent, 0, 1));
    }
    return frozen;
  }

  @Test
  void itsLimitsAreStefansAndNothing() {
    assertThat(Neumann.lambda(0, 0)).isEqualTo(1);
    assertThat(Neumann.lambda(3, 0)).isEqualTo(1);
    assertThat(Neumann.lambda(0, 1e-9)).isCloseTo(1, within(1e-9));
    assertThat(Neumann.lambda(3, 1e-9)).isCloseTo(1, within(2e-4));
    assertThat(Neumann.lambda(1e9, 0.2)).isPositive().isLessThan(1e-6);
    // So cold, or with so little water, that freezing takes next to nothing: erf γ = 1/(1 + α).
    double gamma = Neumann.lambda(1, 1e12) * Math.sqrt(1e12 / 2);
    assertThat(Erf.erf(gamma)).isCloseTo(0.5, within(1e-6));
  }

  @Test
  void fallsAsTheGroundIsWarmerAndAsCoolingTakesMore() {
    double last = 1.1;
    for (double alpha = 0; alpha < 4; alpha += 0.25) {
      double lambda = Neumann.lambda(alpha, 0.3);
      assertThat(lambda).isLessThan(last);
      last = lambda;
    }
    last = 1.1;
    for (double mu = 0.01; mu < 3; mu *= 1.5) {
      double lambda = Neumann.lambda(0.5, mu);
      assertThat(lambda).isLessThan(last);
      last = lambda;
    }
  }

  @Test
  void refusesWhatHasNoMeaning() {
    assertThatThrownBy(() -> Neumann.lambda(-0.1, 0.2)).hasMessageContaining("α and μ");
    assertThatThrownBy(() -> Neumann.lambda(0.1, Double.NaN)).hasMessageContaining("α and μ");
  }
}
