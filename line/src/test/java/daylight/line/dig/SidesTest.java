package daylight.line.dig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import daylight.line.course.SplitMix64;
import daylight.line.measure.Measured;
import daylight.line.survey.Covariance2;
import daylight.line.survey.PlanPoint;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Location;

/** The probability of either side of a boundary, against closed forms and against chance itself. */
class SidesTest {
  private static final int DRAWS = 40_000;

  /** Four standard deviations of a share of so many draws, at most. */
  private static final double BY_CHANCE = 4 * 0.5 / Math.sqrt(DRAWS);

  private static Covariance2 drawn(SplitMix64 random) {
    double a = random.between(0.05, 1.5);
    double b = random.between(0.05, 1.5);
    double r = random.between(-0.95, 0.95);
    return new Covariance2(a * a, r * a * b, r * a * b, b * b);
  }

  private static PlanPoint spot(SplitMix64 random, double size) {
    return new PlanPoint(random.between(-size, size), random.between(-size, size));
  }

  /** Of a straight line it is Φ(distance/σ), σ square to the line. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void aStraightBoundaryDividesAsTheNormalDistributionDoes(long seed) {
    SplitMix64 random = new SplitMix64(seed);
    PlanPoint mean = spot(random, 2);
    PlanPoint a = spot(random, 2);
    PlanPoint b = spot(random, 2);
    Covariance2 c = drawn(random);
    Vector along = Vector.between(a, b).unit();
    Vector square = new Vector(-along.y(), along.x());
    double off = Vector.between(a, mean).dot(square);
    double expected = new Measured(-off, Math.sqrt(square.variance(c))).probabilityBelow(0);

    assertThat(Sides.left(mean, c, List.of(a, b))).isCloseTo(expected, within(1e-9));
    assertThat(Sides.left(mean, c, List.of(b, a))).isCloseTo(1 - expected, within(1e-9));
  }

  @Test
  void aSpotOnTheBoundaryIsOnEitherSideAlike() {
    Covariance2 c = new Covariance2(1, 0.2, 0.2, 0.5);
    List<PlanPoint> line = List.of(new PlanPoint(-3, 0), new PlanPoint(5, 0));

    assertThat(Sides.left(new PlanPoint(0, 0), c, line)).isCloseTo(0.5, within(1e-9));
    assertThat(Sides.left(new PlanPoint(0, 1e-12), c, line)).isCloseTo(0.5, within(1e-9));
  }

  /** A corner of 90° about the mean of a round distribution holds a quarter. */
  @Test
  void aCornerAtTheMeanHoldsItsAngle() {
    Covariance2 round = new Covariance2(0.3, 0, 0, 0.3);
    List<PlanPoint> corner = List.of(new PlanPoint(9, 0), new PlanPoint(0, 0), new PlanPoint(0, 9));

    assertThat(Sides.left(new PlanPoint(0, 0), round, corner)).isCloseTo(0.75, within(1e-9));
    assertThat(Sides.left(new PlanPoint(0, 0), round, corner.reversed()))
        .isCloseTo(0.25, within(1e-9));
  }

  /**
   * Two straight lines that cross square part a normal distribution into products: the corner x >
   * a, y > b holds Φ(−a)·Φ(−b).
   */
  @Test
  void aCornerBesideTheMeanHoldsAProduct() {
    Covariance2 c = new Covariance2(0.25, 0, 0, 4);
    PlanPoint at = new PlanPoint(0.3, -1);
    List<PlanPoint> corner = List.of(new PlanPoint(0.3, 20), at, new PlanPoint(20, -1));
    double expected =
        new Measured(0, 0.5).probabilityBelow(-0.3) * new Measured(0, 2).probabilityBelow(1);

    assertThat(Sides.left(new PlanPoint(0, 0), c, corner)).isCloseTo(expected, within(1e-9));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void aBoundaryOfSeveralPiecesDividesAsChanceDoes(long seed) {
    SplitMix64 random = new SplitMix64(100 + seed);
    List<PlanPoint> line = new ArrayList<>();
    for (int i = 0; i < 5; i++) {
      line.add(new PlanPoint(-4 + 2 * i + random.between(-0.5, 0.5), random.between(-1.5, 1.5)));
    }
    PlanPoint mean = spot(random, 1);
    Covariance2 c = drawn(random);
    IndexedPointInAreaLocator left = leftOf(line);
    Cholesky factor = Cholesky.of(c, 0);
    int held = 0;
    for (int i = 0; i < DRAWS; i++) {
      Vector off = factor.times(random.normal(), random.normal());
      Coordinate drawn = new Coordinate(mean.x() + off.x(), mean.y() + off.y());
      held += left.locate(drawn) == Location.INTERIOR ? 1 : 0;
    }

    assertThat(Sides.left(mean, c, line)).isCloseTo((double) held / DRAWS, within(BY_CHANCE));
  }

  /** All that is left of a line which goes from west to east, as far as a thousand metres. */
  private static IndexedPointInAreaLocator leftOf(List<PlanPoint> line) {
    double far = 1000;
    List<Coordinate> ring = new ArrayList<>();
    PlanPoint first = line.getFirst();
    PlanPoint last = line.getLast();
    Vector in = Vector.between(line.get(1), first).unit();
    Vector out = Vector.between(line.get(line.size() - 2), last).unit();
    ring.add(new Coordinate(first.x() + far * in.x(), first.y() + far * in.y()));
    line.forEach(p -> ring.add(new Coordinate(p.x(), p.y())));
    ring.add(new Coordinate(last.x() + far * out.x(), last.y() + far * out.y()));
    ring.add(new Coordinate(3 * far, 3 * far));
    ring.add(new Coordinate(-3 * far, 3 * far));
    ring.add(ring.getFirst());
    return new IndexedPointInAreaLocator(
        new GeometryFactory().createPolygon(ring.toArray(Coordinate[]::new)));
  }
}
