package daylight.footage.counter;

import daylight.footage.Watch;
import daylight.footage.codec.Footage;
import daylight.footage.codec.Luma;
import daylight.footage.codec.Tint;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
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
    Looked looked = new Looked(colours);
    footage.glance(
        points.stream().mapToInt(Integer::intValue), points.size(), Watch.NOBODY, looked::take);
    return looked.view(given);
  }

  /** Lets the frames go, which are large; only how frames are looked at stays known. */
  void letGo() {
    frames.clear();
  }

  /** A frame as this view looks at it. */
  Picture of(Luma luma) {
    return Picture.of(luma, against);
  }

  /** What has been looked at. */
  private static final class Looked {
    private final boolean colours;
    private final List<byte[]> frames = new ArrayList<>();
    private @Nullable Survey survey;
    private @Nullable Tint against;
    private int width;

    Looked(boolean colours) {
      this.colours = colours;
    }

    void take(Luma luma) {
      Survey one = survey;
      if (one == null) {
        one = new Survey(luma.width(), luma.height());
        survey = one;
        width = luma.width();
        against = colours ? luma.tint() : null;
      }
      byte[] frame = new byte[luma.width() * luma.height()];
      Picture.of(luma, against).copy(0, 0, luma.width(), luma.height(), frame);
      if (one.take(frame, luma.width())) {
        frames.add(frame);
      }
    }

    View view(@Nullable Window given) {
      List<Window> windows = survey == null ? List.of() : survey.lines();
      if (given != null && !frames.isEmpty()) {
        int height = frames.getFirst().length / width;
        windows =
            given.left() >= width || given.top() >= height
                ? List.of()
                : List.of(given.grown(0, 0, width, height));
      }
      return new View(frames, width, windows, against);
    }
  }
}
