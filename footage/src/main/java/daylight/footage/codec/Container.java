package daylight.footage.codec;

import static org.bytedeco.ffmpeg.avformat.AVFormatContext.AVFMT_FLAG_BITEXACT;
import static org.bytedeco.ffmpeg.global.avcodec.av_packet_rescale_ts;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_parameters_copy;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_parameters_from_context;
import static org.bytedeco.ffmpeg.global.avformat.AVFMT_GLOBALHEADER;
import static org.bytedeco.ffmpeg.global.avformat.AVIO_FLAG_WRITE;
import static org.bytedeco.ffmpeg.global.avformat.av_interleaved_write_frame;
import static org.bytedeco.ffmpeg.global.avformat.av_write_trailer;
import static org.bytedeco.ffmpeg.global.avformat.avformat_alloc_output_context2;
import static org.bytedeco.ffmpeg.global.avformat.avformat_free_context;
import static org.bytedeco.ffmpeg.global.avformat.avformat_new_stream;
import static org.bytedeco.ffmpeg.global.avformat.avformat_write_header;
import static org.bytedeco.ffmpeg.global.avformat.avio_closep;
import static org.bytedeco.ffmpeg.global.avformat.avio_open;

import java.io.IOException;
import java.nio.file.Path;
import org.bytedeco.ffmpeg.avcodec.AVCodecContext;
import org.bytedeco.ffmpeg.avcodec.AVPacket;
import org.bytedeco.ffmpeg.avformat.AVFormatContext;
import org.bytedeco.ffmpeg.avformat.AVIOContext;
import org.bytedeco.ffmpeg.avformat.AVStream;
import org.bytedeco.ffmpeg.avutil.AVRational;
import org.jspecify.annotations.Nullable;

/** A file with pictures being written, and with the sound of another that goes along as it is. */
final class Container implements AutoCloseable {
  private final AVFormatContext context = new AVFormatContext(null);
  private final Recipe recipe;
  private final Path file;
  private final @Nullable Sound sound;

  /**
   * A file to be.
   *
   * @param sound that goes along; null for none
   */
  Container(Recipe recipe, Path file, @Nullable Sound sound) throws IOException {
    this.recipe = recipe;
    this.file = file;
    this.sound = sound;
    String url = Native.url(file);
    Native.check(
        avformat_alloc_output_context2(context, null, recipe.muxer(), url), "writing " + file);
    context.flags(context.flags() | AVFMT_FLAG_BITEXACT);
  }

  boolean keepsHeadersApart() {
    return (context.oformat().flags() & AVFMT_GLOBALHEADER) != 0;
  }

  /** Opens the file and writes its beginning; packets of that encoder follow. */
  void begin(AVCodecContext encoder) throws IOException {
    AVStream stream = Native.made(avformat_new_stream(context, null), "a stream");
    Native.check(avcodec_parameters_from_context(stream.codecpar(), encoder), "writing " + file);
    stream.time_base(encoder.time_base());
    stream.avg_frame_rate(encoder.framerate());
    stream.sample_aspect_ratio(encoder.sample_aspect_ratio());
    if (sound != null) {
      AVStream heard = Native.made(avformat_new_stream(context, null), "a stream");
      Native.check(
          avcodec_parameters_copy(heard.codecpar(), sound.parameters()), "writing " + file);
      heard.codecpar().codec_tag(0);
      heard.time_base(sound.stream().time_base());
    }
    AVIOContext bytes = new AVIOContext(null);
    Native.check(avio_open(bytes, Native.url(file), AVIO_FLAG_WRITE), "opening " + file);
    context.pb(bytes);
    Native.check(
        Native.withOptions(recipe.muxing(), options -> avformat_write_header(context, options)),
        "writing " + file);
  }

  /** What its times are counted in, seconds; known once it has begun. */
  AVRational tick() {
    return context.streams(0).time_base();
  }

  /** Writes a packet whose times are counted in that unit. */
  void write(AVPacket packet, AVRational unit) throws IOException {
    av_packet_rescale_ts(packet, unit, tick());
    packet.stream_index(0);
    Native.check(av_interleaved_write_frame(context, packet), "writing " + file);
  }

  /** Writes what is heard before so many seconds. */
  void hear(double before) throws IOException {
    while (sound != null && sound.next(before)) {
      AVPacket packet = sound.packet();
      av_packet_rescale_ts(packet, sound.stream().time_base(), context.streams(1).time_base());
      packet.stream_index(1);
      packet.pos(-1);
      Native.check(av_interleaved_write_frame(context, packet), "writing " + file);
    }
  }

  /** Writes the end and closes the file. */
  void end() throws IOException {
    Native.check(av_write_trailer(context), "writing " + file);
    AVIOContext bytes = context.pb();
    context.pb(null);
    Native.check(avio_closep(bytes), "closing " + file);
  }

  @Override
  public void close() {
    AVIOContext bytes = context.pb();
    if (bytes != null && !bytes.isNull()) {
      context.pb(null);
      avio_closep(bytes);
    }
    avformat_free_context(context);
  }
}
