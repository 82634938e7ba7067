package daylight.line.cause;

import daylight.line.book.FieldBook;
import daylight.line.book.Node;
import daylight.line.book.Place;
import daylight.line.book.Reach;
import daylight.line.book.Surroundings;
import daylight.line.book.WaterWay;
import daylight.line.course.Line;
import daylight.line.course.Route;
import daylight.line.course.Run;
import daylight.line.course.Station;
import daylight.line.survey.Adjusted;
import daylight.line.survey.PlanPoint;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Where a complaint shows, and which pipe matters for it.
 *
 * @param node where its water enters or is met; null where that is not known
 * @param spot where it shows on the ground; null where that is not known
 */
record Where(FieldBook book, Line line, @Nullable String node, @Nullable PlanPoint spot) {

  /**
   * A stretch of one reach, metres from its upstream node. One that goes to the end of its reach is
   * without end: what was noted there may lie a little past the length that was estimated.
   */
  record Span(String reach, double from, double to) {
    /** Whether a place or a stretch of the pipe lies in it, were it only in part. */
    boolean meets(Place first, @Nullable Place last) {
      double end = last == null ? first.distance() : last.distance();
      return reach.equals(first.reach()) && first.distance() <= to && from <= end;
    }
  }

  /** A node, the node of a fixture, or a point with a place in plan. */
  static Where of(FieldBook book, Line line, @Nullable String at) {
    if (at == null) {
      return new Where(book, line, null, null);
    }
    String node =
        book.site().findNode(at).isPresent()
            ? at
            : book.site().surroundings().fixtures().stream()
                .filter(fixture -> fixture.label().equals(at))
                .map(Surroundings.Fixture::node)
                .findFirst()
                .orElse(null);
    PlanPoint spot =
        node == null && line.survey() instanceof Adjusted adjusted
            ? adjusted.points().get(at)
            : null;
    return new Where(book, line, node, spot);
  }

  /** Whether anything tells where it shows. */
  boolean known() {
    return node != null || spot != null;
  }

  /** The pipe that matters. */
  List<Span> spans(CauseTable.Reach reach, double near) {
    return switch (reach) {
      case ON_THE_WAY -> way();
      case NEAR -> known() ? nearby(near) : way();
      case AT_OUTLET -> outlets(near);
    };
  }

  /** The pipes that its water goes through; all of them where nobody knows where it enters. */
  List<Span> way() {
    String from = node;
    Set<String> through = from == null ? Set.of() : WaterWay.below(book.site(), from);
    List<Span> spans = new ArrayList<>();
    for (Run run : line.runs()) {
      if (from == null || through.contains(run.reach().label())) {
        spans.add(span(run, 0, Double.POSITIVE_INFINITY));
      }
    }
    return spans;
  }

  private static Span span(Run run, double from, double to) {
    return new Span(run.reach().label(), from, to);
  }

  private List<Span> outlets(double near) {
    Set<String> ends = new HashSet<>();
    for (Node each : book.site().nodes()) {
      if (each.kind() == Node.Kind.OUTLET) {
        ends.add(each.label());
      }
    }
    List<Span> spans = new ArrayList<>();
    for (Span way : way()) {
      line.findRun(way.reach())
          .filter(run -> ends.contains(run.reach().downstream()))
          .ifPresent(
              run ->
                  spans.add(
                      span(run, Math.max(0, Route.extent(run) - near), Double.POSITIVE_INFINITY)));
    }
    return spans;
  }

  private List<Span> nearby(double near) {
    List<Span> spans = new ArrayList<>();
    for (Run run : line.runs()) {
      Span span = spot == null ? along(run, near) : around(run, spot, near);
      if (span != null) {
        spans.add(span);
      }
    }
    return spans;
  }

  private @Nullable Span along(Run run, double near) {
    Reach reach = run.reach();
    if (reach.upstream().equals(node)) {
      return span(run, 0, near);
    }
    return reach.downstream().equals(node)
        ? span(run, Math.max(0, Route.extent(run) - near), Double.POSITIVE_INFINITY)
        : null;
  }

  private static @Nullable Span around(Run run, PlanPoint spot, double near) {
    double from = Double.POSITIVE_INFINITY;
    double to = Double.NEGATIVE_INFINITY;
    for (Station station : run.stations()) {
      if (station.spot().distanceTo(spot) <= near) {
        from = Math.min(from, station.place().distance());
        to = Math.max(to, station.place().distance());
      }
    }
    return from <= to ? span(run, from, to) : null;
  }
}
