package daylight.line.proving;

import java.util.List;

/**
 * Published criteria for hold tests: data. They are kept apart; where one must decide, the first
 * does.
 *
 * @param rows in the order of the file; not empty, no id twice
 */
public record HoldLimits(List<HoldLimit> rows) {
  public HoldLimits {
    rows = List.copyOf(rows);
    if (rows.isEmpty() || rows.stream().map(HoldLimit::id).distinct().count() < rows.size()) {
      throw new IllegalArgumentException("limits must be there, each with an id of its own");
    }
  }
}
