package daylight.footage.counter;

import daylight.footage.codec.Footage;
import daylight.footage.codec.Luma;
import daylight.footage.codec.Tint;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import org.jspecify.annotations.Nullable;

/**
 * Frames of a recording far apart, as they are looked at, and where lines of letters seem to be in
 * them.
 *
 * @param frames each row by row
 * @param width of a frame, pixels
 * @param windows from the top down
 * @param against the colour that is nothing; null where only brightness counts
 */
record View(List<byte[]> frames, int width, List<Window> windows, @Nullable Tint against) {
  private static final int FEWEST_LOOKS = 8;
  private static final int MOST_LOOKS = 60;
  private static final long MOST_BYTES = 50_000_000;

  /**
   * Looks at a recording.
   *
   * @param colours whether colours count; the colour that the first frame has on the whole is
   *     nothing then
   * @param given where to look only; null for everywhere
   */
  static View of(Footage footage, boolean colours, @Nullable Window given) throws IOException {
    long size = (long) footage.recording().width() * footage.recording().height();
    List<Integer> points =
        footage.waypoints(Math.clamp(MOST_BYTES / size, FEWEST_LOOKS, MOST_LOOKS));
    Looked looked = null;
    for (int i = 0; looked == null && i < points.size(); i++) {
      looked = Looked.asFirst(footage, points.get(i), colours);
    }
    return looked == null
        ? new View(new ArrayList<>(), 0, List.of(), null)
        : looked.view(footage.farApart(points, looked::take), given);
  }

  /** Lets the frames go, which are large; only how frames are looked at stays known. */
  void letGo() {
    frames.clear();
  }

  /** A frame as this view looks at it. */
  Picture of(Luma luma) {
    return Picture.of(luma, against);
  }

  /** How frames are looked at, all of them as the first; surveyed while others are decoded. */
  private static final class Looked {
    private final Survey survey;
    private final @Nullable Tint against;
    private final int width;
    private final int height;
    private CompletableFuture<?> surveyed = CompletableFuture.completedFuture(null);

    private Looked(int width, int height, @Nullable Tint against) {
      survey = new Survey(width, height);
      this.against = against;
      this.width = width;
      this.height = height;
    }

    /** As a frame is; null if it cannot be decoded. */
    static @Nullable Looked asFirst(Footage footage, int number, boolean colours)
        throws IOException {
      return footage
          .farApart(
              List.of(number),
              luma -> new Looked(luma.width(), luma.height(), colours ? luma.tint() : null))
          .stream()
          .findFirst()
          .orElse(null);
    }

    /** A frame row by row; empty where it has another size. */
    byte[] take(Luma luma) {
      if (luma.width() != width || luma.height() != height) {
        return new byte[0];
      }
      byte[] frame = new byte[width * height];
      Picture.of(luma, against).copy(0, 0, width, height, frame);
      synchronized (this) {
        surveyed = surveyed.thenRunAsync(() -> survey.take(frame));
      }
      return frame;
    }

    View view(List<byte[]> taken, @Nullable Window given) {
      synchronized (this) {
        surveyed.join();
      }
      List<byte[]> frames = new ArrayList<>(taken);
      frames.removeIf(frame -> frame.length == 0);
      List<Window> windows = survey.lines();
      if (given != null && !frames.isEmpty()) {
        windows =
            given.left() >= width || given.top() >= height
                ? List.of()
                : List.of(given.grown(0, 0, width, height));
      }
      return new View(frames, width, windows, against);
    }
  }
}
