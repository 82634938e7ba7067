package daylight.footage.codec;

import static org.bytedeco.ffmpeg.global.avcodec.AV_CODEC_FLAG_BITEXACT;
import static org.bytedeco.ffmpeg.global.avcodec.AV_CODEC_FLAG_GLOBAL_HEADER;
import static org.bytedeco.ffmpeg.global.avcodec.AV_CODEC_FLAG_QSCALE;
import static org.bytedeco.ffmpeg.global.avcodec.av_packet_alloc;
import static org.bytedeco.ffmpeg.global.avcodec.av_packet_free;
import static org.bytedeco.ffmpeg.global.avcodec.av_packet_unref;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_alloc_context3;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_find_encoder_by_name;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_free_context;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_open2;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_receive_packet;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_send_frame;
import static org.bytedeco.ffmpeg.global.avutil.AVCOL_RANGE_JPEG;
import static org.bytedeco.ffmpeg.global.avutil.AVCOL_RANGE_MPEG;
import static org.bytedeco.ffmpeg.global.avutil.AVCOL_SPC_SMPTE170M;
import static org.bytedeco.ffmpeg.global.avutil.AVERROR_EAGAIN;
import static org.bytedeco.ffmpeg.global.avutil.AVERROR_EOF;
import static org.bytedeco.ffmpeg.global.avutil.AV_PIX_FMT_YUVJ420P;
import static org.bytedeco.ffmpeg.global.avutil.FF_QP2LAMBDA;
import static org.bytedeco.ffmpeg.global.avutil.av_make_q;

import daylight.footage.Rate;
import java.io.IOException;
import org.bytedeco.ffmpeg.avcodec.AVCodec;
import org.bytedeco.ffmpeg.avcodec.AVCodecContext;
import org.bytedeco.ffmpeg.avcodec.AVPacket;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.jspecify.annotations.Nullable;

/**
 * Pictures in, packets out, on one thread and bit-exact, so that the same pictures give the same
 * bytes.
 */
final class Encoder implements AutoCloseable {
  private static final double BITS_A_PIXEL = 0.2;

  private final AVCodecContext context;
  private final AVPacket packet;

  /** Where packets go; they are emptied afterwards. */
  interface Sink {
    void take(AVPacket packet) throws IOException;
  }

  private Encoder(AVCodecContext context, AVPacket packet) {
    this.context = context;
    this.packet = packet;
  }

  /**
   * An encoder of pictures of that size whose times are counted in frames of the rate.
   *
   * @param headersApart whether the container keeps the codec's headers by itself
   */
  static Encoder of(Recipe recipe, int width, int height, Rate rate, boolean headersApart)
      throws IOException {
    AVCodec codec = Native.made(avcodec_find_encoder_by_name(recipe.encoder()), recipe.encoder());
    AVCodecContext context = Native.made(avcodec_alloc_context3(codec), recipe.encoder());
    boolean open = false;
    try {
      shape(context, recipe, width, height, rate);
      if (headersApart) {
        context.flags(context.flags() | AV_CODEC_FLAG_GLOBAL_HEADER);
      }
      int result =
          Native.withOptions(recipe.encoding(), options -> avcodec_open2(context, codec, options));
      if (result < 0) {
        throw new IllegalArgumentException(
            "%s does not take %d × %d at %d/%d frames per second: %s"
                .formatted(
                    recipe.encoder(),
                    width,
                    height,
                    rate.frames(),
                    rate.seconds(),
                    Native.message(result)));
      }
      open = true;
      return new Encoder(context, Native.made(av_packet_alloc(), "a packet"));
    } finally {
      if (!open) {
        avcodec_free_context(context);
      }
    }
  }

  private static void shape(
      AVCodecContext context, Recipe recipe, int width, int height, Rate rate) {
    context.width(width);
    context.height(height);
    context.pix_fmt(recipe.pixels());
    context.color_range(
        recipe.pixels() == AV_PIX_FMT_YUVJ420P ? AVCOL_RANGE_JPEG : AVCOL_RANGE_MPEG);
    context.colorspace(AVCOL_SPC_SMPTE170M);
    context.sample_aspect_ratio(av_make_q(1, 1));
    context.time_base(av_make_q(rate.seconds(), rate.frames()));
    context.framerate(av_make_q(rate.frames(), rate.seconds()));
    // A frame to start at every second keeps seeking quick.
    context.gop_size(Math.max(1, (int) Math.round(rate.perSecond())));
    context.max_b_frames(recipe.between());
    context.thread_count(1);
    context.flags(context.flags() | AV_CODEC_FLAG_BITEXACT);
    if (recipe.quantiser() > 0) {
      context.flags(context.flags() | AV_CODEC_FLAG_QSCALE);
      context.global_quality(recipe.quantiser() * FF_QP2LAMBDA);
    } else if (!recipe.encoding().containsKey("crf")) {
      context.bit_rate(Math.round(width * height * rate.perSecond() * BITS_A_PIXEL));
    }
  }

  AVCodecContext context() {
    return context;
  }

  /** A picture to be filled, as it is taken. */
  AVFrame frame() throws IOException {
    AVFrame frame = Colours.frame(context.pix_fmt(), context.width(), context.height());
    frame.color_range(context.color_range());
    frame.colorspace(context.colorspace());
    return frame;
  }

  /** Takes a picture, or null for the end, and hands on the packets that are ready. */
  void encode(@Nullable AVFrame frame, Sink sink) throws IOException {
    Native.check(avcodec_send_frame(context, frame), "writing a picture");
    while (true) {
      int result = avcodec_receive_packet(context, packet);
      if (result == AVERROR_EAGAIN() || result == AVERROR_EOF()) {
        return;
      }
      Native.check(result, "writing a picture");
      try {
        sink.take(packet);
      } finally {
        av_packet_unref(packet);
      }
    }
  }

  @Override
  public void close() {
    av_packet_free(packet);
    avcodec_free_context(context);
  }
}
