package daylight.report.draw;

import daylight.line.book.Node;
import daylight.line.book.Place;
import daylight.line.course.LocateFit;
import daylight.line.course.PlacedFinding;
import daylight.line.course.Route;
import daylight.line.course.Run;
import daylight.line.fall.Ponding;
import daylight.line.measure.Argument;
import daylight.line.measure.Measured;
import daylight.report.markup.Tag;
import daylight.report.words.Words;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The door for the drawing from the side, along the main route. */
public final class ProfileDrawing {
  private static final double HEIGHT = 520;
  private static final double AXIS = 34;
  private static final double FALL = 34;
  private static final double LABELS = 96;

  private final Subject subject;
  private final Words words;
  private final Route route;
  private final Profile profile;
  private final Sheet sheet;
  private final Legend legend;
  private final Box plot;
  private final ProfileFrame frame;
  private final Labeller labeller;
  private final Marks marks;

  private ProfileDrawing(Subject subject) {
    this.subject = subject;
    this.words = subject.words();
    this.route = subject.route();
    this.profile = Profile.along(route);
    this.sheet =
        new Sheet(
            "profile",
            subject,
            HEIGHT,
            words.say("draw.profile.title", new Argument.Text(subject.book().site().name())),
            words.say("draw.profile.desc", new Argument.Label(way())));
    this.legend = new Legend(words);
    Box body = sheet.body();
    double left = body.x() + 44;
    this.plot = new Box(left, body.y(), body.right() - left, body.height() - AXIS - FALL);
    Box inner =
        new Box(plot.x() + 14, plot.y() + LABELS, plot.width() - 28, plot.height() - LABELS - 52);
    double length = Math.max(1, route.length());
    ProfileBreaks breaks = ProfileBreaks.of(subject, route, inner.width(), words.shown());
    this.frame = ProfileFrame.of(profile, length, breaks, deepest(), inner, words.shown());
    this.labeller = new Labeller(plot);
    this.marks = new Marks(labeller, legend);
  }

  private double deepest() {
    double deepest = Double.POSITIVE_INFINITY;
    for (LocateFit fit : subject.line().locates()) {
      OptionalDouble x = route.station(fit.place());
      Measured depth = fit.depth();
      if (x.isPresent() && depth != null && profile.known() != Profile.Known.NOTHING) {
        deepest = Math.min(deepest, profile.at(x.getAsDouble()).ground() - depth.upper95());
      }
    }
    return deepest;
  }

  /** The line from the side, with all that it has to say on one sheet. */
  public static Tag draw(Subject subject) {
    return drawn(subject).sheet();
  }

  /** The same, and where a place lies on it. */
  public static Drawn drawn(Subject subject) {
    ProfileDrawing drawing = new ProfileDrawing(subject);
    return new Drawn(drawing.made().finished(), drawing::spot);
  }

  /** The same on a sheet of paper, with as many behind it as its numbers take. */
  public static List<Tag> sheets(Subject subject) {
    return drawnSheets(subject).stream().map(Drawn::sheet).toList();
  }

  /** The same sheets of paper, and where a place lies on each. */
  public static List<Drawn> drawnSheets(Subject subject) {
    ProfileDrawing drawing = new ProfileDrawing(subject);
    return Drawn.first(drawing.made().sheets(), drawing::spot);
  }

  private Optional<Spot> spot(Place place) {
    OptionalDouble station = route.station(place);
    return station.isPresent() && route.length() > 0
        ? Optional.of(spot(station.getAsDouble()))
        : Optional.empty();
  }

  private Spot spot(double x) {
    double sd = profile.known() == Profile.Known.NOTHING ? 0 : profile.at(x).bottom().sd();
    double high = Measured.Z95 * sd * frame.scale().pointsPerMetre() * frame.exaggeration();
    return new Spot(frame.x(x), bottom(x), ground(x), plot.bottom(), 0, high, 0);
  }

  private String way() {
    if (route.runs().isEmpty()) {
      return words.word("join.none");
    }
    return route.from() + " → " + route.runs().getLast().reach().downstream();
  }

  private Sheet made() {
    if (route.length() <= 0) {
      sheet.note(words.word("draw.nothing"));
      return sheet;
    }
    ProfileAxes.draw(sheet, plot, frame, profile, route, words);
    if (profile.known() == Profile.Known.NOTHING) {
      double middle = frame.y(0);
      sheet.add(
          Pen.path(
              Pen.through(
                  List.of(
                      new Point(frame.x(0), middle), new Point(frame.x(route.length()), middle)),
                  false),
              Ink.DRAIN,
              3));
    } else {
      new ProfilePipe(subject, route, profile, sheet, frame, labeller, legend).draw();
      readings();
    }
    new ProfileServices(subject, route, legend)
        .draw(sheet, frame, this::ground, plot.bottom(), labeller, marks);
    frame.breaks().draw(sheet, frame, plot, labeller, legend);
    nodes();
    labels();
    sheet.add(marks.settled());
    ProfileFall.draw(
        subject, route, sheet, frame, new Box(plot.x(), plot.bottom() + AXIS, plot.width(), FALL));
    side();
    return sheet;
  }

  /** A depth by one reading alone, with the interval that holds 95 %. */
  private void readings() {
    for (LocateFit fit : subject.line().locates()) {
      OptionalDouble x = route.station(fit.place());
      Measured depth = fit.depth();
      if (x.isPresent() && depth != null) {
        double ground = profile.at(x.getAsDouble()).ground();
        double low = frame.y(ground - depth.upper95());
        double high = frame.y(ground - depth.lower95());
        Point at = frame.at(x.getAsDouble(), ground - depth.value());
        Stroke whisker = new Stroke(at.x(), high, at.x(), low);
        sheet.add(
            Pen.at(fit.place())
                .add(Pen.line(whisker, Ink.DARK, 1))
                .add(Pen.line(new Stroke(at.x() - 2.5, high, at.x() + 2.5, high), Ink.DARK, 1))
                .add(Pen.line(new Stroke(at.x() - 2.5, low, at.x() + 2.5, low), Ink.DARK, 1))
                .add(Pen.circle(at.x(), at.y(), 2, Ink.PAPER, Ink.DARK, 1.1)));
        labeller.keepClear(new Box(at.x() - 2.5, high, 5, low - high));
        legend.use(Legend.Entry.READING);
      }
    }
  }

  private double bottom(double x) {
    return profile.known() == Profile.Known.NOTHING
        ? frame.y(0)
        : frame.y(profile.at(x).bottom().value());
  }

  private double ground(double x) {
    return profile.known() == Profile.Known.NOTHING ? frame.y(0) : frame.y(profile.at(x).ground());
  }

  private void nodes() {
    if (subject.reached(route.runs().getFirst(), route.from())) {
      node(route.from(), 0);
    }
    for (Run run : route.runs()) {
      double start = route.station(run.at(0)).orElse(0);
      double end = run.stations().isEmpty() ? 0 : run.stations().getLast().place().distance();
      if (subject.reached(run, run.reach().downstream())) {
        node(run.reach().downstream(), start + end);
      }
    }
  }

  private void node(String label, double x) {
    Node.Kind kind = subject.book().site().findNode(label).map(Node::kind).orElse(Node.Kind.END);
    Point at = new Point(frame.x(x), ground(x));
    if (kind != Node.Kind.OUTLET && kind != Node.Kind.END) {
      sheet.add(
          Pen.line(new Stroke(at.x(), at.y(), at.x(), bottom(x)), Ink.SOFT, 0.9)
              .with("stroke-dasharray", kind == Node.Kind.JUNCTION ? "2 2" : "none"));
      labeller.avoid(new Stroke(at.x(), at.y(), at.x(), bottom(x)));
    }
    Point sign = kind == Node.Kind.ACCESS ? at : new Point(at.x(), bottom(x));
    sheet.add(Symbols.node(kind, sign.x(), sign.y()));
    labeller.keepClear(Box.around(sign.x(), sign.y(), 5.5));
    legend.use(kind);
    marks.write(Tag.of("g"), sign, 5.5, Captions.node(subject, label), true);
  }

  private void labels() {
    for (LocateFit fit : subject.line().locates()) {
      OptionalDouble x = route.station(fit.place());
      if (x.isPresent()) {
        Point at = new Point(frame.x(x.getAsDouble()), ground(x.getAsDouble()));
        sheet.add(Located.drawn(subject, fit, at, legend));
        labeller.keepClear(Box.around(at.x(), at.y(), 5.5));
        marks.write(Pen.at(fit.place()), at, 5.5, Located.name(subject, fit), false);
      }
    }
    for (PlacedFinding placed : Captions.drawn(subject)) {
      route.station(placed.from()).ifPresent(x -> finding(placed, x));
    }
    for (Ponding.Pool pool : subject.answers().fall().ponding().pools()) {
      route.station(pool.to()).ifPresent(x -> pool(pool, x));
    }
  }

  private void pool(Ponding.Pool pool, double x) {
    String chance = words.say("draw.pool", new Argument.Probability(pool.probability()));
    marks.write(Pen.at(pool.to()), new Point(frame.x(x), bottom(x)), 3, chance, false);
  }

  private void finding(PlacedFinding placed, double x) {
    String symbol = Symbols.known(subject.symbol(placed.finding().kind()));
    Point at = new Point(frame.x(x), bottom(x));
    PlanCourse.ring(subject, placed, at, sheet, labeller, legend);
    marks.write(
        Pen.at(placed.from()),
        at,
        symbol.equals("stop") ? 5.5 : 3,
        symbol,
        Captions.finding(subject, route, placed),
        symbol.equals("stop"),
        Captions.rank(subject, placed));
  }

  private void side() {
    sheet.sideHeading(words.word("draw.legend"));
    sheet.side(legend.signs());
    switch (profile.known()) {
      case HEIGHTS -> {}
      case DEPTHS -> sheet.note(words.word("draw.heights_missing"));
      case NOTHING -> sheet.note(words.word("draw.depths_missing"));
    }
    List<String> others = subject.off(route);
    if (!others.isEmpty()) {
      List<Argument> labels =
          others.stream().map(Argument.Label::new).map(Argument.class::cast).toList();
      sheet.note(words.say("draw.branches", new Argument.Several(labels)));
    }
    new SideNotes(subject).water(sheet);
    sheet.key(words, marks);
  }
}
