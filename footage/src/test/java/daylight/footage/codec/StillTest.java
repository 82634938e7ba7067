package daylight.footage.codec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import daylight.footage.Frame;
import daylight.footage.FrameTimes;
import daylight.footage.Make;
import daylight.footage.Raster;
import daylight.footage.Rate;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StillTest {
  @TempDir Path folder = Path.of("");

  @Test
  void aMomentShowsTheFrameThatHasAppearedByThen() {
    FrameTimes times = new FrameTimes(new long[] {1000, 1040, 1080, 1200}, 0.001, 40);

    assertThat(times.seconds()).isEqualTo(0.240, within(1e-12));
    assertThat(times.shownAt(0)).hasValue(0);
    assertThat(times.shownAt(0.029)).hasValue(0);
    assertThat(times.shownAt(0.031)).hasValue(1);
    assertThat(times.shownAt(0.040)).hasValue(1);
    assertThat(times.shownAt(0.120)).hasValue(2);
    assertThat(times.shownAt(0.165)).hasValue(2);
    assertThat(times.shownAt(0.175)).hasValue(3);
    assertThat(times.shownAt(0.240)).hasValue(3);
    assertThat(times.shownAt(0.300)).isEmpty();
    assertThat(times.shownAt(-0.1)).isEmpty();
    assertThat(times.shownAt(Double.NaN)).isEmpty();
    assertThat(times.variable()).isTrue();
  }

  @Test
  void aStillKnowsItsNumberAndItsTime() throws IOException {
    Path film = Sample.MPEG4_B_AVI.in(folder);
    try (Footage footage = Films.opened(film)) {
      Frame still = footage.at(1.99).orElseThrow();

      assertThat(still.number()).isEqualTo(50);
      assertThat(still.seconds()).isEqualTo(2.0, within(1e-9));
      assertThat(TestFilm.number(still.raster())).isEqualTo(50);
      assertThat(footage.at(9)).isEmpty();
    }
  }

  /** The class library's own reader of JPEG is the outside witness. */
  @Test
  void aStillBecomesAJpegThatOthersReadAndTheSameEveryTime() throws IOException {
    Raster raster = new Raster(151, 99);
    for (int i = 0; i < raster.pixels().length; i++) {
      int x = i % 151;
      int y = i / 151;
      raster.pixels()[i] = (40 + x) << 16 | (200 - y) << 8 | (x + y) / 2;
    }
    byte[] jpeg = Jpeg.of(raster);
    BufferedImage read = ImageIO.read(new ByteArrayInputStream(jpeg));

    assertThat(Jpeg.of(raster)).isEqualTo(jpeg);
    assertThat(read.getWidth()).isEqualTo(151);
    assertThat(read.getHeight()).isEqualTo(99);
    for (int i = 0; i < raster.pixels().length; i++) {
      int theirs = read.getRGB(i % 151, i / 151);
      for (int shift = 0; shift <= 16; shift += 8) {
        assertThat(theirs >> shift & 0xFF)
            .isCloseTo(raster.pixels()[i] >> shift & 0xFF, within(10));
      }
    }
  }

  /** Whatever it is written as, what was painted is what is seen. */
  @Test
  void coloursComeBackAsPainted() throws IOException {
    Raster raster = new Raster(64, 48);
    Arrays.fill(raster.pixels(), 0xB07030);
    for (Make make : Make.values()) {
      Path film = folder.resolve("plain." + make.extension());
      try (Film writing = Film.begin(film, make, 64, 48, Rate.of(25))) {
        for (int n = 0; n < 30; n++) {
          writing.add(raster);
        }
        writing.finish();
      }
      try (Footage footage = Films.opened(film)) {
        int pixel = footage.frame(3).orElseThrow().raster().pixels()[24 * 64 + 32];
        assertThat(pixel >> 16).as(make + " red").isBetween(0xAA, 0xB6);
        assertThat(pixel >> 8 & 0xFF).as(make + " green").isBetween(0x6A, 0x76);
        assertThat(pixel & 0xFF).as(make + " blue").isBetween(0x2A, 0x36);
      }
    }
  }
}
