package daylight.footage.codec;

import daylight.footage.Make;
import daylight.footage.Raster;
import daylight.footage.Rate;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/**
 * Films made up for the tests: every frame carries its own number as ten black or white bars across
 * the upper half, so that a frame can be told from any other whatever a codec does to it; below, a
 * slope of grey moves along.
 */
record TestFilm(Make make, int frames, int width, int height, Rate rate, List<Double> times) {
  private static final int BITS = 10;

  static TestFilm of(Make make) {
    return new TestFilm(make, 100, 160, 120, Rate.of(25), List.of());
  }

  TestFilm frames(int count) {
    return new TestFilm(make, count, width, height, rate, times);
  }

  TestFilm size(int across, int down) {
    return new TestFilm(make, frames, across, down, rate, times);
  }

  TestFilm rate(Rate other) {
    return new TestFilm(make, frames, width, height, other, times);
  }

  /** With a time for each frame, seconds. */
  TestFilm times(List<Double> seconds) {
    return new TestFilm(make, seconds.size(), width, height, rate, seconds);
  }

  Path write(Path target) throws IOException {
    Raster raster = new Raster(width, height);
    try (Film film = Film.begin(target, make, width, height, rate)) {
      for (int n = 0; n < frames; n++) {
        paint(raster, n);
        if (times.isEmpty()) {
          film.add(raster);
        } else {
          film.add(raster, times.get(n));
        }
      }
      film.finish();
    }
    return target;
  }

  private static void paint(Raster raster, int number) {
    int[] pixels = raster.pixels();
    int bar = raster.width() / BITS;
    for (int y = 0; y < raster.height(); y++) {
      for (int x = 0; x < raster.width(); x++) {
        int bit = Math.min(x / bar, BITS - 1);
        int grey =
            y < raster.height() / 2
                ? (number >> bit & 1) * 0xFF
                : (x + 2 * y + 3 * number) % 192 + 32;
        pixels[y * raster.width() + x] = grey << 16 | grey << 8 | grey;
      }
    }
  }

  /** The number in a picture of any size. */
  static int number(Raster raster) {
    int number = 0;
    int y = raster.height() / 4;
    for (int bit = 0; bit < BITS; bit++) {
      int x = (2 * bit + 1) * raster.width() / (2 * BITS);
      int green = raster.pixels()[y * raster.width() + x] >> 8 & 0xFF;
      number |= green > 127 ? 1 << bit : 0;
    }
    return number;
  }
}
