package daylight.line.book;

import daylight.line.measure.Reading;
import daylight.line.measure.Unit;
import org.jspecify.annotations.Nullable;

/**
 * The instruments of a visit, as far as they bear on the figures.
 *
 * @param camera what the crew calls the camera; null when not recorded
 * @param sondeBehindLens how far the transmitter sits behind the lens, in metres; null when not
 *     recorded
 * @param sondeAboveInvert how high its axis rides above the invert, in metres; null when not
 *     recorded
 * @param receiver what the crew calls the receiver; null when not recorded
 * @param clockOffset what must be added to the recorder's clock to get true time, in seconds; null
 *     when not recorded
 * @param counter how the camera shows its counter; null when not recorded
 */
public record Kit(
    @Nullable String camera,
    @Nullable Reading sondeBehindLens,
    @Nullable Reading sondeAboveInvert,
    @Nullable String receiver,
    @Nullable Reading clockOffset,
    @Nullable Burned counter) {
  /** Nothing recorded. */
  public static final Kit UNRECORDED = new Kit(null, null, null, null, null, null);

  /** A kit of which nobody wrote down how the camera shows its counter. */
  public Kit(
      @Nullable String camera,
      @Nullable Reading sondeBehindLens,
      @Nullable Reading sondeAboveInvert,
      @Nullable String receiver,
      @Nullable Reading clockOffset) {
    this(camera, sondeBehindLens, sondeAboveInvert, receiver, clockOffset, null);
  }

  /**
   * How a camera burns its counter into the picture, as a person said.
   *
   * @param region where it stands; null to look for it
   * @param unit what its figure counts; null where the screen says so
   */
  public record Burned(@Nullable Region region, @Nullable Unit unit) {}

  /** Part of a picture, in pixels from its top left. */
  public record Region(int left, int top, int width, int height) {
    public Region {
      if (left < 0 || top < 0 || width < 1 || height < 1) {
        throw new IllegalArgumentException(
            "a region lies in the picture, was "
                + left
                + ", "
                + top
                + ", "
                + width
                + " × "
                + height);
      }
    }
  }
}
