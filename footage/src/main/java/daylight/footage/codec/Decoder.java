package daylight.footage.codec;

import static org.bytedeco.ffmpeg.global.avcodec.AVDISCARD_ALL;
import static org.bytedeco.ffmpeg.global.avcodec.AV_CODEC_FLAG_COPY_OPAQUE;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_alloc_context3;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_find_decoder;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_flush_buffers;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_free_context;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_open2;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_parameters_to_context;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_receive_frame;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_send_packet;
import static org.bytedeco.ffmpeg.global.avutil.AVERROR_EAGAIN;
import static org.bytedeco.ffmpeg.global.avutil.AVERROR_EOF;

import java.io.IOException;
import org.bytedeco.ffmpeg.avcodec.AVCodec;
import org.bytedeco.ffmpeg.avcodec.AVCodecContext;
import org.bytedeco.ffmpeg.avcodec.AVPacket;
import org.bytedeco.ffmpeg.avformat.AVStream;
import org.bytedeco.ffmpeg.avutil.AVDictionary;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.javacpp.Pointer;

/**
 * Packets in, frames out. Each packet carries a tag, a number from 1 up, and a frame that of the
 * packet it was in, so that a frame is known whatever its times say.
 */
final class Decoder implements AutoCloseable {
  /** No picture read is wider or taller. */
  static final int LARGEST_SIDE = 8192;

  private static final int MOST_THREADS = 8;
  private static final int MOST_ERRORS = 1000;

  private final AVCodecContext context;

  private Decoder(AVCodecContext context) {
    this.context = context;
  }

  /** Whether there is one for a stream. */
  static boolean knows(AVStream stream) {
    AVCodec codec = avcodec_find_decoder(stream.codecpar().codec_id());
    return codec != null && !codec.isNull();
  }

  /**
   * A decoder of a stream.
   *
   * @param counting for counting frames only: their pictures may be anything
   */
  static Decoder of(AVStream stream, boolean counting) throws IOException {
    AVCodec codec = Native.made(avcodec_find_decoder(stream.codecpar().codec_id()), "a decoder");
    AVCodecContext context = Native.made(avcodec_alloc_context3(codec), "a decoder");
    boolean open = false;
    try {
      Native.check(avcodec_parameters_to_context(context, stream.codecpar()), "decoding");
      context.pkt_timebase(stream.time_base());
      context.flags(context.flags() | AV_CODEC_FLAG_COPY_OPAQUE);
      context.max_pixels((long) LARGEST_SIDE * LARGEST_SIDE);
      context.thread_count(Math.min(Runtime.getRuntime().availableProcessors(), MOST_THREADS));
      if (counting) {
        context.skip_idct(AVDISCARD_ALL);
        context.skip_loop_filter(AVDISCARD_ALL);
      }
      Native.check(avcodec_open2(context, codec, (AVDictionary) null), "decoding");
      open = true;
      return new Decoder(context);
    } finally {
      if (!open) {
        avcodec_free_context(context);
      }
    }
  }

  /**
   * Takes a packet; one that is damaged is passed over. All frames ready have been taken before.
   */
  void send(AVPacket packet, long tag) {
    packet.opaque(new Tag(tag));
    avcodec_send_packet(context, packet);
  }

  /** Tells that no packet follows. */
  void end() {
    avcodec_send_packet(context, null);
  }

  /** Takes the next frame that is ready; false if there is none. */
  boolean receive(AVFrame frame) {
    for (int errors = 0; errors < MOST_ERRORS; errors++) {
      int result = avcodec_receive_frame(context, frame);
      if (result >= 0) {
        return true;
      }
      if (result == AVERROR_EAGAIN() || result == AVERROR_EOF()) {
        return false;
      }
    }
    return false;
  }

  /** The tag of the packet that a frame was in; 0 if that is not known. */
  static long tagOf(AVFrame frame) {
    Pointer tag = frame.opaque();
    return tag == null ? 0 : tag.address();
  }

  /** Forgets everything, to go on at another place. */
  void flush() {
    avcodec_flush_buffers(context);
  }

  @Override
  public void close() {
    avcodec_free_context(context);
  }

  /** A number in the place of a pointer; the library only hands it through. */
  private static final class Tag extends Pointer {
    Tag(long number) {
      address = number;
    }
  }
}
