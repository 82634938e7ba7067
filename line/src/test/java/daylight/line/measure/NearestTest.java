package daylight.line.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestTest {
  private static final List<String> KEYS =
      List.of("depth", "distance", "label", "receiver-height", "landmarks", "levels");

  @ParameterizedTest
  @CsvSource({
    "dpeth,depth",
    "detph,depth",
    "dept,depth",
    "depths,depth",
    "distnace,distance",
    "lables,label",
    "reciever-hieght,receiver-height",
    "recever_hight,receiver-height"
  })
  void findsTheKeyThatWasMeant(String wrong, String meant) {
    assertThat(Nearest.of(wrong, KEYS)).contains(meant);
  }

  @Test
  void findsNothingWhenNothingIsNear() {
    assertThat(Nearest.of("colour", KEYS)).isEmpty();
    assertThat(Nearest.of("depth", List.of())).isEmpty();
  }

  @Test
  void aSwapOfNeighboursCountsOneAndSoBeatsTwoChanges() {
    assertThat(Nearest.of("abcd", List.of("axyd", "acbd"))).contains("acbd");
  }

  @Test
  void ofEquallyNearOnesTheFirstKnownWins() {
    assertThat(Nearest.of("cat", List.of("bat", "hat"))).contains("bat");
    assertThat(Nearest.of("cat", List.of("hat", "bat"))).contains("hat");
  }
}
