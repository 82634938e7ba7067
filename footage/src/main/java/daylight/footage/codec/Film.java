package daylight.footage.codec;

import daylight.footage.Make;
import daylight.footage.Raster;
import daylight.footage.Rate;
import java.io.IOException;
import java.nio.file.Path;
import org.bytedeco.ffmpeg.avutil.AVFrame;

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
  private final Brush brush;

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
    boolean begun = false;
    try {
      brush = new Brush(writing.encoder());
      begun = true;
    } finally {
      if (!begun) {
        writing.close();
      }
    }
  }

  /** Adds a picture one frame after the one before. */
  public void add(Raster raster) throws IOException {
    writing.add(draw(raster));
  }

  /** Adds a picture at its own time, seconds from the beginning; times rise. */
  public void add(Raster raster, double seconds) throws IOException {
    if (!make.keepsTimes()) {
      throw new IllegalArgumentException(make + " keeps no times, only a steady rate");
    }
    writing.add(draw(raster), seconds);
  }

  private AVFrame draw(Raster raster) throws IOException {
    requireOpen();
    if (raster.width() != width || raster.height() != height) {
      throw new IllegalArgumentException(
          "a picture of this film has %d × %d pixels, was %d × %d"
              .formatted(width, height, raster.width(), raster.height()));
    }
    return brush.draw(raster);
  }

  /** Writes the end and moves the film into its place. */
  public void finish() throws IOException {
    requireOpen();
    writing.finish();
  }

  private void requireOpen() {
    if (!writing.isOpen()) {
      throw new IllegalStateException("this film is closed");
    }
  }

  @Override
  public void close() throws IOException {
    // The library does not know what it freed before.
    if (writing.isOpen()) {
      brush.close();
      writing.close();
    }
  }
}
