package daylight.footage.codec;

import static org.bytedeco.ffmpeg.global.avcodec.av_packet_alloc;
import static org.bytedeco.ffmpeg.global.avcodec.av_packet_free;
import static org.bytedeco.ffmpeg.global.avcodec.av_packet_unref;
import static org.bytedeco.ffmpeg.global.avformat.AVFMT_DURATION_FROM_STREAM;
import static org.bytedeco.ffmpeg.global.avformat.AVSEEK_FLAG_BACKWARD;
import static org.bytedeco.ffmpeg.global.avformat.AVSEEK_FLAG_BYTE;
import static org.bytedeco.ffmpeg.global.avformat.AV_DISPOSITION_ATTACHED_PIC;
import static org.bytedeco.ffmpeg.global.avformat.av_guess_frame_rate;
import static org.bytedeco.ffmpeg.global.avformat.av_read_frame;
import static org.bytedeco.ffmpeg.global.avformat.av_seek_frame;
import static org.bytedeco.ffmpeg.global.avformat.avformat_alloc_context;
import static org.bytedeco.ffmpeg.global.avformat.avformat_close_input;
import static org.bytedeco.ffmpeg.global.avformat.avformat_find_stream_info;
import static org.bytedeco.ffmpeg.global.avformat.avformat_open_input;
import static org.bytedeco.ffmpeg.global.avutil.AVERROR_EAGAIN;
import static org.bytedeco.ffmpeg.global.avutil.AVMEDIA_TYPE_AUDIO;
import static org.bytedeco.ffmpeg.global.avutil.AVMEDIA_TYPE_VIDEO;
import static org.bytedeco.ffmpeg.global.avutil.AV_NOPTS_VALUE;
import static org.bytedeco.ffmpeg.global.avutil.AV_TIME_BASE;
import static org.bytedeco.ffmpeg.global.avutil.av_q2d;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import org.bytedeco.ffmpeg.avcodec.AVPacket;
import org.bytedeco.ffmpeg.avformat.AVFormatContext;
import org.bytedeco.ffmpeg.avformat.AVStream;
import org.bytedeco.ffmpeg.avutil.AVDictionary;
import org.bytedeco.ffmpeg.avutil.AVRational;

/** A file being read packet by packet; of its streams of pictures the first counts. */
final class Input implements AutoCloseable {
  private static final int NONE = -1;
  private static final int MOST_RETRIES = 1000;
  private static final Map<String, String> OPTIONS = Map.of("protocol_whitelist", "file");

  private final AVFormatContext context;
  private final AVPacket packet;
  private final Sniffed sniffed;
  private final int pictures;
  private double furthest;
  private long picturesRead;

  private Input(AVFormatContext context, AVPacket packet, Sniffed sniffed, int pictures) {
    this.context = context;
    this.packet = packet;
    this.sniffed = sniffed;
    this.pictures = pictures;
  }

  /** Opens a file of which it is known what it is. */
  static Input open(Path file, Sniffed sniffed) throws IOException {
    AVFormatContext context = Native.made(avformat_alloc_context(), "a container");
    context.interrupt_callback().callback(Patience.ONE);
    Patience.ONE.begin();
    try {
      // On failure the library frees the context itself.
      Native.check(
          Native.withOptions(
              OPTIONS,
              options -> avformat_open_input(context, Native.url(file), sniffed.format(), options)),
          "opening");
      avformat_find_stream_info(context, (AVDictionary) null);
    } finally {
      Patience.ONE.end();
    }
    return new Input(
        context, Native.made(av_packet_alloc(), "a packet"), sniffed, firstPictures(context));
  }

  private static int firstPictures(AVFormatContext context) {
    for (int i = 0; i < context.nb_streams(); i++) {
      AVStream stream = context.streams(i);
      boolean cover = (stream.disposition() & AV_DISPOSITION_ATTACHED_PIC) != 0;
      if (stream.codecpar().codec_type() == AVMEDIA_TYPE_VIDEO && !cover) {
        return i;
      }
    }
    return NONE;
  }

  boolean hasPictures() {
    return pictures != NONE;
  }

  boolean hasSound() {
    for (int i = 0; i < context.nb_streams(); i++) {
      if (context.streams(i).codecpar().codec_type() == AVMEDIA_TYPE_AUDIO) {
        return true;
      }
    }
    return false;
  }

  Wrapping wrapping() {
    return sniffed.wrapping();
  }

  AVFormatContext context() {
    return context;
  }

  /** The stream of pictures. */
  AVStream stream() {
    return context.streams(pictures);
  }

  /** How long a frame lasts as far as the container can be asked, in ticks; at least 1. */
  long frameTicks() {
    AVRational rate = av_guess_frame_rate(context, stream(), null);
    AVRational tick = stream().time_base();
    double ticks = (double) rate.den() * tick.den() / ((double) rate.num() * tick.num());
    return ticks >= 1 && ticks <= Integer.MAX_VALUE ? Math.round(ticks) : 1;
  }

  /** The packet read last. */
  AVPacket packet() {
    return packet;
  }

  /** Whether the packet read last is of the pictures. */
  boolean ofPictures() {
    return packet.stream_index() == pictures;
  }

  /** Reads the next packet of any stream; false at the end. */
  boolean read() {
    for (int i = 0; i < MOST_RETRIES; i++) {
      av_packet_unref(packet);
      int result = av_read_frame(context, packet);
      if (result >= 0) {
        furthest = Math.max(furthest, endOfPacket());
        picturesRead += ofPictures() ? 1 : 0;
        return true;
      }
      if (result != AVERROR_EAGAIN()) {
        return false;
      }
    }
    return false;
  }

  private double endOfPacket() {
    long time = packet.pts() == AV_NOPTS_VALUE ? packet.dts() : packet.pts();
    return time == AV_NOPTS_VALUE
        ? 0
        : (time + packet.duration()) * av_q2d(context.streams(packet.stream_index()).time_base());
  }

  /**
   * How many seconds the container announces beyond what was read; not above 0 if it announces
   * nothing.
   */
  double missingSeconds() {
    double frame = frameTicks() * av_q2d(stream().time_base());
    double frames = (stream().nb_frames() - picturesRead) * frame;
    if (context.duration() == AV_NOPTS_VALUE
        || context.duration_estimation_method() != AVFMT_DURATION_FROM_STREAM) {
      return frames;
    }
    long start = context.start_time() == AV_NOPTS_VALUE ? 0 : context.start_time();
    double end = (double) (start + context.duration()) / AV_TIME_BASE;
    return Math.max(frames, end - furthest);
  }

  /** Reads the next packet of the pictures; false at the end. */
  boolean readPictures() {
    while (read()) {
      if (ofPictures()) {
        return true;
      }
    }
    return false;
  }

  /** Goes to a place at or before a key, as far as the container can. */
  boolean seek(Key key) {
    if (!sniffed.wrapping().seeksByTime()) {
      return key.from() >= 0 && av_seek_frame(context, pictures, key.from(), AVSEEK_FLAG_BYTE) >= 0;
    }
    long time = key.dts() == AV_NOPTS_VALUE ? key.pts() : key.dts();
    return time != AV_NOPTS_VALUE
        && av_seek_frame(context, pictures, time, AVSEEK_FLAG_BACKWARD) >= 0;
  }

  @Override
  public void close() {
    av_packet_free(packet);
    avformat_close_input(context);
  }
}
