package daylight.footage.codec;

import static org.bytedeco.ffmpeg.global.avcodec.AV_PKT_DATA_DISPLAYMATRIX;
import static org.bytedeco.ffmpeg.global.avcodec.av_packet_side_data_get;
import static org.bytedeco.ffmpeg.global.avformat.av_guess_sample_aspect_ratio;
import static org.bytedeco.ffmpeg.global.avutil.av_display_rotation_get;

import org.bytedeco.ffmpeg.avcodec.AVCodecParameters;
import org.bytedeco.ffmpeg.avcodec.AVPacketSideData;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.ffmpeg.avutil.AVRational;
import org.bytedeco.javacpp.IntPointer;

/**
 * How a picture as coded becomes the picture as shown: pixels made square by widening, then turned.
 *
 * @param width with square pixels, not yet turned
 * @param height as coded
 * @param quarters turned clockwise by so many quarters of a circle, from 0 to 3
 */
record Geometry(int width, int height, int quarters) {
  private static final int MATRIX_BYTES = 9 * Integer.BYTES;
  private static final double FLATTEST = 4;
  private static final int QUARTER_DEGREES = 90;
  private static final int CIRCLE = 4;

  /** Of a recording by its first frame. A shape of pixels that no camera has is not believed. */
  static Geometry of(Input input, AVFrame frame) {
    AVRational pixel = av_guess_sample_aspect_ratio(input.context(), input.stream(), frame);
    double wide = pixel.num() > 0 && pixel.den() > 0 ? (double) pixel.num() / pixel.den() : 1;
    long width = Math.round(frame.width() * wide);
    boolean believed =
        wide <= FLATTEST && wide >= 1 / FLATTEST && width <= Decoder.LARGEST_SIDE && width > 0;
    return new Geometry(
        believed ? (int) width : frame.width(),
        frame.height(),
        quarters(input.stream().codecpar()));
  }

  private static int quarters(AVCodecParameters parameters) {
    AVPacketSideData data =
        av_packet_side_data_get(
            parameters.coded_side_data(),
            parameters.nb_coded_side_data(),
            AV_PKT_DATA_DISPLAYMATRIX);
    if (data == null || data.isNull() || data.size() < MATRIX_BYTES) {
      return 0;
    }
    // The library tells by how much the picture is to be turned against the clock.
    double degrees = av_display_rotation_get(new IntPointer(data.data()));
    if (!Double.isFinite(degrees)) {
      return 0;
    }
    return Math.floorMod(-Math.round(degrees / QUARTER_DEGREES), CIRCLE);
  }

  /** The same with another size as shown. */
  Geometry sized(int across, int down) {
    return lying() ? new Geometry(down, across, quarters) : new Geometry(across, down, quarters);
  }

  private boolean lying() {
    return quarters % 2 != 0;
  }

  /** Pixels across, as shown. */
  int shownWidth() {
    return lying() ? height : width;
  }

  /** Pixels down, as shown. */
  int shownHeight() {
    return lying() ? width : height;
  }

  /** Where a pixel, not yet turned, is in the picture as shown. */
  int place(int x, int y) {
    return switch (quarters) {
      case 1 -> x * height + (height - 1 - y);
      case 2 -> (height - 1 - y) * width + (width - 1 - x);
      case 3 -> (width - 1 - x) * height + y;
      default -> y * width + x;
    };
  }
}
