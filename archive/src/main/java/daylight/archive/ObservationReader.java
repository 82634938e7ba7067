package daylight.archive;

import daylight.archive.form.Bare;
import daylight.archive.form.Fields;
import daylight.archive.form.FormTrouble;
import daylight.archive.form.Shape;
import daylight.line.book.BookFault;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Reading;
import daylight.line.measure.Unit;
import daylight.line.survey.Correlated;
import daylight.line.survey.Hand;
import daylight.line.survey.LocalGrid;
import daylight.line.survey.PlanPoint;
import daylight.line.survey.Quantity;
import daylight.line.survey.Sighting;
import daylight.line.survey.Written;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Reads the observations of a network file row by row. */
final class ObservationReader {
  /** The keys of which each row has exactly one. */
  private static final List<String> MEASURED =
      List.of(
          "distance",
          "angle",
          "direction",
          "azimuth",
          "bearing",
          "along",
          "vector",
          "coordinates",
          "gnss",
          "side");

  private static final List<String> PAIRS = List.of("along", "vector", "coordinates", "gnss");
  private static final double GON = Math.PI / 200;
  private static final double CORRELATION = 0.999;

  private final Unit unit;
  private final NetworkShape.Angles angles;
  private final CovarianceReader covariances;
  private final @Nullable LocalGrid origin;
  private final List<Sighting> sightings = new ArrayList<>();
  private final List<Correlated> pairs = new ArrayList<>();
  private final Map<Correlated.Component, Written> written = new HashMap<>();

  /**
   * @param origin the zero of the grid on the earth; null where it is unknown
   */
  ObservationReader(
      Unit unit,
      NetworkShape.Angles angles,
      CovarianceReader covariances,
      @Nullable LocalGrid origin) {
    this.unit = unit;
    this.angles = angles;
    this.covariances = covariances;
    this.origin = origin;
  }

  List<Sighting> sightings() {
    return sightings;
  }

  /** The covariances of single positions whose east and north differ or are correlated. */
  List<Correlated> pairs() {
    return pairs;
  }

  Map<Correlated.Component, Written> written() {
    return written;
  }

  /** How many components an observation has. */
  static int width(Fields row) {
    return row.has("side") ? 0 : PAIRS.stream().anyMatch(row::has) ? 2 : 1;
  }

  /** A position on the earth. */
  static LocalGrid earth(Fields part) {
    return new LocalGrid(
        StrictMath.toRadians(TieReader.degrees(part, "latitude", 90)),
        StrictMath.toRadians(TieReader.degrees(part, "longitude", 180)));
  }

  void read(Fields row, String label) {
    List<String> measured = MEASURED.stream().filter(row::has).toList();
    if (measured.size() != 1) {
      String key = measured.isEmpty() ? "label" : measured.get(1);
      row.complain(NetworkTrouble.WHICH_OBSERVATION, key, new Argument.Choices(MEASURED));
      return;
    }
    Sighting sighting = sighting(row, label, measured.getFirst());
    if (sighting != null && row.sound()) {
      sightings.add(sighting);
    }
  }

  private @Nullable Sighting sighting(Fields row, String label, String measured) {
    return switch (measured) {
      case "distance" -> {
        Reading length = row.wantedReading("distance");
        double sd = sd(row, label, Dimension.LENGTH);
        if (length.value() < 0) {
          row.complain(FormTrouble.NOT_POSITIVE, "distance", new Argument.Text(length.written()));
        }
        keep(label, Quantity.DISTANCE, length, Dimension.LENGTH);
        List<String> ends = names(row, "from", "to");
        yield row.sound()
            ? new Sighting.Tape(label, ends.get(0), ends.get(1), length.value(), sd)
            : null;
      }
      case "angle" -> {
        double rad = angle(row, label, "angle", Quantity.ANGLE);
        double sd = sd(row, label, Dimension.ANGLE);
        List<String> ends = names(row, "at", "from", "to");
        yield row.sound()
            ? new Sighting.Angle(label, ends.get(0), ends.get(1), ends.get(2), rad, sd)
            : null;
      }
      case "direction" -> {
        double rad = angle(row, label, "direction", Quantity.DIRECTION);
        double sd = sd(row, label, Dimension.ANGLE);
        List<String> ends = names(row, "from", "to");
        // A circle set up elsewhere has another zero, whatever its set is called.
        String set = row.words("set", "") + " / " + ends.getFirst();
        yield row.sound()
            ? new Sighting.Direction(label, set, ends.get(0), ends.get(1), rad, sd)
            : null;
      }
      case "azimuth", "bearing" -> {
        double rad = angle(row, label, measured, Quantity.BEARING);
        double sd = sd(row, label, Dimension.ANGLE);
        List<String> ends = names(row, "from", "to");
        yield row.sound() ? new Sighting.Bearing(label, ends.get(0), ends.get(1), rad, sd) : null;
      }
      case "along" -> alongOut(row, label);
      case "side" -> side(row, label);
      default -> position(row, label, measured);
    };
  }

  private @Nullable Sighting alongOut(Fields row, String label) {
    Reading along = row.wantedReading("along");
    Reading out = row.wantedReading("out");
    List<Double> given = covariances.sds(label);
    boolean apart = given == null && (row.has("sd-along") || row.has("sd-out"));
    double sd = given != null ? given.get(0) : apart ? 1 : sd(row, label, Dimension.LENGTH);
    double sdAlong = apart ? size(row, "sd-along") : sd;
    double sdOut = given != null ? given.get(1) : apart ? size(row, "sd-out") : sd;
    List<String> wall = row.texts("wall");
    String point = row.wantedWords("point");
    if (wall.size() != 2) {
      row.complain(FileTrouble.NOT_A_WALL, "wall", new Argument.Text(String.join("-", wall)));
      return null;
    }
    apart(row, "point", List.of(wall.get(0), wall.get(1), point));
    keep(label, Quantity.ALONG, along, Dimension.LENGTH);
    keep(label, Quantity.OUT, out, Dimension.LENGTH);
    return row.sound()
        ? new Sighting.AlongOut(
            label, wall.get(0), wall.get(1), point, along.value(), out.value(), sdAlong, sdOut)
        : null;
  }

  private static @Nullable Sighting side(Fields row, String label) {
    String point = row.wantedWords("point");
    Fields part = row.part("side");
    List<String> ends = part == null ? List.of() : part.texts("of");
    BookShape.Hand hand = part == null ? null : part.wantedChoice("on", BookShape.Hand.class);
    if (part == null || ends.size() != 2 || hand == null || !part.sound()) {
      row.complain(FileTrouble.NOT_A_WALL, "side", new Argument.Text(String.join("-", ends)));
      return null;
    }
    apart(row, "point", List.of(ends.get(0), ends.get(1), point));
    Hand on = hand == BookShape.Hand.LEFT ? Hand.LEFT : Hand.RIGHT;
    return row.sound() ? new Sighting.Side(label, point, ends.get(0), ends.get(1), on) : null;
  }

  /** Coordinates, a difference of them, or a fix, with a covariance of its own or among others. */
  private @Nullable Sighting position(Fields row, String label, String measured) {
    Fields part = row.part(measured);
    if (part == null) {
      row.spoil();
      return null;
    }
    List<Double> given = covariances.sds(label);
    boolean apart = row.has("sd-east") || row.has("sd-north") || row.has("correlation");
    double round = given != null || apart ? 1 : sd(row, label, Dimension.LENGTH);
    double sdEast = given != null ? given.get(0) : apart ? size(row, "sd-east") : round;
    double sdNorth = given != null ? given.get(1) : apart ? size(row, "sd-north") : round;
    Double said = row.number("correlation", -CORRELATION, CORRELATION);
    double correlation = said == null || given != null ? 0 : said;
    List<String> names =
        measured.equals("vector") ? names(row, "from", "to") : List.of(row.wantedWords("point"));
    LocalGrid earth = measured.equals("gnss") ? earth(part) : null;
    Double east = earth != null ? Double.valueOf(0) : NetworkReader.wanted(part, "east");
    Double north = earth != null ? Double.valueOf(0) : NetworkReader.wanted(part, "north");
    if (!part.sound() || !row.sound() || east == null || north == null) {
      row.spoil();
      return null;
    }
    if (earth != null && origin == null) {
      return new Sighting.Gnss(
          label,
          names.getFirst(),
          earth.latitudeRad(),
          earth.longitudeRad(),
          sdEast,
          sdNorth,
          correlation);
    }
    PlanPoint at =
        earth != null && origin != null
            ? origin.local(earth.latitudeRad(), earth.longitudeRad())
            : new PlanPoint(east * unit.metres(), north * unit.metres());
    if (given == null && apart) {
      pair(label, sdEast, sdNorth, correlation);
    }
    double sd = Math.max(sdEast, sdNorth);
    return names.size() == 2
        ? new Sighting.Offset(label, names.get(0), names.get(1), at.x(), at.y(), sd)
        : new Sighting.Sketched(label, names.getFirst(), at.x(), at.y(), sd);
  }

  private void pair(String label, double sdEast, double sdNorth, double correlation) {
    double cross = correlation * sdEast * sdNorth;
    pairs.add(
        new Correlated(
            List.of(
                new Correlated.Component(label, Quantity.X),
                new Correlated.Component(label, Quantity.Y)),
            List.of(List.of(sdEast * sdEast, cross), List.of(cross, sdNorth * sdNorth))));
  }

  private static List<String> names(Fields row, String... keys) {
    List<String> names = new ArrayList<>();
    for (String key : keys) {
      names.add(row.wantedWords(key));
    }
    apart(row, keys[keys.length - 1], names);
    return names;
  }

  private static void apart(Fields row, String key, List<String> names) {
    if (row.sound() && new HashSet<>(names).size() < names.size()) {
      row.complain(BookFault.TIE_TO_ITSELF, key, new Argument.Label(names.getLast()));
    }
  }

  /** An angle in radians; a bare number is in the unit of the file. */
  private double angle(Fields row, String label, String key, Quantity quantity) {
    if (angles == NetworkShape.Angles.GON) {
      Double gon = row.number(key, -400, 400);
      return gon == null ? 0 : gon * GON;
    }
    Reading reading =
        quantity == Quantity.BEARING ? Scalars.bearing(row, key) : row.wantedReading(key);
    keep(label, quantity, reading, Dimension.ANGLE);
    return reading.value();
  }

  private void keep(String label, Quantity quantity, Reading reading, Dimension dimension) {
    written.put(new Correlated.Component(label, quantity), new Written(reading, dimension, unit));
  }

  /** The standard deviation of a reading, from its row or from a covariance. */
  private double sd(Fields row, String label, Dimension dimension) {
    List<Double> given = covariances.sds(label);
    if (given != null && !given.isEmpty()) {
      return given.getFirst() > 0 ? given.getFirst() : 1;
    }
    if (!row.has("sd")) {
      row.complain(FormTrouble.MISSING, "sd", new Argument.Text("sd"));
      return 1;
    }
    if (dimension == Dimension.ANGLE && angles == NetworkShape.Angles.GON) {
      Double gon = row.number("sd", 1e-12, 400);
      return gon == null ? 1 : gon * GON;
    }
    Reading sd = row.reading("sd", new Shape.Amount(dimension, Bare.DISTANCE));
    return above(row, "sd", sd);
  }

  private static double size(Fields row, String key) {
    if (!row.has(key)) {
      row.complain(FormTrouble.MISSING, key, new Argument.Text(key));
      return 1;
    }
    return above(row, key, row.reading(key));
  }

  private static double above(Fields row, String key, @Nullable Reading sd) {
    if (sd == null) {
      row.spoil();
      return 1;
    }
    if (!(sd.value() > 0)) {
      row.complain(FormTrouble.NOT_POSITIVE, key, new Argument.Text(sd.written()));
      return 1;
    }
    return sd.value();
  }
}
