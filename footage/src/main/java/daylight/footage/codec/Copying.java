package daylight.footage.codec;

import static org.bytedeco.ffmpeg.avformat.AVFormatContext.AVFMT_FLAG_BITEXACT;
import static org.bytedeco.ffmpeg.global.avcodec.av_packet_rescale_ts;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_parameters_copy;
import static org.bytedeco.ffmpeg.global.avformat.AVIO_FLAG_WRITE;
import static org.bytedeco.ffmpeg.global.avformat.av_interleaved_write_frame;
import static org.bytedeco.ffmpeg.global.avformat.av_write_trailer;
import static org.bytedeco.ffmpeg.global.avformat.avformat_alloc_output_context2;
import static org.bytedeco.ffmpeg.global.avformat.avformat_free_context;
import static org.bytedeco.ffmpeg.global.avformat.avformat_new_stream;
import static org.bytedeco.ffmpeg.global.avformat.avformat_query_codec;
import static org.bytedeco.ffmpeg.global.avformat.avformat_write_header;
import static org.bytedeco.ffmpeg.global.avformat.avio_closep;
import static org.bytedeco.ffmpeg.global.avformat.avio_open;
import static org.bytedeco.ffmpeg.global.avutil.AVMEDIA_TYPE_AUDIO;
import static org.bytedeco.ffmpeg.global.avutil.AV_NOPTS_VALUE;
import static org.bytedeco.ffmpeg.global.avutil.av_dict_set;
import static org.bytedeco.ffmpeg.global.avutil.av_make_q;
import static org.bytedeco.ffmpeg.global.avutil.av_mallocz;
import static org.bytedeco.ffmpeg.global.avutil.av_q2d;
import static org.bytedeco.ffmpeg.global.avutil.av_rescale_q;

import daylight.footage.Chapter;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.bytedeco.ffmpeg.avcodec.AVCodecParameters;
import org.bytedeco.ffmpeg.avcodec.AVPacket;
import org.bytedeco.ffmpeg.avformat.AVChapter;
import org.bytedeco.ffmpeg.avformat.AVFormatContext;
import org.bytedeco.ffmpeg.avformat.AVIOContext;
import org.bytedeco.ffmpeg.avformat.AVStream;
import org.bytedeco.ffmpeg.avutil.AVDictionary;
import org.bytedeco.javacpp.Loader;
import org.bytedeco.javacpp.Pointer;
import org.bytedeco.javacpp.PointerPointer;

/**
 * An MP4 file that takes the packets of another file as they are, the pictures and the sound and
 * nothing else: no tag of the original goes along, so no place, device or day does.
 */
final class Copying implements AutoCloseable {
  private static final int STRICT = 0;
  private static final int MILLISECONDS = 1000;
  private static final Map<String, String> OPTIONS = Map.of("movflags", "faststart");

  private final Input input;
  private final Path file;
  private final Excerpt excerpt;
  private final AVFormatContext context = new AVFormatContext(null);

  /** Whether the first picture of the excerpt came by. */
  private boolean begun;

  /** Streams of the input by their number, to those of the copy. */
  private final Map<Integer, Integer> taken = new TreeMap<>();

  Copying(Input input, Path file, Excerpt excerpt) throws IOException {
    this.input = input;
    this.file = file;
    this.excerpt = excerpt;
    Native.check(
        avformat_alloc_output_context2(context, null, "mp4", Native.url(file)), "writing " + file);
    context.flags(context.flags() | AVFMT_FLAG_BITEXACT);
  }

  /** What MP4 cannot hold of the input, in plain words; empty where it can hold all. */
  Optional<String> unfit() {
    for (int i = 0; i < input.context().nb_streams(); i++) {
      AVCodecParameters parameters = input.context().streams(i).codecpar();
      if (wanted(i)
          && avformat_query_codec(context.oformat(), parameters.codec_id(), STRICT) != 1) {
        return Optional.of(CodecWords.of(parameters));
      }
    }
    return Optional.empty();
  }

  private boolean wanted(int stream) {
    return stream == input.stream().index()
        || (excerpt.sound()
            && input.context().streams(stream).codecpar().codec_type() == AVMEDIA_TYPE_AUDIO);
  }

  void begin(List<Chapter> chapters) throws IOException {
    for (int i = 0; i < input.context().nb_streams(); i++) {
      if (wanted(i)) {
        AVStream from = input.context().streams(i);
        AVStream to = Native.made(avformat_new_stream(context, null), "a stream");
        Native.check(avcodec_parameters_copy(to.codecpar(), from.codecpar()), "writing " + file);
        to.codecpar().codec_tag(0);
        to.time_base(from.time_base());
        to.avg_frame_rate(from.avg_frame_rate());
        to.sample_aspect_ratio(from.sample_aspect_ratio());
        taken.put(i, to.index());
      }
    }
    mark(chapters);
    AVIOContext bytes = new AVIOContext(null);
    Native.check(avio_open(bytes, Native.url(file), AVIO_FLAG_WRITE), "opening " + file);
    context.pb(bytes);
    Native.check(
        Native.withOptions(OPTIONS, options -> avformat_write_header(context, options)),
        "writing " + file);
  }

  /** The library frees what it is given here together with the context. */
  private void mark(List<Chapter> chapters) throws IOException {
    if (chapters.isEmpty()) {
      return;
    }
    AVStream pictures = input.stream();
    double start =
        excerpt.from() != null || pictures.start_time() == AV_NOPTS_VALUE
            ? 0
            : pictures.start_time() * av_q2d(pictures.time_base());
    PointerPointer<AVChapter> list =
        new PointerPointer<>(allocated((long) chapters.size() * Loader.sizeof(Pointer.class)));
    for (int i = 0; i < chapters.size(); i++) {
      Chapter chapter = chapters.get(i);
      AVChapter mark = new AVChapter(allocated(Loader.sizeof(AVChapter.class)));
      mark.id(i + 1L);
      mark.time_base(av_make_q(1, MILLISECONDS));
      mark.start(Math.round((start + chapter.from()) * MILLISECONDS));
      mark.end(Math.round((start + chapter.to()) * MILLISECONDS));
      AVDictionary title = new AVDictionary(null);
      av_dict_set(title, "title", chapter.title(), 0);
      mark.metadata(title);
      list.put(i, mark);
    }
    context.chapters(list);
    context.nb_chapters(chapters.size());
  }

  private static Pointer allocated(long bytes) throws IOException {
    return Native.made(av_mallocz(bytes), "chapters");
  }

  /** Writes every packet and the end. */
  void copy(Progress progress, long frames) throws IOException {
    long done = 0;
    while (input.read()) {
      AVPacket packet = input.packet();
      if (input.ofPictures()) {
        progress.at(done++, frames);
      }
      Integer to = taken.get(packet.stream_index());
      if (to == null || !within(packet)) {
        continue;
      }
      av_packet_rescale_ts(
          packet,
          input.context().streams(packet.stream_index()).time_base(),
          context.streams(to).time_base());
      packet.stream_index(to);
      packet.pos(-1);
      Native.check(av_interleaved_write_frame(context, packet), "writing " + file);
    }
    Native.check(av_write_trailer(context), "writing " + file);
    AVIOContext bytes = context.pb();
    context.pb(null);
    Native.check(avio_closep(bytes), "closing " + file);
    progress.at(1, 1);
  }

  /** Whether a packet is of the excerpt; one that is has its times counted from the beginning. */
  private boolean within(AVPacket packet) {
    Key from = excerpt.from();
    if (from == null) {
      return true;
    }
    if (input.ofPictures()) {
      begun = begun || from.isPacket(packet.pts(), packet.dts(), packet.pos());
    }
    long start =
        av_rescale_q(
            from.pts(),
            input.stream().time_base(),
            input.context().streams(packet.stream_index()).time_base());
    // Behind a key there may come pictures that are shown before it and need what is left out; and
    // sound is written in file order a little ahead of its pictures or behind them.
    if (packet.pts() == AV_NOPTS_VALUE || packet.pts() < start || (input.ofPictures() && !begun)) {
      return false;
    }
    packet.pts(packet.pts() - start);
    packet.dts(packet.dts() == AV_NOPTS_VALUE ? AV_NOPTS_VALUE : packet.dts() - start);
    return true;
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
