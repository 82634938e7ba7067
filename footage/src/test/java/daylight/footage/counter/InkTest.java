package daylight.footage.counter;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The top-hat beside its definition (Serra, Image Analysis and Mathematical Morphology, 1982). */
class InkTest {
  private final SplittableRandom chance = new SplittableRandom(5);

  @ParameterizedTest
  @CsvSource({"31, 17, 1", "31, 17, 2", "20, 9, 3", "40, 21, 6", "12, 12, 7", "7, 5, 9"})
  void whatIsWiderThanAStrokeIsTakenAway(int width, int height, int reach) {
    Ink ink = new Ink(width, height, reach);
    for (int n = 0; n < 5; n++) {
      byte[] pixels = new byte[width * height];
      chance.nextBytes(pixels);
      boolean dark = n % 2 == 1;

      int[] strokes = ink.find(pixels, dark, 40);

      int[] light = new int[pixels.length];
      for (int i = 0; i < light.length; i++) {
        light[i] = dark ? 255 - (pixels[i] & 255) : pixels[i] & 255;
      }
      int[] ground = around(around(light, width, reach, false), width, reach, true);
      for (int i = 0; i < light.length; i++) {
        assertThat(ink.light(i)).isEqualTo(light[i]);
        assertThat(ink.ground(i)).isEqualTo(ground[i]);
        assertThat(strokes[i]).isEqualTo(light[i] < 40 ? 0 : light[i] - ground[i]);
      }
    }
  }

  private static int[] around(int[] from, int width, int reach, boolean greatest) {
    int height = from.length / width;
    int[] to = new int[from.length];
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        int all = greatest ? 0 : 255;
        for (int v = Math.max(0, y - reach); v <= Math.min(height - 1, y + reach); v++) {
          for (int u = Math.max(0, x - reach); u <= Math.min(width - 1, x + reach); u++) {
            int one = from[v * width + u];
            all = greatest ? Math.max(all, one) : Math.min(all, one);
          }
        }
        to[y * width + x] = all;
      }
    }
    return to;
  }
}
