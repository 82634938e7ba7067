package daylight.footage.codec;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.footage.Make;
import daylight.footage.Raster;
import daylight.footage.Rate;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The time that a file says it was recorded at; the {@code ffmpeg} program wrote it in. */
class RecorderClockTest {
  @TempDir private Path folder = Path.of("");

  private Path film(String... options) throws IOException {
    Path film = folder.resolve("film.mp4");
    try (Film writing = Film.begin(film, Make.H264_MP4, 64, 48, Rate.of(10))) {
      for (int i = 0; i < 5; i++) {
        writing.add(new Raster(64, 48));
      }
      writing.finish();
    }
    if (options.length == 0) {
      return film;
    }
    Path stamped = folder.resolve("stamped.mp4");
    Program.ffmpeg("-i", film.toString(), "-c", "copy", options[0], options[1], stamped.toString());
    return stamped;
  }

  @Test
  void isReadWhereItWasWritten() throws IOException {
    assertThat(RecorderClock.of(film("-metadata", "creation_time=2026-04-18T14:03:05Z")))
        .contains(Instant.parse("2026-04-18T14:03:05Z"));
  }

  @Test
  void isNotThereWhereNobodyWroteItOrNoClockRan() throws IOException {
    assertThat(RecorderClock.of(film())).isEmpty();
    assertThat(RecorderClock.of(film("-metadata", "creation_time=1970-01-01T00:00:10Z"))).isEmpty();
    assertThat(RecorderClock.of(Files.writeString(folder.resolve("words.mp4"), "words"))).isEmpty();
    assertThat(RecorderClock.of(folder.resolve("none.mp4"))).isEmpty();
  }
}
