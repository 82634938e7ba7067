package daylight.line.dig;

import daylight.line.measure.Measured;
import daylight.line.survey.Covariance2;

/**
 * Two tapes that find a spot again.
 *
 * @param first from the landmark of that label
 * @param second from the other
 * @param meet the angle at which they meet, radians, between 0 and π
 * @param left whether the spot is on the left when looking from the first landmark to the second:
 *     two tapes meet on both sides
 * @param spread the covariance of where they lead to against where the pipe is, the laying of the
 *     tapes included, square metres
 */
public record TapeTies(Tape first, Tape second, double meet, boolean left, Covariance2 spread) {
  /**
   * One tape.
   *
   * @param landmark its label
   * @param length from there to the spot, level, with the uncertainty of the one against the other
   */
  public record Tape(String landmark, Measured length) {}
}
