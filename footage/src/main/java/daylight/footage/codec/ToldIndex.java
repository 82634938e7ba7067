package daylight.footage.codec;

import static org.bytedeco.ffmpeg.global.avcodec.AV_CODEC_ID_AV1;
import static org.bytedeco.ffmpeg.global.avcodec.AV_CODEC_ID_H264;
import static org.bytedeco.ffmpeg.global.avcodec.AV_CODEC_ID_HEVC;
import static org.bytedeco.ffmpeg.global.avcodec.AV_CODEC_ID_MJPEG;
import static org.bytedeco.ffmpeg.global.avcodec.AV_CODEC_ID_MPEG4;
import static org.bytedeco.ffmpeg.global.avcodec.AV_CODEC_ID_VP9;
import static org.bytedeco.ffmpeg.global.avcodec.AV_PKT_FLAG_CORRUPT;
import static org.bytedeco.ffmpeg.global.avcodec.AV_PKT_FLAG_DISCARD;
import static org.bytedeco.ffmpeg.global.avcodec.AV_PKT_FLAG_KEY;
import static org.bytedeco.ffmpeg.global.avutil.AV_NOPTS_VALUE;
import static org.bytedeco.ffmpeg.global.avutil.av_q2d;

import daylight.footage.FrameTimes;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import org.bytedeco.ffmpeg.avcodec.AVPacket;
import org.jspecify.annotations.Nullable;

/**
 * An index made by reading the packets without decoding one, where the container tells the time of
 * every frame and every packet holds one frame that is shown. Anything out of the ordinary, such as
 * a packet without a time or two with the same, and there is no such index.
 */
final class ToldIndex {
  private final Input input;
  private final @Nullable Planes planes;
  private final LongStream.Builder ticks = LongStream.builder();
  private final List<Key> keys = new ArrayList<>();
  private long lastTick = Long.MIN_VALUE;
  private long lastDuration;

  private ToldIndex(Input input) {
    this.input = input;
    planes = codec(input) == AV_CODEC_ID_MPEG4 ? new Planes() : null;
  }

  /** The index of a file that nothing was read of yet; empty if it has to be decoded for that. */
  static Optional<Index> of(Input input, long bytes, Progress progress) {
    boolean times =
        input.wrapping().tellsTimes() || (input.wrapping() == Wrapping.AVI && inOrder(input));
    if (!times || !oneFrameEach(input)) {
      return Optional.empty();
    }
    return new ToldIndex(input).read(bytes, progress);
  }

  /** Whether frames are asked to come in the order in which they are shown; AVI counts them so. */
  private static boolean inOrder(Input input) {
    int codec = codec(input);
    return codec == AV_CODEC_ID_MJPEG || codec == AV_CODEC_ID_MPEG4;
  }

  private static int codec(Input input) {
    return input.stream().codecpar().codec_id();
  }

  private static boolean oneFrameEach(Input input) {
    int codec = codec(input);
    return inOrder(input)
        || codec == AV_CODEC_ID_H264
        || codec == AV_CODEC_ID_HEVC
        || codec == AV_CODEC_ID_VP9
        || codec == AV_CODEC_ID_AV1;
  }

  private Optional<Index> read(long bytes, Progress progress) {
    while (input.read()) {
      AVPacket packet = input.packet();
      progress.at(packet.pos(), bytes);
      if (input.ofPictures() && !take(packet)) {
        return Optional.empty();
      }
    }
    long[] rising = ticks.build().sorted().toArray();
    for (int i = 1; i < rising.length; i++) {
      if (rising[i] == rising[i - 1]) {
        return Optional.empty();
      }
    }
    return rising.length == 0 ? Optional.empty() : Optional.of(index(rising));
  }

  private boolean take(AVPacket packet) {
    if ((packet.flags() & AV_PKT_FLAG_DISCARD) != 0) {
      return true;
    }
    boolean corrupt = (packet.flags() & AV_PKT_FLAG_CORRUPT) != 0;
    if (packet.pts() == AV_NOPTS_VALUE || packet.size() == 0 || corrupt) {
      return false;
    }
    if (planes != null && !planes.oneInOrder(packet)) {
      return false;
    }
    ticks.add(packet.pts());
    if (packet.pts() > lastTick) {
      lastTick = packet.pts();
      lastDuration = packet.duration();
    }
    if ((packet.flags() & AV_PKT_FLAG_KEY) != 0) {
      keys.add(new Key(-1, packet.pts(), packet.dts(), packet.pos(), packet.pos()));
    }
    return true;
  }

  private Index index(long[] rising) {
    long usual = Index.usualInterval(rising, input.frameTicks());
    FrameTimes times =
        new FrameTimes(
            rising, av_q2d(input.stream().time_base()), lastDuration > 0 ? lastDuration : usual);
    List<Key> numbered =
        keys.stream()
            .map(key -> key.numbered(Arrays.binarySearch(rising, key.pts())))
            .sorted(Comparator.comparingInt(Key::frame))
            .toList();
    return new Index(times, numbered, true, input.missingSeconds());
  }
}
