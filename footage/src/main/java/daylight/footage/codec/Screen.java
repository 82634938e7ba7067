package daylight.footage.codec;

import daylight.footage.Raster;
import java.io.IOException;
import org.bytedeco.ffmpeg.avutil.AVFrame;

/** Turns decoded frames into pictures as shown. */
final class Screen implements AutoCloseable {
  private final Geometry geometry;
  private final Colours colours;
  private final Canvas canvas;

  Screen(Geometry geometry) throws IOException {
    this.geometry = geometry;
    colours = new Colours();
    canvas = new Canvas(geometry.width(), geometry.height());
  }

  /** A picture of its own for every frame. */
  Raster show(AVFrame frame) throws IOException {
    Raster raster = new Raster(geometry.shownWidth(), geometry.shownHeight());
    show(frame, raster);
    return raster;
  }

  /** Into a picture of the size shown. */
  void show(AVFrame frame, Raster raster) throws IOException {
    Colours.tell(frame);
    colours.convert(frame, canvas.frame());
    canvas.show(raster, geometry);
  }

  @Override
  public void close() {
    canvas.close();
    colours.close();
  }
}
