package daylight.archive;

import daylight.line.measure.Complaint;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What became of a file of data.
 *
 * @param value null when anything stands in the way; half a table is none
 * @param complaints everything that is wrong, by place
 */
public record ReadData<T>(@Nullable T value, List<Complaint> complaints) {
  public ReadData {
    complaints = List.copyOf(complaints);
  }
}
