package daylight.line.course;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.line.counter.Tracks;
import daylight.line.survey.Adjusted;
import daylight.line.survey.Undetermined;
import org.junit.jupiter.api.Test;

/**
 * A property, one of 24 000 drawn, on whose yard some marks come to lie in one line with those they
 * are taped from. The tapes fit anywhere along a long valley: the iteration does not end, however
 * well it fits.
 */
class HingeTest {
  private static final int SEED = 1720;

  @Test
  void marksInOneLineDoNotTakeTheRestWithThem() {
    KnownProperty property = KnownProperty.of(Nature.OTHERWISE, LineClasses.ALL.get(10), SEED);

    Line line = Estimator.estimate(property.book(), Tracks.NONE, KnownProperty.PRIORS);

    assertThat(line.survey())
        .isInstanceOfSatisfying(
            Adjusted.class,
            survey -> {
              assertThat(survey.undetermined()).isNotEmpty();
              assertThat(survey.undetermined())
                  .allSatisfy(
                      point ->
                          assertThat(point)
                              .isInstanceOfSatisfying(
                                  Undetermined.Untied.class,
                                  untied ->
                                      assertThat(untied.reason())
                                          .isIn(
                                              Undetermined.Reason.TOO_FLAT,
                                              Undetermined.Reason.NOT_REACHED)));
            });
    assertThat(line.runs()).anyMatch(run -> run.path() instanceof Run.Path.Found);
  }
}
