package daylight.footage.codec;

import static org.bytedeco.ffmpeg.global.avutil.AV_PIX_FMT_0RGB32;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_free;

import daylight.footage.Raster;
import java.io.IOException;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.javacpp.IntPointer;

/** A picture of the library whose pixels are those of a raster, {@code 0xRRGGBB} each. */
final class Canvas implements AutoCloseable {
  private static final int COLOUR = 0xFFFFFF;

  private final AVFrame frame;
  private final int[] row;

  Canvas(int width, int height) throws IOException {
    frame = Colours.frame(AV_PIX_FMT_0RGB32(), width, height);
    row = new int[width];
  }

  /** For the library to convert from or to. */
  AVFrame frame() {
    return frame;
  }

  /** Takes a raster's pixels, of the same size. */
  void paint(Raster raster) {
    IntPointer pixels = new IntPointer(frame.data(0));
    for (int y = 0; y < frame.height(); y++) {
      pixels.position(y * stride()).put(raster.pixels(), y * row.length, row.length);
    }
  }

  /** Gives its pixels to a raster, of the size as shown. */
  void show(Raster raster, Geometry geometry) {
    IntPointer pixels = new IntPointer(frame.data(0));
    int[] shown = raster.pixels();
    for (int y = 0; y < frame.height(); y++) {
      pixels.position(y * stride()).get(row);
      for (int x = 0; x < row.length; x++) {
        shown[geometry.place(x, y)] = row[x] & COLOUR;
      }
    }
  }

  private long stride() {
    return frame.linesize(0) / Integer.BYTES;
  }

  @Override
  public void close() {
    av_frame_free(frame);
  }
}
