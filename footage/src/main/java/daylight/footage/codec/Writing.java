package daylight.footage.codec;

import static org.bytedeco.ffmpeg.global.avutil.AV_PICTURE_TYPE_NONE;
import static org.bytedeco.ffmpeg.global.avutil.av_q2d;
import static org.bytedeco.ffmpeg.global.avutil.av_rescale_q;

import daylight.footage.Rate;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import org.bytedeco.ffmpeg.avcodec.AVPacket;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.ffmpeg.avutil.AVRational;
import org.jspecify.annotations.Nullable;

/**
 * Pictures on their way through an encoder into a file beside its place. The encoder counts frames
 * and never sees times, so that times do not change how a picture looks; where every frame is made
 * from those before it, packets get their times in the order the frames came.
 */
final class Writing implements AutoCloseable {
  private final Part part;
  private final Recipe recipe;
  private final Container container;
  private final Encoder encoder;
  private final Deque<Long> due = new ArrayDeque<>();
  private long count;
  private long last = -1;
  private boolean closed;

  Writing(Path target, Recipe recipe, int width, int height, Rate rate) throws IOException {
    this(target, recipe, width, height, rate, null);
  }

  /**
   * The same with sound.
   *
   * @param sound that goes along as it is; null for none
   */
  Writing(Path target, Recipe recipe, int width, int height, Rate rate, @Nullable Sound sound)
      throws IOException {
    Native.ready();
    part = Part.of(target);
    this.recipe = recipe;
    container = new Container(recipe, part.file(), sound);
    boolean begun = false;
    try {
      encoder = Encoder.of(recipe, width, height, rate, container.keepsHeadersApart());
      try {
        container.begin(encoder.context());
        begun = true;
      } finally {
        if (!begun) {
          encoder.close();
        }
      }
    } finally {
      if (!begun) {
        container.close();
        part.forget();
      }
    }
  }

  Encoder encoder() {
    return encoder;
  }

  void add(AVFrame frame) throws IOException {
    add(frame, av_rescale_q(count, encoder.context().time_base(), container.tick()));
  }

  void add(AVFrame frame, double seconds) throws IOException {
    add(frame, Math.round(seconds / av_q2d(container.tick())));
  }

  /** Whether it was not closed; afterwards nothing of it may be touched. */
  boolean isOpen() {
    return !closed;
  }

  private void add(AVFrame frame, long tick) throws IOException {
    if (tick <= last) {
      throw new IllegalArgumentException(
          "times of a film rise, frame " + count + " comes at " + tick + " after " + last);
    }
    last = tick;
    container.hear(tick * av_q2d(container.tick()));
    due.add(tick);
    frame.pts(count++);
    frame.pict_type(AV_PICTURE_TYPE_NONE);
    encoder.encode(frame, this::write);
  }

  private void write(AVPacket packet) throws IOException {
    AVRational unit = encoder.context().time_base();
    packet.duration(1);
    if (recipe.between() > 0) {
      container.write(packet, unit);
      return;
    }
    long tick = due.remove();
    packet.pts(tick);
    packet.dts(tick);
    packet.duration(av_rescale_q(1, unit, container.tick()));
    container.write(packet, container.tick());
  }

  void finish() throws IOException {
    encoder.encode(null, this::write);
    container.hear(last * av_q2d(container.tick()) + av_q2d(encoder.context().time_base()));
    container.end();
    part.finish();
  }

  @Override
  public void close() throws IOException {
    closed = true;
    encoder.close();
    container.close();
    part.forget();
  }
}
