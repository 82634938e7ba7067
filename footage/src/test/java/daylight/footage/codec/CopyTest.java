package daylight.footage.codec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import daylight.footage.FootageTrouble;
import daylight.footage.Make;
import daylight.footage.Recording;
import daylight.footage.Watch;
import daylight.footage.Writ;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class CopyTest {
  @TempDir Path folder = Path.of("");

  /** Stops when a share of the work is done, and keeps what it was told. */
  private static final class Impatient implements Watch {
    private final double enough;
    private final List<Double> told = new ArrayList<>();

    Impatient(double enough) {
      this.enough = enough;
    }

    @Override
    public void done(double share) {
      told.add(share);
    }

    @Override
    public boolean stopped() {
      return !told.isEmpty() && told.getLast() >= enough;
    }
  }

  @ParameterizedTest
  @EnumSource(names = {"VP8_WEBM", "VP9_WEBM"})
  void aCopyForTheBrowserHasTheSameFramesAtTheSameTimes(Make make) throws IOException {
    Path film = Sample.VARIABLE_MP4.in(folder);
    Path copy = folder.resolve("copy.webm");
    Impatient watch = new Impatient(2);
    try (Footage original = Films.opened(film)) {
      assertThat(original.recording().variable()).isTrue();
      assertThat(original.copy(copy, make, watch)).isTrue();

      try (Footage copied = Films.opened(copy)) {
        assertThat(copied.recording().browser()).isTrue();
        assertThat(copied.times().count()).isEqualTo(original.times().count());
        for (int n = 0; n < original.times().count(); n++) {
          assertThat(copied.times().secondsOf(n))
              .isCloseTo(original.times().secondsOf(n), within(0.001));
        }
        assertThat(TestFilm.number(copied.frame(61).orElseThrow().raster())).isEqualTo(61);
      }
    }
    assertThat(watch.told).isSorted().last().isEqualTo(1.0);
  }

  @Test
  void aCopyThatWasStoppedLeavesNothing() throws IOException {
    Path film = Sample.MPEG2_TS.in(folder);
    try (Footage footage = Films.opened(film)) {
      assertThat(footage.copy(folder.resolve("copy.webm"), Make.VP8_WEBM, new Impatient(0.3)))
          .isFalse();
    }

    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files).containsExactly(film);
    }
  }

  private static String streams(Path film) throws IOException {
    return String.join(
        " ",
        Program.probed("-show_entries", "stream=codec_name", "-of", "csv=p=0", film.toString()));
  }

  @Test
  void aCopyBeginsAtTheFrameThatIsAskedForAndIsSilent() throws IOException {
    Path film = Sample.WITH_SOUND.in(folder);
    Path copy = folder.resolve("copy.mp4");
    try (Footage original = Films.opened(film)) {
      assertThat(original.copy(copy, Make.VP9_MP4, 37, false, Watch.NOBODY))
          .isEqualTo(new Writ.Written());
    }

    assertThat(streams(copy)).isEqualTo("vp9");
    try (Footage copied = Films.opened(copy)) {
      assertThat(copied.times().count()).isEqualTo(63);
      assertThat(copied.times().secondsOf(10)).isCloseTo(0.4, within(0.001));
      assertThat(TestFilm.number(copied.frame(0).orElseThrow().raster())).isEqualTo(37);
      assertThat(TestFilm.number(copied.frame(62).orElseThrow().raster())).isEqualTo(99);
    }
  }

  @Test
  void soundGoesAlongAsItIsWhereItIsWanted() throws IOException {
    Path film = Sample.WITH_SOUND.in(folder);
    Path copy = folder.resolve("copy.mp4");
    try (Footage original = Films.opened(film)) {
      assertThat(original.copy(copy, Make.VP9_MP4, 50, true, Watch.NOBODY))
          .isEqualTo(new Writ.Written());
      assertThat(original.copy(folder.resolve("copy.webm"), Make.VP9_WEBM, 0, true, Watch.NOBODY))
          .isInstanceOfSatisfying(
              Writ.Refused.class,
              refused ->
                  assertThat(refused.why().trouble()).isEqualTo(FootageTrouble.SOUND_NOT_FOR));
      assertThat(folder.resolve("copy.webm")).doesNotExist();
    }

    assertThat(streams(copy)).isEqualTo("vp9 aac");
    String[] spans =
        Program.probed(
                "-select_streams",
                "a",
                "-show_entries",
                "stream=start_time,duration",
                "-of",
                "csv=p=0",
                copy.toString())
            .getFirst()
            .split(",", -1);
    // From two seconds in, the last two: to within the length of a packet of sound.
    assertThat(Double.parseDouble(spans[0])).isBetween(0.0, 0.03);
    assertThat(Double.parseDouble(spans[1])).isBetween(1.9, 2.05);
    // The packets are those of the original from there on.
    List<String> before = audio(film);
    List<String> after = audio(copy);
    assertThat(before).containsSequence(after);
  }

  private static List<String> audio(Path film) throws IOException {
    return Program.text("-i", film.toString(), "-map", "0:a", "-c", "copy", "-f", "framemd5", "-")
        .lines()
        .filter(line -> !line.startsWith("#"))
        .map(line -> line.substring(line.lastIndexOf(',') + 1).strip())
        .toList();
  }

  @Test
  void openingAndSweepingStopWhenNobodyWaits() throws IOException {
    Path film = Sample.MPEG2_TS.in(folder);

    assertThat(Footage.open(film, new Impatient(0.3))).isInstanceOf(Opening.Stopped.class);
    try (Footage footage = Films.opened(film)) {
      List<Integer> seen = new ArrayList<>();
      List<Integer> all = IntStream.range(0, 100).boxed().toList();

      assertThat(footage.sweep(all, new Impatient(0.3), frame -> seen.add(frame.number())))
          .isFalse();
      assertThat(seen).isEqualTo(all.subList(0, 30));
    }
  }

  @Test
  void pixelsThatAreNotSquareAreWidenedAndLyingPicturesStoodUp() throws IOException {
    Path film = Sample.MPEG4_AVI.in(folder);
    Path wide = folder.resolve("wide.mp4");
    Path upright = folder.resolve("upright.mp4");
    Program.ffmpeg("-i", film.toString(), "-vf", "setsar=16/15", "-c:v", "mpeg4", wide.toString());
    Program.ffmpeg(
        "-display_rotation",
        "90",
        "-i",
        Sample.H264_MP4.in(folder).toString(),
        "-c",
        "copy",
        upright.toString());

    try (Footage footage = Films.opened(wide)) {
      assertThat(footage.recording())
          .extracting(Recording::width, Recording::height)
          .containsExactly(171, 120);
      assertThat(TestFilm.number(footage.frame(42).orElseThrow().raster())).isEqualTo(42);
    }
    try (Footage footage = Films.opened(upright)) {
      assertThat(footage.recording())
          .extracting(Recording::width, Recording::height)
          .containsExactly(120, 160);
      byte[] theirs =
          Program.ffmpeg(
              "-i",
              upright.toString(),
              "-vf",
              "select=eq(n\\,42)",
              "-frames:v",
              "1",
              "-f",
              "rawvideo",
              "-pix_fmt",
              "gray",
              "-");
      int[] ours = footage.frame(42).orElseThrow().raster().pixels();
      for (int i = 0; i < ours.length; i++) {
        assertThat(ours[i] >> 8 & 0xFF).isCloseTo(theirs[i] & 0xFF, within(2));
      }
    }
  }
}
