package daylight.footage.codec;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.footage.Chapter;
import daylight.footage.FootageTrouble;
import daylight.footage.Watch;
import daylight.footage.Writ;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Chapters inside MP4; read back by ffprobe, the packets hashed by ffmpeg. */
class ChapteredTest {
  private static final List<Chapter> CHAPTERS =
      List.of(
          new Chapter(0, 1.28, "C1, 0' 0\""),
          new Chapter(1.28, 2.5, "F1 Crack; é ½ ± <&>"),
          new Chapter(2.5, 2.6, "F2"));

  @TempDir private Path folder = Path.of("");

  private Writ chaptered(Path film, Path target) throws IOException {
    try (Footage footage = Films.opened(film)) {
      return footage.chaptered(target, CHAPTERS, Watch.NOBODY);
    }
  }

  private static String hashes(Path film) throws IOException {
    return Program.text("-i", film.toString(), "-c", "copy", "-f", "streamhash", "-");
  }

  @ParameterizedTest
  @EnumSource(
      names = {
        "H264_MP4",
        "VARIABLE_MP4",
        "MJPEG_MOV",
        "VP9_WEBM",
        "H264_MKV",
        "H264_CUT_MP4",
        "H264_FRAGMENTED",
        "MPEG4_B_MP4",
        "AV1_MP4",
        "WITH_SOUND"
      })
  void chaptersAreReadBackAndNotAPacketChanged(Sample sample) throws IOException {
    Path film = sample.in(folder);
    Path copy = folder.resolve("chaptered.mp4");

    assertThat(chaptered(film, copy)).isEqualTo(new Writ.Written());

    // The first frame of one sample comes 0.02 s into its file.
    double first = sample == Sample.VARIABLE_MP4 ? 0.02 : 0;
    assertThat(Program.probed("-show_chapters", "-of", "csv=p=0:nk=1", copy.toString()))
        .containsExactly(
            "0,1/1000,0,0.000000," + until(first + 1.28) + ",\"C1, 0' 0\"\"\"",
            "1,1/1000," + until(first + 1.28) + "," + until(first + 2.5) + ",F1 Crack; é ½ ± <&>",
            "2,1/1000," + until(first + 2.5) + "," + until(first + 2.6) + ",F2");
    assertThat(hashes(copy)).isEqualTo(hashes(film)).contains("SHA256=");
    assertSameFrames(film, copy);
  }

  private static String until(double seconds) {
    return String.format(Locale.ROOT, "%d,%.6f", Math.round(1000 * seconds), seconds);
  }

  private static void assertSameFrames(Path film, Path copy) throws IOException {
    try (Footage before = Films.opened(film);
        Footage after = Films.opened(copy)) {
      assertThat(after.times().count()).isEqualTo(before.times().count());
      for (int frame : new int[] {0, 1, 31, before.times().count() - 1}) {
        assertThat(TestFilm.number(after.frame(frame).orElseThrow().raster()))
            .isEqualTo(TestFilm.number(before.frame(frame).orElseThrow().raster()));
      }
    }
  }

  @ParameterizedTest
  @EnumSource(names = {"VP8_WEBM", "MPEG4_AVI", "MPEG2_MPG", "MPEG2_TS", "MJPEG_AVI"})
  void whatMp4CannotTakeAsItIsIsRefused(Sample sample) throws IOException {
    Path film = sample.in(folder);
    Path copy = folder.resolve("chaptered.mp4");

    assertThat(chaptered(film, copy))
        .isInstanceOfSatisfying(
            Writ.Refused.class,
            refused -> assertThat(refused.why().trouble()).isEqualTo(FootageTrouble.NOT_FOR_MP4));
    try (var files = Files.list(folder)) {
      assertThat(files).containsExactly(film);
    }
  }

  @Test
  void noTagOfTheOriginalGoesAlong() throws IOException {
    Path tagged = folder.resolve("tagged.mp4");
    Program.ffmpeg(
        "-i",
        Sample.H264_MP4.in(folder).toString(),
        "-c",
        "copy",
        "-metadata",
        "location=+59.00+018.00/",
        "-metadata",
        "creation_time=2026-04-18T10:02:37Z",
        "-metadata",
        "comment=secret",
        tagged.toString());
    Path copy = folder.resolve("copy.mp4");
    assertThat(tags(tagged)).contains("+59.00", "2026-04-18", "secret");

    chaptered(tagged, copy);

    assertThat(tags(copy)).doesNotContain("+59", "2026-04-18", "secret");
    assertThat(new String(Files.readAllBytes(copy), StandardCharsets.ISO_8859_1))
        .doesNotContain("+59", "secret");
  }

  private static String tags(Path film) throws IOException {
    return String.join(
        "\n", Program.probed("-show_format", "-show_streams", "-of", "json", film.toString()));
  }

  @Test
  void stoppedItLeavesNothing() throws IOException {
    Path film = Sample.H264_MP4.in(folder);
    Watch impatient =
        new Watch() {
          @Override
          public void done(double share) {}

          @Override
          public boolean stopped() {
            return true;
          }
        };
    try (Footage footage = Films.opened(film)) {
      assertThat(footage.chaptered(folder.resolve("copy.mp4"), CHAPTERS, impatient))
          .isEqualTo(new Writ.Stopped());
    }
    try (var files = Files.list(folder)) {
      assertThat(files).containsExactly(film);
    }
  }
}
