package daylight.report.data;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import daylight.line.book.Landmark;
import daylight.line.course.LocateFit;
import daylight.line.course.PlacedFinding;
import daylight.line.course.Run;
import daylight.line.course.Station;
import daylight.line.dig.Digger;
import daylight.line.dig.ServiceFound;
import daylight.line.survey.Adjusted;
import daylight.line.survey.Covariance2;
import daylight.line.survey.ErrorEllipse;
import daylight.line.survey.PlanPoint;
import daylight.report.draw.Captions;
import daylight.report.draw.Subject;
import daylight.report.map.Atlas;
import daylight.report.map.Frame;
import daylight.report.map.Layer;
import daylight.report.map.Row;
import daylight.report.map.Shape;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** The door for {@code line.geojson}: where everything is, for maps. Metres, radians clockwise. */
public final class LineFile {
  /** A hundred-millionth of a degree is about a millimetre. */
  private static final int DEGREE_DECIMALS = 8;

  private static final int METRE_DECIMALS = 4;

  private final Subject subject;
  private final Frame frame;
  private final ArrayNode features;
  private final ObjectNode root = Json.object();

  private LineFile(Subject subject) {
    this.subject = subject;
    this.frame =
        Frame.of(
            subject.line().survey() instanceof Adjusted adjusted
                ? adjusted.siteTie()
                : Optional.empty());
    root.put("type", "FeatureCollection");
    root.put("schema", "daylight-line").put("version", 1);
    if (!subject.answers().stops().isEmpty()) {
      root.put("order", subject.words().word("report.stop.do"));
      ArrayNode stops = root.putArray("stops");
      subject.answers().stops().forEach(stop -> stops.add(subject.words().finding(stop.finding())));
    }
    if (!frame.onEarth()) {
      root.put("note", subject.words().word("data.untied"));
    }
    root.put("invented", subject.book().site().invented());
    features = root.putArray("features");
  }

  /** The line as UTF-8 text. */
  public static byte[] write(Subject subject) {
    return Json.bytes(new LineFile(subject).collection());
  }

  private ObjectNode collection() {
    subject.line().runs().stream().filter(run -> !run.stations().isEmpty()).forEach(this::run);
    Set<String> nodes = new TreeSet<>();
    subject.line().runs().stream()
        .filter(run -> !run.stations().isEmpty())
        .forEach(
            run -> {
              if (subject.reached(run, run.reach().upstream())) {
                node(run.reach().upstream(), run.stations().getFirst(), nodes);
              }
              if (subject.reached(run, run.reach().downstream())) {
                node(run.reach().downstream(), run.stations().getLast(), nodes);
              }
            });
    Captions.findings(subject).forEach(this::finding);
    subject.line().locates().forEach(this::locate);
    Digger.services(subject.book(), subject.line()).forEach(this::service);
    landmarks();
    areas();
    return root;
  }

  private void run(Run run) {
    List<PlanPoint> path = run.stations().stream().map(Station::spot).toList();
    ObjectNode properties = feature("reach", run.reach().label(), path, true);
    properties.put("line", run.reach().line());
    properties.put("use", lower(run.reach().use()));
    properties.put("material", lower(run.reach().material()));
    properties.put(
        "bore", run.reach().bore() == null ? null : Json.number(run.reach().bore().value()));
    Json.measured(properties, "length", run.length());
    ArrayNode across = properties.putArray("acrossSd");
    run.stations().forEach(station -> across.add(Json.number(station.across(), METRE_DECIMALS)));
    ArrayNode heading = properties.putArray("heading");
    ArrayNode headingSd = properties.putArray("headingSd");
    for (Station station : run.stations()) {
      heading.add(Json.number(Json.turned(station.bearing()), METRE_DECIMALS));
      headingSd.add(Json.number(station.bearingSd(), METRE_DECIMALS));
    }
    ArrayNode invert = properties.putArray("invert");
    ArrayNode invertSd = properties.putArray("invertSd");
    for (Station station : run.stations()) {
      if (station.invert() == null) {
        invert.addNull();
        invertSd.addNull();
      } else {
        invert.add(Json.number(station.invert().value(), METRE_DECIMALS));
        invertSd.add(Json.number(station.invert().sd(), METRE_DECIMALS));
      }
    }
  }

  private void node(String label, Station station, Set<String> done) {
    if (done.add(label)) {
      ObjectNode properties = point("node", label, station.spot());
      subject
          .book()
          .site()
          .findNode(label)
          .ifPresent(node -> properties.put("kind", lower(node.kind())).put("what", node.what()));
      position(properties, station);
    }
  }

  private void position(ObjectNode properties, Station station) {
    spread(properties, station.spread());
    Json.bearing(properties, "heading", station.bearing(), station.bearingSd());
    Json.measured(properties, "invert", station.invert());
    Json.measured(properties, "depth", station.depth());
  }

  private void finding(PlacedFinding placed) {
    Run run = subject.line().findRun(placed.from().reach()).orElse(null);
    if (run == null || !(run.path() instanceof Run.Path.Found found)) {
      return;
    }
    Station station = found.nearest(placed.from().distance());
    ObjectNode properties = point("finding", placed.finding().label(), station.spot());
    properties.put("kind", placed.finding().kind());
    properties.put("sentence", subject.words().finding(placed));
    Json.place(properties, "from", placed.from());
    Json.place(properties, "to", placed.to());
    properties.put("distanceSd", Json.number(placed.sd()));
    position(properties, station);
  }

  private void locate(LocateFit fit) {
    PlanPoint spot = fit.spot();
    if (spot == null) {
      return;
    }
    ObjectNode properties = point("locate", fit.entry().label(), spot);
    Json.place(properties, "place", fit.place());
    Json.measured(properties, "depth", fit.depth());
    properties.put("off", Json.number(fit.off()));
    properties.put("spotChecked", fit.spotShows() != null);
    properties.put("depthChecked", fit.depthShows() != null);
    spreadOf(properties, fit.entry().label());
  }

  /** A service whose marks have no place is told all the same, as a feature without one. */
  private void service(ServiceFound found) {
    ObjectNode properties =
        feature("service", found.mark().label(), found.points(), found.points().size() > 1);
    ServiceJson.fill(properties, found);
    properties.putNull("depth");
    properties.put("caution", subject.words().word("report.services.depth"));
  }

  private void landmarks() {
    var points = subject.points();
    for (Landmark landmark : subject.book().site().landmarks()) {
      PlanPoint at = points.get(landmark.label());
      if (at != null) {
        ObjectNode properties = point("landmark", landmark.label(), at);
        properties.put("kind", lower(landmark.kind())).put("what", landmark.what());
        spreadOf(properties, landmark.label());
      }
    }
  }

  private void spreadOf(ObjectNode properties, String label) {
    if (subject.line().survey() instanceof Adjusted adjusted
        && adjusted.points().containsKey(label)) {
      spread(properties, adjusted.covariance(label, label));
    }
  }

  /** The ellipse that holds the place with 95 %, its azimuth from grid north. */
  private static void spread(ObjectNode properties, Covariance2 covariance) {
    ErrorEllipse ellipse = ErrorEllipse.of(covariance, 0.95);
    properties
        .putObject("ellipse95")
        .put("semiMajor", Json.number(ellipse.semiMajor(), METRE_DECIMALS))
        .put("semiMinor", Json.number(ellipse.semiMinor(), METRE_DECIMALS))
        .put("gridAzimuth", Json.number(ellipse.azimuth()));
  }

  private ObjectNode point(String role, String label, PlanPoint at) {
    return feature(role, label, List.of(at), false);
  }

  private ObjectNode feature(String role, String label, List<PlanPoint> path, boolean lineString) {
    ObjectNode feature = features.addObject();
    feature.put("type", "Feature").put("id", role + "/" + label);
    geometry(feature, shape(path, lineString));
    ObjectNode properties = feature.putObject("properties");
    properties.put("role", role).put("label", label);
    ArrayNode grid = properties.putArray("grid");
    for (PlanPoint point : path) {
      ArrayNode pair = lineString ? grid.addArray() : grid;
      pair(pair, point);
    }
    return properties;
  }

  private static @Nullable Shape shape(List<PlanPoint> path, boolean lineString) {
    return path.isEmpty()
        ? null
        : lineString ? new Shape.Way(path, List.of()) : new Shape.Dot(path.getFirst(), null);
  }

  /**
   * In pieces where it crosses the meridian of 180° (RFC 7946, section 3.1.9); null where it has no
   * place on the earth (section 3.2).
   */
  private void geometry(ObjectNode feature, @Nullable Shape shape) {
    if (!frame.onEarth() || shape == null) {
      feature.putNull("geometry");
      return;
    }
    List<List<List<Frame.At>>> pieces = frame.pieces(shape);
    ObjectNode geometry = feature.putObject("geometry");
    String type =
        switch (shape) {
          case Shape.Dot _ -> "Point";
          case Shape.Way _ -> "LineString";
          case Shape.Area _ -> "Polygon";
        };
    boolean cut = pieces.size() > 1;
    geometry.put("type", (cut ? "Multi" : "") + type);
    ArrayNode coordinates = geometry.putArray("coordinates");
    for (List<List<Frame.At>> piece : pieces) {
      ArrayNode of = cut ? coordinates.addArray() : coordinates;
      switch (shape) {
        case Shape.Dot _ -> position(of, piece.getFirst().getFirst());
        case Shape.Way _ -> positions(of, piece.getFirst());
        case Shape.Area _ -> piece.forEach(ring -> positions(of.addArray(), ring));
      }
    }
  }

  private static void positions(ArrayNode into, List<Frame.At> points) {
    points.forEach(point -> position(into.addArray(), point));
  }

  /** Longitude, then latitude (RFC 7946, section 3.1.1). */
  private static void position(ArrayNode into, Frame.At at) {
    into.add(Json.number(at.x(), DEGREE_DECIMALS)).add(Json.number(at.y(), DEGREE_DECIMALS));
  }

  /** Bands and boxes to dig, with the fields that the map files have. */
  private void areas() {
    Atlas atlas = Atlas.of(subject);
    for (Layer layer : List.of(Layer.BAND, Layer.DIG_BOX)) {
      atlas.of(layer).forEach(this::area);
    }
  }

  private void area(Row row) {
    ObjectNode feature = features.addObject();
    feature.put("type", "Feature").put("id", row.text("id"));
    geometry(feature, row.shape());
    ObjectNode properties = feature.putObject("properties");
    properties.put("role", row.layer().id());
    ArrayNode grid = properties.putArray("grid");
    if (row.shape() instanceof Shape.Area area) {
      for (List<PlanPoint> ring : area.rings()) {
        ArrayNode points = grid.addArray();
        ring.forEach(point -> pair(points.addArray(), point));
      }
    }
    row.values()
        .forEach(
            (name, value) -> {
              switch (value) {
                case Double number -> properties.put(name, Json.number(number));
                case Boolean yes -> properties.put(name, yes);
                default -> properties.put(name, value.toString());
              }
            });
  }

  private static void pair(ArrayNode into, PlanPoint point) {
    into.add(Json.number(point.x(), METRE_DECIMALS)).add(Json.number(point.y(), METRE_DECIMALS));
  }

  private static String lower(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT);
  }
}
