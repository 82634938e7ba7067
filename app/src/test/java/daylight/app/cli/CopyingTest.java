package daylight.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import daylight.app.CountedFilm;
import daylight.app.Ffprobe;
import daylight.footage.Make;
import daylight.footage.Watch;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** The commands {@code proxy} and {@code copy}; what is in a copy is told by ffprobe. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class CopyingTest {
  private Path folder = Path.of("");
  private Path film = Path.of("");
  private byte[] original = {};

  /** A push with voices, a place, a day and a device in its tags. */
  @BeforeAll
  void films(@TempDir Path made) throws IOException {
    folder = made;
    film = CountedFilm.withVoices(folder.resolve("push.mp4"));
    original = Files.readAllBytes(film);
    assertThat(tags(film)).contains("+59.0000+018.0000", "2026-04-18T10", "Invented Camera 7");
  }

  private static String tags(Path file) throws IOException {
    return Ffprobe.says(file, "-show_format", "-show_streams", "-of", "json");
  }

  private static String streams(Path file) throws IOException {
    return Ffprobe.says(file, "-show_entries", "stream=codec_type,codec_name", "-of", "csv=p=0")
        .replace("\n", " ");
  }

  private static String frames(Path file) throws IOException {
    return Ffprobe.says(
        file,
        "-count_frames",
        "-select_streams",
        "v",
        "-show_entries",
        "stream=nb_read_frames",
        "-of",
        "csv=p=0");
  }

  private void assertNothingPrivate(Path copy) throws IOException {
    assertThat(tags(copy))
        .doesNotContainIgnoringCase("location", "creation_time", "Invented Camera");
    assertThat(new String(Files.readAllBytes(copy), StandardCharsets.ISO_8859_1))
        .doesNotContain("+59.0000", "Invented Camera");
    assertThat(Files.readAllBytes(film)).isEqualTo(original);
  }

  @Test
  void aCopyBeginsWhereTheCameraEntersAndIsSilent() throws IOException {
    Path copy = folder.resolve("copy.webm");

    Said said = Said.by("copy", film, "--to", copy, "--json");

    assertThat(said.code()).as(said.err()).isEqualTo(ExitCode.DONE);
    int entry = (int) Math.round(said.json().path("from").asDouble() * CountedFilm.RATE);
    // The last frame that shows nothing before the counter runs out.
    assertThat(CountedFilm.shown(entry)).isEqualTo("0.0 ft");
    assertThat(CountedFilm.shown(entry + 1)).isEqualTo("0.1 ft");
    assertThat(streams(copy)).isEqualTo("vp9,video");
    assertThat(frames(copy)).isEqualTo(String.valueOf(CountedFilm.FRAMES - entry));
    assertNothingPrivate(copy);
    // Its own first frame is that of the entry: the same reading, none before.
    Said counter = Said.by("counter", copy, "--csv");
    assertThat(counter.out().lines().skip(1).findFirst().orElseThrow())
        .isEqualTo("0.000000,0.0000,0.0 ft,read");
  }

  @Test
  void soundIsCopiedOnlyWhenItIsChosen() throws IOException {
    Path copy = folder.resolve("loud.mp4");

    assertThat(Said.by("copy", film, "--to", copy, "--sound", "--from", "0:18").code())
        .isEqualTo(ExitCode.DONE);

    assertThat(streams(copy)).isEqualTo("vp9,video aac,audio");
    assertThat(frames(copy)).isEqualTo("20");
    assertNothingPrivate(copy);
    Said webm =
        Said.by("copy", film, "--to", folder.resolve("loud.webm"), "--sound", "--from", "0");
    assertThat(webm.code()).isEqualTo(ExitCode.BOOK_REFUSED);
    assertThat(webm.err()).contains("its sound (aac) cannot go into a .webm file");
  }

  @Test
  void withoutACounterTheBeginningMustBeSaid() throws IOException {
    Path still = folder.resolve("still.mp4");
    Ffprobe.ffmpeg(
        "-f", "lavfi", "-i", "testsrc2=d=2:r=10:s=160x120", "-c:v", "mpeg4", still.toString());

    Said said = Said.by("copy", still, "--to", folder.resolve("none.webm"));

    assertThat(said.code()).isEqualTo(ExitCode.SOMETHING_OPEN);
    assertThat(folder.resolve("none.webm")).doesNotExist();
    assertThat(Said.by("copy", still, "--to", folder.resolve("x.webm"), "--from", "9").err())
        .contains("is no moment of this recording");
  }

  @Test
  void aProxyHasEveryFrameAtItsTimeAndLiesBesideTheRecording() throws IOException {
    Path avi = CountedFilm.write(folder.resolve("old.avi"), Make.MPEG4_AVI);

    Said said = Said.by("proxy", avi);

    assertThat(said.code()).as(said.err()).isEqualTo(ExitCode.DONE);
    assertThat(said.err()).contains("writing a copy of old.avi");
    Path proxy = folder.resolve("old-proxy.webm");
    assertThat(streams(proxy)).isEqualTo("vp9,video");
    assertThat(frames(proxy)).isEqualTo(String.valueOf(CountedFilm.FRAMES));
    assertThat(
            Double.parseDouble(
                Ffprobe.says(proxy, "-show_entries", "format=duration", "-of", "csv=p=0")))
        .isCloseTo(20, within(0.11));
    assertThat(Said.by("proxy", avi).err()).contains("is there already");
    // It takes chapters, which the AVI does not.
    Path chaptered = folder.resolve("old-chaptered.mp4");
    assertThat(Said.by("chapters", proxy, "--to", chaptered).code()).isEqualTo(ExitCode.DONE);
    assertThat(Ffprobe.says(chaptered, "-show_chapters")).contains("[CHAPTER]");
  }

  @Test
  void aProxyKeepsTheSoundThatItsFileCanHoldAndSaysWhereItCannot() throws IOException {
    Path loud = folder.resolve("proxy-loud.mp4");
    Path silent = folder.resolve("proxy-silent.webm");

    Said kept = Said.by("proxy", film, "--to", loud, "--json");
    Said left = Said.by("proxy", film, "--to", silent);

    assertThat(kept.json().path("sound").asText()).isEqualTo("kept");
    assertThat(streams(loud)).isEqualTo("vp9,video aac,audio");
    assertThat(frames(loud)).isEqualTo(String.valueOf(CountedFilm.FRAMES));
    // All but the packet that comes before the first picture, by which AAC gets going.
    List<String> original = sound(film);
    assertThat(original).hasSizeGreaterThan(800);
    assertThat(sound(loud)).isEqualTo(original.subList(1, original.size()));
    assertNothingPrivate(loud);
    assertThat(left.code()).isEqualTo(ExitCode.DONE);
    assertThat(left.out())
        .contains("It is without sound: what the recording has (aac) cannot go into a .webm file");
    assertThat(streams(silent)).isEqualTo("vp9,video");
    assertThat(Said.by("proxy", film, "--to", silent, "--over", "--json").json().path("sound"))
        .hasToString("\"left-out\"");
  }

  /** A digest of each packet of sound. */
  private static List<String> sound(Path file) throws IOException {
    return Ffprobe.says(
            file,
            "-select_streams",
            "a",
            "-show_packets",
            "-show_data_hash",
            "sha256",
            "-show_entries",
            "packet=data_hash",
            "-of",
            "csv=p=0")
        .lines()
        .toList();
  }

  @Test
  void whoeverWatchesIsToldOfCtrlC() throws InterruptedException {
    Thread asking;
    try (Halt halt = Halt.begin()) {
      assertThat(halt.over(Watch.NOBODY).stopped()).isFalse();
      asking = Thread.ofPlatform().start(halt::ask);
      while (!halt.asked()) {
        Thread.onSpinWait();
      }
      assertThat(halt.over(Watch.NOBODY).stopped()).isTrue();
      assertThat(asking.isAlive()).as("it waits for the work to end").isTrue();
    }
    asking.join(10_000);
    assertThat(asking.isAlive()).isFalse();
  }
}
