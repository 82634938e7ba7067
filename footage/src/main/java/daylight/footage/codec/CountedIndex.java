package daylight.footage.codec;

import static org.bytedeco.ffmpeg.avutil.AVFrame.AV_FRAME_FLAG_KEY;
import static org.bytedeco.ffmpeg.global.avcodec.AV_PKT_FLAG_KEY;
import static org.bytedeco.ffmpeg.global.avutil.AV_NOPTS_VALUE;
import static org.bytedeco.ffmpeg.global.avutil.av_q2d;

import daylight.footage.FrameTimes;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import org.bytedeco.ffmpeg.avcodec.AVPacket;
import org.bytedeco.ffmpeg.avutil.AVFrame;

/**
 * An index made by decoding once, for containers that do not tell the time of every frame: AVI with
 * frames predicted from both sides, one packet with two of them or none; program and transport
 * streams; what was cut out of the middle. A frame is then known by counting on from a key. A time
 * that is missing or does not rise is put one frame after the one before; after a leap back of more
 * than a second, as where recordings were joined, all times go on from there.
 */
final class CountedIndex {
  private static final double LEAP_SECONDS = 1;
  private static final int MOST_WAITING = 256;

  private final double tick;
  private final long step;
  private final LongStream.Builder ticks = LongStream.builder();
  private final List<Key> keys = new ArrayList<>();
  private final Deque<Waiting> waiting = new ArrayDeque<>();
  private long lastPos = -1;
  private long before = -1;
  private long lastTick;
  private long shift;
  private int frames;

  private record Waiting(long tag, Key key) {}

  private CountedIndex(Input input) {
    tick = av_q2d(input.stream().time_base());
    step = input.frameTicks();
  }

  /** The index of a file; the input is used up. Empty if not one frame can be decoded. */
  static Optional<Index> of(Input input, long bytes, Progress progress) throws IOException {
    return new CountedIndex(input).read(input, bytes, progress);
  }

  private Optional<Index> read(Input input, long bytes, Progress progress) throws IOException {
    long last = step;
    double missing;
    try (Decoding decoding = Decoding.counting(input, this::passes)) {
      while (decoding.next()) {
        progress.at(lastPos, bytes);
        last = decoding.frame().duration();
        take(decoding.frame());
      }
      missing = input.missingSeconds();
    }
    if (frames == 0) {
      return Optional.empty();
    }
    FrameTimes times = new FrameTimes(ticks.build().toArray(), tick, last > 0 ? last : step);
    return Optional.of(new Index(times, keys, false, missing));
  }

  private void passes(AVPacket packet, long tag) {
    if ((packet.flags() & AV_PKT_FLAG_KEY) != 0) {
      waiting.add(new Waiting(tag, new Key(-1, packet.pts(), packet.dts(), packet.pos(), before)));
      if (waiting.size() > MOST_WAITING) {
        waiting.remove();
      }
    }
    if (packet.pos() > lastPos) {
      before = lastPos;
      lastPos = packet.pos();
    }
  }

  private void take(AVFrame frame) {
    if ((frame.flags() & AV_FRAME_FLAG_KEY) != 0) {
      long tag = Decoder.tagOf(frame);
      waiting.stream()
          .filter(one -> one.tag() == tag)
          .findFirst()
          .ifPresent(one -> keys.add(one.key().numbered(frames)));
      waiting.removeIf(one -> one.tag() <= tag);
    }
    lastTick = frames == 0 ? first(frame) : after(lastTick, frame.best_effort_timestamp());
    ticks.add(lastTick);
    frames++;
  }

  private static long first(AVFrame frame) {
    long time = frame.best_effort_timestamp();
    return time == AV_NOPTS_VALUE ? 0 : time;
  }

  private long after(long before, long time) {
    if (time == AV_NOPTS_VALUE) {
      return before + step;
    }
    if (time + shift <= before) {
      if ((before - time - shift) * tick > LEAP_SECONDS) {
        shift = before + step - time;
      }
      return before + step;
    }
    return time + shift;
  }
}
