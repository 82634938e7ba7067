package daylight.footage.codec;

import static org.bytedeco.ffmpeg.global.avutil.av_d2q;

import daylight.footage.Make;
import daylight.footage.Raster;
import daylight.footage.Rate;
import daylight.footage.Recording;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.ffmpeg.avutil.AVRational;

/** A copy of a recording's pictures as shown, written whole or not at all. */
final class Proxy {
  private static final int FINEST = 65_535;
  private static final int SMALLEST = 16;

  private final Reel reel;
  private final Geometry geometry;
  private final Recording recording;

  Proxy(Reel reel, Geometry geometry, Recording recording) {
    this.reel = reel;
    this.geometry = geometry;
    this.recording = recording;
  }

  void write(Path target, Make make, Progress progress) throws IOException {
    AVRational average = av_d2q(recording.rate(), FINEST);
    Rate rate = new Rate(Math.max(1, average.num()), Math.max(1, average.den()));
    int count = recording.frames();
    Raster raster = new Raster(even(geometry.shownWidth()), even(geometry.shownHeight()));
    try (Film film = Film.begin(target, make, raster.width(), raster.height(), rate);
        Screen screen = new Screen(geometry.sized(raster.width(), raster.height()))) {
      int last = -1;
      for (int n = 0; n < count; n++) {
        Optional<AVFrame> shown = reel.wind(n, progress, n, count);
        if (shown.isPresent() && reel.number() > last) {
          last = reel.number();
          screen.show(shown.get(), raster);
          add(film, raster, make, last);
        }
        progress.at(n + 1, count);
      }
      film.finish();
    }
  }

  private void add(Film film, Raster raster, Make make, int number) throws IOException {
    if (make.keepsTimes()) {
      film.add(raster, reel.index().times().secondsOf(number));
    } else {
      film.add(raster);
    }
  }

  private static int even(int size) {
    return Math.max(SMALLEST, size + size % 2);
  }
}
