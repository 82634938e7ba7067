package daylight.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.footage.Make;
import daylight.footage.Raster;
import daylight.footage.Rate;
import daylight.footage.codec.Film;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command {@code counter} where there is none, or where it is asked wrongly. */
class ReadCounterTest {
  @TempDir private Path folder = Path.of("");

  private Path film = Path.of("");

  @BeforeEach
  void filmsTwoSecondsThatGrowLighter() throws IOException {
    film = folder.resolve("push.mp4");
    Raster raster = new Raster(160, 120);
    try (Film writing = Film.begin(film, Make.H264_MP4, 160, 120, Rate.of(10))) {
      for (int i = 0; i < 20; i++) {
        Arrays.fill(raster.pixels(), 0x010101 * (40 + 4 * i));
        writing.add(raster);
      }
      writing.finish();
    }
  }

  @Test
  void saysThatThereIsNoCounterAndWhy() {
    Said said = Said.by("counter", film);

    assertThat(said.code()).isEqualTo(ExitCode.SOMETHING_OPEN);
    assertThat(said.err()).contains("no counter: no letters are burned into the picture");
  }

  @Test
  void saysSoToOtherProgramsToo() {
    Said said = Said.by("counter", film, "--json");

    assertThat(said.code()).isEqualTo(ExitCode.SOMETHING_OPEN);
    assertThat(said.json().path("outcome").asText()).isEqualTo("no-counter");
    assertThat(said.json().path("reason").asText()).isEqualTo("no-letters");
  }

  @Test
  void refusesARegionThatIsNoneOrLiesOutside() {
    Said none = Said.by("counter", film, "--region", "1,2,3");
    Said outside = Said.by("counter", film, "--region", "100,100,100,10");

    assertThat(none.code()).isEqualTo(ExitCode.USAGE);
    assertThat(none.err()).contains("1,2,3 is not X,Y,W,H in pixels");
    assertThat(outside.code()).isEqualTo(ExitCode.USAGE);
    assertThat(outside.err()).contains("does not lie in the picture");
  }

  @Test
  void refusesWhatIsNoRecording() throws IOException {
    Path text = Files.writeString(folder.resolve("notes.mp4"), "not a film");

    assertThat(Said.by("counter", text).code()).isEqualTo(ExitCode.BOOK_REFUSED);
  }
}
