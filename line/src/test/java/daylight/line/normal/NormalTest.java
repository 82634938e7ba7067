package daylight.line.normal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.assertj.core.data.Offset;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Against the same equations written out in full and inverted by a general-purpose library (EJML).
 */
class NormalTest {
  private static final Offset<Double> NEAR = Offset.offset(1e-9);

  /** Seeded numbers about zero, none of them special. */
  private static final class Numbers {
    private long state;

    Numbers(long seed) {
      state = seed * 2_862_933_555_777_941_757L + 3_037_000_493L;
    }

    double next() {
      state = state * 6_364_136_223_846_793_005L + 1_442_695_040_888_963_407L;
      return (state >> 11) / (double) (1L << 52);
    }
  }

  private static final int[] PARENTS = {-1, 0, 1, 1, 3, 2, -1, 6};
  private static final int[] SIZES = {3, 2, 4, 1, 3, 2, 2, 3};

  private final Pattern pattern = new Pattern(3, PARENTS, SIZES);
  private final DMatrixRMaj dense = new DMatrixRMaj(pattern.size(), pattern.size());
  private final double[] right = new double[pattern.size()];

  private Normal filled(long seed) {
    Numbers numbers = new Numbers(seed);
    Normal normal = new Normal(pattern);
    for (int block = 0; block < PARENTS.length; block++) {
      for (int row = 0; row < 9; row++) {
        Gradient gradient = new Gradient();
        for (int i = 0; i < SIZES[block]; i++) {
          gradient.add(pattern.first(block) + i, numbers.next());
        }
        int parent = PARENTS[block];
        for (int i = 0; parent >= 0 && i < SIZES[parent]; i++) {
          gradient.add(pattern.first(parent) + i, numbers.next());
        }
        for (int i = 0; i < 3; i++) {
          gradient.add(i, numbers.next());
        }
        add(normal, gradient, numbers.next(), 0.5 + Math.abs(numbers.next()));
      }
    }
    return normal;
  }

  private void add(Normal normal, Gradient gradient, double misfit, double sd) {
    normal.observe(gradient, misfit, sd);
    for (int i = 0; i < gradient.count(); i++) {
      double wi = gradient.value(i) / (sd * sd);
      right[gradient.unknown(i)] += wi * misfit;
      for (int j = 0; j < gradient.count(); j++) {
        dense.add(gradient.unknown(i), gradient.unknown(j), wi * gradient.value(j));
      }
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void theStepIsThatOfTheFullMatrix(long seed) {
    Normal normal = filled(seed);
    double[] step = normal.step(normal.factor(0).orElseThrow());

    DMatrixRMaj out = new DMatrixRMaj(step.length, 1);
    CommonOps_DDRM.solve(dense, DMatrixRMaj.wrap(step.length, 1, right), out);
    assertThat(step).containsExactly(out.data, NEAR);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void neighboursHaveTheCovarianceOfTheFullInverse(long seed) {
    Covariance covariance = filled(seed).factor(0).orElseThrow().covariance();
    CommonOps_DDRM.invert(dense);

    for (int a = 0; a < pattern.size(); a++) {
      for (int b = 0; b < pattern.size(); b++) {
        Gradient ga = new Gradient();
        ga.add(a, 1);
        Gradient gb = new Gradient();
        gb.add(b, 1);
        assertThat(covariance.of(ga, gb)).as("%d with %d", a, b).isCloseTo(dense.get(a, b), NEAR);
      }
    }
  }

  @Test
  void aFigureOfFarBlocksIsAsSureAsTheFullInverseSays() {
    Covariance covariance = filled(7).factor(0).orElseThrow().covariance();
    CommonOps_DDRM.invert(dense);
    Gradient figure = new Gradient();
    figure.add(pattern.first(4), 2);
    figure.add(pattern.first(5) + 1, -1);
    figure.add(pattern.first(7), 0.5);
    figure.add(0, 3);

    double variance = 0;
    for (int i = 0; i < figure.count(); i++) {
      for (int j = 0; j < figure.count(); j++) {
        variance +=
            figure.value(i) * figure.value(j) * dense.get(figure.unknown(i), figure.unknown(j));
      }
    }
    assertThat(covariance.variance(figure)).isCloseTo(variance, NEAR);
  }

  @Test
  void dampingRaisesTheDiagonal() {
    Normal normal = filled(4);
    double[] step = normal.step(normal.factor(0.5).orElseThrow());

    for (int k = 0; k < pattern.size(); k++) {
      dense.set(k, k, dense.get(k, k) * 1.5);
    }
    DMatrixRMaj out = new DMatrixRMaj(step.length, 1);
    CommonOps_DDRM.solve(dense, DMatrixRMaj.wrap(step.length, 1, right), out);
    assertThat(step).containsExactly(out.data, NEAR);
  }

  @Test
  void anUnknownThatNothingDeterminesLeavesNoFactor() {
    Normal normal = new Normal(new Pattern(0, new int[] {-1}, new int[] {2}));
    Gradient gradient = new Gradient();
    gradient.add(0, 1);
    normal.observe(gradient, 1, 1);

    assertThat(normal.factor(0)).isEmpty();
  }

  @Test
  void anEquationThatReachesBeyondNeighboursIsRefused() {
    Normal normal = new Normal(pattern);
    Gradient gradient = new Gradient();
    gradient.add(pattern.first(4), 1);
    gradient.add(pattern.first(5), 1);

    assertThatThrownBy(() -> normal.observe(gradient, 0, 1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("neighbours");
  }
}
