package daylight.footage.counter;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.footage.scene.Torture;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A sample of the clips that are hard to read, in faces of our own; the truth is what was burned
 * in.
 */
class CounterReaderTest {
  /** Of legible frames so many are read exactly; the figure the room is held to. */
  private static final double READ = 0.995;

  private static final double WRONG = 0.001;

  @TempDir private Path folder = Path.of("");

  @ParameterizedTest
  @ValueSource(strings = {"matrix-ft", "segments-ft3"})
  void everyLegibleFrameIsRead(String name) throws Exception {
    Path film = Torture.film(name, folder);
    Found found = Clip.read(film);

    assertThat(found).isInstanceOf(Found.Counter.class);
    Score score = Score.of((Found.Counter) found, truth(film));
    assertThat(score.read()).isGreaterThanOrEqualTo(READ);
    assertThat(score.wrong()).isLessThanOrEqualTo(WRONG);
  }

  @Tag("long")
  @ParameterizedTest
  @ValueSource(
      strings = {"plain-m2", "dots-inches", "bold-yellow", "faint", "leaning-ft", "thin-m1"})
  void everyLegibleFrameOfTheOthersIsRead(String name) throws Exception {
    everyLegibleFrameIsRead(name);
  }

  @Test
  void glareBehindTheDigitsLeavesThemReadOrUnreadButNeverWrong() throws Exception {
    Path film = Torture.film("plain-glare", folder);
    Score score = Score.of((Found.Counter) Clip.read(film), truth(film));

    assertThat(score.wrong()).isZero();
    assertThat(score.read()).isGreaterThan(0.85);
  }

  @Test
  void aCounterZeroedOnTheWayIsToldOnce() throws Exception {
    Found found = Clip.read(Torture.film("smooth-signed", folder));

    assertThat(((Found.Counter) found).leaps()).hasSize(1);
  }

  @Test
  void aClockAndABatteryAreNoCounter() throws Exception {
    assertThat(Clip.read(Torture.film("none-time", folder))).isInstanceOf(Found.None.class);
  }

  private static List<Clip.Truth> truth(Path film) throws IOException {
    return Clip.truth(Files.readAllLines(film.resolveSibling(film.getFileName() + ".txt")));
  }
}
