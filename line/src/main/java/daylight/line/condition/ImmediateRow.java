package daylight.line.condition;

import daylight.line.measure.Reading;
import org.jspecify.annotations.Nullable;

/**
 * One row of the list of findings that call for action at once, apart from any grade.
 *
 * @param kind id of the kind in the catalogue
 * @param applies which findings of the kind it is for
 * @param over the size from which it holds; null where it holds whatever the size
 */
public record ImmediateRow(String kind, Applies applies, @Nullable Over over, Cited cited) {

  /**
   * A size to be reached.
   *
   * @param limit in the SI unit of the size, with the words it stands in
   */
  public record Over(Sized sized, Reading limit) {
    public Over {
      if (!(limit.value() > 0)) {
        throw new IllegalArgumentException("limit must be above 0, was " + limit.value());
      }
    }
  }
}
