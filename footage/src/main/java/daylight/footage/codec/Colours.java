package daylight.footage.codec;

import static org.bytedeco.ffmpeg.avutil.AVFrame.AV_FRAME_FLAG_INTERLACED;
import static org.bytedeco.ffmpeg.global.avutil.AVCOL_PRI_UNSPECIFIED;
import static org.bytedeco.ffmpeg.global.avutil.AVCOL_SPC_BT709;
import static org.bytedeco.ffmpeg.global.avutil.AVCOL_SPC_UNSPECIFIED;
import static org.bytedeco.ffmpeg.global.avutil.AVCOL_TRC_UNSPECIFIED;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_alloc;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_free;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_get_buffer;
import static org.bytedeco.ffmpeg.global.swscale.SWS_ACCURATE_RND;
import static org.bytedeco.ffmpeg.global.swscale.SWS_BICUBIC;
import static org.bytedeco.ffmpeg.global.swscale.SWS_BITEXACT;
import static org.bytedeco.ffmpeg.global.swscale.SWS_FULL_CHR_H_INT;
import static org.bytedeco.ffmpeg.global.swscale.sws_alloc_context;
import static org.bytedeco.ffmpeg.global.swscale.sws_free_context;
import static org.bytedeco.ffmpeg.global.swscale.sws_scale_frame;
import static org.bytedeco.ffmpeg.global.swscale.sws_test_colorspace;

import java.io.IOException;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.ffmpeg.swscale.SwsContext;

/** From one kind of pixels and size to another, rounded exactly and alike on every machine. */
final class Colours implements AutoCloseable {
  private static final int HIGH_DEFINITION_LINES = 720;

  private final SwsContext context;

  Colours() throws IOException {
    context = Native.made(sws_alloc_context(), "colours");
    context.flags(SWS_BICUBIC | SWS_ACCURATE_RND | SWS_BITEXACT | SWS_FULL_CHR_H_INT);
    context.threads(1);
  }

  /** An empty picture with room for its pixels. */
  static AVFrame frame(int pixels, int width, int height) throws IOException {
    AVFrame frame = Native.made(av_frame_alloc(), "a picture");
    frame.format(pixels);
    frame.width(width);
    frame.height(height);
    int result = av_frame_get_buffer(frame, 0);
    if (result < 0) {
      av_frame_free(frame);
      throw new IOException("no memory for a picture of " + width + " × " + height);
    }
    return frame;
  }

  /**
   * Leaves of what a decoded frame says of its colours what matters on a screen and can be right.
   * Common practice, no source: untold colours are those of high definition from there up.
   */
  static void tell(AVFrame frame) {
    if (sws_test_colorspace(frame.colorspace(), 0) == 0) {
      frame.colorspace(AVCOL_SPC_UNSPECIFIED);
    }
    if (frame.colorspace() == AVCOL_SPC_UNSPECIFIED && frame.height() >= HIGH_DEFINITION_LINES) {
      frame.colorspace(AVCOL_SPC_BT709);
    }
    frame.color_primaries(AVCOL_PRI_UNSPECIFIED);
    frame.color_trc(AVCOL_TRC_UNSPECIFIED);
  }

  /** Fills a picture from another, in its own size, pixels and colour space. */
  void convert(AVFrame from, AVFrame to) throws IOException {
    // Colours of two fields are apart in either picture or in none.
    int fields = from.flags() & AV_FRAME_FLAG_INTERLACED;
    to.flags((to.flags() & ~AV_FRAME_FLAG_INTERLACED) | fields);
    Native.check(sws_scale_frame(context, to, from), "converting a picture");
  }

  @Override
  public void close() {
    sws_free_context(context);
  }
}
