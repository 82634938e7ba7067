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

  private static final List<String> OWN =
      List.of(
          "matrix-ft",
          "segments-ft3",
          "plain-m2",
          "dots-inches",
          "smooth-signed",
          "thin-m1",
          "leaning-ft",
          "bold-yellow",
          "slashed-green",
          "faint",
          "as-bright",
          "plain-glare");

  @TempDir private Path folder = Path.of("");

  @ParameterizedTest
  @ValueSource(strings = {"matrix-ft", "segments-ft3", "as-bright"})
  void everyLegibleFrameIsRead(String name) throws Exception {
    Path film = Torture.film(name, folder);
    Found found = Clip.read(film);

    assertThat(found).isInstanceOf(Found.Counter.class);
    Score score = Score.of((Found.Counter) found, truth(film));
    assertThat(score.read()).isGreaterThanOrEqualTo(READ);
    assertThat(score.wrong()).isLessThanOrEqualTo(WRONG);
  }

  /** All clips whose letters are our own, taken together as one long recording. */
  @Tag("long")
  @Test
  void ofAllLegibleFramesNearlyAllAreRead() throws Exception {
    double legible = 0;
    double read = 0;
    double wrong = 0;
    double frames = 0;
    for (String name : OWN) {
      Path film = Torture.film(name, folder);
      Found found = Clip.read(film);
      assertThat(found).as(name).isInstanceOf(Found.Counter.class);
      Score score = Score.of((Found.Counter) found, truth(film));
      int all = truth(film).size();
      legible += score.legible();
      read += score.read() * score.legible();
      wrong += score.wrong() * all;
      frames += all;
    }

    assertThat(read / legible).isGreaterThanOrEqualTo(READ);
    assertThat(wrong / frames).isLessThanOrEqualTo(WRONG);
  }

  @Test
  void glareBehindTheDigitsLeavesThemReadOrUnreadButNeverWrong() throws Exception {
    Path film = Torture.film("plain-glare", folder);
    Score score = Score.of((Found.Counter) Clip.read(film), truth(film));

    assertThat(score.wrong()).isZero();
    assertThat(score.read()).isGreaterThan(0.97);
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
