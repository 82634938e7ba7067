package daylight.report.captions;

/**
 * A text and the time it stands, seconds from the first frame.
 *
 * @param to after {@code from}
 */
public record Cue(double from, double to, String text) {
  public Cue {
    if (!(from >= 0) || !(to > from)) {
      throw new IllegalArgumentException("a cue lasts, was " + from + " to " + to + " s");
    }
  }
}
