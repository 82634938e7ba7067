package daylight.line.cause;

import daylight.line.book.Reported;
import daylight.line.condition.Grade;
import daylight.line.fall.WaterCause;
import daylight.line.measure.Mark;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Which causes may be behind which kind of complaint, and what speaks for and against each: data.
 *
 * @param id its id
 * @param words from where on a cause is called probable, and down to where unlikely
 * @param limits distances that the signs need
 * @param rows the causes
 */
public record CauseTable(String id, Said words, Limits limits, List<Row> rows) {
  public CauseTable {
    rows = List.copyOf(rows);
  }

  /**
   * How the product of all clues is said.
   *
   * @param probableFrom above one
   * @param unlikelyTo between nothing and one
   */
  public record Said(double probableFrom, double unlikelyTo) {
    public Said {
      if (!(probableFrom > 1) || !(unlikelyTo < 1) || !(unlikelyTo > 0)) {
        throw new IllegalArgumentException(
            "probable-from must be above 1 and unlikely-to between 0 and 1, were "
                + probableFrom
                + ", "
                + unlikelyTo);
      }
    }
  }

  /**
   * Distances, in metres.
   *
   * @param near how near along the pipe or in plan counts as near a place
   * @param shallow an inside bottom less deep than this lies within reach of frost
   * @param deep one deeper than this does not
   */
  public record Limits(double near, double shallow, double deep) {}

  /** Where something must lie to matter. */
  public enum Reach {
    /** Between the place complained of and the outlet. */
    ON_THE_WAY,
    /** Near the place complained of. */
    NEAR,
    /** Near the outlet. */
    AT_OUTLET
  }

  /**
   * One cause.
   *
   * @param cause its id
   * @param of the kinds of complaint it may be behind
   * @param when it must show for the cause to be thought of; empty for any time
   * @param where what speaks for it must lie
   * @param signs what speaks for it and against it
   * @param asks what tells where nobody looked
   * @param source id in the list of sources
   * @param note what a reader of the row should know; null for nothing
   */
  public record Row(
      String cause,
      List<Reported.Kind> of,
      List<Reported.When> when,
      Reach where,
      List<SignRow> signs,
      List<Ask> asks,
      String source,
      Mark mark,
      @Nullable String note) {
    public Row {
      of = List.copyOf(of);
      when = List.copyOf(when);
      signs = List.copyOf(signs);
      asks = List.copyOf(asks);
    }
  }

  /**
   * How strongly one sign speaks.
   *
   * @param times above one for the cause, below one against it
   * @param kinds of finding, by the catalogue's ids; empty where the sign is not of findings
   * @param shareFrom share of the bore that such a finding must fill; null for any
   * @param grade the class it must have or be worse than; null for any
   * @param is when it must show; empty where the sign is not of that
   * @param heldBy what must hold such a water, unless that is open; null for anything
   */
  public record SignRow(
      Sign sign,
      double times,
      List<String> kinds,
      @Nullable Double shareFrom,
      @Nullable Grade grade,
      List<Reported.When> is,
      @Nullable WaterCause heldBy) {
    public SignRow {
      kinds = List.copyOf(kinds);
      is = List.copyOf(is);
      if (!(times > 0) || Double.isInfinite(times)) {
        throw new IllegalArgumentException("times must be above 0, was " + times);
      }
    }
  }
}
