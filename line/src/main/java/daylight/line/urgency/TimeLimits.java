package daylight.line.urgency;

import daylight.line.measure.Mark;
import java.time.LocalDate;
import java.time.Period;
import java.util.Collections;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * How much time the words for how soon leave, counted from the day of the visit: data.
 *
 * @param within for each word how long; of what is to be watched, until it is looked at again
 * @param lookAgain for each occasion how long until the line is looked at again
 */
public record TimeLimits(SortedMap<Urgency, Limit> within, SortedMap<Occasion, Limit> lookAgain) {
  /** A table that says nothing of it: then no day is told. */
  public static final TimeLimits NONE = new TimeLimits(new TreeMap<>(), new TreeMap<>());

  public TimeLimits {
    within = Collections.unmodifiableSortedMap(new TreeMap<>(within));
    lookAgain = Collections.unmodifiableSortedMap(new TreeMap<>(lookAgain));
  }

  /**
   * One length of time.
   *
   * @param time by the calendar, never negative: a month from the last of January ends on the last
   *     of February
   * @param source id in the list of sources
   * @param note what a reader of the row should know; null for nothing
   */
  public record Limit(Period time, String source, Mark mark, @Nullable String note) {
    public Limit {
      if (time.isNegative()) {
        throw new IllegalArgumentException("a limit lies ahead, was " + time);
      }
    }

    /** The last day, counted from a day. */
    public LocalDate from(LocalDate day) {
      return day.plus(time);
    }
  }

  /** How long a word leaves; empty where the table does not say. */
  public Optional<Limit> of(Urgency urgency) {
    return Optional.ofNullable(within.get(urgency));
  }

  /** How long until a line is looked at again; empty where the table does not say. */
  public Optional<Limit> of(Occasion occasion) {
    return Optional.ofNullable(lookAgain.get(occasion));
  }
}
