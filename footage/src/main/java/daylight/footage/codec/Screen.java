package daylight.footage.codec;

import static org.bytedeco.ffmpeg.global.avutil.AVCOL_PRI_UNSPECIFIED;
import static org.bytedeco.ffmpeg.global.avutil.AVCOL_SPC_BT709;
import static org.bytedeco.ffmpeg.global.avutil.AVCOL_SPC_UNSPECIFIED;
import static org.bytedeco.ffmpeg.global.avutil.AVCOL_TRC_UNSPECIFIED;
import static org.bytedeco.ffmpeg.global.swscale.sws_test_colorspace;

import daylight.footage.Raster;
import java.io.IOException;
import org.bytedeco.ffmpeg.avutil.AVFrame;

/** Turns decoded frames into pictures as shown. */
final class Screen implements AutoCloseable {
  private static final int HIGH_DEFINITION_LINES = 720;

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
    tellColours(frame);
    colours.convert(frame, canvas.frame());
    canvas.show(raster, geometry);
  }

  /**
   * Leaves of what a file says of its colours what matters on a screen and can be right. Common
   * practice, no source: untold colours are those of high definition from there up.
   */
  private static void tellColours(AVFrame frame) {
    if (sws_test_colorspace(frame.colorspace(), 0) == 0) {
      frame.colorspace(AVCOL_SPC_UNSPECIFIED);
    }
    if (frame.colorspace() == AVCOL_SPC_UNSPECIFIED && frame.height() >= HIGH_DEFINITION_LINES) {
      frame.colorspace(AVCOL_SPC_BT709);
    }
    frame.color_primaries(AVCOL_PRI_UNSPECIFIED);
    frame.color_trc(AVCOL_TRC_UNSPECIFIED);
  }

  @Override
  public void close() {
    canvas.close();
    colours.close();
  }
}
