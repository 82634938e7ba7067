package daylight.footage.codec;

import org.bytedeco.ffmpeg.avformat.AVIOInterruptCB;
import org.bytedeco.javacpp.Pointer;
import org.jspecify.annotations.Nullable;

/**
 * Ends the library's own long looks into a file: opening one takes seconds at most, whatever is in
 * it. Asked by the library on the thread that called it.
 */
final class Patience extends AVIOInterruptCB.Callback_Pointer {
  /** The only one: the library keeps pointers to it for as long as a file is open. */
  static final Patience ONE = new Patience();

  private static final long ENOUGH_NANOSECONDS = 30_000_000_000L;

  private final transient ThreadLocal<@Nullable Long> deadline = new ThreadLocal<>();

  private Patience() {
    super();
  }

  /** From now on it does not last for ever. */
  void begin() {
    deadline.set(System.nanoTime() + ENOUGH_NANOSECONDS);
  }

  /** From now on it does. */
  void end() {
    deadline.remove();
  }

  @Override
  public int call(@Nullable Pointer nothing) {
    Long until = deadline.get();
    return until != null && System.nanoTime() - until > 0 ? 1 : 0;
  }
}
