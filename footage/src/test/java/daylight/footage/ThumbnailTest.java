package daylight.footage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class ThumbnailTest {
  @Test
  void everyPixelIsTheMeanOfThoseItStandsFor() {
    Raster fine = new Raster(400, 200);
    for (int i = 0; i < fine.pixels().length; i++) {
      // Columns of black and white in turn, red on the right half.
      int x = i % 400;
      fine.pixels()[i] = x % 2 == 0 ? 0 : x < 200 ? 0xFFFFFF : 0xFF0000;
    }

    Raster small = Thumbnail.of(fine, 100);

    assertThat(small.width()).isEqualTo(100);
    assertThat(small.height()).isEqualTo(50);
    assertThat(small.pixels()[10]).isEqualTo(0x808080);
    assertThat(small.pixels()[90]).isEqualTo(0x800000);
  }

  @Test
  void whatIsSmallStaysAsItIs() {
    Raster small = new Raster(64, 48);
    Arrays.fill(small.pixels(), 7);

    assertThat(Thumbnail.of(small, 320)).isSameAs(small);
  }
}
