package daylight.footage.codec;

import static org.bytedeco.ffmpeg.global.avutil.av_frame_alloc;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_free;

import java.io.IOException;
import java.nio.file.Path;
import org.bytedeco.ffmpeg.avcodec.AVPacket;
import org.bytedeco.ffmpeg.avutil.AVFrame;

/** The frames of a file one after the other, from its beginning or from a key. */
final class Decoding implements AutoCloseable {
  private static final int MOST_PASSED_OVER = 4096;
  private static final long FIRST_TAG = 1;

  private final Input input;
  private final Decoder decoder;
  private final AVFrame frame;
  private final Onlooker onlooker;
  private long tag = FIRST_TAG;
  private boolean ended;

  /** Sees every packet before it is decoded. */
  interface Onlooker {
    Onlooker NONE = (packet, tag) -> {};

    void passes(AVPacket packet, long tag);
  }

  private Decoding(Input input, Decoder decoder, AVFrame frame, Onlooker onlooker) {
    this.input = input;
    this.decoder = decoder;
    this.frame = frame;
    this.onlooker = onlooker;
  }

  /** For looking at the pictures. */
  static Decoding of(Path file, Sniffed sniffed) throws IOException {
    return of(Input.open(file, sniffed), false, Onlooker.NONE);
  }

  /** For counting the frames only; it takes the input over. */
  static Decoding counting(Input input, Onlooker onlooker) throws IOException {
    return of(input, true, onlooker);
  }

  private static Decoding of(Input input, boolean counting, Onlooker onlooker) throws IOException {
    boolean begun = false;
    try {
      Decoder decoder = Decoder.of(input.stream(), counting);
      AVFrame frame = Native.made(av_frame_alloc(), "a frame");
      begun = true;
      return new Decoding(input, decoder, frame, onlooker);
    } finally {
      if (!begun) {
        input.close();
      }
    }
  }

  Input input() {
    return input;
  }

  /** The frame decoded last; its content is replaced by the next. */
  AVFrame frame() {
    return frame;
  }

  /** Decodes the next frame; false after the last. */
  boolean next() {
    while (!decoder.receive(frame)) {
      if (ended) {
        return false;
      }
      if (input.readPictures()) {
        send();
      } else {
        end();
      }
    }
    return true;
  }

  /**
   * Goes to a key and decodes its frame; false if it could not be found, and then nothing can be
   * said of where it stands.
   */
  boolean start(Key key) {
    return reach(key) && reachFirstTag();
  }

  /** The same, but nothing that follows is decoded, and nothing more comes until another start. */
  boolean only(Key key) {
    if (!reach(key)) {
      return false;
    }
    end();
    return reachFirstTag();
  }

  /** Sends the packet of a key to a decoder that knows of nothing else. */
  private boolean reach(Key key) {
    decoder.flush();
    ended = false;
    if (!input.seek(key)) {
      return false;
    }
    for (int i = 0; i < MOST_PASSED_OVER && input.readPictures(); i++) {
      AVPacket packet = input.packet();
      if (key.isPacket(packet.pts(), packet.dts(), packet.pos())) {
        tag = FIRST_TAG;
        send();
        return true;
      }
    }
    return false;
  }

  private void end() {
    decoder.end();
    ended = true;
  }

  /** Passes over what is decoded from half its sources: the frames shown before the key's own. */
  private boolean reachFirstTag() {
    while (next()) {
      long its = Decoder.tagOf(frame);
      if (its >= FIRST_TAG) {
        return its == FIRST_TAG;
      }
    }
    return false;
  }

  private void send() {
    onlooker.passes(input.packet(), tag);
    decoder.send(input.packet(), tag++);
  }

  @Override
  public void close() {
    av_frame_free(frame);
    decoder.close();
    input.close();
  }
}
