package daylight.line.condition;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A published scheme of grades: data with its sources.
 *
 * @param id its id
 * @param title what it is, with edition or year
 * @param adaptedFor what it is used for here though it was made for something else; null where it
 *     is used for what it was made for
 * @param onLimit to which class a value right on a limit belongs
 * @param rows of those that are for a finding the first holds
 * @param immediate what calls for action at once
 * @param note what a reader of the scheme should know; null for nothing
 */
public record GradeScheme(
    String id,
    String title,
    @Nullable String adaptedFor,
    OnLimit onLimit,
    List<GradeRow> rows,
    List<ImmediateRow> immediate,
    @Nullable String note) {
  public GradeScheme {
    rows = List.copyOf(rows);
    immediate = List.copyOf(immediate);
  }

  /** To which class a value right on a limit belongs. */
  public enum OnLimit {
    /** To the worse of the two; right on the limit of an immediate action counts as reaching it. */
    WORSE,
    /** To the better of the two. */
    BETTER;

    /** How near to a limit is on it, relative: what is left over from changing units. */
    private static final double NEAR = 1e-9;

    boolean reached(double value, double limit) {
      return this == WORSE ? value >= limit * (1 - NEAR) : value > limit * (1 + NEAR);
    }

    static boolean on(double value, double limit) {
      return StrictMath.abs(value - limit) <= limit * NEAR;
    }
  }
}
