package daylight.archive;

import daylight.archive.form.Bare;
import daylight.archive.form.Fields;
import daylight.archive.form.Shape;
import daylight.line.book.Id;
import daylight.line.book.Tie;
import daylight.line.measure.Dimension;
import daylight.line.measure.Reading;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The measurements in plan that stand with the point they place. */
final class SpotTies {
  /** Between the two ends in the label of a tie. */
  private static final String DASH = "–";

  private final Clerk clerk;
  private final TieReader ties;
  private final SiteDraft site;

  SpotTies(Clerk clerk, SiteDraft site) {
    this.clerk = clerk;
    this.site = site;
    this.ties = new TieReader(clerk, site);
  }

  /** Every tie that stands in the row of a point. */
  List<Tie> of(String point, Fields row) {
    List<Tie> found = new ArrayList<>();
    if (row.has("along") || row.has("out")) {
      Id id = name(row, "along", "wall" + DASH + point);
      SiteDraft.Wall wall = site.wall(row, "wall");
      found.add(
          new Tie.AlongOut(
              id,
              point,
              wall.zero(),
              wall.toward(),
              row.wantedReading("along"),
              row.wantedReading("out")));
    }
    tapes(point, row, found);
    add(
        found,
        row,
        "gnss",
        part -> ties.gnss(name(row, "gnss", "gnss" + DASH + point), point, part));
    bearing(point, row, found);
    add(
        found,
        row,
        "sketch",
        part -> ties.sketched(name(row, "sketch", "sketch" + DASH + point), point, part));
    add(
        found,
        row,
        "side",
        part -> ties.side(name(row, "side", "side" + DASH + point), point, part));
    return found;
  }

  private Id name(Fields row, String key, String label) {
    return clerk.name("tie", label, row.place(key));
  }

  private void tapes(String point, Fields row, List<Tie> found) {
    Fields tapes = row.part("ties");
    if (tapes == null) {
      return;
    }
    for (String from : tapes.written()) {
      Reading length = tapes.reading(from, new Shape.Amount(Dimension.LENGTH, Bare.DISTANCE));
      if (length != null) {
        Id id = clerk.name("tie", from + DASH + point, tapes.place(from));
        found.add(new Tie.Tape(id, from, point, length));
      }
    }
    spoilBy(tapes, row);
  }

  /** A bearing from a landmark, with the distance if it was measured too. */
  private void bearing(String point, Fields row, List<Tie> found) {
    Fields part = row.part("bearing");
    if (part == null) {
      return;
    }
    String from = part.wantedWords("from");
    Id id = name(row, "bearing", "bearing " + from + DASH + point);
    found.add(new Tie.Bearing(id, from, point, Scalars.bearing(part, "bearing")));
    Reading distance = part.reading("distance");
    if (distance != null) {
      Id tape = clerk.name("tie", from + DASH + point, part.place("distance"));
      found.add(new Tie.Tape(tape, from, point, distance));
    }
    spoilBy(part, row);
  }

  private static void add(List<Tie> found, Fields row, String key, TieOf reader) {
    Fields part = row.part(key);
    if (part != null) {
      Tie tie = reader.read(part);
      if (tie != null) {
        found.add(tie);
      }
      spoilBy(part, row);
    }
  }

  private static void spoilBy(Fields part, Fields row) {
    if (!part.sound()) {
      row.spoil();
    }
  }

  /** Reads one tie from the keys that hold it. */
  private interface TieOf {
    @Nullable Tie read(Fields part);
  }
}
