package daylight.report.draw;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.report.markup.Tag;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Fifty lines by chance, with far more on them than there is room for, sheet by sheet. */
class DenseSheetsTest {
  private static IntStream seeds() {
    return new SplittableRandom(50).ints(50, 1000, 100_000);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void nothingLiesOnAnythingElse(int seed) {
    SplittableRandom chance = new SplittableRandom(seed);
    int metres = chance.nextInt(60, 400);
    Subject subject = DenseYard.subject(seed, metres, chance.nextInt(metres / 4, metres / 2));

    List<Tag> sheets = PlanSheets.of(subject);
    assertThat(sheets).hasSizeGreaterThan(PlanSheets.isLong(subject) ? 1 : 0);
    for (Tag sheet : sheets) {
      assertThat(Clashes.of(sheet)).isEmpty();
    }
  }
}
