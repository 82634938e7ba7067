package daylight.app.track;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.footage.counter.Found;
import daylight.footage.counter.Reading;
import daylight.footage.counter.Window;
import daylight.line.counter.Track.State;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is kept comes back as it was, or not at all. */
class KeptCounterTest {
  private static final List<String> HEAD = List.of("form,1", "media,abc");

  private static final Found.Counter COUNTER =
      new Found.Counter(
          new Window(10, 20, 90, 24),
          "ft",
          0.03048,
          List.of(
              new Reading(0, 0, "0.0 ft", State.READ),
              new Reading(0.1, 1.0 / 3, "", State.BRIDGED),
              new Reading(0.2, 3.048, "1,0' 2\"", State.READ),
              new Reading(0.30000000000000004, 0, "", State.UNKNOWN)),
          List.of(2));

  @Test
  void comesBackBitByBit() {
    for (Found one : List.of(COUNTER, new Found.None(Found.Why.NOT_LEGIBLE))) {
      assertThat(KeptCounter.read(KeptCounter.written(HEAD, one), HEAD)).contains(one);
    }
  }

  @Test
  void underAnotherHeadItIsNotThere() {
    assertThat(KeptCounter.read(KeptCounter.written(HEAD, COUNTER), List.of("form,1", "media,abd")))
        .isEmpty();
  }

  @Test
  void withOneLetterChangedOrOneLineGoneItIsNotThere() {
    for (Found one : List.of(COUNTER, new Found.None(Found.Why.NO_DISTANCE))) {
      List<String> lines = KeptCounter.written(HEAD, one);
      for (int i = 0; i < lines.size(); i++) {
        List<String> without = new ArrayList<>(lines);
        without.remove(i);
        assertThat(read(without)).as("without line %d", i).isEmpty();
        List<String> twice = new ArrayList<>(lines);
        twice.add(i, lines.get(i));
        assertThat(read(twice)).as("line %d twice", i).isEmpty();
        for (int at = 0; at < lines.get(i).length(); at++) {
          List<String> changed = new ArrayList<>(lines);
          StringBuilder line = new StringBuilder(lines.get(i));
          line.setCharAt(at, line.charAt(at) == '7' ? '3' : '7');
          changed.set(i, line.toString());
          assertThat(read(changed)).as(line.toString()).isEmpty();
        }
      }
    }
  }

  private static Optional<Found> read(List<String> lines) {
    try {
      return KeptCounter.read(lines, HEAD);
    } catch (IllegalArgumentException nobodyWroteThat) {
      return Optional.empty();
    }
  }
}
