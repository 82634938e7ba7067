package daylight.archive;

import daylight.line.book.FieldBook;
import daylight.line.measure.Complaint;
import daylight.line.measure.Gravity;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What became of a file that should be a field book.
 *
 * @param book every row that could be read; null when the file is no book of a version known here
 * @param complaints everything that is wrong, by place
 */
public record ReadBook(@Nullable FieldBook book, List<Complaint> complaints) {
  public ReadBook {
    complaints = List.copyOf(complaints);
  }

  /** Whether nothing stands in the way of an answer. */
  public boolean sound() {
    return book != null && complaints.stream().noneMatch(c -> c.code().gravity() == Gravity.STOPS);
  }
}
