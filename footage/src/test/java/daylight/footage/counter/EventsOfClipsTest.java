package daylight.footage.counter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import daylight.footage.scene.Torture;
import daylight.line.book.Finding.Moving;
import daylight.line.counter.Events;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the camera did in clips that are hard to read; the truth is how they were filmed. */
class EventsOfClipsTest {
  @TempDir private Path folder = Path.of("");

  private Events events(String name) throws Exception {
    Found.Counter counter = (Found.Counter) Clip.read(Torture.film(name, folder));
    return Events.of(counter.track("M1"), counter.metresPerStep());
  }

  /** In to 4.1 m, a second's rest at 4 s, back to 2.8 m at 9 s, in again. */
  @Test
  void bothReversalsAreFoundAndNoReset() throws Exception {
    bothAreFound("segments-ft3");
  }

  @Tag("long")
  @ParameterizedTest
  @ValueSource(strings = {"slashed-green", "plain-glare", "thin-m1"})
  void bothReversalsOfTheOthersAreFound(String name) throws Exception {
    bothAreFound(name);
  }

  private void bothAreFound(String name) throws Exception {
    Events events = events(name);

    assertThat(events.resets()).isEmpty();
    assertThat(events.reversals())
        .extracting(Events.Reversal::then)
        .containsExactly(Moving.PULLING, Moving.PUSHING);
    assertThat(events.reversals().getFirst().seconds()).isCloseTo(4.5, within(0.7));
    assertThat(events.reversals().getFirst().counter()).isCloseTo(4.1, within(0.1));
    assertThat(events.reversals().getLast().seconds()).isCloseTo(9, within(0.7));
    assertThat(events.reversals().getLast().counter()).isCloseTo(2.8, within(0.1));
  }

  /** A rest from 4 s to 6.5 s, in the middle of which the counter is zeroed at 6.9 m. */
  @Test
  void theZeroingIsFoundAndNoReversal() throws Exception {
    zeroed("smooth-signed");
  }

  @Tag("long")
  @Test
  void theZeroingOfTheOtherIsFound() throws Exception {
    zeroed("plain-m2");
  }

  private void zeroed(String name) throws Exception {
    Events events = events(name);

    assertThat(events.reversals()).isEmpty();
    assertThat(events.resets()).hasSize(1);
    Events.SetAnew set = events.resets().getFirst();
    assertThat(set.from()).isCloseTo(5.5, within(0.2));
    assertThat(set.before()).isCloseTo(6.9, within(0.1));
    assertThat(set.after()).isCloseTo(0, within(0.04));
  }
}
