package daylight.footage.scene;

import daylight.footage.Rate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What is the camera's and the recorder's about the footage: size, rate, grain, and what is burned
 * in and how.
 *
 * @param width of the picture in pixels, even
 * @param height of the picture in pixels, even
 * @param rate pictures per second
 * @param grain strength of the noise, in levels of 255
 * @param format how the counter writes its reading
 * @param counter how the counter is burned in; null for footage that shows none
 * @param captions other lines, which a reader of counters must not mistake for it
 */
public record CameraLook(
    int width,
    int height,
    Rate rate,
    double grain,
    CounterFormat format,
    @Nullable Lettering counter,
    List<Caption> captions) {
  public CameraLook {
    captions = List.copyOf(captions);
    if (width < 160 || height < 120 || width % 2 != 0 || height % 2 != 0) {
      throw new IllegalArgumentException(
          "a picture is at least 160 × 120 and even, was " + width + " × " + height);
    }
    if (!(grain >= 0 && grain <= 20)) {
      throw new IllegalArgumentException("grain from 0 to 20 levels, was " + grain);
    }
  }

  /** A line that is not the counter. */
  public record Caption(Says says, Lettering lettering) {}

  /** What a caption says. */
  public enum Says {
    /** The day, such as {@code 2026-04-18}. */
    DATE,
    /** The wall clock, such as {@code 10:02:37}. */
    CLOCK,
    /** Both, with a space between. */
    DATE_AND_CLOCK,
    /** What was typed before the push. */
    PLACE
  }
}
