package daylight.footage.counter;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.function.IntToLongFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class JudgeTest {
  private static final int FRAMES = 300;

  private static Series figure(IntToLongFunction value) {
    long[] steps = IntStream.range(0, FRAMES).mapToLong(value).toArray();
    String[] shown = Arrays.stream(steps).mapToObj(String::valueOf).toArray(String[]::new);
    return new Series(steps, shown, 0, 1, " m");
  }

  private static Judge.Kind kind(Series series) {
    return Judge.kind(series, IntStream.range(0, FRAMES).mapToDouble(i -> i / 10.0).toArray());
  }

  /** What stands in a damaged recording beside its counter: a name that reads like "9M". */
  @Test
  void aCaptionThatIsMisreadNowAndThenIsNoDistance() {
    assertThat(kind(figure(i -> i % 30 == 7 ? 11 : i % 50 == 9 ? 7 : 9)))
        .isEqualTo(Judge.Kind.STILL);
  }

  @Test
  void aShortWayInWholeMetresWithALongRestIs() {
    assertThat(kind(figure(i -> Math.min(i / 12, 5)))).isEqualTo(Judge.Kind.DISTANCE);
  }

  @Test
  void ofTwoThatGoLikeCountersTheOneThatTurnedOftenerCountsMore() {
    assertThat(Judge.weight(figure(i -> i / 10)))
        .isGreaterThan(Judge.weight(figure(i -> i / 100 % 2)));
  }
}
