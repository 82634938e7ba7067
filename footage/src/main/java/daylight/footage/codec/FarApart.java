package daylight.footage.codec;

import daylight.footage.Watch;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Function;
import org.bytedeco.ffmpeg.avutil.AVFrame;

/** Frames far apart being looked at beside others, by a decoder of their own. */
final class FarApart<T> {
  private final CompletableFuture<List<T>> making;

  private FarApart(CompletableFuture<List<T>> making) {
    this.making = making;
  }

  /** Begins on another thread; the reel itself is not used by it. */
  static <T> FarApart<T> begin(Reel reel, List<Integer> numbers, Function<Luma, T> make) {
    return new FarApart<>(CompletableFuture.supplyAsync(() -> beside(reel, numbers, make)));
  }

  private static <T> List<T> beside(Reel reel, List<Integer> numbers, Function<Luma, T> make) {
    try (Reel twin = reel.twin()) {
      return made(twin, numbers, make);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What was made, as soon as it is. */
  List<T> made() throws IOException {
    try {
      return making.join();
    } catch (CompletionException e) {
      if (e.getCause() instanceof UncheckedIOException unread) {
        throw new IOException(unread.getCause());
      }
      throw e;
    }
  }

  /** Each looked at by a reel, which leaps from one to the next. */
  static <T> List<T> made(Reel reel, List<Integer> numbers, Function<Luma, T> make)
      throws IOException {
    List<T> made = new ArrayList<>();
    try (Luma.Glass glass = new Luma.Glass()) {
      for (int number : numbers) {
        Optional<AVFrame> shown = reel.leap(number, new Progress(Watch.NOBODY), 0, 0);
        if (shown.isPresent() && reel.number() == number) {
          made.add(make.apply(glass.look(number, shown.get())));
        }
      }
    }
    return made;
  }
}
