package daylight.line.urgency;

import daylight.line.condition.Grade;
import daylight.line.measure.Mark;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * How soon, by class and consequence: data.
 *
 * @param id its id
 * @param whenUnknown what is made of a consequence that nobody can tell
 * @param near how near a building or a road is right beside, metres
 * @param rows one for each class, each with every consequence
 * @param times how much time each word leaves
 */
public record UrgencyTable(
    String id, WhenUnknown whenUnknown, double near, SortedMap<Grade, Row> rows, TimeLimits times) {
  public UrgencyTable {
    rows = Collections.unmodifiableSortedMap(new TreeMap<>(rows));
    if (!rows.keySet().containsAll(List.of(Grade.values()))) {
      throw new IllegalArgumentException("a row is missing, there are " + rows.keySet());
    }
  }

  /** What is made of a consequence that nobody can tell. */
  public enum WhenUnknown {
    /** It is said to be unknown, and what is known decides. */
    SAY,
    /** It is said to be unknown, and taken to be so. */
    WORST
  }

  /**
   * The row of one class.
   *
   * @param urgency by consequence
   * @param source id in the list of sources
   * @param note what a reader of the row should know; null for nothing
   */
  public record Row(
      SortedMap<Consequence, Urgency> urgency, String source, Mark mark, @Nullable String note) {
    public Row {
      urgency = Collections.unmodifiableSortedMap(new TreeMap<>(urgency));
      if (urgency.size() < Consequence.values().length) {
        throw new IllegalArgumentException("a consequence is missing, there are " + urgency);
      }
    }
  }

  /** The row of a class. */
  public Row row(Grade grade) {
    Row row = rows.get(grade);
    if (row == null) {
      throw new IllegalStateException("refused at birth: no row for " + grade);
    }
    return row;
  }

  /** How soon. */
  public Urgency urgency(Grade grade, Consequence consequence) {
    Urgency urgency = row(grade).urgency().get(consequence);
    if (urgency == null) {
      throw new IllegalStateException("refused at birth: nothing for " + consequence);
    }
    return urgency;
  }
}
