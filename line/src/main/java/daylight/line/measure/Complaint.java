package daylight.line.measure;

import java.util.Comparator;
import java.util.List;

/**
 * Something wrong with an entry, without the sentence that says so.
 *
 * <p>Complaints sort by file (none first), line, column, path and key. Arguments do not take part,
 * so two complaints that compare as 0 need not be equal.
 *
 * @param code its kind
 * @param place where it points
 * @param arguments the figures and words its sentence needs, in the order of the message
 */
public record Complaint(ComplaintCode code, FilePlace place, List<Argument> arguments)
    implements Comparable<Complaint> {
  private static final Comparator<Complaint> BY_PLACE =
      Comparator.comparing(
              (Complaint c) -> c.place().file() == null ? "" : c.place().file(),
              Comparator.naturalOrder())
          .thenComparingInt(c -> c.place().line())
          .thenComparingInt(c -> c.place().column())
          .thenComparing(c -> c.place().path())
          .thenComparing(c -> c.code().key());

  public Complaint {
    arguments = List.copyOf(arguments);
  }

  @Override
  public int compareTo(Complaint other) {
    return BY_PLACE.compare(this, other);
  }
}
