package daylight.footage.counter;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Tenths of a metre at ten frames a second. */
class PathTest {
  private static List<Long> kept(long... steps) {
    Series series = new Series(steps, new String[steps.length], 1, 1, " m");
    double[] seconds = IntStream.range(0, steps.length).mapToDouble(i -> i / 10.0).toArray();
    return Path.through(series, seconds).stream().map(Path.Stay::steps).toList();
  }

  @Test
  void aSmudgedDigitIsPassedOver() {
    assertThat(kept(10, 10, 11, 71, 71, 12, 12, 13)).containsExactly(10L, 11L, 12L, 13L);
  }

  @Test
  void aLongSmudgeIsPassedOverToo() {
    long[] steps = new long[90];
    Arrays.fill(steps, 0, 30, 13);
    Arrays.fill(steps, 30, 60, 83);
    Arrays.fill(steps, 60, 90, 13);

    assertThat(kept(steps)).containsOnly(13L);
  }

  @Test
  void aCounterThatIsZeroedGoesOnFromThere() {
    long[] steps = IntStream.range(0, 60).mapToLong(i -> i < 30 ? 200 + i : i - 30).toArray();

    assertThat(kept(steps)).containsExactlyElementsOf(Arrays.stream(steps).boxed().toList());
  }

  @Test
  void nothingReadIsNoPath() {
    assertThat(kept(Series.NONE, Series.NONE)).isEmpty();
  }
}
