package daylight.footage.codec;

import static org.bytedeco.ffmpeg.global.avutil.av_frame_free;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_make_writable;

import daylight.footage.Raster;
import java.io.IOException;
import org.bytedeco.ffmpeg.avutil.AVFrame;

/** Turns rasters into pictures as an encoder takes them. */
final class Brush implements AutoCloseable {
  private final Colours colours;
  private final Canvas canvas;
  private final AVFrame encoded;

  Brush(Encoder encoder) throws IOException {
    colours = new Colours();
    encoded = encoder.frame();
    canvas = new Canvas(encoded.width(), encoded.height());
  }

  /** The raster as the encoder takes it, valid until the next. */
  AVFrame draw(Raster raster) throws IOException {
    canvas.paint(raster);
    return draw(canvas.frame());
  }

  /** A decoded frame, in the size the encoder takes, valid until the next. */
  AVFrame redraw(AVFrame decoded) throws IOException {
    Colours.tell(decoded);
    return draw(decoded);
  }

  private AVFrame draw(AVFrame from) throws IOException {
    // The encoder may still hold the picture before.
    Native.check(av_frame_make_writable(encoded), "drawing a picture");
    colours.convert(from, encoded);
    return encoded;
  }

  @Override
  public void close() {
    av_frame_free(encoded);
    canvas.close();
    colours.close();
  }
}
