package daylight.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import daylight.app.CountedFilm;
import daylight.footage.Make;
import daylight.footage.Raster;
import daylight.footage.Rate;
import daylight.footage.codec.Film;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

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
}
