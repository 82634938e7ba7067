package daylight.app;

import daylight.line.book.FieldBook;
import daylight.line.book.Visit;
import daylight.line.measure.Argument;
import daylight.line.measure.Complaint;
import daylight.line.measure.ComplaintCode;
import daylight.line.measure.FilePlace;
import daylight.line.measure.Gravity;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** What a shell has to complain of that no room can see. */
public enum Trouble implements ComplaintCode {
  /** The book has no visit of the label {0}; it has {1}. */
  NO_SUCH_VISIT,
  /** The book holds no visit. */
  NO_VISIT,
  /** The finding {0} is said to be shown at {1} of the recording {2}, which is over by then. */
  MOMENT_BEYOND_FOOTAGE(Gravity.DOUBT);

  private final Gravity gravity;

  Trouble() {
    this(Gravity.STOPS);
  }

  Trouble(Gravity gravity) {
    this.gravity = gravity;
  }

  @Override
  public String key() {
    return "app." + name().toLowerCase(Locale.ROOT);
  }

  @Override
  public Gravity gravity() {
    return gravity;
  }

  static Complaint noSuchVisit(Path file, @Nullable String wanted, FieldBook book) {
    FilePlace visits = FilePlace.at("visits");
    if (wanted == null) {
      // A key that is missing is missed at the beginning of the book.
      return new Complaint(NO_VISIT, visits.withPosition(file.toString(), 1, 1), List.of());
    }
    FilePlace place = visits.withPosition(file.toString(), 0, 0);
    List<String> known = book.visits().stream().map(Visit::label).toList();
    return new Complaint(
        NO_SUCH_VISIT, place, List.of(new Argument.Text(wanted), new Argument.Choices(known)));
  }
}
