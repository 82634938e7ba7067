package daylight.report.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class SpreadTest {

  @Test
  void whatHasRoomStaysWhereItBelongs() {
    assertThat(Spread.middles(List.of(10.0, 40.0), List.of(8.0, 8.0), 0, 100))
        .containsExactly(10.0, 40.0);
  }

  @Test
  void whatIsCrowdedGivesWayToBothSidesAlike() {
    assertThat(Spread.middles(List.of(50.0, 50.0, 50.0), List.of(10.0, 10.0, 10.0), 0, 100))
        .containsExactly(40.0, 50.0, 60.0);
  }

  @Test
  void nothingLeavesTheRowAsLongAsThereIsRoom() {
    assertThat(Spread.middles(List.of(1.0, 2.0, 99.0), List.of(10.0, 10.0, 10.0), 0, 100))
        .containsExactly(5.0, 15.0, 95.0);
  }

  @Test
  void neighboursNeverOverlapWhateverIsWanted() {
    SplittableRandom random = new SplittableRandom(7);
    for (int round = 0; round < 200; round++) {
      int count = random.nextInt(0, 12);
      List<Double> wanted =
          Stream.generate(() -> random.nextDouble(0, 200)).limit(count).sorted().toList();
      List<Double> widths = Collections.nCopies(count, 15.0);

      List<Double> middles = Spread.middles(wanted, widths, 0, 200);

      for (int i = 1; i < count; i++) {
        assertThat(middles.get(i) - middles.get(i - 1)).isGreaterThanOrEqualTo(15 - 1e-9);
      }
      assertThat(middles).allMatch(x -> x >= 7.5 - 1e-9 && x <= 192.5 + 1e-9);
    }
  }
}
