package daylight.line.survey;

import static daylight.line.survey.Networks.levelled;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/**
 * Reference: published level nets to their printed digits. "Looked up" values were seen in print;
 * "from memory" inputs were recalled and the arithmetic repeated.
 */
class PublishedLevelNetsTest {

  private static LevelSighting rise(String from, String to, double metres, double sd) {
    return new LevelSighting.Rise(from + ">" + to, from, to, metres, sd);
  }

  private static double w(LevelAdjusted net, String entry) {
    return net.fit().residuals().stream()
        .filter(r -> r.entry().equals(entry))
        .map(Residual::standardised)
        .filter(Objects::nonNull)
        .findFirst()
        .orElseThrow();
  }

  private static double v(LevelAdjusted net, String entry) {
    return net.fit().residuals().stream()
        .filter(r -> r.entry().equals(entry))
        .mapToDouble(Residual::residual)
        .findFirst()
        .orElseThrow();
  }

  private static double sigma0(LevelAdjusted net) {
    return net.fit().sigma0Ratio().orElseThrow();
  }

  /**
   * G. Strang and K. Borre, Linear Algebra, Geodesy, and GPS, 1997: fixed A, B, C, standard
   * deviation 6 mm·√km. Looked up: dof 3, sum of squares 4.636, factor 1.243. Residuals, standard
   * deviations and statistics derived.
   */
  @Test
  void strangAndBorreFiveObservations() {
    LevelAdjusted net =
        levelled(
            List.of(
                new LevelSighting.Benchmark("A", 10.0210),
                new LevelSighting.Benchmark("B", 10.3210),
                new LevelSighting.Benchmark("C", 11.0020),
                rise("A", "E", 0.7320, 0.006 * Math.sqrt(0.970)),
                rise("A", "F", 1.9780, 0.006 * Math.sqrt(1.002)),
                rise("B", "E", 0.4200, 0.006 * Math.sqrt(1.070)),
                rise("C", "F", 0.9880, 0.006 * Math.sqrt(1.110)),
                rise("E", "F", 1.2580, 0.006 * Math.sqrt(0.890))));
    assertThat(net.fit().dof()).isEqualTo(3);
    assertThat(net.fit().weightedSumOfSquares()).isCloseTo(4.636, within(5e-4));
    assertThat(sigma0(net)).isCloseTo(1.243, within(5e-4));
    assertThat(net.height("E")).isCloseTo(10.74450, within(5e-6));
    assertThat(net.height("F")).isCloseTo(11.99762, within(5e-6));
    assertThat(net.sd("E")).isCloseTo(0.00367, within(5e-6));
    assertThat(net.sd("F")).isCloseTo(0.00371, within(5e-6));
    Map.of("A>E", -8.50, "A>F", -1.38, "B>E", 3.50, "C>F", 7.62, "E>F", -4.88)
        .forEach((entry, mm) -> assertThat(1000 * v(net, entry)).isCloseTo(mm, within(0.006)));
    Map.of("A>E", -1.835, "A>F", -0.292, "B>E", 0.700, "C>F", 1.489, "E>F", -1.269)
        .forEach((entry, size) -> assertThat(w(net, entry)).isCloseTo(size, within(6e-4)));
  }

  /**
   * The level net distributed as a sample with GNU Gama: standard deviation 5 mm, 1a held. Looked
   * up: heights, standard deviations, dof, sum of squares and the largest statistic, 1.68 at
   * reading 6.
   */
  @Test
  void gamaSampleEightObservations() {
    LevelAdjusted net =
        levelled(
            List.of(
                new LevelSighting.Benchmark("1a", 1000.000),
                rise("1a", "4", -1.225, 0.005),
                rise("4", "3", -0.848, 0.005),
                rise("3", "2", 1.342, 0.005),
                rise("2", "1a", 0.720, 0.005),
                rise("1a", "2", -0.724, 0.005),
                rise("2", "3", -1.335, 0.005),
                rise("3", "4", 0.842, 0.005),
                rise("4", "1a", 1.231, 0.005)));
    assertThat(net.height("4")).isCloseTo(998.77513, within(1.1e-5));
    assertThat(net.height("3")).isCloseTo(997.93325, within(1.1e-5));
    assertThat(net.height("2")).isCloseTo(999.27487, within(1.1e-5));
    assertThat(net.sd("4")).isCloseTo(0.0031, within(5e-5));
    assertThat(net.sd("3")).isCloseTo(0.0035, within(5e-5));
    assertThat(net.sd("2")).isCloseTo(0.0031, within(5e-5));
    assertThat(net.fit().dof()).isEqualTo(5);
    // Printed in square millimetres with unit weights.
    assertThat(net.fit().weightedSumOfSquares() * 25).isCloseTo(146.625, within(1e-3));
    assertThat(sigma0(net) * 5).isCloseTo(5.42, within(5e-3));
    assertThat(w(net, "2>3")).isCloseTo(-1.676, within(6e-4));
    assertThat(net.fit().residuals())
        .allSatisfy(r -> assertThat(r.redundancy()).isCloseTo(0.625, within(1e-9)))
        .allSatisfy(
            r -> assertThat(Math.abs(Objects.requireNonNull(r.standardised()))).isLessThan(1.68));
    assertThat(net.fit().suspects()).isEmpty();
  }

  /**
   * J. Mahun, Open Access Surveying, ch. D and E. Looked up: readings and results; the benchmarks
   * were recovered from the published results. The source truncates: 0.0015 ft allowed.
   */
  @Test
  void mahunUnweightedAndWeighted() {
    LevelAdjusted plain = mahun(false);
    assertThat(plain.height("Q")).isCloseTo(815.418, within(0.0015));
    assertThat(plain.height("R")).isCloseTo(802.962, within(0.0015));
    assertThat(sigma0(plain)).isCloseTo(0.028, within(0.0015));
    assertThat(sigma0(plain) * plain.sd("Q")).isCloseTo(0.013, within(0.0015));
    assertThat(sigma0(plain) * plain.sd("R")).isCloseTo(0.014, within(0.0015));
    assertThat(sigma0(plain) * plain.riseSd("Q", "R")).isCloseTo(0.017, within(0.0015));
    LevelAdjusted weighted = mahun(true);
    assertThat(weighted.height("Q")).isCloseTo(815.424, within(0.0015));
    assertThat(weighted.height("R")).isCloseTo(802.958, within(0.0015));
    assertThat(sigma0(weighted)).isCloseTo(0.067, within(0.0015));
    assertThat(sigma0(weighted) * weighted.sd("Q")).isCloseTo(0.012, within(0.0015));
    assertThat(sigma0(weighted) * weighted.sd("R")).isCloseTo(0.016, within(0.0015));
  }

  private static LevelAdjusted mahun(boolean weighted) {
    var rows = new ArrayList<LevelSighting>();
    Map.of("A", 806.52, "B", 818.32, "C", 820.12, "D", 824.04)
        .forEach((point, height) -> rows.add(new LevelSighting.Benchmark(point, height)));
    record Run(String from, String to, double rise, int setups) {}
    List.of(
            new Run("A", "Q", 8.91, 3),
            new Run("B", "Q", -2.92, 2),
            new Run("C", "Q", -4.67, 1),
            new Run("D", "Q", -8.66, 3),
            new Run("A", "R", -3.56, 3),
            new Run("C", "R", -17.12, 4),
            new Run("D", "R", -21.10, 2),
            new Run("Q", "R", -12.47, 3))
        .forEach(
            run ->
                rows.add(
                    rise(run.from, run.to, run.rise, weighted ? Math.sqrt(run.setups / 12.0) : 1)));
    return levelled(rows);
  }

  /**
   * C. D. Ghilani, Adjustment Computations, §12.3: unweighted, and weighted by 12/miles. Inputs and
   * results from memory, arithmetic repeated; feet.
   */
  @Test
  void ghilaniWeightedLevelNet() {
    LevelAdjusted plain = ghilani(false);
    assertThat(plain.height("A")).isCloseTo(105.141, within(6e-4));
    assertThat(plain.height("B")).isCloseTo(104.483, within(6e-4));
    assertThat(plain.height("C")).isCloseTo(106.188, within(6e-4));
    assertThat(sigma0(plain)).isCloseTo(0.050, within(6e-4));
    LevelAdjusted weighted = ghilani(true);
    assertThat(weighted.height("A")).isCloseTo(105.150, within(6e-4));
    assertThat(weighted.height("B")).isCloseTo(104.489, within(6e-4));
    assertThat(weighted.height("C")).isCloseTo(106.197, within(6e-4));
    assertThat(sigma0(weighted)).isCloseTo(0.107, within(6e-4));
  }

  private static LevelAdjusted ghilani(boolean weighted) {
    record Run(String from, String to, double rise, int miles) {}
    var rows = new ArrayList<LevelSighting>();
    rows.add(new LevelSighting.Benchmark("X", 100.00));
    rows.add(new LevelSighting.Benchmark("Y", 107.50));
    List.of(
            new Run("X", "A", 5.10, 4),
            new Run("A", "Y", 2.34, 3),
            new Run("Y", "C", -1.25, 2),
            new Run("C", "X", -6.13, 3),
            new Run("A", "B", -0.68, 2),
            new Run("Y", "B", -3.00, 2),
            new Run("B", "C", 1.70, 2))
        .forEach(
            run ->
                rows.add(
                    rise(run.from, run.to, run.rise, weighted ? Math.sqrt(run.miles / 12.0) : 1)));
    return levelled(rows);
  }
}
