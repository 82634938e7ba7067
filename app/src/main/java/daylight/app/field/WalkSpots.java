package daylight.app.field;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import daylight.line.book.Entry;
import daylight.line.book.FieldBook;
import daylight.line.book.Landmark;
import daylight.line.book.Visit;
import daylight.line.course.LocateFit;
import daylight.line.course.Run;
import daylight.line.course.Station;
import daylight.line.measure.Print;
import daylight.line.measure.Shown;
import daylight.line.survey.Adjusted;
import daylight.line.survey.Adjustment;
import daylight.line.survey.PlanPoint;
import daylight.report.Handout;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;

/**
 * Where the spots of a walk lie and how they fit, in figures and in sentences. Metres on the site
 * grid: x east, y north; along the wall that carries the grid is y, out from it −x.
 */
final class WalkSpots {
  /** Of a position: nineteen times in twenty it lies within. */
  private static final double P95 = 0.95;

  /** No sketch needs more stations of a reach than this. */
  private static final int STATIONS = 60;

  private final Phrases phrases;
  private final Shown shown;
  private final Handout handout;
  private final UUID visit;

  WalkSpots(Caller caller, Handout handout, UUID visit) {
    this.phrases = caller.phrases();
    this.shown = caller.look().shown();
    this.handout = handout;
    this.visit = visit;
  }

  void tell(ObjectNode out) {
    base().forEach(out.putArray("base")::add);
    Optional<Adjusted> plan = plan();
    ArrayNode points = out.putArray("points");
    plan.ifPresent(adjusted -> kinds().forEach(kind -> point(points, adjusted, kind)));
    ArrayNode lines = out.putArray("lines");
    handout.line().runs().forEach(run -> line(lines, run));
    ArrayNode spots = out.putArray("spots");
    for (LocateFit fit : handout.line().locates()) {
      if (isOfVisit(fit.entry().uuid())) {
        spots.add(spot(fit, plan));
      }
    }
  }

  private Optional<Adjusted> plan() {
    Adjustment survey = handout.line().survey();
    return survey instanceof Adjusted adjusted ? Optional.of(adjusted) : Optional.empty();
  }

  /** The two landmarks that carry the grid. */
  private List<String> base() {
    List<Landmark> landmarks = handout.book().site().landmarks();
    return Stream.concat(landmarks.stream().filter(Landmark::base), landmarks.stream())
        .map(Entry::label)
        .distinct()
        .limit(2)
        .toList();
  }

  private boolean isOfVisit(UUID entry) {
    return handout.book().visits().stream()
        .filter(one -> one.id().uuid().equals(visit))
        .flatMap(one -> one.locates().stream())
        .anyMatch(locate -> locate.id().uuid().equals(entry));
  }

  /** A point with what it is. */
  private record Kind(Entry entry, String kind) {}

  private List<Kind> kinds() {
    FieldBook book = handout.book();
    List<Kind> kinds = new ArrayList<>();
    book.site().landmarks().forEach(one -> kinds.add(new Kind(one, "landmark")));
    book.site().nodes().forEach(one -> kinds.add(new Kind(one, "node")));
    for (Visit one : book.visits()) {
      one.locates().forEach(locate -> kinds.add(new Kind(locate, "locate")));
      one.exposures().forEach(exposure -> kinds.add(new Kind(exposure, "exposure")));
    }
    return kinds;
  }

  private static void point(ArrayNode points, Adjusted plan, Kind kind) {
    String label = kind.entry().label();
    PlanPoint at = plan.points().get(label);
    if (at != null) {
      points
          .addObject()
          .put("label", label)
          .put("entry", kind.entry().id().uuid().toString())
          .put("kind", kind.kind())
          .put("x", at.x())
          .put("y", at.y())
          .put("within", plan.ellipse(label, P95).semiMajor());
    }
  }

  private static void line(ArrayNode lines, Run run) {
    List<Station> stations = run.stations();
    if (stations.isEmpty()) {
      return;
    }
    ArrayNode line = lines.addArray();
    int step = Math.max(1, stations.size() / STATIONS);
    for (int i = 0; i < stations.size(); i += step) {
      line.addArray().add(stations.get(i).spot().x()).add(stations.get(i).spot().y());
    }
    PlanPoint last = stations.getLast().spot();
    line.addArray().add(last.x()).add(last.y());
  }

  private ObjectNode spot(LocateFit fit, Optional<Adjusted> plan) {
    String label = fit.entry().label();
    ObjectNode out =
        EntryJson.object()
            .put("entry", fit.entry().uuid().toString())
            .put("label", label)
            .put("off", fit.off());
    ArrayNode says = out.putArray("says");
    PlanPoint at = plan.map(adjusted -> adjusted.points().get(label)).orElse(null);
    List<String> base = base();
    if (at != null && base.size() == 2) {
      double within = plan.orElseThrow().ellipse(label, P95).semiMajor();
      out.put("along", at.y()).put("out", -at.x()).put("within", within);
      says.add(
          phrases.say(
              "walk.fit.spot",
              length(at.y()),
              length(-at.x()),
              base.get(0) + "–" + base.get(1),
              length(within)));
    }
    Double across = fit.across();
    if (across != null) {
      out.put("across", across);
      String side = across >= 0 ? "walk.fit.left" : "walk.fit.right";
      says.add(phrases.say(side, length(Math.abs(across))));
    }
    Double depth = fit.depthResidual();
    if (depth != null) {
      out.put("depth", depth);
      String way = depth >= 0 ? "walk.fit.deeper" : "walk.fit.shallower";
      says.add(phrases.say(way, length(Math.abs(depth))));
    }
    return out;
  }

  private String length(double metres) {
    return phrases.figure(Print.length(metres, shown));
  }
}
