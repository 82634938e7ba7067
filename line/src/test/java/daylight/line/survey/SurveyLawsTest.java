package daylight.line.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Laws: what holds for every network. */
class SurveyLawsTest {
  private static final double LEVEL = 0.95;

  private static PlanPoint moved(PlanPoint p, double turn) {
    double c = StrictMath.cos(turn);
    double s = StrictMath.sin(turn);
    return new PlanPoint(250 + c * p.x() + s * p.y(), -40 - s * p.x() + c * p.y());
  }

  private static void assertMoved(long seed, UnaryOperator<PlanPoint> move, boolean mirrored) {
    Adjusted here = new SimulatedYard(seed).adjusted();
    Adjusted there = new SimulatedYard(seed, move, mirrored).adjusted();
    assertThat(there.points().keySet()).isEqualTo(here.points().keySet());
    here.points()
        .forEach(
            (label, at) -> {
              PlanPoint expected = move.apply(at);
              Networks.assertAt(there, label, expected.x(), expected.y(), 1e-7);
              ErrorEllipse a = here.ellipse(label, LEVEL);
              ErrorEllipse b = there.ellipse(label, LEVEL);
              assertThat(b.semiMajor()).isCloseTo(a.semiMajor(), within(1e-8));
              assertThat(b.semiMinor()).isCloseTo(a.semiMinor(), within(1e-8));
            });
    assertThat(there.fit().weightedSumOfSquares())
        .isCloseTo(here.fit().weightedSumOfSquares(), within(1e-5));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void movingAndTurningTheNetworkMovesAndTurnsTheResult(long seed) {
    assertMoved(seed, p -> moved(p, 0.3 * seed), false);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void mirroringTheNetworkMirrorsTheResult(long seed) {
    assertMoved(seed, p -> new PlanPoint(-p.x(), p.y()), true);
  }

  @ParameterizedTest
  @ValueSource(longs = {11, 12, 13, 14, 15})
  void theOrderOfSightingsChangesNoBit(long seed) {
    var yard = new SimulatedYard(seed);
    Adjusted straight = yard.adjusted();
    Adjusted reversed = Networks.adjusted(yard.sightings().reversed());
    List<Sighting> shuffled = new ArrayList<>(yard.sightings());
    var random = new SplitMix64(seed);
    for (int i = shuffled.size() - 1; i > 0; i--) {
      Collections.swap(shuffled, i, random.below(i + 1));
    }
    for (Adjusted other : List.of(reversed, Networks.adjusted(shuffled))) {
      assertThat(other.points()).isEqualTo(straight.points());
      assertThat(other.fit()).isEqualTo(straight.fit());
      for (String a : straight.points().keySet()) {
        for (String b : straight.points().keySet()) {
          assertThat(other.covariance(a, b)).isEqualTo(straight.covariance(a, b));
        }
      }
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {21, 22, 23, 24, 25})
  void oneMoreSightingNeverWidensAnEllipse(long seed) {
    var yard = new SimulatedYard(seed);
    // Nothing may be set aside, or less would be used than before.
    var never = new Snooping(1e-12, 4.132);
    Adjusted before = Networks.adjusted(new PlaneNetwork(yard.sightings(), List.of(), never));
    // Reads what the others say, so that the positions stay and only the uncertainty changes.
    double metres = before.point("S0").distanceTo(before.point("S1"));
    Sighting more = Networks.tape("S0", "S1", metres, 0.005);
    Adjusted after =
        Networks.adjusted(new PlaneNetwork(Networks.and(yard.sightings(), more), List.of(), never));
    for (String point : before.points().keySet()) {
      Covariance2 a = before.covariance(point, point);
      Covariance2 b = after.covariance(point, point);
      // The difference of the covariances has no negative eigenvalue.
      double xx = a.xx() - b.xx();
      double yy = a.yy() - b.yy();
      double xy = a.xy() - b.xy();
      assertThat(xx).isGreaterThan(-1e-12);
      assertThat(yy).isGreaterThan(-1e-12);
      assertThat(xx * yy - xy * xy).isGreaterThan(-1e-16);
      assertThat(after.ellipse(point, LEVEL).semiMajor())
          .isLessThanOrEqualTo(before.ellipse(point, LEVEL).semiMajor() + 1e-9);
    }
    assertThat(after.ellipse("S0", LEVEL).semiMinor())
        .isLessThan(before.ellipse("S0", LEVEL).semiMinor());
  }

  @ParameterizedTest
  @ValueSource(longs = {31, 32, 33, 34, 35})
  void sharesSumToTheVariance(long seed) {
    Adjusted adjusted = new SimulatedYard(seed).adjusted();
    var random = new SplitMix64(seed);
    double wx = random.between(-2, 2);
    double wy = random.between(-2, 2);
    Shares shares =
        adjusted.sharesOf(
            List.of(
                new CoordinateWeight("S0", wx, wy),
                new CoordinateWeight("S1", -wx, -wy),
                new CoordinateWeight("M0", 5, 5)));
    Covariance2 c = adjusted.relativeCovariance("S0", "S1");
    double variance = wx * wx * c.xx() + wx * wy * (c.xy() + c.yx()) + wy * wy * c.yy();
    double sum = shares.byEntry().values().stream().mapToDouble(Double::doubleValue).sum();
    assertThat(sum / variance).isCloseTo(1, within(1e-9));
    assertThat(shares.variance() / variance).isCloseTo(1, within(1e-9));
    assertThat(shares.byEntry().values()).allSatisfy(share -> assertThat(share).isNotNegative());
  }
}
