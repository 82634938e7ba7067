package daylight.line.book;

import daylight.line.measure.Reading;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Something tried on the line.
 *
 * @param at the label of the node, fixture or roof where it was put in, or of the node in whose
 *     riser the level was read
 * @param flow in cubic metres per second; null when not recorded
 * @param volume put in, in cubic metres; null when not recorded
 * @param duration in seconds; null when not recorded
 * @param drop fall of the level in a hold test or rise in a pit, in metres; null when not recorded
 * @param held what a hold test was held in; {@link Held#UNRECORDED} for any other
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
    Held held,
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
   * What a hold test was held in.
   *
   * @param reaches the labels of the reaches that were plugged off and full; empty when not
   *     recorded
   * @param riser inside diameter of the pipe in which the level was read, in metres; null when not
   *     recorded
   * @param head water above the crown of the highest pipe held, at the start, in metres; null when
   *     not recorded
   * @param toppedUp what had to be poured in to bring the level back, in cubic metres; null when
   *     not recorded
   */
  public record Held(
      List<String> reaches,
      @Nullable Reading riser,
      @Nullable Reading head,
      @Nullable Reading toppedUp) {
    /** Nothing recorded. */
    public static final Held UNRECORDED = new Held(List.of(), null, null, null);

    public Held {
      reaches = List.copyOf(reaches);
    }
  }

  /**
   * Where it was looked for.
   *
   * @param where the label of the node, fixture or roof, or of a point on the ground
   * @param arrived whether it came
   * @param after how long it took, in seconds; null when not recorded
   * @param volume what was caught there, in cubic metres; null when not recorded
   */
  public record Seen(
      String where, boolean arrived, @Nullable Reading after, @Nullable Reading volume) {}
}
