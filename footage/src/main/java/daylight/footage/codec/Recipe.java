package daylight.footage.codec;

import static org.bytedeco.ffmpeg.global.avutil.AV_PIX_FMT_YUV420P;
import static org.bytedeco.ffmpeg.global.avutil.AV_PIX_FMT_YUVJ420P;

import daylight.footage.Make;
import java.util.HashMap;
import java.util.Map;

/**
 * How a make is written: names and options of the library.
 *
 * @param muxer the container
 * @param encoder what writes the pictures
 * @param pixels their format
 * @param quantiser a fixed one; 0 where the options decide
 * @param between frames predicted from both sides, at most so many in a row
 * @param encoding options of the encoder
 * @param muxing options of the container
 */
record Recipe(
    String muxer,
    String encoder,
    int pixels,
    int quantiser,
    int between,
    Map<String, String> encoding,
    Map<String, String> muxing) {
  private static final int FINE = 3;
  private static final int FROM_BOTH_SIDES = 2;
  private static final Map<String, String> VPX =
      Map.of(
          "deadline",
          "good",
          "cpu-used",
          "5",
          "crf",
          "20",
          "auto-alt-ref",
          "0",
          "lag-in-frames",
          "0");

  static Recipe of(Make make) {
    return switch (make) {
      case H264_MP4 ->
          new Recipe(
              "mp4",
              "libopenh264",
              AV_PIX_FMT_YUV420P,
              0,
              0,
              Map.of("rc_mode", "quality", "coder", "cabac"),
              Map.of("movflags", "faststart"));
      case MPEG4_AVI -> classic("avi", "mpeg4", 0);
      case MPEG4_B_AVI -> classic("avi", "mpeg4", FROM_BOTH_SIDES);
      case MPEG2_MPG -> classic("vob", "mpeg2video", FROM_BOTH_SIDES);
      case MPEG2_TS -> classic("mpegts", "mpeg2video", FROM_BOTH_SIDES);
      case MJPEG_AVI -> jpeg("avi");
      case MJPEG_MOV -> jpeg("mov");
      case VP8_WEBM -> webm("libvpx");
      case VP9_WEBM -> webm("libvpx-vp9");
      case VP9_MP4 ->
          new Recipe(
              "mp4", "libvpx-vp9", AV_PIX_FMT_YUV420P, 0, 0, VPX, Map.of("movflags", "faststart"));
    };
  }

  /** One picture as a JPEG file. */
  static Recipe still() {
    return jpeg("image2");
  }

  /** The same for a copy that somebody waits for: quicker, not finer. */
  Recipe quick() {
    Map<String, String> options = new HashMap<>(encoding);
    options.replace("deadline", "realtime");
    options.replace("cpu-used", "8");
    return new Recipe(muxer, encoder, pixels, quantiser, between, Map.copyOf(options), muxing);
  }

  private static Recipe classic(String muxer, String encoder, int between) {
    return new Recipe(muxer, encoder, AV_PIX_FMT_YUV420P, FINE, between, Map.of(), Map.of());
  }

  private static Recipe jpeg(String muxer) {
    return new Recipe(muxer, "mjpeg", AV_PIX_FMT_YUVJ420P, FINE, 0, Map.of(), Map.of());
  }

  private static Recipe webm(String encoder) {
    return new Recipe("webm", encoder, AV_PIX_FMT_YUV420P, 0, 0, VPX, Map.of());
  }
}
