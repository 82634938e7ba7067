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
  MOMENT_BEYOND_FOOTAGE(Gravity.DOUBT),
  /** The counter of {0} could not be read, because {1}. */
  COUNTER_NOT_READ(Gravity.NOTE),
  /** The counter of {0} could not be read, because {1}; typed readings stand in for it. */
  COUNTER_NOT_READ_TYPED(Gravity.NOTE),
  /** The counter of {0}, on which a finding leans, was not read yet. */
  COUNTER_NOT_READ_YET(Gravity.NOTE),
  /** Reading the counter of {0} was stopped; typed readings stand in for it where there are any. */
  COUNTER_STOPPED(Gravity.NOTE),
  /** The region told for the counter does not lie in the picture of {0}; it was looked for. */
  REGION_OUTSIDE(Gravity.DOUBT),
  /** The counter of {0} shows no unit and the book says none: {1} was taken. */
  COUNTER_UNIT_GUESSED(Gravity.DOUBT),
  /** The counter of {0} shows {1}; bare distances of the book are in {2}. */
  COUNTER_UNIT_UNLIKE(Gravity.DOUBT),
  /** {0} shows at {1} the reading {2}; the book has {3}. */
  ANCHOR_UNLIKE(Gravity.DOUBT),
  /** The counter of {0} was set at {1} from {2} to {3}, and the book does not say so. */
  COUNTER_SET(Gravity.DOUBT),
  /** The counter of {0} was zeroed at {1}; what went before is not of the pass {2}. */
  COUNTER_ZEROED(Gravity.NOTE),
  /** Between the recordings {0} and {1} the counter went from {2} to {3}. */
  RECORDINGS_APART(Gravity.NOTE),
  /** What the pass {0} saw from {1} to {2} is in no recording of it. */
  SIGHT_NOT_FILMED(Gravity.NOTE),
  /** {0} began at {1}, give or take {2}, by {3} of {4} notes of the book. */
  RECORDING_BEGAN(Gravity.NOTE),
  /** The recorder's clock at {0} was {1} slow, give or take {2}, if it marks the beginning. */
  RECORDER_SLOW(Gravity.NOTE),
  /** The recorder's clock at {0} was {1} fast, give or take {2}, if it marks the beginning. */
  RECORDER_FAST(Gravity.NOTE),
  /** The locate {0}, which has a time only, was made where the camera rested then, at {1}. */
  LOCATE_BY_CLOCK(Gravity.NOTE),
  /** At the time of the locate {0} the camera may have rested at any of {1}. */
  LOCATE_SEVERAL(Gravity.DOUBT),
  /** At the time of the locate {0} no recording shows the camera at rest. */
  LOCATE_NO_REST(Gravity.DOUBT),
  /** The locate {0} has a time only, and nothing ties a recording to the clock. */
  LOCATE_NO_CLOCK(Gravity.DOUBT);

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
