package daylight.archive.store;

import java.time.LocalDate;
import java.util.UUID;

/**
 * A day that an entry of a book names.
 *
 * @param visit the visit it is, or belongs to
 * @param what of the entry the day is
 * @param content the own keys of the entry as YAML
 */
public record Dated(UUID book, UUID visit, UUID entry, What what, LocalDate day, String content) {
  /** What a day is of. */
  public enum What {
    /** A visit in which nothing was measured or seen yet. */
    VISIT_TO_COME,
    /** The last day of a ticket of the notify-before-you-dig service. */
    TICKET_EXPIRES
  }
}
