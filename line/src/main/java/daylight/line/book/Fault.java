package daylight.line.book;

import daylight.line.measure.Argument;
import daylight.line.measure.ComplaintCode;
import java.util.List;

/**
 * Something in a book that does not make sense, named by entry and field; whoever read the book
 * knows at which line and column that is.
 *
 * @param field the field of the entry as a book writes it, such as {@code depth}
 */
public record Fault(ComplaintCode code, Id entry, String field, List<Argument> arguments) {
  public Fault {
    arguments = List.copyOf(arguments);
  }
}
