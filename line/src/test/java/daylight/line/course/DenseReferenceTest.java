package daylight.line.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import daylight.line.book.FieldBook;
import daylight.line.book.Priors;
import daylight.line.counter.Tracks;
import daylight.line.survey.Adjusted;
import daylight.line.survey.LevelAdjusted;
import daylight.line.survey.Survey;
import daylight.line.survey.Surveyor;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The estimate knot by knot is the estimate with everything written out in full: positions to a
 * micrometre, or a thousandth of their uncertainty where an unknown hardly hangs on anything and
 * steps shorten slowly; uncertainties to a thousandth. So its interval scores are those of the
 * dense one.
 */
class DenseReferenceTest {
  private static final Priors PRIORS = TestPriors.shipped();

  private static final double SLOWLY = 1e-3;

  private static Fit.Fitted fitted(FieldBook book, double knots) {
    Tree tree = Tree.grow(book, "main").getFirst();
    Survey survey = Surveyor.survey(book, PRIORS);
    Gathered gathered =
        Gathered.of(
            book,
            tree,
            true,
            true,
            survey.plan() instanceof Adjusted plan ? plan : null,
            survey.levels() instanceof LevelAdjusted levels ? levels : null,
            PRIORS);
    double[] shared = Start.shared(gathered, book, PRIORS);
    return Fit.fit(new Model(gathered, knots, shared, SetAside.NOTHING, Wander.none()), shared);
  }

  /**
   * @param slowly the share of an uncertainty by which a position may differ all the same
   */
  private static void agree(Fit.Fitted fitted, double slowly) {
    DenseReference dense = DenseReference.of(fitted.model(), fitted.hands());
    Knots knots = fitted.model().knots();
    for (int limb = 0; limb < fitted.model().layout().tree().limbs().size(); limb++) {
      for (int i = 0; i < knots.count(limb); i++) {
        for (int which : new int[] {Knots.EAST, Knots.NORTH, Knots.UP}) {
          int unknown = knots.unknown(limb, i, which);
          String where = "limb " + limb + ", knot " + i + ", coordinate " + which;
          double sd = Math.sqrt(dense.of(unknown, unknown));
          assertThat(fitted.x()[unknown])
              .as(where)
              .isCloseTo(dense.x()[unknown], within(Math.max(1e-6, slowly * sd)));
          double variance = fitted.covariance().variance(Equations.one(unknown));
          assertThat(Math.sqrt(variance) / sd)
              .as("uncertainty of " + where)
              .isCloseTo(1, within(1e-3));
        }
      }
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 4, 6, 7, 11})
  void aShortLineIsTheSameWrittenOutInFull(int sort) {
    agree(
        fitted(KnownProperty.of(Nature.SUPPOSED, LineClasses.ALL.get(sort), 3).book(), 1), SLOWLY);
    agree(
        fitted(KnownProperty.of(Nature.OTHERWISE, LineClasses.ALL.get(sort), 4).book(), 1), SLOWLY);
  }

  @Test
  void soIsOneWithWaterAndOneSeenFromBothEnds() {
    LineSort wet = LineSort.of(2, 2, 3, LineSort.Way.FLEXIBLE, LineSort.Way.WET);
    LineSort twice = LineSort.of(2, 2, 3, LineSort.Way.FLEXIBLE, LineSort.Way.TWICE);
    agree(fitted(KnownProperty.of(Nature.SUPPOSED, wet, 5).book(), 1), SLOWLY);
    agree(fitted(KnownProperty.of(Nature.SUPPOSED, twice, 1).book(), 1), SLOWLY);
  }

  /** 150 m at a knot every 0.4 m: some 400 knots. */
  @Tag("long")
  @Test
  void soIsOneOfFourHundredKnots() {
    FieldBook book = KnownProperty.of(Nature.SUPPOSED, LineClasses.ALL.get(9), 1).book();
    Fit.Fitted fitted = fitted(book, 0.38);

    assertThat(fitted.model().knots().count(0)).isBetween(380, 440);
    agree(fitted, 0);
  }

  /**
   * The grain of the knots costs nothing: the interval score at a knot every metre is within 5 % of
   * that at a knot every 0.2 m, of which the line at 1 m is the coarse copy.
   */
  @Test
  void knotsAMetreApartScoreAsWellAsFineOnes() {
    double coarse = 0;
    double fine = 0;
    for (int sort : new int[] {0, 2, 4, 6, 7, 11}) {
      for (int seed = 1; seed <= 4; seed++) {
        KnownProperty property =
            KnownProperty.of(Nature.OTHERWISE, LineClasses.ALL.get(sort), seed);
        coarse += score(property, 1.0);
        fine += score(property, 0.2);
      }
    }
    assertThat(coarse / fine).isBetween(0.95, 1.05);
  }

  private static double score(KnownProperty property, double knots) {
    Calibration calibration = new Calibration();
    SplitMix64 random = new SplitMix64(17);
    for (int i = 0; i < 5; i++) {
      calibration.add(
          property,
          Estimator.estimate(property.book(), Tracks.NONE, PRIORS, new Spacing(0.3, knots)),
          random);
    }
    return calibration.score(Calibration.Trial::across, t -> true)
        + calibration.score(Calibration.Trial::along, t -> true)
        + calibration.score(Calibration.Trial::depth, t -> true);
  }
}
