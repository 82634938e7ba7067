package daylight.archive;

import daylight.archive.form.Fields;
import daylight.line.book.Exposure;
import daylight.line.book.Finding;
import daylight.line.book.Locate;
import daylight.line.book.Tie;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads what was done over the pipe: locates, exposures and the spots of other points. */
final class SpotReader {
  /** The surface of a reading where the book names none. */
  private static final String SURFACE = "yard";

  private final Clerk clerk;
  private final Moments moments;
  private final List<Tie> ties;
  private final SpotTies spotTies;

  /**
   * @param ties where the measurements in plan that stand with a point are gathered
   */
  SpotReader(Clerk clerk, SiteDraft site, Moments moments, List<Tie> ties) {
    this.clerk = clerk;
    this.moments = moments;
    this.ties = ties;
    this.spotTies = new SpotTies(clerk, site);
  }

  List<Locate> locates(Fields visit) {
    List<Locate> locates = new ArrayList<>();
    for (Fields row : visit.rows("locates")) {
      Locate locate = locate(row);
      List<Tie> own = spotTies.of(locate.label(), row);
      if (clerk.keep(locates, row, locate)) {
        ties.addAll(own);
      }
    }
    return locates;
  }

  private Locate locate(Fields row) {
    return new Locate(
        clerk.name(row, "locate", "L"),
        row.words("pass"),
        row.reading("cable"),
        row.choice("moving", Finding.Moving.class, Finding.Moving.PUSHING),
        row.reading("depth"),
        row.reading("receiver-height"),
        row.words("surface", SURFACE),
        row.reading("cover"),
        row.choice("signal", Locate.Signal.class, Locate.Signal.GOOD),
        lifts(row),
        offOn(row),
        moments.read(row, "time"),
        row.words("remark"),
        nulls(row));
  }

  private static Locate.OffOn offOn(Fields row) {
    String text = row.text("off-on");
    if (text == null) {
      return Locate.OffOn.NO;
    }
    return switch (text) {
      case "yes", "true" -> Locate.OffOn.YES;
      case "no", "false" -> Locate.OffOn.NO;
      case "stayed" -> Locate.OffOn.STAYED;
      default -> row.notChosen("off-on", text, List.of("yes", "no", "stayed"), Locate.OffOn.NO);
    };
  }

  private static Locate.@Nullable Nulls nulls(Fields row) {
    Fields part = row.part("nulls");
    if (part == null) {
      return null;
    }
    Locate.Nulls nulls =
        new Locate.Nulls(
            part.reading("before"),
            part.reading("after"),
            part.reading("over"),
            part.reading("upright-before"),
            part.reading("upright-after"));
    if (!part.sound()) {
      row.spoil();
    }
    return nulls;
  }

  private static List<Locate.Lift> lifts(Fields row) {
    List<Locate.Lift> lifts = new ArrayList<>();
    for (Fields lift : row.rows("lifts")) {
      Locate.Lift read = new Locate.Lift(lift.wantedReading("by"), lift.wantedReading("depth"));
      if (lift.sound()) {
        lifts.add(read);
      } else {
        row.spoil();
      }
    }
    return lifts;
  }

  List<Exposure> exposures(Fields visit) {
    List<Exposure> exposures = new ArrayList<>();
    for (Fields row : visit.rows("exposures")) {
      Exposure exposure =
          new Exposure(
              clerk.name(row, "exposure", "X"),
              row.choice("by", Exposure.By.class, Exposure.By.PIT),
              row.words("pass"),
              row.reading("cable"),
              row.reading("crown"),
              row.reading("invert"),
              row.words("surface", SURFACE));
      List<Tie> own = spotTies.of(exposure.label(), row);
      if (clerk.keep(exposures, row, exposure)) {
        ties.addAll(own);
      }
    }
    return exposures;
  }

  /** The spots of landmarks and nodes. */
  void ofOthers(Fields visit) {
    for (Fields row : visit.rows("spots")) {
      List<Tie> own = spotTies.of(row.wantedWords("of"), row);
      if (row.sound()) {
        ties.addAll(own);
      }
    }
  }
}
