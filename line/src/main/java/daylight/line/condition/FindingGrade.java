package daylight.line.condition;

import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * What a scheme says of one finding.
 *
 * @param kind id of its kind
 * @param verdicts by aspect; only those in which the scheme has rows for the kind
 * @param ungraded why there are none; null where there are
 * @param immediate whether it calls for action at once, apart from any grade
 */
public record FindingGrade(
    String kind,
    SortedMap<Aspect, Verdict> verdicts,
    @Nullable Ungraded ungraded,
    Immediate immediate) {
  public FindingGrade {
    verdicts = Collections.unmodifiableSortedMap(new TreeMap<>(verdicts));
    if (verdicts.isEmpty() != (ungraded != null)) {
      throw new IllegalArgumentException(kind + ": graded or ungraded, not both and not neither");
    }
  }

  /** Why a finding has no grade in either aspect. */
  public enum Ungraded {
    /** It outranks every grade: stop. */
    OUTRANKS,
    /** The catalogue does not know the kind. */
    KIND_UNKNOWN,
    /** It is a fact of the pipe and no defect. */
    FEATURE,
    /** The scheme has no row for the kind. */
    NO_ROW
  }
}
