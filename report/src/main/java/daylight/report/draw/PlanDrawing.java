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
import daylight.report.cut.Part;
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

  /** Strokes end so far from the frame of a sheet. */
  private static final double EDGE = 2;

  /** An ellipse that a frame cuts is drawn from so many points. */
  private static final int ROUND = 72;

  /** So far along its first reach a line is named. */
  private static final double LINE_NAMED = 0.1;

  private final Subject subject;
  private final Words words;
  private final Sheet sheet;
  private final SortedMap<String, PlanPoint> points;
  private final PlanFrame frame;
  private final Window window;
  private final Labeller labeller;
  private final Marks marks;
  private final PlanServices services;
  private final PlanCourse course;
  private final Legend legend;
  private final Route route;
  private final @Nullable Part part;

  /**
   * A plan.
   *
   * @param part that it shows; null for the whole
   */
  private PlanDrawing(Subject subject, Sheet sheet, PlanFrame frame, @Nullable Part part) {
    this.subject = subject;
    this.words = subject.words();
    this.route = subject.route();
    this.sheet = sheet;
    this.points = shownPoints(subject);
    this.services = new PlanServices(subject);
    this.frame = frame;
    this.part = part;
    Box box = box(sheet);
    this.window = part == null ? Window.ALL : new Window(box.grown(-EDGE));
    this.labeller = new Labeller(part == null ? box : box.grown(-EDGE));
    this.legend = new Legend(words);
    this.marks = new Marks(labeller, legend);
    this.course = new PlanCourse(subject, sheet, frame, window, labeller, legend);
  }

  private static PlanDrawing whole(Subject subject) {
    return new PlanDrawing(subject, sheet(subject), frame(subject), null);
  }

  private static Sheet sheet(Subject subject) {
    Words words = subject.words();
    return sheet(
        subject,
        "plan",
        words.say("draw.plan.title", new Argument.Text(subject.book().site().name())),
        words.word("draw.plan.desc"));
  }

  /** A sheet for a plan, under a title. */
  static Sheet sheet(Subject subject, String id, String title, String desc) {
    return new Sheet(id, subject, Sheet.HIGHEST, title, desc);
  }

  /** Where on it the ground is drawn. */
  static Box box(Sheet sheet) {
    Box body = sheet.body();
    return new Box(body.x(), body.y(), body.width(), body.height() - FOOT_ROOM);
  }

  /** How the whole of a site lies on one sheet. */
  static PlanFrame frame(Subject subject) {
    List<PlanPoint> extent = extent(subject, shownPoints(subject));
    extent.addAll(new PlanServices(subject).points());
    return PlanFrame.of(
        extent,
        box(sheet(subject)),
        subject.words().shown(),
        subject.plan(),
        PlanFrame.bearing(subject.route()));
  }

  /** The line from above, with all that it has to say on one sheet. */
  public static Tag draw(Subject subject) {
    return drawn(subject).sheet();
  }

  /** The same, and where a place lies on it. */
  public static Drawn drawn(Subject subject) {
    PlanDrawing plan = whole(subject);
    return new Drawn(plan.made().finished(), plan.course::spot);
  }

  /** The same on a sheet of paper, with as many behind it as its numbers take. */
  public static List<Tag> sheets(Subject subject) {
    return whole(subject).made().sheets();
  }

  /** A part of the plan drawn on its sheet. */
  static Sheet part(Subject subject, Sheet sheet, PlanFrame frame, Part part) {
    return new PlanDrawing(subject, sheet, frame, part).made();
  }

  /** The same sheets of paper, and where a place lies on each. */
  public static List<Drawn> drawnSheets(Subject subject) {
    PlanDrawing plan = whole(subject);
    return Drawn.first(plan.made().sheets(), plan.course::spot);
  }

  private Sheet made() {
    boundaries();
    services.draw(sheet, frame, window, labeller, legend);
    ellipses();
    course.draw();
    if (part == null) {
      signs();
    } else {
      Box box = box(sheet);
      sheet.add(Pen.box(box, "none", Ink.SOFT).with("stroke-width", 0.8));
      MatchLines lines = new MatchLines(subject, frame, box);
      List<MatchLines.Match> matches = lines.draw(part.matches(), sheet, labeller);
      signs();
      lines.labels(matches, sheet, labeller);
    }
    labels();
    sheet.add(marks.settled());
    PlanFoot.draw(sheet, frame, words);
    side();
    return sheet;
  }

  /** Landmarks, and spots found from the ground; what no drawing names is left out. */
  static SortedMap<String, PlanPoint> shownPoints(Subject subject) {
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
      for (List<Point> path : pieces(boundary)) {
        boolean wall = boundary.kind() == Boundary.Kind.FOUNDATION;
        Tag stroke = Pen.path(Pen.through(path, false), Ink.SOFT, wall ? 2.6 : 1.1);
        if (!wall) {
          stroke.with(
              "stroke-dasharray", boundary.kind() == Boundary.Kind.WATER ? "2 3" : "9 3 2 3");
        }
        sheet.add(stroke);
        Pen.strokes(path).forEach(labeller::avoid);
      }
    }
  }

  private void boundaryLabels() {
    for (Boundary boundary : subject.book().site().boundaries()) {
      List<List<Point>> pieces = pieces(boundary);
      if (!pieces.isEmpty()) {
        List<Point> path = pieces.getFirst();
        Point a = path.getFirst();
        Point b = path.get(1);
        Point middle = new Point(a.x() + 0.3 * (b.x() - a.x()), a.y() + 0.3 * (b.y() - a.y()));
        marks.write(Tag.of("g"), middle, 1, null, words.name(boundary.kind()), false, Marks.LITTLE);
      }
    }
  }

  /** What is shown of a boundary. */
  private List<List<Point>> pieces(Boundary boundary) {
    List<Point> path = path(boundary);
    return path.size() > 1 ? window.pieces(path) : List.of();
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
        if (frame.length(ellipse.semiMajor()) > 2 && window.holds(at)) {
          (part == null ? List.of(ellipse(at, ellipse)) : cut(at, ellipse)).forEach(sheet::add);
          legend.use(Legend.Entry.ELLIPSE);
        }
      }
    }
  }

  /** As much of it as the sheet shows. */
  private List<Tag> cut(Point at, ErrorEllipse ellipse) {
    double turn = StrictMath.toRadians(frame.turn(ellipse.azimuth()));
    List<Point> round = new ArrayList<>();
    for (int i = 0; i <= ROUND; i++) {
      double t = 2 * Math.PI * i / ROUND;
      double a = frame.length(ellipse.semiMajor()) * StrictMath.cos(t);
      double b = frame.length(ellipse.semiMinor()) * StrictMath.sin(t);
      round.add(
          new Point(
              at.x() + a * StrictMath.cos(turn) - b * StrictMath.sin(turn),
              at.y() + a * StrictMath.sin(turn) + b * StrictMath.cos(turn)));
    }
    return window.pieces(round).stream()
        .map(
            piece ->
                Pen.path(Pen.through(piece, false), Ink.SOFT, 0.9)
                    .with("stroke-dasharray", "2 1.5"))
        .toList();
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
      if (isShown(landmark)) {
        Point at = point(landmark.label());
        sheet.add(Symbols.landmark(landmark.kind(), at.x(), at.y()));
        labeller.keepClear(Box.around(at.x(), at.y(), 4));
        legend.use(landmark.kind());
      }
    }
    course.nodes().forEach((label, at) -> node(label, at));
    for (LocateFit fit : subject.line().locates()) {
      if (fit.spot() != null && window.holds(frame.at(fit.spot()))) {
        Point at = frame.at(fit.spot());
        sheet.add(Located.drawn(subject, fit, at, legend));
        labeller.keepClear(Box.around(at.x(), at.y(), 5.5));
      }
    }
  }

  private void node(String label, Point at) {
    Node.Kind kind = subject.kind(label);
    sheet.add(Symbols.node(kind, at.x(), at.y()));
    labeller.keepClear(Box.around(at.x(), at.y(), 5.5));
    legend.use(kind);
  }

  private boolean isShown(Landmark landmark) {
    return points.containsKey(landmark.label()) && window.holds(point(landmark.label()));
  }

  private void labels() {
    lines();
    services.labels(frame, window, marks);
    course
        .nodes()
        .forEach(
            (label, at) -> marks.write(Tag.of("g"), at, 5.5, Captions.node(subject, label), true));
    for (LocateFit fit : subject.line().locates()) {
      if (fit.spot() != null && window.holds(frame.at(fit.spot()))) {
        marks.write(
            Pen.at(fit.place()), frame.at(fit.spot()), 5.5, Located.label(subject, fit), false);
      }
    }
    course.findings().forEach(this::finding);
    points.forEach(
        (label, at) -> {
          if (window.holds(frame.at(at))) {
            marks.write(Tag.of("g"), frame.at(at), 4, null, label, false, Marks.LITTLE);
          }
        });
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
    sheet.key(words, marks);
    if (subject.book().site().landmarks().stream().anyMatch(this::isShown)) {
      sheet.sideHeading(words.word("draw.landmarks"));
      List<String> heads = new ArrayList<>();
      List<String> texts = new ArrayList<>();
      for (Landmark landmark : subject.book().site().landmarks()) {
        if (isShown(landmark)) {
          heads.add(landmark.label());
          texts.add(landmark.what() == null ? words.name(landmark.kind()) : landmark.what());
        }
      }
      sheet.sideList(heads, texts);
    }
    if (part == null) {
      course.missing().forEach(sheet::note);
      // Last, for what a full column leaves over: the report tells these elsewhere too.
      new SideNotes(subject).grades(sheet);
    }
  }
}
