package daylight.footage.codec;

import static org.bytedeco.ffmpeg.global.avutil.AV_PIX_FMT_0RGB32;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_free;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_make_writable;

import daylight.footage.Make;
import daylight.footage.Raster;
import daylight.footage.Rate;
import java.io.IOException;
import java.nio.file.Path;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.javacpp.IntPointer;

/**
 * A film being written, picture after picture, into a file that is there when {@link #finish} has
 * returned and not before. Closed without that, nothing of it remains. The same pictures give the
 * same bytes.
 *
 * <p>Refused: sizes and rates that the make does not take, odd sizes among them; times that do not
 * rise; times of their own in a make that keeps none.
 */
public final class Film implements AutoCloseable {
  private static final int SMALLEST = 16;

  private final Make make;
  private final int width;
  private final int height;
  private final Writing writing;
  private final Colours colours = new Colours();
  private final AVFrame painted;
  private final AVFrame encoded;

  /** Begins a film of pictures of that size, shown at that rate. */
  public static Film begin(Path target, Make make, int width, int height, Rate rate)
      throws IOException {
    if (width < SMALLEST || height < SMALLEST || width % 2 != 0 || height % 2 != 0) {
      throw new IllegalArgumentException(
          "a film has even sizes from 16 pixels up, was " + width + " × " + height);
    }
    return new Film(target, make, width, height, rate);
  }

  private Film(Path target, Make make, int width, int height, Rate rate) throws IOException {
    this.make = make;
    this.width = width;
    this.height = height;
    writing = new Writing(target, Recipe.of(make), width, height, rate);
    painted = Colours.frame(AV_PIX_FMT_0RGB32(), width, height);
    encoded = writing.frame();
  }

  /** Adds a picture one frame after the one before. */
  public void add(Raster raster) throws IOException {
    draw(raster);
    writing.add(encoded);
  }

  /** Adds a picture at its own time, seconds from the beginning; times rise. */
  public void add(Raster raster, double seconds) throws IOException {
    if (!make.keepsTimes()) {
      throw new IllegalArgumentException(make + " keeps no times, only a steady rate");
    }
    draw(raster);
    writing.add(encoded, seconds);
  }

  private void draw(Raster raster) throws IOException {
    if (raster.width() != width || raster.height() != height) {
      throw new IllegalArgumentException(
          "a picture of this film has %d × %d pixels, was %d × %d"
              .formatted(width, height, raster.width(), raster.height()));
    }
    IntPointer rows = new IntPointer(painted.data(0));
    int stride = painted.linesize(0) / Integer.BYTES;
    for (int y = 0; y < height; y++) {
      rows.position((long) y * stride).put(raster.pixels(), y * width, width);
    }
    Native.check(av_frame_make_writable(encoded), "drawing a picture");
    colours.convert(painted, encoded);
  }

  /** Writes the end and moves the film into its place. */
  public void finish() throws IOException {
    writing.finish();
  }

  @Override
  public void close() throws IOException {
    av_frame_free(painted);
    av_frame_free(encoded);
    colours.close();
    writing.close();
  }
}
