package daylight.footage.codec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import daylight.footage.Make;
import daylight.footage.Raster;
import daylight.footage.Rate;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class FilmTest {
  @TempDir Path folder = Path.of("");

  @ParameterizedTest
  @EnumSource(Make.class)
  void samePicturesGiveTheSameBytes(Make make) throws IOException {
    Path one = TestFilm.of(make).frames(30).write(folder.resolve("one." + make.extension()));
    Path two = TestFilm.of(make).frames(30).write(folder.resolve("two." + make.extension()));

    assertThat(one).hasSameBinaryContentAs(two);
    assertThat(Files.size(one)).isGreaterThan(2_000);
    assertThat(names())
        .containsExactlyInAnyOrder("one." + make.extension(), "two." + make.extension());
  }

  @ParameterizedTest
  @EnumSource(Make.class)
  void nothingRemainsOfAFilmThatWasNotFinished(Make make) throws IOException {
    Path target = folder.resolve("half." + make.extension());
    try (Film film = Film.begin(target, make, 160, 120, Rate.of(25))) {
      film.add(new Raster(160, 120));
      assertThat(target).doesNotExist();
    }

    assertThat(names()).isEmpty();
  }

  @Test
  void sizesThatNoCodecTakesAreRefused() {
    Path target = folder.resolve("odd.mp4");

    assertThatThrownBy(() -> Film.begin(target, Make.H264_MP4, 161, 120, Rate.of(25)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("161 × 120");
    assertThatThrownBy(() -> Film.begin(target, Make.MPEG2_TS, 160, 120, new Rate(7, 3)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("7/3");
    assertThat(target).doesNotExist();
  }

  @Test
  void aPlaceThatIsNotThereIsSaid() {
    Path target = folder.resolve("nowhere").resolve("film.mp4");

    assertThatThrownBy(() -> Film.begin(target, Make.H264_MP4, 160, 120, Rate.of(25)))
        .isInstanceOf(IOException.class)
        .hasMessageContaining("nowhere");
  }

  @Test
  void timesOfTheirOwnAreRefusedWhereNoneAreKept() throws IOException {
    Path target = folder.resolve("film.avi");
    try (Film film = Film.begin(target, Make.MPEG4_AVI, 160, 120, Rate.of(25))) {
      assertThatThrownBy(() -> film.add(new Raster(160, 120), 0.1))
          .isInstanceOf(IllegalArgumentException.class);
    }
  }

  @Test
  void whatIsClosedStaysClosed() throws IOException {
    Path target = folder.resolve("film.mp4");
    Raster raster = new Raster(160, 120);
    Film film = Film.begin(target, Make.H264_MP4, 160, 120, Rate.of(25));
    film.add(raster);
    film.finish();
    film.close();
    film.close();
    Footage footage = Films.opened(target);
    footage.close();
    footage.close();

    assertThatThrownBy(() -> film.add(raster)).isInstanceOf(IllegalStateException.class);
    assertThatThrownBy(film::finish).isInstanceOf(IllegalStateException.class);
    assertThatThrownBy(() -> footage.frame(0)).isInstanceOf(IllegalStateException.class);
    assertThat(target).exists();
  }

  @Test
  void timesThatDoNotRiseAreRefused() throws IOException {
    Path target = folder.resolve("film.webm");
    try (Film film = Film.begin(target, Make.VP8_WEBM, 160, 120, Rate.of(25))) {
      film.add(new Raster(160, 120), 0.5);
      assertThatThrownBy(() -> film.add(new Raster(160, 120), 0.5))
          .isInstanceOf(IllegalArgumentException.class);
    }
  }

  private Stream<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).toList().stream();
    }
  }
}
