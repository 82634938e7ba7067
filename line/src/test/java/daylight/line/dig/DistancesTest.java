package daylight.line.dig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import daylight.line.course.SplitMix64;
import daylight.line.survey.Covariance2;
import daylight.line.survey.PlanPoint;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Distances of an uncertain spot, against closed forms and against chance itself. */
class DistancesTest {
  /**
   * From its own mean a round spot lies as Rayleigh's distribution says: nearer than r with
   * probability 1 − e^(−r²/2σ²).
   */
  @ParameterizedTest
  @ValueSource(doubles = {0.1, 0.5, 1, 1.5, 2})
  void aRoundSpotLiesFromItsMeanAsRayleighSays(double r) {
    double sd = 0.7;
    Distances distances =
        Distances.of(
            new PlanPoint(3, 4),
            new Covariance2(sd * sd, 0, 0, sd * sd),
            List.of(new PlanPoint(3, 4)));
    double expected = 1 - Math.exp(-r * r / (2 * sd * sd));

    assertThat(distances.nearer(r)).isCloseTo(expected, within(0.005));
    assertThat(distances.quantile(expected)).isCloseTo(r, within(0.03));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void aSpotLiesFromAWallAsChanceSays(long seed) {
    SplitMix64 random = new SplitMix64(seed);
    List<PlanPoint> wall = List.of(new PlanPoint(0, 0), new PlanPoint(0, 8), new PlanPoint(5, 8));
    PlanPoint mean = new PlanPoint(random.between(-2, -0.3), random.between(-1, 9));
    Covariance2 c = new Covariance2(0.09, 0.03, 0.03, 0.25);
    Cholesky factor = Cholesky.of(c, 0);
    int n = 40_000;
    double[] drawn = new double[n];
    for (int i = 0; i < n; i++) {
      Vector off = factor.times(random.normal(), random.normal());
      drawn[i] = toWall(mean.x() + off.x(), mean.y() + off.y());
    }
    Arrays.sort(drawn);
    Distances distances = Distances.of(mean, c, wall);

    for (double p : new double[] {0.025, 0.25, 0.5, 0.75, 0.975}) {
      double there = drawn[(int) (p * n)];
      assertThat(distances.quantile(p)).isCloseTo(there, within(0.02));
      assertThat(distances.nearer(there)).isCloseTo(p, within(0.012));
    }
  }

  /** The wall by itself: one piece up the y axis, one along y = 8. */
  private static double toWall(double x, double y) {
    double up = Math.hypot(x, y - Math.clamp(y, 0, 8));
    double along = Math.hypot(x - Math.clamp(x, 0, 5), y - 8);
    return Math.min(up, along);
  }

  @Test
  void anAllButCertainSpotLiesWhereItIs() {
    Distances distances =
        Distances.of(
            new PlanPoint(3, 4), new Covariance2(0, 0, 0, 0), List.of(new PlanPoint(0, 0)));

    assertThat(distances.quantile(0.025)).isCloseTo(5, within(1e-4));
    assertThat(distances.nearer(5.01)).isCloseTo(1, within(1e-4)).isLessThan(1);
    assertThat(distances.nearer(4.99)).isCloseTo(0, within(1e-4)).isPositive();
  }
}
