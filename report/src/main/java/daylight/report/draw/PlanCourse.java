package daylight.report.draw;

import daylight.line.answer.Sight;
import daylight.line.book.Place;
import daylight.line.book.Reach;
import daylight.line.course.PlacedFinding;
import daylight.line.course.Route;
import daylight.line.course.Run;
import daylight.line.course.Station;
import daylight.line.measure.Argument;
import daylight.line.measure.Measured;
import daylight.line.survey.ErrorEllipse;
import daylight.line.survey.PlanPoint;
import daylight.report.markup.Tag;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** The pipes themselves on the plan: bands, strokes, arrows and stretches seen. */
final class PlanCourse {
  private static final double ARROW_EVERY = 70;
  private static final double THIN = 2;

  /** How large the ring at a finding is. */
  static final double TICK = 2.1;

  private final Subject subject;
  private final Canvas sheet;
  private final PlanFrame frame;
  private final Window window;
  private final Labeller labeller;
  private final Legend legend;

  PlanCourse(
      Subject subject,
      Canvas sheet,
      PlanFrame frame,
      Window window,
      Labeller labeller,
      Legend legend) {
    this.subject = subject;
    this.sheet = sheet;
    this.frame = frame;
    this.window = window;
    this.labeller = labeller;
    this.legend = legend;
  }

  void draw() {
    pipes();
    new PlanOthers(subject, sheet, legend, labeller, this::at).findings();
    for (PlacedFinding placed : findings()) {
      if (placed.to() != null) {
        stretch(placed);
      }
      tick(placed);
    }
  }

  /** The pipes with their bands, without what was seen at a place in them. */
  void pipes() {
    sheet.define(Pen.stripes(sheet.unique("band"), Ink.DRAIN, 35, 6));
    List<Run> found =
        subject.line().runs().stream().filter(run -> !run.stations().isEmpty()).toList();
    found.forEach(this::band);
    found.forEach(this::stroke);
  }

  private void band(Run run) {
    List<Point> left = new ArrayList<>();
    List<Point> right = new ArrayList<>();
    for (Station station : thinned(run)) {
      double half = Measured.Z95 * station.across();
      left.add(beside(station, -half));
      right.add(beside(station, half));
    }
    Collections.reverse(right);
    left.addAll(right);
    List<Point> shown = window.area(left);
    if (shown.size() < 3) {
      return;
    }
    String d = Pen.through(shown, true);
    sheet.add(Pen.filled(d, Ink.DRAIN).with("fill-opacity", 0.13));
    sheet.add(Pen.filled(d, "url(#" + sheet.unique("band") + ")").with("fill-opacity", 0.8));
    legend.use(Legend.Entry.BAND);
  }

  /** A point so many metres to the right of the pipe, looking downstream. */
  private Point beside(Station station, double metres) {
    PlanPoint spot = station.spot();
    double across = station.bearing() + Math.PI / 2;
    return frame.at(
        new PlanPoint(
            spot.x() + metres * StrictMath.sin(across),
            spot.y() + metres * StrictMath.cos(across)));
  }

  private void stroke(Run run) {
    List<Station> stations = thinned(run);
    List<List<Point>> paths =
        window.pieces(stations.stream().map(station -> frame.at(station.spot())).toList());
    if (paths.isEmpty()) {
      return;
    }
    boolean known = !(run.reach().water() instanceof Reach.Water.Unknown);
    Tag group = Tag.of("g").with("data-place", run.reach().label());
    for (List<Point> path : paths) {
      Tag stroke = Pen.path(Pen.through(path, false), Ink.DRAIN, SeenStroke.STROKE);
      group.add(known ? stroke : stroke.with("stroke-dasharray", "7 6"));
    }
    coverage(group, run);
    for (List<Point> path : paths) {
      Pen.strokes(path).forEach(labeller::wall);
      if (known) {
        arrows(group, path);
      }
    }
    sheet.add(group);
    legend.use(known ? Legend.Entry.LINE : Legend.Entry.LINE_UNKNOWN);
  }

  /** How well it was seen, upon its stroke. */
  private void coverage(Tag group, Run run) {
    Route alone = new Route(run.reach().upstream(), run.reach().downstream(), List.of(run));
    for (Sight sight : SeenStroke.of(subject, alone, run.stations().getLast().place().distance())) {
      List<Point> path = new ArrayList<>();
      path.add(frame.at(Between.spot(run, sight.from())));
      for (Station station : thinned(run)) {
        double s = station.place().distance();
        if (s > sight.from() && s < sight.to()) {
          path.add(frame.at(station.spot()));
        }
      }
      path.add(frame.at(Between.spot(run, sight.to())));
      for (List<Point> piece : window.pieces(path)) {
        group.add(SeenStroke.core(sight.seen(), Pen.through(piece, false)));
        legend.use(SeenStroke.entry(sight.seen()));
      }
    }
  }

  private static void arrows(Tag group, List<Point> path) {
    double since = ARROW_EVERY / 2;
    for (Stroke s : Pen.strokes(path)) {
      since += StrictMath.hypot(s.x2() - s.x1(), s.y2() - s.y1());
      if (since >= ARROW_EVERY) {
        since = 0;
        double turn = StrictMath.toDegrees(StrictMath.atan2(s.y2() - s.y1(), s.x2() - s.x1()));
        group.add(
            Pen.path("M-2.5 -4.5L2.5 0L-2.5 4.5", Ink.DARK, 1.4)
                .with(
                    "transform",
                    "translate(%s %s) rotate(%s)"
                        .formatted(
                            Tag.number((s.x1() + s.x2()) / 2),
                            Tag.number((s.y1() + s.y2()) / 2),
                            Tag.number(turn))));
      }
    }
  }

  private void stretch(PlacedFinding placed) {
    Place to = Objects.requireNonNull(placed.to());
    List<Point> side = new ArrayList<>();
    for (Run run : subject.line().runs()) {
      boolean mine = run.reach().label().equals(placed.from().reach());
      for (Station station : mine ? run.stations() : List.<Station>of()) {
        double s = station.place().distance();
        if (s >= placed.from().distance() && s <= to.distance()) {
          side.add(beside(station, 6 / frame.scale().pointsPerMetre()));
        }
      }
    }
    for (List<Point> piece : side.size() > 1 ? window.pieces(side) : List.<List<Point>>of()) {
      boolean water = Symbols.known(subject.symbol(placed.finding().kind())).equals("water");
      legend.use(water ? Legend.Entry.STRETCH_WATER : Legend.Entry.STRETCH);
      Tag stroke = stretchStroke(Pen.through(piece, false), water);
      sheet.add(Pen.at(placed.from()).add(stroke));
      Pen.strokes(piece).forEach(labeller::avoid);
    }
  }

  /** What runs along the drain from here to there. */
  static Tag stretchStroke(String d, boolean water) {
    return Pen.path(d, water ? Ink.WATER : Ink.DARK, 2)
        .with("stroke-dasharray", water ? "none" : "1 3");
  }

  /** A ring where something was seen; what may kill has its sign there. */
  private void tick(PlacedFinding placed) {
    Point at = at(placed.from());
    if (at != null) {
      ring(subject, placed, at, sheet, labeller, legend);
    }
  }

  static void ring(
      Subject subject,
      PlacedFinding placed,
      Point at,
      Canvas sheet,
      Labeller labels,
      Legend legend) {
    boolean stop = Captions.isStop(subject, placed);
    Tag sign =
        stop
            ? Symbols.finding("stop", at.x(), at.y())
            : Pen.circle(at.x(), at.y(), TICK, Ink.PAPER, Ink.DARK, 1);
    sheet.add(Pen.at(placed.from()).add(sign));
    labels.keepClear(Box.around(at.x(), at.y(), stop ? Symbols.RADIUS : TICK + 0.5));
    if (stop) {
      legend.use("stop");
    }
  }

  private List<Station> thinned(Run run) {
    List<Station> kept = new ArrayList<>();
    List<Station> all = run.stations();
    double enough = THIN / frame.scale().pointsPerMetre();
    for (Station station : all) {
      boolean last = station.equals(all.getLast());
      if (last
          || kept.isEmpty()
          || station.place().distance() - kept.getLast().place().distance() >= enough) {
        kept.add(station);
      }
    }
    return kept;
  }

  /** Where a place lies on the sheet; null where its reach was not found, or off the sheet. */
  @Nullable Point at(Place place) {
    return subject
        .line()
        .findRun(place.reach())
        .filter(run -> !run.stations().isEmpty())
        .map(run -> frame.at(Between.spot(run, place.distance())))
        .filter(window::holds)
        .orElse(null);
  }

  /** The same with the region that holds it; empty where its reach was not found. */
  Optional<Spot> spot(Place place) {
    return subject
        .line()
        .findRun(place.reach())
        .filter(run -> run.path() instanceof Run.Path.Found)
        .map(run -> spot(run, place.distance()));
  }

  private Spot spot(Run run, double distance) {
    Point at = frame.at(Between.spot(run, distance));
    Station near = ((Run.Path.Found) run.path()).nearest(distance);
    ErrorEllipse region = ErrorEllipse.of(near.spread(), 0.95);
    return new Spot(
        at.x(),
        at.y(),
        at.y(),
        at.y(),
        frame.length(region.semiMajor()),
        frame.length(region.semiMinor()),
        frame.turn(region.azimuth()));
  }

  /** The findings of the visit shown, along the reaches. */
  List<PlacedFinding> findings() {
    return Captions.drawn(subject);
  }

  boolean isStop(PlacedFinding placed) {
    return Captions.isStop(subject, placed);
  }

  /** Where the ends of the reaches lie, by label. */
  SortedMap<String, Point> nodes() {
    SortedMap<String, Point> nodes = new TreeMap<>();
    for (Run run : subject.line().runs()) {
      if (!run.stations().isEmpty()) {
        if (subject.reached(run, run.reach().upstream())) {
          nodes.put(run.reach().upstream(), frame.at(run.stations().getFirst().spot()));
        }
        if (subject.reached(run, run.reach().downstream())) {
          nodes.put(run.reach().downstream(), frame.at(run.stations().getLast().spot()));
        }
      }
    }
    nodes.values().removeIf(at -> !window.holds(at));
    return nodes;
  }

  /** What is missing for the reaches that could not be drawn. */
  List<String> missing() {
    List<String> missing = new ArrayList<>();
    for (Run run : subject.line().runs()) {
      if (run.path() instanceof Run.Path.NotFound notFound) {
        missing.add(
            subject
                .words()
                .say(
                    "draw.reach_missing",
                    new Argument.Label(run.reach().label()),
                    new Argument.Text(subject.words().say(notFound.missing()))));
      }
    }
    return missing;
  }
}
