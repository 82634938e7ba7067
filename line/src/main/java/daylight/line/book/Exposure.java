package daylight.line.book;

import daylight.line.measure.Reading;
import org.jspecify.annotations.Nullable;

/**
 * The pipe itself laid bare or touched. Ties that name its label place it in plan.
 *
 * @param by how
 * @param pass the pass whose counter places it along the pipe; null when none does
 * @param cable counter reading of that pass; null when none
 * @param crown depth of the top of the pipe below the ground, in metres; null when not measured
 * @param invert depth of the inside bottom below the ground, in metres; null when not measured
 * @param surface the name of the surface it was measured from
 */
public record Exposure(
    Id id,
    By by,
    @Nullable String pass,
    @Nullable Reading cable,
    @Nullable Reading crown,
    @Nullable Reading invert,
    String surface)
    implements Entry {
  /** How the pipe was reached. */
  public enum By {
    PIT,
    PROBE,
    OPENED
  }
}
