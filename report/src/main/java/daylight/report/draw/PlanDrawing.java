package daylight.report.draw;

import daylight.line.book.Boundary;
import daylight.line.book.Landmark;
import daylight.line.book.Node;
import daylight.line.course.LocateFit;
import daylight.line.course.PlacedFinding;
import daylight.line.course.Route;
import daylight.line.course.Run;
import daylight.line.measure.Argument;
import daylight.line.survey.Adjusted;
import daylight.line.survey.ErrorEllipse;
import daylight.line.survey.PlanPoint;
import daylight.report.markup.Tag;
import daylight.report.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** The door for the drawing from above, to scale. */
public final class PlanDrawing {
  private static final double FOOT_ROOM = 34;

  /** So far along its first reach a line is named. */
  private static final double LINE_NAMED = 0.1;

  private final Subject subject;
  private final Words words;
  private final Sheet sheet;
  private final SortedMap<String, PlanPoint> points;
  private final PlanFrame frame;
  private final Labeller labeller;
  private final Marks marks;
  private final PlanServices services;
  private final PlanCourse course;
  private final Legend legend;
  private final Route route;

  private PlanDrawing(Subject subject) {
    this.subject = subject;
    this.words = subject.words();
    this.route = subject.route();
    this.sheet =
        new Sheet(
            "plan",
            subject,
            Sheet.HIGHEST,
            words.say("draw.plan.title", new Argument.Text(subject.book().site().name())),
            words.word("draw.plan.desc"));
    this.points = shownPoints(subject);
    Box body = sheet.body();
    Box box = new Box(body.x(), body.y(), body.width(), body.height() - FOOT_ROOM);
    this.services = new PlanServices(subject);
    List<PlanPoint> extent = extent(subject, points);
    extent.addAll(services.points());
    this.frame = PlanFrame.of(extent, box, words.shown(), subject.plan(), PlanFrame.bearing(route));
    this.labeller = new Labeller(box);
    this.legend = new Legend(words);
    this.marks = new Marks(labeller, legend);
    this.course = new PlanCourse(subject, sheet, frame, labeller, legend);
  }

  /** The line from above, with all that it has to say on one sheet. */
  public static Tag draw(Subject subject) {
    return drawn(subject).sheet();
  }

  /** The same, and where a place lies on it. */
  public static Drawn drawn(Subject subject) {
    PlanDrawing plan = new PlanDrawing(subject);
    return new Drawn(plan.made().finished(), plan.course::spot);
  }

  /** The same on a sheet of paper, with as many behind it as its numbers take. */
  public static List<Tag> sheets(Subject subject) {
    return new PlanDrawing(subject).made().sheets();
  }

  /** The same sheets of paper, and where a place lies on each. */
  public static List<Drawn> drawnSheets(Subject subject) {
    PlanDrawing plan = new PlanDrawing(subject);
    return Drawn.first(plan.made().sheets(), plan.course::spot);
  }

  private Sheet made() {
    boundaries();
    services.draw(sheet, frame, labeller, legend);
    ellipses();
    course.draw();
    signs();
    labels();
    sheet.add(marks.settled());
    PlanFoot.draw(sheet, frame, words);
    side();
    return sheet;
  }

  /** Landmarks, and spots found from the ground; what no drawing names is left out. */
  private static SortedMap<String, PlanPoint> shownPoints(Subject subject) {
    SortedMap<String, PlanPoint> shown = new TreeMap<>();
    SortedMap<String, PlanPoint> all = subject.points();
    for (Landmark landmark : subject.book().site().landmarks()) {
      PlanPoint point = all.get(landmark.label());
      if (point != null) {
        shown.put(landmark.label(), point);
      }
    }
    return shown;
  }

  private static List<PlanPoint> extent(Subject subject, SortedMap<String, PlanPoint> points) {
    List<PlanPoint> extent = new ArrayList<>(points.values());
    for (Run run : subject.line().runs()) {
      run.stations().forEach(station -> extent.add(station.spot()));
    }
    for (LocateFit fit : subject.line().locates()) {
      if (fit.spot() != null) {
        extent.add(fit.spot());
      }
    }
    return extent;
  }

  private void boundaries() {
    for (Boundary boundary : subject.book().site().boundaries()) {
      List<Point> path = path(boundary);
      if (path.size() < 2) {
        continue;
      }
      boolean wall = boundary.kind() == Boundary.Kind.FOUNDATION;
      Tag stroke = Pen.path(Pen.through(path, false), Ink.SOFT, wall ? 2.6 : 1.1);
      if (!wall) {
        stroke.with("stroke-dasharray", boundary.kind() == Boundary.Kind.WATER ? "2 3" : "9 3 2 3");
      }
      sheet.add(stroke);
      Pen.strokes(path).forEach(labeller::avoid);
    }
  }

  private void boundaryLabels() {
    for (Boundary boundary : subject.book().site().boundaries()) {
      List<Point> path = path(boundary);
      if (path.size() > 1) {
        Point a = path.getFirst();
        Point b = path.get(1);
        Point middle = new Point(a.x() + 0.3 * (b.x() - a.x()), a.y() + 0.3 * (b.y() - a.y()));
        marks.write(Tag.of("g"), middle, 1, null, words.name(boundary.kind()), false, Marks.LITTLE);
      }
    }
  }

  private List<Point> path(Boundary boundary) {
    return boundary.points().stream()
        .filter(label -> points.containsKey(label))
        .map(this::point)
        .toList();
  }

  private Point point(String label) {
    PlanPoint at = points.get(label);
    if (at == null) {
      throw new IllegalArgumentException("point must be shown, was " + label);
    }
    return frame.at(at);
  }

  private void ellipses() {
    if (!(subject.line().survey() instanceof Adjusted adjusted)) {
      return;
    }
    for (LocateFit fit : subject.line().locates()) {
      if (adjusted.points().containsKey(fit.entry().label())) {
        ErrorEllipse ellipse = adjusted.ellipse(fit.entry().label(), 0.95);
        Point at = frame.at(adjusted.point(fit.entry().label()));
        if (frame.length(ellipse.semiMajor()) > 2) {
          sheet.add(ellipse(at, ellipse));
          legend.use(Legend.Entry.ELLIPSE);
        }
      }
    }
  }

  private Tag ellipse(Point at, ErrorEllipse ellipse) {
    double turn = frame.turn(ellipse.azimuth());
    return Tag.of("ellipse")
        .with("rx", frame.length(ellipse.semiMajor()))
        .with("ry", frame.length(ellipse.semiMinor()))
        .with(
            "transform",
            "translate(%s %s) rotate(%s)"
                .formatted(Tag.number(at.x()), Tag.number(at.y()), Tag.number(turn)))
        .with("fill", "none")
        .with("stroke", Ink.SOFT)
        .with("stroke-width", 0.9)
        .with("stroke-dasharray", "2 1.5");
  }

  /** First every sign, so that no label is set where a later sign would come. */
  private void signs() {
    for (Landmark landmark : subject.book().site().landmarks()) {
      if (points.containsKey(landmark.label())) {
        Point at = point(landmark.label());
        sheet.add(Symbols.landmark(landmark.kind(), at.x(), at.y()));
        labeller.keepClear(Box.around(at.x(), at.y(), 4));
        legend.use(landmark.kind());
      }
    }
    course.nodes().forEach((label, at) -> node(label, at));
    for (LocateFit fit : subject.line().locates()) {
      if (fit.spot() != null) {
        Point at = frame.at(fit.spot());
        sheet.add(Located.drawn(subject, fit, at, legend));
        labeller.keepClear(Box.around(at.x(), at.y(), 5.5));
      }
    }
  }

  private void node(String label, Point at) {
    Node.Kind kind = kind(label);
    sheet.add(Symbols.node(kind, at.x(), at.y()));
    labeller.keepClear(Box.around(at.x(), at.y(), 5.5));
    legend.use(kind);
  }

  private Node.Kind kind(String label) {
    return subject.book().site().findNode(label).map(Node::kind).orElse(Node.Kind.END);
  }

  private void labels() {
    lines();
    services.labels(frame, marks);
    course
        .nodes()
        .forEach(
            (label, at) -> marks.write(Tag.of("g"), at, 5.5, Captions.node(subject, label), true));
    for (LocateFit fit : subject.line().locates()) {
      if (fit.spot() != null) {
        marks.write(
            Pen.at(fit.place()), frame.at(fit.spot()), 5.5, Located.label(subject, fit), false);
      }
    }
    course.findings().forEach(this::finding);
    points.forEach(
        (label, at) -> marks.write(Tag.of("g"), frame.at(at), 4, null, label, false, Marks.LITTLE));
    boundaryLabels();
  }

  /** Where there are several lines, each is named where it begins. */
  private void lines() {
    List<Route> mains =
        Route.mains(subject.line()).stream().filter(main -> !main.runs().isEmpty()).toList();
    if (mains.size() < 2) {
      return;
    }
    for (Route main : mains) {
      Run first = main.runs().getFirst();
      Point at = course.at(first.at(LINE_NAMED * Route.extent(first)));
      if (at != null) {
        String name = words.say("draw.line_name", new Argument.Label(first.reach().line()));
        marks.write(Pen.at(first.at(0)), at, 3, name, true);
      }
    }
  }

  private void finding(PlacedFinding placed) {
    @Nullable Point at = course.at(placed.from());
    if (at != null) {
      String symbol = Symbols.known(subject.symbol(placed.finding().kind()));
      String text = Captions.finding(subject, route, placed);
      boolean stop = symbol.equals("stop");
      int rank = Captions.rank(subject, placed);
      marks.write(Pen.at(placed.from()), at, stop ? 5.5 : 3, symbol, text, stop, rank);
    }
  }

  private void side() {
    sheet.sideHeading(words.word("draw.legend"));
    sheet.side(legend.signs());
    services.notes(sheet);
    new SideNotes(subject).grades(sheet);
    sheet.key(words, marks);
    if (!points.isEmpty()) {
      sheet.sideHeading(words.word("draw.landmarks"));
      List<String> heads = new ArrayList<>();
      List<String> texts = new ArrayList<>();
      for (Landmark landmark : subject.book().site().landmarks()) {
        if (points.containsKey(landmark.label())) {
          heads.add(landmark.label());
          texts.add(landmark.what() == null ? words.name(landmark.kind()) : landmark.what());
        }
      }
      sheet.sideList(heads, texts);
    }
    course.missing().forEach(sheet::note);
  }
}
