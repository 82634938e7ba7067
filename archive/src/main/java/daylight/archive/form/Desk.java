package daylight.archive.form;

import daylight.line.book.Units;
import daylight.line.measure.Argument;
import daylight.line.measure.Complaint;
import daylight.line.measure.ComplaintCode;
import daylight.line.measure.FilePlace;
import java.util.ArrayList;
import java.util.List;

/** Where one file is read: its name, what its bare numbers mean, and what was wrong with it. */
public final class Desk {
  /** How many complaints are listed; a file with more is another kind of file. */
  static final int MOST = 1000;

  private final String file;
  private final List<Complaint> complaints = new ArrayList<>();
  private Units units = Units.UNSTATED;

  /**
   * @param file the file as the person named it
   */
  public Desk(String file) {
    this.file = file;
  }

  /** An empty desk for the same file. */
  public Desk another() {
    return new Desk(file);
  }

  /** From here on bare numbers mean this. */
  public void measureIn(Units stated) {
    this.units = stated;
  }

  /** What bare numbers mean. */
  public Units units() {
    return units;
  }

  /** A place in this file. */
  public FilePlace place(Mark mark, String path) {
    return new FilePlace(file, mark.line(), mark.column(), path);
  }

  /** Notes something wrong. */
  public void complain(ComplaintCode code, FilePlace place, List<Argument> arguments) {
    if (complaints.size() < MOST) {
      complaints.add(new Complaint(code, place, arguments));
    } else if (complaints.size() == MOST) {
      complaints.add(new Complaint(FormTrouble.TOO_MANY, place, List.of(new Argument.Count(MOST))));
    }
  }

  /** Notes something wrong at a mark. */
  public void complain(ComplaintCode code, Mark mark, String path, Argument... arguments) {
    complain(code, place(mark, path), List.of(arguments));
  }

  /** Whether no further complaint will be listed. */
  public boolean full() {
    return complaints.size() > MOST;
  }

  /** Every complaint so far, by place. */
  public List<Complaint> complaints() {
    return complaints.stream().sorted().toList();
  }
}
