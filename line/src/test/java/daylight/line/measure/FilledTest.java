package daylight.line.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The section of the water in a round pipe. */
class FilledTest {
  /**
   * Chow, <em>Open-Channel Hydraulics</em>, 1959, Table 2-1 and App. A (from memory; the digits
   * recomputed in standards 3.2, derived).
   */
  @ParameterizedTest
  @CsvSource({
    "0.10, 1.2870, 0.0409, 0.0635, 0.0065",
    "0.25, 2.0944, 0.1535, 0.1466, 0.0427",
    "0.50, 3.1416, 0.3927, 0.2500, 0.1558",
    "0.75, 4.1888, 0.6319, 0.3017, 0.2842",
    "0.8128, 4.4934, 0.6837, 0.3043, 0.3093",
    "0.9382, 5.2783, 0.7653, 0.2900, 0.3353",
    "1.00, 6.2832, 0.7854, 0.2500, 0.3117"
  })
  void theTableOfChow(double share, double angle, double area, double radius, double conveyance) {
    Filled water = new Filled(1, share);
    assertThat(water.angle()).isCloseTo(angle, within(1e-4));
    assertThat(water.area()).isCloseTo(area, within(6e-5));
    assertThat(water.radius()).isCloseTo(radius, within(6e-5));
    assertThat(water.area() * StrictMath.pow(water.radius(), 2.0 / 3))
        .isCloseTo(conveyance, within(6e-5));
  }

  /** The angle found by halving in forty digits: the angle whose half has the cosine 1 − 2y/D. */
  @ParameterizedTest
  @ValueSource(doubles = {1e-6, 0.0003, 0.01, 0.06, 0.0621, 0.2, 0.5, 0.8, 0.97, 0.999999})
  void everyDigitOfItsGeometry(double share) {
    BigDecimal wanted =
        BigDecimal.valueOf(share).multiply(HighPrecision.TWO).subtract(BigDecimal.ONE);
    BigDecimal half = HighPrecision.root(x -> wanted.add(HighPrecision.cosine(x)), Math.PI, 0);
    BigDecimal angle = half.multiply(HighPrecision.TWO);
    double area = angle.subtract(HighPrecision.sine(angle)).doubleValue() / 8;
    double perimeter = half.doubleValue();
    Filled water = new Filled(1, share);
    assertThat(water.area()).isCloseTo(area, withPercentage(1e-8));
    assertThat(water.perimeter()).isCloseTo(perimeter, withPercentage(1e-8));
    assertThat(water.radius()).isCloseTo(area / perimeter, withPercentage(1e-8));
    assertThat(water.width())
        .isCloseTo(HighPrecision.sine(half).doubleValue(), withPercentage(1e-8));
  }

  /** The angle less its sine found by halving in forty digits. */
  @ParameterizedTest
  @ValueSource(doubles = {1e-9, 1e-5, 0.003, 0.1, 0.39, 0.7, 0.785})
  void theDepthOfAnArea(double area) {
    BigDecimal wanted = BigDecimal.valueOf(8 * area);
    BigDecimal angle =
        HighPrecision.root(x -> x.subtract(HighPrecision.sine(x)).subtract(wanted), 0, 6.2832);
    double depth =
        BigDecimal.ONE
                .subtract(
                    HighPrecision.cosine(angle.divide(HighPrecision.TWO, HighPrecision.DIGITS)))
                .doubleValue()
            / 2;
    assertThat(Filled.ofArea(1, area).depth()).isCloseTo(depth, withPercentage(1e-7));
    assertThat(Filled.ofArea(0.1, area / 100).area()).isCloseTo(area / 100, withPercentage(1e-8));
  }

  @Test
  void itsEndsAreExact() {
    assertThat(new Filled(2, 0).area()).isZero();
    assertThat(new Filled(2, 0).radius()).isZero();
    assertThat(Filled.full(2).area()).isCloseTo(Math.PI, within(1e-14));
    assertThat(Filled.full(2).radius()).isCloseTo(0.5, within(1e-14));
    assertThat(Filled.full(2).width()).isZero();
    assertThat(Filled.ofArea(2, Math.PI).depth()).isCloseTo(2, within(1e-9));
  }

  @Test
  void upToADepthIsNoLessThanNothingAndNoMoreThanFull() {
    assertThat(Filled.upTo(0.1, -1).area()).isZero();
    assertThat(Filled.upTo(0.1, 0.05).area()).isCloseTo(Math.PI * 0.0025 / 2, within(1e-15));
    assertThat(Filled.upTo(0.1, 0.3)).isEqualTo(Filled.full(0.1));
  }

  @Test
  void whatIsNoPipeIsRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Filled(0, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> new Filled(1, 1.01));
    assertThatIllegalArgumentException().isThrownBy(() -> new Filled(1, -0.01));
    assertThatIllegalArgumentException().isThrownBy(() -> new Filled(1, Double.NaN));
    assertThatIllegalArgumentException().isThrownBy(() -> Filled.ofArea(1, 0.8));
  }
}
