package daylight.line.fall;

import daylight.line.book.Reach;
import daylight.line.measure.Mark;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A published table of smallest slopes: data, for new work; an existing drain may be lawful with
 * less.
 *
 * @param id its id
 * @param title what it is, with edition or year
 * @param rows by rising bore
 * @param note what a reader of the table should know; null for nothing
 */
public record FallRules(String id, String title, List<Row> rows, @Nullable String note) {
  public FallRules {
    rows = List.copyOf(rows);
  }

  /**
   * One row.
   *
   * @param boreFrom smallest nominal bore it holds for, metres
   * @param boreTo largest nominal bore it holds for, metres
   * @param uses what it holds for; empty for all but pumped
   * @param slope the smallest slope, a ratio
   * @param clause where in the rule it stands
   * @param source id in the list of sources
   * @param mark how the figure was come by
   */
  public record Row(
      double boreFrom,
      double boreTo,
      List<Reach.Use> uses,
      double slope,
      String clause,
      String source,
      Mark mark) {
    public Row {
      uses = List.copyOf(uses);
    }
  }

  /**
   * The limit for a bore and a use; empty where the table has none, as for a pumped line.
   *
   * @param bore inside diameter in metres; null when unknown
   */
  public Optional<FallLimit> limit(@Nullable Double bore, Reach.Use use) {
    if (use == Reach.Use.PUMPED || bore == null) {
      return Optional.empty();
    }
    return rows.stream()
        .filter(row -> row.boreFrom() - 0.001 <= bore && bore <= row.boreTo() + 0.001)
        .filter(row -> row.uses().isEmpty() || row.uses().contains(use))
        .findFirst()
        .map(row -> new FallLimit(id, row.clause(), row.slope(), row.source(), row.mark()));
  }
}
