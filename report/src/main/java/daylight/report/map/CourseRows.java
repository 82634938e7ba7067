package daylight.report.map;

import daylight.line.answer.Caution;
import daylight.line.book.Node;
import daylight.line.book.Priors;
import daylight.line.book.Reach;
import daylight.line.course.Run;
import daylight.line.course.Station;
import daylight.line.fall.FallStretch;
import daylight.line.measure.Measured;
import daylight.line.measure.Reading;
import daylight.report.draw.Subject;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** The pipes, station by station, and their ends. */
final class CourseRows {
  private final Making making;
  private final Subject subject;
  private final String caution;

  CourseRows(Making making) {
    this.making = making;
    this.subject = making.subject();
    this.caution = subject.words().word(Caution.LOCATES_APPROXIMATE);
  }

  /** Every reach of the book; one whose path is not known has no shape and says what is missing. */
  List<Row> reaches() {
    return subject.line().runs().stream().map(this::reach).toList();
  }

  private Row reach(Run run) {
    Reach reach = run.reach();
    Filling row =
        making
            .row(Layer.REACH, reach.label(), caution)
            .text("uuid", reach.id().uuid().toString())
            .text("line", reach.line())
            .text("from_node", reach.upstream())
            .text("to_node", reach.downstream())
            .yesNo("flow_known", !(reach.water() instanceof Reach.Water.Unknown))
            .text("use", Making.lower(reach.use()))
            .text("material", Making.lower(reach.material()))
            .number("bore", reach.bore() == null ? null : reach.bore().value())
            .measured("length", run.length());
    return switch (run.path()) {
      case Run.Path.NotFound(var missing) ->
          row.text("missing", subject.words().say(missing)).done();
      case Run.Path.Found(List<Station> stations) ->
          row.text("quality", poorest(stations))
              .text(
                  "missing", heights(stations).isEmpty() ? making.say("map.missing.height") : null)
              .shape(
                  new Shape.Way(stations.stream().map(Station::spot).toList(), heights(stations)))
              .done();
    };
  }

  private @Nullable String poorest(List<Station> stations) {
    return stations.stream()
        .map(station -> making.quality(station.place()))
        .filter(Objects::nonNull)
        .max(Comparator.naturalOrder())
        .orElse(null);
  }

  /** Of the inside bottom at every station; none where one of them is not known. */
  private static List<Double> heights(List<Station> stations) {
    List<Double> heights = new ArrayList<>();
    for (Station station : stations) {
      if (station.invert() == null) {
        return List.of();
      }
      heights.add(station.invert().value());
    }
    return heights;
  }

  List<Row> stations() {
    List<Row> rows = new ArrayList<>();
    for (Run run : subject.line().runs()) {
      run.stations().forEach(station -> rows.add(station(run, station)));
    }
    return rows;
  }

  private Row station(Run run, Station station) {
    Reach reach = run.reach();
    double distance = station.place().distance();
    String label = reach.label() + "@" + String.format(java.util.Locale.ROOT, "%.3f", distance);
    Filling row =
        making
            .row(Layer.STATION, label, caution)
            .text("line", reach.line())
            .text("reach", reach.label())
            .number("distance", distance)
            .spot(station.spot())
            .bearing("heading", station.spot(), station.bearing())
            .degrees("heading_sd", station.bearingSd())
            .measured("cover", cover(reach, station.depth()))
            .measured("fall", fall(station))
            .number("across95", Measured.Z95 * station.across())
            .number("along95", Measured.Z95 * station.along(station.bearing()))
            .ellipse(station.spot(), station.spread())
            .text("quality", making.quality(station.place()))
            .text("missing", making.missing(station.depth()))
            .shape(dot(station));
    Making.depth(row, station);
    return row.done();
  }

  static Shape dot(Station station) {
    return new Shape.Dot(
        station.spot(), station.invert() == null ? null : station.invert().value());
  }

  /** Down to the inside top: the wall of the pipe lies in it. */
  private @Nullable Measured cover(Reach reach, @Nullable Measured depth) {
    Reading bore = reach.bore();
    return depth == null || bore == null
        ? null
        : depth.minus(
            new Measured(bore.value(), subject.rules().priors().sd(Priors.Kind.BORE, bore)));
  }

  /** Of the stretch that a station lies in; where two meet, of the one above. */
  private @Nullable Measured fall(Station station) {
    return subject.answers().fall().stretches().stream()
        .filter(stretch -> !stretch.whole())
        .filter(stretch -> holds(stretch, station))
        .findFirst()
        .map(FallStretch::slope)
        .orElse(null);
  }

  private static boolean holds(FallStretch stretch, Station station) {
    double distance = station.place().distance();
    return stretch.from().reach().equals(station.place().reach())
        && distance >= stretch.from().distance() - 1e-6
        && distance <= stretch.to().distance() + 1e-6;
  }

  /** Every node of the book; of one that nobody reached only that it is there. */
  List<Row> nodes() {
    SortedMap<String, Station> reached = new TreeMap<>();
    for (Run run : subject.line().runs()) {
      if (!run.stations().isEmpty()) {
        reach(reached, run, run.reach().upstream(), run.stations().getFirst());
        reach(reached, run, run.reach().downstream(), run.stations().getLast());
      }
    }
    return subject.book().site().nodes().stream()
        .map(node -> node(node, reached.get(node.label())))
        .toList();
  }

  private void reach(SortedMap<String, Station> reached, Run run, String node, Station at) {
    if (subject.reached(run, node)) {
      reached.putIfAbsent(node, at);
    }
  }

  private Row node(Node node, @Nullable Station at) {
    Filling row =
        making
            .row(Layer.NODE, node.label(), caution)
            .text("uuid", node.id().uuid().toString())
            .text("kind", Making.lower(node.kind()))
            .text("what", node.what());
    if (at == null) {
      return row.text("missing", making.say("map.missing.node")).done();
    }
    Making.depth(row, at);
    return row.spot(at.spot())
        .ellipse(at.spot(), at.spread())
        .text("quality", making.quality(at.place()))
        .text("missing", making.missing(at.depth()))
        .shape(dot(at))
        .done();
  }
}
