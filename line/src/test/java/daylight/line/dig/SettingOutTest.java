package daylight.line.dig;

import static daylight.line.course.Known.known;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import daylight.line.book.FieldBook;
import daylight.line.book.Place;
import daylight.line.book.Priors;
import daylight.line.course.Line;
import daylight.line.course.SplitMix64;
import daylight.line.course.TestPriors;
import daylight.line.survey.Adjusted;
import daylight.line.survey.Covariance2;
import daylight.line.survey.PlanPoint;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The two tapes that are chosen, against trying every two: crews lay tapes that err to the true
 * landmarks, find where they meet, and dig; the best two are those from which they miss least, and
 * of those as good within 5 % the shortest. (3000 crews tell what they miss by to within 3 %.)
 */
class SettingOutTest {
  private static final Priors PRIORS = TestPriors.shipped();
  private static final int CREWS = 3000;

  private static FieldBook book(long seed) {
    SplitMix64 random = new SplitMix64(seed);
    return Yard.book(
        draft -> {
          for (int i = 0; i < 6; i++) {
            String label = "C" + i;
            draft.landmark(label, false);
            draft.along(label, random.between(-6, 14), random.between(1, 24));
          }
        });
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void noOtherTwoLandmarksFindTheSpotNoticeablyBetter(long seed) {
    FieldBook book = book(seed);
    double at = 4 + 2 * seed;
    Line line = Yard.line(book);
    DigTarget target = Yard.target(book, at);
    TapeTies chosen = known(target.ties());
    Map<String, Double> missed = everyTwo(book, line, at, target.spot(), seed);
    double best = missed.values().stream().mapToDouble(m -> m).min().orElseThrow();
    double mine = known(missed.get(chosen.first().landmark() + "+" + chosen.second().landmark()));

    assertThat(missed).hasSizeGreaterThan(10);
    assertThat(mine).as("%s of %s", chosen, missed).isLessThanOrEqualTo(best * 1.08);
    assertThat(chosen.meet()).isBetween(Math.toRadians(30), Math.toRadians(150));
  }

  /** The box is laid out by what crews truly miss by. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void thePipeLiesInTheBoxAsOftenAsIsSaid(long seed) {
    FieldBook book = book(seed);
    Line line = Yard.line(book);
    DigTarget target = Yard.target(book, 9);
    TapeTies chosen = known(target.ties());
    Covariance2 spread = chosen.spread();
    List<Vector> misses =
        misses(line, 9, target.spot(), chosen.first().landmark(), chosen.second().landmark(), seed);
    double xx = misses.stream().mapToDouble(m -> m.x() * m.x()).average().orElseThrow();
    double yy = misses.stream().mapToDouble(m -> m.y() * m.y()).average().orElseThrow();

    assertThat(Math.sqrt(spread.xx())).isCloseTo(Math.sqrt(xx), within(0.06 * Math.sqrt(xx)));
    assertThat(Math.sqrt(spread.yy())).isCloseTo(Math.sqrt(yy), within(0.06 * Math.sqrt(yy)));
    DigBox tight = DigBox.around(target.spot(), spread, target.box().bearing(), 1e-9);
    long held =
        misses.stream()
            .filter(
                m ->
                    tight.holds(
                        new PlanPoint(target.spot().x() + m.x(), target.spot().y() + m.y())))
            .count();
    assertThat((double) held / misses.size()).isBetween(0.94, 0.985);
  }

  private static Map<String, Double> everyTwo(
      FieldBook book, Line line, double at, PlanPoint spot, long seed) {
    Map<String, Double> missed = new TreeMap<>();
    List<String> labels =
        book.site().landmarks().stream().map(landmark -> landmark.label()).sorted().toList();
    for (String a : labels) {
      for (String b : labels) {
        PlanPoint p = plan(line).point(a);
        PlanPoint q = plan(line).point(b);
        double meet = Math.abs(turn(p, q, spot));
        boolean good = meet > Math.toRadians(30) && meet < Math.toRadians(150);
        if (a.compareTo(b) < 0 && good) {
          missed.put(a + "+" + b, worst(misses(line, at, spot, a, b, seed)));
        }
      }
    }
    return missed;
  }

  private static double turn(PlanPoint a, PlanPoint b, PlanPoint at) {
    return Math.IEEEremainder(at.bearingTo(a) - at.bearingTo(b), 2 * Math.PI);
  }

  private static Adjusted plan(Line line) {
    return (Adjusted) line.survey();
  }

  /** The greatest standard deviation in any direction. */
  private static double worst(List<Vector> misses) {
    double xx = 0;
    double xy = 0;
    double yy = 0;
    for (Vector m : misses) {
      xx += m.x() * m.x();
      xy += m.x() * m.y();
      yy += m.y() * m.y();
    }
    double half = Math.hypot((xx - yy) / 2, xy);
    return Math.sqrt(((xx + yy) / 2 + half) / misses.size());
  }

  /**
   * Where the pipe truly is against where crews dig. The vectors from either landmark to the pipe
   * err together as the line and the network of landmarks state; the first landmark is held, and
   * the second lies where the two vectors put it.
   */
  private static List<Vector> misses(
      Line line, double at, PlanPoint spot, String a, String b, long seed) {
    SplitMix64 random = new SplitMix64(1000 + seed);
    PlanPoint p = plan(line).point(a);
    PlanPoint q = plan(line).point(b);
    double[][] factor = factor(joint(line, new Place("R1", at), a, b));
    List<Vector> misses = new ArrayList<>();
    for (int i = 0; i < CREWS; i++) {
      double[] off = drawn(factor, random);
      PlanPoint truth = new PlanPoint(spot.x() + off[0], spot.y() + off[1]);
      PlanPoint second = new PlanPoint(q.x() + off[0] - off[2], q.y() + off[1] - off[3]);
      double first = p.distanceTo(spot);
      double other = q.distanceTo(spot);
      first += PRIORS.sd(Priors.Kind.TAPE, first) * random.normal();
      other += PRIORS.sd(Priors.Kind.TAPE, other) * random.normal();
      PlanPoint dug = meeting(p, second, first, other, spot);
      if (dug != null) {
        misses.add(new Vector(truth.x() - dug.x(), truth.y() - dug.y()));
      }
    }
    return misses;
  }

  /** Of the errors of the vectors from two landmarks to a place. */
  private static double[][] joint(Line line, Place place, String a, String b) {
    Covariance2 first = line.relative(place, a).orElseThrow();
    Covariance2 second = line.relative(place, b).orElseThrow();
    Covariance2 base = plan(line).relativeCovariance(a, b);
    double xx = (first.xx() + second.xx() - base.xx()) / 2;
    double xy = (first.xy() + second.xy() - base.xy()) / 2;
    double yy = (first.yy() + second.yy() - base.yy()) / 2;
    return new double[][] {
      {first.xx(), first.xy(), xx, xy},
      {first.xy(), first.yy(), xy, yy},
      {xx, xy, second.xx(), second.xy()},
      {xy, yy, second.xy(), second.yy()}
    };
  }

  /** The lower factor of Cholesky. */
  private static double[][] factor(double[][] c) {
    double[][] l = new double[4][4];
    for (int i = 0; i < 4; i++) {
      for (int j = 0; j <= i; j++) {
        double sum = c[i][j];
        for (int k = 0; k < j; k++) {
          sum -= l[i][k] * l[j][k];
        }
        l[i][j] = i == j ? Math.sqrt(Math.max(sum, 1e-12)) : sum / l[j][j];
      }
    }
    return l;
  }

  private static double[] drawn(double[][] factor, SplitMix64 random) {
    double[] normal = new double[4];
    double[] off = new double[4];
    for (int i = 0; i < 4; i++) {
      normal[i] = random.normal();
      for (int k = 0; k <= i; k++) {
        off[i] += factor[i][k] * normal[k];
      }
    }
    return off;
  }

  /** Where two circles meet, the meeting nearer to a spot; null where they do not. */
  private static @Nullable PlanPoint meeting(
      PlanPoint a, PlanPoint b, double fromA, double fromB, PlanPoint near) {
    double d = a.distanceTo(b);
    double along = (fromA * fromA - fromB * fromB + d * d) / (2 * d);
    double squared = fromA * fromA - along * along;
    if (squared < 0) {
      return null;
    }
    double out = Math.sqrt(squared);
    double x = (b.x() - a.x()) / d;
    double y = (b.y() - a.y()) / d;
    PlanPoint left = new PlanPoint(a.x() + along * x - out * y, a.y() + along * y + out * x);
    PlanPoint right = new PlanPoint(a.x() + along * x + out * y, a.y() + along * y - out * x);
    return left.distanceTo(near) < right.distanceTo(near) ? left : right;
  }
}
