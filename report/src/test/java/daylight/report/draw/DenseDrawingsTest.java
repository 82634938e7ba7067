package daylight.report.draw;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.report.Dense;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DenseDrawingsTest {

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void crowdedLinesKeepTheirTextsApart(int seed) {
    Subject subject = DrawingsTest.subject(Dense.handout(seed));

    assertThat(LabelOverlaps.of(PlanDrawing.draw(subject))).isEmpty();
    assertThat(LabelOverlaps.of(ProfileDrawing.draw(subject))).isEmpty();
  }
}
