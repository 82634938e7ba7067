package daylight.archive;

import daylight.archive.form.Desk;
import daylight.archive.form.Fields;
import daylight.archive.form.FormTrouble;
import daylight.line.book.Units;
import daylight.line.measure.Argument;
import daylight.line.measure.Unit;
import daylight.line.survey.Correlated;
import daylight.line.survey.LocalGrid;
import daylight.line.survey.PlanPoint;
import daylight.line.survey.PlaneNetwork;
import daylight.line.survey.Sighting;
import daylight.line.survey.Snooping;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Reads a plane network that stands by itself: fixed and approximate points, observations with
 * their standard deviations, covariances. The format is described in docs/network.md.
 */
public final class NetworkReader {
  /** No grid reaches farther, in metres or feet. */
  private static final double FAR = 1e8;

  private final Fields file;
  private final Snooping snooping;
  private final List<Sighting> sightings = new ArrayList<>();
  private final Map<String, PlanPoint> approximate = new HashMap<>();

  private NetworkReader(Fields file, Snooping snooping) {
    this.file = file;
    this.snooping = snooping;
  }

  /**
   * A network in a file.
   *
   * @param setsAside whether readings that do not fit are left out of the result, or only named
   */
  public static ReadData<ReadNetwork> read(Path file, boolean setsAside) {
    Desk desk = new Desk(file.toString());
    byte[] bytes = FileBytes.read(file, desk);
    return bytes == null
        ? new ReadData<>(null, desk.complaints())
        : read(file.toString(), bytes, setsAside);
  }

  /** A network in the bytes of a file of that name. */
  public static ReadData<ReadNetwork> read(String name, byte[] bytes, boolean setsAside) {
    Snooping usual = Snooping.USUAL;
    Snooping snooping = new Snooping(usual.familyRate(), usual.noncentrality(), setsAside);
    return DataReader.read(
        new Desk(name),
        bytes,
        NetworkShape.NETWORK,
        NetworkShape.KEY,
        fields -> new NetworkReader(fields, snooping).network());
  }

  private @Nullable ReadNetwork network() {
    Fields units = file.part("units");
    Unit distance = units == null ? null : Scalars.unit(units, "distance");
    Unit unit = distance == null ? Unit.METRE : distance;
    NetworkShape.Angles angles =
        units == null
            ? NetworkShape.Angles.DEGREES
            : units.choice("angle", NetworkShape.Angles.class, NetworkShape.Angles.DEGREES);
    file.desk().measureIn(new Units(unit, unit, unit, unit));
    points(unit);
    List<Fields> rows = file.rows("observations");
    Map<String, Integer> widths = new HashMap<>();
    List<String> labels = new ArrayList<>();
    for (Fields row : rows) {
      String label = label(row, labels.size() + 1);
      labels.add(label);
      if (widths.put(label, ObservationReader.width(row)) != null) {
        row.complain(NetworkTrouble.TWICE, "label", new Argument.Text(label));
      }
    }
    var covariances = new CovarianceReader(file.rows("covariances"), widths);
    List<String> base = file.texts("base");
    var reader = new ObservationReader(unit, angles, covariances, origin(rows, base));
    for (int i = 0; i < rows.size(); i++) {
      reader.read(rows.get(i), labels.get(i));
    }
    sightings.addAll(reader.sightings());
    List<Correlated> correlated = new ArrayList<>(reader.pairs());
    Map<String, List<Correlated.Component>> components = new HashMap<>();
    for (Sighting sighting : reader.sightings()) {
      components.put(
          sighting.entry(),
          sighting.quantities().stream()
              .map(quantity -> new Correlated.Component(sighting.entry(), quantity))
              .toList());
    }
    correlated.addAll(covariances.correlated(components));
    boolean sound =
        rows.stream().allMatch(Fields::sound)
            && file.sound()
            && reader.sightings().size() == rows.size();
    return sound
        ? new ReadNetwork(
            new PlaneNetwork(sightings, base, correlated, approximate, snooping), reader.written())
        : null;
  }

  /** The label of an observation, or its number among them. */
  private static String label(Fields row, int number) {
    String label = row.words("label");
    if (label != null) {
      return label;
    }
    String from = row.words("from", row.words("at", ""));
    String to = row.words("to", row.words("point", ""));
    return from.isEmpty() && to.isEmpty()
        ? "#" + number
        : "#" + number + " " + from + (from.isEmpty() || to.isEmpty() ? "" : "–") + to;
  }

  private void points(Unit unit) {
    Set<String> seen = new HashSet<>();
    for (Fields row : file.rows("points")) {
      String point = row.wantedWords("point");
      Double east = wanted(row, "east");
      Double north = wanted(row, "north");
      if (!seen.add(point)) {
        row.complain(NetworkTrouble.TWICE, "point", new Argument.Text(point));
      }
      boolean fixed = row.yes("fixed", false);
      if (east != null && north != null && row.sound()) {
        double x = east * unit.metres();
        double y = north * unit.metres();
        if (fixed) {
          sightings.add(new Sighting.Fixed(point, x, y));
        } else {
          approximate.put(point, new PlanPoint(x, y));
        }
      } else {
        file.spoil();
      }
    }
  }

  static @Nullable Double wanted(Fields row, String key) {
    if (!row.has(key)) {
      row.complain(FormTrouble.MISSING, key, new Argument.Text(key));
      return null;
    }
    return row.number(key, -FAR, FAR);
  }

  /**
   * Where the zero of the grid lies on the earth, grid north being true north there: as the file
   * says, else at the first fix when nothing else carries the grid. Null where an unknown shift and
   * turn tie the fixes to the grid.
   */
  private @Nullable LocalGrid origin(List<Fields> rows, List<String> base) {
    Fields said = file.part("origin");
    if (said != null) {
      LocalGrid origin = ObservationReader.earth(said);
      if (!said.sound()) {
        file.spoil();
      }
      return origin;
    }
    boolean carried =
        !base.isEmpty()
            || !sightings.isEmpty()
            || rows.stream().anyMatch(row -> row.has("coordinates"));
    for (Fields row : carried ? List.<Fields>of() : rows) {
      Fields fix = row.hasKeys("gnss") ? row.part("gnss") : null;
      if (fix != null) {
        return ObservationReader.earth(fix);
      }
    }
    return null;
  }
}
