package daylight.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import daylight.app.CountedFilm;
import daylight.app.Ffprobe;
import daylight.footage.Make;
import daylight.footage.Raster;
import daylight.footage.Rate;
import daylight.footage.codec.Film;
import daylight.line.counter.Sought;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Pictures at a distance; what is true of every frame is what was burned into it. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class StillAtDistanceTest {
  private Path folder = Path.of("");
  private Path film = Path.of("");

  @BeforeAll
  void films(@TempDir Path made) throws IOException {
    folder = made;
    film = CountedFilm.write(folder.resolve("push.avi"), Make.MPEG4_AVI);
  }

  private JsonNode still(Object... words) {
    Object[] all = {"still", film, "-o", folder.resolve("stills"), "--json"};
    Object[] both = Arrays.copyOf(all, all.length + words.length);
    System.arraycopy(words, 0, both, all.length, words.length);
    Said said = Said.by(both);
    assertThat(said.code()).as(said.out() + said.err()).isEqualTo(ExitCode.DONE);
    return said.json().path("stills").path(0);
  }

  /** In the middle of the frames of a stretch that show a text. */
  private static int middle(int from, int to, String text) {
    int[] frames =
        IntStream.range(from, to).filter(n -> CountedFilm.shown(n).equals(text)).toArray();
    assertThat(frames).isNotEmpty();
    return frames[0] + (frames[frames.length - 1] - frames[0]) / 2;
  }

  @Test
  void theFirstAndTheLastTimeInAnyUnit() {
    JsonNode first = still("--at", "4.0 ft");
    JsonNode metric = still("--at", "1.22 m");
    JsonNode last = still("--at", "4' 0\"", "--which", "last");

    assertThat(first.path("frame").asInt()).isEqualTo(middle(0, 110, "4.0 ft"));
    assertThat(first.path("shown").asText()).isEqualTo("4.0 ft");
    assertThat(first.path("state").asText()).isEqualTo("read");
    assertThat(first.path("times").asInt()).isEqualTo(2);
    assertThat(metric.path("frame")).isEqualTo(first.path("frame"));
    assertThat(last.path("frame").asInt()).isEqualTo(middle(160, CountedFilm.FRAMES, "4.0 ft"));
  }

  @Test
  void theNearestRest() {
    JsonNode rest = still("--at", "5.2 ft", "--which", "rest");

    assertThat(rest.path("frame").asInt()).isBetween(80, 110);
    assertThat(rest.path("shown").asText()).isEqualTo("6.0 ft");
  }

  @Test
  void theSentenceSaysWhatTheCounterShowedAndWhichTimeItIs() {
    Said said = Said.by("still", film, "--at", "4 ft", "-o", folder.resolve("said"));

    assertThat(said.out())
        .contains("the counter shows 4.0 ft, read; the first of 2 times it came to 4 ft");
  }

  @Test
  void whatWasNeverReachedIsToldWithTheFurthest() {
    Said said = Said.by("still", film, "--at", "52.8ft", "-o", folder.resolve("never"));

    assertThat(said.code()).isEqualTo(ExitCode.SOMETHING_OPEN);
    assertThat(said.err())
        .contains("the counter never came to 52.8ft; it ran from 0.0 ft to 9.0 ft, the furthest");
    assertThat(Files.exists(folder.resolve("never"))).isFalse();
  }

  @Test
  void withoutACounterThereIsNoDistance() throws IOException {
    Path plain = folder.resolve("plain.mp4");
    try (Film writing = Film.begin(plain, Make.H264_MP4, 160, 120, Rate.of(10))) {
      Raster raster = new Raster(160, 120);
      for (int i = 0; i < 20; i++) {
        writing.add(raster);
      }
      writing.finish();
    }

    Said said = Said.by("still", plain, "--at", "4 ft");

    assertThat(said.code()).isEqualTo(ExitCode.SOMETHING_OPEN);
    assertThat(said.err()).contains("no counter");
  }

  @Test
  void whatIsNeitherAMomentNorADistanceIsNotUnderstood() {
    Said said = Said.by("still", film, "--at", "noon");

    assertThat(said.code()).isEqualTo(ExitCode.USAGE);
    assertThat(said.err()).contains("neither a moment of this recording, which runs 0:20.000");
  }

  /** Recordings of every usual kind, by the ending of their names. */
  private Path film(String kind) throws IOException {
    Path file = folder.resolve("kind." + kind);
    if (kind.equals("mkv")) {
      Ffprobe.ffmpeg("-i", film("mp4").toString(), "-c", "copy", file.toString());
      return file;
    }
    return CountedFilm.write(
        file,
        switch (kind) {
          case "mp4" -> Make.H264_MP4;
          case "avi" -> Make.MPEG4_AVI;
          case "mpg" -> Make.MPEG2_MPG;
          case "mov" -> Make.MJPEG_MOV;
          default -> throw new IllegalArgumentException(kind);
        });
  }

  /**
   * Reference: FFmpeg's own {@code select} filter, by the program of the same library. The frame
   * that it counts to is put into a file of its own without loss (FFV1, RFC 9043; Motion JPEG has
   * full range), and the still of that one frame must be the same bytes as the still at the
   * distance.
   */
  @ParameterizedTest
  @ValueSource(strings = {"mp4", "avi", "mpg", "mov", "mkv"})
  void aStillAtADistanceIsBitByBitTheFrameThatFfmpegSelects(String kind) throws IOException {
    Path video = film(kind);
    for (Sought.Which which : Sought.Which.values()) {
      String name = which.name().toLowerCase(Locale.ROOT);
      Path stills = folder.resolve(kind + "-" + name);
      Said said =
          Said.by("still", video, "--at", "4.0 ft", "--which", name, "-o", stills, "--json");
      assertThat(said.code()).as(said.err()).isEqualTo(ExitCode.DONE);
      JsonNode still = said.json().path("stills").path(0);
      int frame = still.path("frame").asInt();

      // What was burned into that frame, and on which way.
      assertThat(CountedFilm.shown(frame))
          .isEqualTo(which == Sought.Which.REST ? "6.0 ft" : "4.0 ft");
      assertThat(frame)
          .isBetween(
              which == Sought.Which.LAST ? 160 : which == Sought.Which.REST ? 80 : 20,
              which == Sought.Which.LAST ? 199 : which == Sought.Which.REST ? 110 : 79);
      Path one = folder.resolve(kind + "-" + name + "-one.mkv");
      Ffprobe.ffmpeg(
          "-i",
          video.toString(),
          "-vf",
          "select=eq(n\\," + frame + ")",
          "-frames:v",
          "1",
          "-c:v",
          "ffv1",
          "-color_range",
          kind.equals("mov") ? "pc" : "tv",
          one.toString());
      Path theirs = folder.resolve(kind + "-" + name + "-theirs");
      assertThat(Said.by("still", one, "--frame", 0, "-o", theirs).code()).isEqualTo(ExitCode.DONE);
      assertThat(Path.of(still.path("file").asText()))
          .as("%s, %s: frame %d", kind, name, frame)
          .hasSameBinaryContentAs(theirs.resolve("frame-000000.jpg"));
    }
  }

  /** The comparison above can fail: the next frame is other bytes. */
  @Test
  void theNextFrameIsNotTheSame() throws IOException {
    Path stills = folder.resolve("next");
    Said.by("still", film, "--frame", 50, "--frame", 51, "-o", stills);

    assertThat(Files.readAllBytes(stills.resolve("frame-000050.jpg")))
        .isNotEqualTo(Files.readAllBytes(stills.resolve("frame-000051.jpg")));
  }
}
