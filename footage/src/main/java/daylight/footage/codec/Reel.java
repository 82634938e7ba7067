package daylight.footage.codec;

import static org.bytedeco.ffmpeg.global.avutil.av_frame_alloc;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_free;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_move_ref;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_unref;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.jspecify.annotations.Nullable;

/**
 * A recording wound to any frame. It winds on while that is shorter, and otherwise starts again at
 * the last key before the frame; where that key is not found again exactly, at one before it or at
 * the beginning. A frame that the container tells of but that cannot be decoded is answered by the
 * one before it, which stays on display.
 */
final class Reel implements AutoCloseable {
  private static final int NONE = -1;
  private static final int NEAR = 12;
  private static final int MOST_KEYS_TRIED = 3;

  private final Path file;
  private final Sniffed sniffed;
  private final Index index;
  private final AVFrame shown;
  private @Nullable Decoding decoding;
  private int shownNumber = NONE;
  private int aheadNumber = NONE;
  private int counted;

  /** Whether nothing follows the frame on display until it starts again somewhere. */
  private boolean alone;

  private boolean closed;

  Reel(Path file, Sniffed sniffed, Index index) throws IOException {
    this.file = file;
    this.sniffed = sniffed;
    this.index = index;
    shown = Native.made(av_frame_alloc(), "a frame");
  }

  /** Another of the same recording, for another thread. */
  Reel twin() throws IOException {
    return new Reel(file, sniffed, index);
  }

  Index index() {
    return index;
  }

  /** The file once more, to be read by somebody else from its beginning. */
  Input again() throws IOException {
    return Input.open(file, sniffed);
  }

  /** The file as it is being read; there once a frame was asked for. */
  Input input() {
    return Objects.requireNonNull(decoding).input();
  }

  /** The number of the frame on display. */
  int number() {
    return shownNumber;
  }

  /**
   * The frame on display at that number, valid until the next is asked; empty where neither it nor
   * one before it can be decoded.
   */
  Optional<AVFrame> wind(int number, Progress progress, long done, long all) throws IOException {
    requireOpen();
    Decoding source = position(number);
    while (shownNumber != number) {
      progress.at(done, all);
      if (aheadNumber == NONE && !readAhead(source)) {
        break;
      }
      if (aheadNumber > number) {
        break;
      }
      show(source);
    }
    return shownNumber == NONE ? Optional.empty() : Optional.of(shown);
  }

  /**
   * The same where frames far apart are asked for: a key's own frame is decoded without those that
   * follow it, which is what a decoder of several threads waits for otherwise.
   */
  Optional<AVFrame> leap(int number, Progress progress, long done, long all) throws IOException {
    requireOpen();
    Optional<Key> key = index.keyBefore(number).filter(k -> k.frame() == number && number > 0);
    // Where the container does not tell of every frame a packet may hold half of one.
    if (number == shownNumber || !index.told() || key.isEmpty()) {
      return wind(number, progress, done, all);
    }
    Decoding source = decoding == null ? open() : decoding;
    progress.at(done, all);
    forget();
    alone = true;
    if (!source.only(key.get())) {
      return wind(number, progress, done, all);
    }
    aheadNumber = number;
    show(source);
    return Optional.of(shown);
  }

  private void requireOpen() {
    if (closed) {
      throw new IllegalStateException("this recording is closed: " + file);
    }
  }

  private void show(Decoding source) {
    av_frame_unref(shown);
    av_frame_move_ref(shown, source.frame());
    shownNumber = aheadNumber;
    aheadNumber = NONE;
  }

  private boolean readAhead(Decoding source) {
    while (source.next()) {
      aheadNumber = index.told() ? index.times().numberOf(source.frame().pts()) : counted++;
      if (aheadNumber > shownNumber) {
        return true;
      }
    }
    aheadNumber = NONE;
    return false;
  }

  private Decoding position(int number) throws IOException {
    Decoding here = decoding;
    Optional<Key> key = index.keyBefore(number);
    if (here != null && !alone && number >= shownNumber && !worthLeaping(key)) {
      return here;
    }
    Decoding source = here == null ? open() : here;
    boolean fresh = here == null;
    forget();
    for (int i = 0; i < MOST_KEYS_TRIED && key.isPresent() && key.get().frame() > 0; i++) {
      fresh = false;
      if (source.start(key.get())) {
        aheadNumber = key.get().frame();
        counted = aheadNumber + 1;
        return source;
      }
      key = index.keyBefore(key.get().frame() - 1);
    }
    if (fresh) {
      return source;
    }
    close(source);
    return open();
  }

  private boolean worthLeaping(Optional<Key> key) {
    int reached = Math.max(shownNumber, aheadNumber);
    return key.isPresent() && key.get().frame() > reached + NEAR;
  }

  private void forget() {
    av_frame_unref(shown);
    shownNumber = NONE;
    aheadNumber = NONE;
    counted = 0;
    alone = false;
  }

  private Decoding open() throws IOException {
    Decoding opened = Decoding.of(file, sniffed);
    decoding = opened;
    return opened;
  }

  private void close(Decoding opened) {
    decoding = null;
    opened.close();
  }

  @Override
  public void close() {
    // The library does not know what it freed before.
    if (closed) {
      return;
    }
    closed = true;
    if (decoding != null) {
      close(decoding);
    }
    av_frame_free(shown);
  }
}
