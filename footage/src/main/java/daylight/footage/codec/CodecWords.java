package daylight.footage.codec;

import static org.bytedeco.ffmpeg.global.avcodec.AV_CODEC_ID_AV1;
import static org.bytedeco.ffmpeg.global.avcodec.AV_CODEC_ID_DVVIDEO;
import static org.bytedeco.ffmpeg.global.avcodec.AV_CODEC_ID_H263;
import static org.bytedeco.ffmpeg.global.avcodec.AV_CODEC_ID_H264;
import static org.bytedeco.ffmpeg.global.avcodec.AV_CODEC_ID_HEVC;
import static org.bytedeco.ffmpeg.global.avcodec.AV_CODEC_ID_MJPEG;
import static org.bytedeco.ffmpeg.global.avcodec.AV_CODEC_ID_MPEG1VIDEO;
import static org.bytedeco.ffmpeg.global.avcodec.AV_CODEC_ID_MPEG2VIDEO;
import static org.bytedeco.ffmpeg.global.avcodec.AV_CODEC_ID_MPEG4;
import static org.bytedeco.ffmpeg.global.avcodec.AV_CODEC_ID_NONE;
import static org.bytedeco.ffmpeg.global.avcodec.AV_CODEC_ID_VC1;
import static org.bytedeco.ffmpeg.global.avcodec.AV_CODEC_ID_VP8;
import static org.bytedeco.ffmpeg.global.avcodec.AV_CODEC_ID_VP9;
import static org.bytedeco.ffmpeg.global.avcodec.AV_CODEC_ID_WMV3;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_get_name;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_profile_name;
import static org.bytedeco.ffmpeg.global.avutil.AV_PIX_FMT_YUV420P;
import static org.bytedeco.ffmpeg.global.avutil.AV_PIX_FMT_YUVJ420P;

import java.nio.charset.StandardCharsets;
import org.bytedeco.ffmpeg.avcodec.AVCodecParameters;
import org.bytedeco.javacpp.BytePointer;

/** What pictures are written in, in plain words, and whether browsers read it. */
final class CodecWords {
  private static final int TAG_LETTERS = 4;

  private CodecWords() {}

  static String of(AVCodecParameters parameters) {
    int codec = parameters.codec_id();
    return switch (codec) {
      case AV_CODEC_ID_H264 -> "H.264";
      case AV_CODEC_ID_HEVC -> "H.265";
      case AV_CODEC_ID_AV1 -> "AV1";
      case AV_CODEC_ID_VP8 -> "VP8";
      case AV_CODEC_ID_VP9 -> "VP9";
      case AV_CODEC_ID_MPEG1VIDEO -> "MPEG-1";
      case AV_CODEC_ID_MPEG2VIDEO -> "MPEG-2";
      case AV_CODEC_ID_MPEG4 -> mpeg4(parameters);
      case AV_CODEC_ID_MJPEG -> "Motion JPEG";
      case AV_CODEC_ID_DVVIDEO -> "DV";
      case AV_CODEC_ID_H263 -> "H.263";
      case AV_CODEC_ID_WMV3, AV_CODEC_ID_VC1 -> "VC-1";
      case AV_CODEC_ID_NONE -> letters(parameters.codec_tag());
      default -> avcodec_get_name(codec).getString();
    };
  }

  private static String mpeg4(AVCodecParameters parameters) {
    BytePointer profile = avcodec_profile_name(AV_CODEC_ID_MPEG4, parameters.profile());
    boolean advanced =
        profile != null && !profile.isNull() && profile.getString().startsWith("Advanced Simple");
    return advanced ? "MPEG-4 ASP" : "MPEG-4";
  }

  /** The four letters that stand for a codec in the file, those that can be printed. */
  private static String letters(int tag) {
    byte[] letters = new byte[TAG_LETTERS];
    for (int i = 0; i < TAG_LETTERS; i++) {
      int letter = tag >> (Byte.SIZE * i) & 0xFF;
      letters[i] = (byte) (letter > ' ' && letter < 0x7F ? letter : '?');
    }
    return new String(letters, StandardCharsets.US_ASCII);
  }

  /** Whether a browser plays such pictures in that container without help. */
  static boolean browserPlays(Wrapping wrapping, int codec, int pixels) {
    boolean plain = pixels == AV_PIX_FMT_YUV420P || pixels == AV_PIX_FMT_YUVJ420P;
    return plain
        && switch (wrapping) {
          case MP4 ->
              codec == AV_CODEC_ID_H264 || codec == AV_CODEC_ID_VP9 || codec == AV_CODEC_ID_AV1;
          case WEBM ->
              codec == AV_CODEC_ID_VP8 || codec == AV_CODEC_ID_VP9 || codec == AV_CODEC_ID_AV1;
          default -> false;
        };
  }
}
