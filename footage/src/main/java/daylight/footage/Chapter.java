package daylight.footage;

/**
 * A stretch of a recording under a heading.
 *
 * @param from seconds from the first frame
 * @param to seconds from the first frame, after {@code from}
 * @param title its heading
 */
public record Chapter(double from, double to, String title) {
  public Chapter {
    if (!(from >= 0) || !(to > from) || Double.isInfinite(to)) {
      throw new IllegalArgumentException("a chapter lasts, was " + from + " to " + to + " s");
    }
  }
}
