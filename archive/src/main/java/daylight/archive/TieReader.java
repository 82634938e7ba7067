package daylight.archive;

import daylight.archive.form.Fields;
import daylight.archive.form.FormTrouble;
import daylight.line.book.Id;
import daylight.line.book.Tie;
import daylight.line.measure.Argument;
import daylight.line.measure.Reading;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads measurements in plan that stand in a list of their own. */
final class TieReader {
  /** The keys of which each row has exactly one; they tell what was measured. */
  private static final List<String> MEASURED =
      List.of("tape", "angle", "direction", "bearing", "along", "gnss", "sketch", "side");

  private final Clerk clerk;
  private final SiteDraft site;

  TieReader(Clerk clerk, SiteDraft site) {
    this.clerk = clerk;
    this.site = site;
  }

  void read(Fields row, List<Tie> kept) {
    Id id = clerk.name(row, "tie", "T");
    List<String> measured = MEASURED.stream().filter(row::has).toList();
    if (measured.size() != 1) {
      String key = measured.isEmpty() ? "label" : measured.get(1);
      row.complain(FileTrouble.WHICH_TIE, key, new Argument.Choices(MEASURED));
      return;
    }
    clerk.keep(kept, row, tie(row, id, measured.getFirst()));
  }

  private Tie tie(Fields row, Id id, String measured) {
    return switch (measured) {
      case "tape" ->
          new Tie.Tape(
              id, row.wantedWords("from"), row.wantedWords("to"), row.wantedReading("tape"));
      case "angle" ->
          new Tie.Angle(
              id,
              row.wantedWords("at"),
              row.wantedWords("from"),
              row.wantedWords("to"),
              row.wantedReading("angle"));
      case "direction" ->
          new Tie.Direction(
              id,
              row.wantedWords("set"),
              row.wantedWords("from"),
              row.wantedWords("to"),
              row.wantedReading("direction"));
      case "bearing" ->
          new Tie.Bearing(
              id, row.wantedWords("from"), row.wantedWords("to"), Scalars.bearing(row, "bearing"));
      case "along" -> alongOut(row, id);
      default -> ofPoint(row, id, measured);
    };
  }

  private Tie alongOut(Fields row, Id id) {
    SiteDraft.Wall wall = site.wall(row, "wall");
    return new Tie.AlongOut(
        id,
        row.wantedWords("point"),
        wall.zero(),
        wall.toward(),
        row.wantedReading("along"),
        row.wantedReading("out"));
  }

  private Tie ofPoint(Fields row, Id id, String measured) {
    String point = row.wantedWords("point");
    Fields part = row.part(measured);
    if (part == null) {
      // Not a section: the row is unsound already, and this stand-in is dropped with it.
      return new Tie.Side(id, point, "?", "?", true);
    }
    Tie tie =
        switch (measured) {
          case "gnss" -> gnss(id, point, part);
          case "sketch" -> sketched(id, point, part);
          default -> side(id, point, part);
        };
    if (!part.sound()) {
      row.spoil();
    }
    return tie;
  }

  Tie.Gnss gnss(Id id, String point, Fields part) {
    return new Tie.Gnss(
        id,
        point,
        degrees(part, "latitude", 90),
        degrees(part, "longitude", 180),
        spread(part),
        shared(part));
  }

  /** How far a fix is off by itself: alike in every direction, or by east and north. */
  private static Tie.@Nullable Spread spread(Fields part) {
    Double round = size(part, "sd");
    Double east = size(part, "sd-east");
    Double north = size(part, "sd-north");
    Double correlation = part.number("correlation", -0.999, 0.999);
    boolean apart = part.has("sd-east") || part.has("sd-north") || part.has("correlation");
    if (part.has("sd") && apart) {
      part.complain(
          FileTrouble.ONE_OF, "sd", new Argument.Choices(List.of("sd", "sd-east, sd-north")));
      return null;
    }
    for (String key : apart ? List.of("sd-east", "sd-north") : List.<String>of()) {
      if (!part.has(key)) {
        part.complain(FormTrouble.MISSING, key, new Argument.Text(key));
      }
    }
    if (east != null && north != null) {
      return new Tie.Spread(east, north, correlation == null ? 0 : correlation);
    }
    return round == null ? null : Tie.Spread.round(round);
  }

  private static Tie.@Nullable Shared shared(Fields part) {
    String set = part.words("set");
    Double sd = size(part, "sd-shared");
    if (part.has("set") != part.has("sd-shared")) {
      String lacking = part.has("set") ? "sd-shared" : "set";
      part.complain(FormTrouble.MISSING, lacking, new Argument.Text(lacking));
    }
    return set == null || sd == null ? null : new Tie.Shared(set, sd);
  }

  /** A length above zero; null where none or another stands. */
  private static @Nullable Double size(Fields part, String key) {
    Reading size = part.reading(key);
    if (size != null && !(size.value() > 0)) {
      part.complain(FormTrouble.NOT_POSITIVE, key, new Argument.Text(size.written()));
      return null;
    }
    return size == null ? null : size.value();
  }

  static double degrees(Fields part, String key, double most) {
    Double degrees = part.number(key, -most, most);
    if (!part.has(key)) {
      part.complain(FormTrouble.MISSING, key, new Argument.Text(key));
    }
    return degrees == null ? 0 : degrees;
  }

  Tie.Sketched sketched(Id id, String point, Fields part) {
    return new Tie.Sketched(id, point, part.wantedReading("east"), part.wantedReading("north"));
  }

  Tie.Side side(Id id, String point, Fields part) {
    List<String> ends = part.texts("of");
    if (ends.size() != 2) {
      part.complain(FileTrouble.NOT_A_WALL, "of", new Argument.Text(String.join("-", ends)));
      ends = List.of("?", "?");
    }
    BookShape.Hand hand = part.wantedChoice("on", BookShape.Hand.class);
    return new Tie.Side(id, point, ends.get(0), ends.get(1), hand == BookShape.Hand.LEFT);
  }
}
