package daylight.line.dig;

import daylight.line.book.FieldBook;
import daylight.line.book.Papers;
import daylight.line.book.Visit;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** How the notice that has to be given before digging stands on one day. */
public sealed interface DigTicket {
  /** None is on record: do not dig. */
  record None() implements DigTicket {}

  /** Good until the end of that day, as far as the record goes. */
  record Good(String number, LocalDate expires) implements DigTicket {}

  /** One is on record, but not until when it holds. */
  record Undated(String number) implements DigTicket {}

  /** It has run out: do not dig. */
  record Expired(String number, LocalDate expired) implements DigTicket {}

  /** The best of every ticket of a book: the one that holds longest. */
  static DigTicket of(FieldBook book, LocalDate day) {
    Papers.@Nullable Ticket longest = null;
    Papers.@Nullable Ticket undated = null;
    for (Visit visit : book.visits()) {
      for (Papers.Ticket ticket : visit.papers().tickets()) {
        LocalDate expires = ticket.expires();
        if (expires == null) {
          undated = ticket;
        } else if (longest == null || !expires.isBefore(expiry(longest))) {
          longest = ticket;
        }
      }
    }
    if (longest != null && !day.isAfter(expiry(longest))) {
      return new Good(longest.number(), expiry(longest));
    }
    if (undated != null) {
      return new Undated(undated.number());
    }
    return longest == null ? new None() : new Expired(longest.number(), expiry(longest));
  }

  private static LocalDate expiry(Papers.Ticket ticket) {
    LocalDate expires = ticket.expires();
    return expires == null ? LocalDate.MIN : expires;
  }
}
