package daylight.line.course;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.line.counter.Tracks;
import daylight.line.measure.Measured;
import daylight.line.survey.Covariance2;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Whether 95 % regions hold the truth about 95 times in a hundred, on lines that the simulator
 * draws from the priors. A check on sanity with wide limits: 150 lines tell 95 % to within ±3.6 %.
 */
class CoverageTest {
  /** Chi-square with two degrees of freedom exceeds this once in twenty: −2·ln 0.05. */
  private static final double CHI_SQUARE_95 = 5.991;

  private static final int LINES = 150;

  @Test
  void regionsHoldTheTruthAboutAsOftenAsTheySay() {
    Tally plan = new Tally();
    Tally depth = new Tally();
    for (int seed = 1; seed <= LINES; seed++) {
      SimulatedProperty property = SimulatedProperty.of(seed);
      Line line = Estimator.estimate(property.book(), Tracks.NONE, TestPriors.shipped());
      SplitMix64 random = new SplitMix64(-seed);
      List<Station> stations = line.runs().stream().flatMap(r -> r.stations().stream()).toList();
      Station station = stations.get(random.below(stations.size()));
      TruePipe.At truth = property.truth(station.place());
      plan.add(distance(station, truth) <= CHI_SQUARE_95);
      Measured read = station.depth();
      if (read != null) {
        double off = truth.ground() - truth.up() - read.value();
        depth.add(Math.abs(off) <= Measured.Z95 * read.sd());
      }
    }
    assertThat(plan.n).isEqualTo(LINES);
    assertThat(depth.n).isGreaterThan(LINES * 9 / 10);
    assertThat(plan.share()).as("plan").isBetween(0.88, 0.99);
    assertThat(depth.share()).as("depth").isBetween(0.88, 0.99);
  }

  /** Squared distance from the truth in units of the stated covariance. */
  static double distance(Station station, TruePipe.At truth) {
    double e = truth.east() - station.spot().x();
    double n = truth.north() - station.spot().y();
    Covariance2 c = station.spread();
    double determinant = c.xx() * c.yy() - c.xy() * c.yx();
    return (c.yy() * e * e - (c.xy() + c.yx()) * e * n + c.xx() * n * n) / determinant;
  }

  private static final class Tally {
    private int n;
    private int held;

    void add(boolean holds) {
      n++;
      held += holds ? 1 : 0;
    }

    double share() {
      return (double) held / n;
    }
  }
}
