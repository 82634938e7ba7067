package daylight.footage.codec;

import static org.bytedeco.ffmpeg.global.avutil.av_d2q;

import daylight.footage.FrameTimes;
import daylight.footage.Make;
import daylight.footage.Raster;
import daylight.footage.Rate;
import daylight.footage.Recording;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.ffmpeg.avutil.AVRational;
import org.jspecify.annotations.Nullable;

/** A copy of a recording's pictures as shown, written whole or not at all. */
final class Proxy {
  private static final int FINEST = 65_535;
  private static final int SMALLEST = 16;

  private final Reel reel;
  private final Recording recording;
  private final Geometry geometry;

  Proxy(Reel reel, Geometry geometry, Recording recording) {
    this.reel = reel;
    this.recording = recording;
    this.geometry = geometry.sized(even(geometry.shownWidth()), even(geometry.shownHeight()));
  }

  /**
   * Writes the frames from one on.
   *
   * @param sound that goes along; null for none
   */
  void write(Path target, Make make, int from, @Nullable Sound sound, Progress progress)
      throws IOException {
    Recipe recipe = Recipe.of(make).quick();
    int width = geometry.shownWidth();
    int height = geometry.shownHeight();
    try (Writing writing = new Writing(target, recipe, width, height, rate(), sound);
        Brush brush = new Brush(writing.encoder());
        Screen screen = new Screen(geometry)) {
      Raster raster = new Raster(width, height);
      int count = recording.frames();
      int last = from - 1;
      for (int n = from; n < count; n++) {
        Optional<AVFrame> shown = reel.wind(n, progress, n - from, count - from);
        if (shown.isPresent() && reel.number() > last) {
          last = reel.number();
          add(writing, make, drawn(shown.get(), brush, screen, raster), last, from);
        }
        progress.at(n + 1 - from, count - from);
      }
      writing.finish();
    }
  }

  /** Straight from the one kind of pixels to the other, if the picture need not be turned. */
  private AVFrame drawn(AVFrame shown, Brush brush, Screen screen, Raster raster)
      throws IOException {
    if (geometry.quarters() == 0) {
      return brush.redraw(shown);
    }
    screen.show(shown, raster);
    return brush.draw(raster);
  }

  private void add(Writing writing, Make make, AVFrame frame, int number, int from)
      throws IOException {
    if (make.keepsTimes()) {
      FrameTimes times = reel.index().times();
      writing.add(frame, times.secondsOf(number) - times.secondsOf(from));
    } else {
      writing.add(frame);
    }
  }

  private Rate rate() {
    AVRational average = av_d2q(recording.rate(), FINEST);
    return new Rate(Math.max(1, average.num()), Math.max(1, average.den()));
  }

  private static int even(int size) {
    return Math.max(SMALLEST, size + size % 2);
  }
}
