package daylight.line.book;

import daylight.line.measure.Reading;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Something tried on the line.
 *
 * @param at the label of the node where it was put in, or of the stopped line
 * @param flow in cubic metres per second; null when not recorded
 * @param volume in cubic metres; null when not recorded
 * @param duration in seconds; null when not recorded
 * @param drop fall of the level in a hold test or rise in a pit, in metres; null when not recorded
 * @param seen where it was looked for, and whether it came
 * @param remark free words; null when none
 */
public record Test(
    Id id,
    Kind kind,
    String at,
    @Nullable Reading flow,
    @Nullable Reading volume,
    @Nullable Reading duration,
    @Nullable Reading drop,
    List<Seen> seen,
    @Nullable String remark)
    implements Entry {
  public Test {
    seen = List.copyOf(seen);
  }

  /** What was tried. */
  public enum Kind {
    WATER_RUN,
    DYE,
    HOLD,
    SMOKE,
    PIT_RISE
  }

  /**
   * Where it was looked for.
   *
   * @param where the label of the node
   * @param arrived whether it came
   * @param after how long it took, in seconds; null when not recorded
   */
  public record Seen(String where, boolean arrived, @Nullable Reading after) {}
}
