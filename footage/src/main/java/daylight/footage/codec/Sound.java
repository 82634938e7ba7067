package daylight.footage.codec;

import static org.bytedeco.ffmpeg.global.avformat.avformat_query_codec;
import static org.bytedeco.ffmpeg.global.avutil.AVMEDIA_TYPE_AUDIO;
import static org.bytedeco.ffmpeg.global.avutil.AV_NOPTS_VALUE;
import static org.bytedeco.ffmpeg.global.avutil.av_q2d;

import java.util.Optional;
import org.bytedeco.ffmpeg.avcodec.AVCodecParameters;
import org.bytedeco.ffmpeg.avcodec.AVPacket;
import org.bytedeco.ffmpeg.avformat.AVOutputFormat;
import org.bytedeco.ffmpeg.avformat.AVStream;

/** The first sound of a recording, packet by packet as it is, from a moment on. */
final class Sound implements AutoCloseable {
  private static final int STRICT = 0;

  private final Input input;
  private final int stream;
  private final double from;
  private boolean ready;

  private Sound(Input input, int stream, double seconds) {
    this.input = input;
    this.stream = stream;
    AVStream pictures = input.stream();
    double first =
        pictures.start_time() == AV_NOPTS_VALUE
            ? 0
            : pictures.start_time() * av_q2d(pictures.time_base());
    this.from = first + seconds;
  }

  /**
   * The sound of an input, which it takes over; empty where there is none.
   *
   * @param seconds from the first frame, where it is to begin
   */
  static Optional<Sound> of(Input input, double seconds) {
    for (int i = 0; i < input.context().nb_streams(); i++) {
      if (input.context().streams(i).codecpar().codec_type() == AVMEDIA_TYPE_AUDIO) {
        return Optional.of(new Sound(input, i, seconds));
      }
    }
    input.close();
    return Optional.empty();
  }

  AVStream stream() {
    return input.context().streams(stream);
  }

  /** Whether a container can hold it as it is. */
  boolean fits(AVOutputFormat format) {
    return avformat_query_codec(format, parameters().codec_id(), STRICT) == 1;
  }

  AVCodecParameters parameters() {
    return stream().codecpar();
  }

  /** Goes to the next packet that begins before so many seconds of the copy; false for none. */
  boolean next(double before) {
    while (ready || advance()) {
      ready = true;
      double at = input.packet().pts() * av_q2d(stream().time_base()) - from;
      if (at >= before) {
        return false;
      }
      ready = false;
      if (at >= 0) {
        AVPacket packet = input.packet();
        long shift = Math.round(from / av_q2d(stream().time_base()));
        packet.pts(packet.pts() - shift);
        packet.dts(packet.pts());
        return true;
      }
    }
    return false;
  }

  private boolean advance() {
    while (input.read()) {
      if (input.packet().stream_index() == stream && input.packet().pts() != AV_NOPTS_VALUE) {
        return true;
      }
    }
    return false;
  }

  /** The packet, valid until the next. */
  AVPacket packet() {
    return input.packet();
  }

  @Override
  public void close() {
    input.close();
  }
}
