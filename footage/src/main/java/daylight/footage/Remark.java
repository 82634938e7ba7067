package daylight.footage;

import daylight.line.measure.Argument;
import daylight.line.measure.Complaint;
import daylight.line.measure.FilePlace;
import java.util.List;

/**
 * Something to be said of a recording.
 *
 * @param trouble its kind
 * @param arguments what its sentence needs, in the order of the message
 */
public record Remark(FootageTrouble trouble, List<Argument> arguments) {
  public Remark {
    arguments = List.copyOf(arguments);
  }

  /** With those arguments. */
  public static Remark of(FootageTrouble trouble, Argument... arguments) {
    return new Remark(trouble, List.of(arguments));
  }

  /** The same at its place in a book. */
  public Complaint at(FilePlace place) {
    return new Complaint(trouble, place, arguments);
  }
}
