package daylight.line.book;

import daylight.line.measure.Reading;
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
 */
public record Kit(
    @Nullable String camera,
    @Nullable Reading sondeBehindLens,
    @Nullable Reading sondeAboveInvert,
    @Nullable String receiver,
    @Nullable Reading clockOffset) {
  /** Nothing recorded. */
  public static final Kit UNRECORDED = new Kit(null, null, null, null, null);
}
