package daylight.report.draw;

import daylight.line.book.Landmark;
import daylight.line.dig.DigTarget;
import daylight.line.dig.ServiceFound;
import daylight.line.dig.TapeTies;
import daylight.line.measure.Argument;
import daylight.line.measure.Measured;
import daylight.line.measure.Shown;
import daylight.line.survey.PlanPoint;
import daylight.report.markup.Tag;
import daylight.report.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;

/**
 * The door for the surroundings of a dig, as small as a card has room for: the box to open, the
 * drain with its band, the two tapes that find the spot, landmarks, and marks of other services. It
 * tells by strokes, hatching and words, never by colour alone, and says so where no tape or no
 * depth was measured.
 */
public final class DigSketch implements Canvas {
  /** As wide as half a card is on either paper, points. */
  private static final double WIDTH = 262;

  /** What is shown keeps so far from the frame, points. */
  private static final double MARGIN = 20;

  private static final double BAR_PART = 34;

  private static final double FOOT_ROOM = 34;
  private static final double LINE = 10;

  /** Nobody sets out from a larger drawing; our own choice, without a source. */
  private static final double LARGEST = 50;

  /** So much ground is shown around a box that no tape finds, metres. */
  private static final double AROUND = 3;

  private final Subject subject;
  private final DigTarget target;
  private final Words words;
  private final String id;
  private final double height;
  private final Tag defs = Tag.of("defs");
  private final List<Tag> drawn = new ArrayList<>();
  private final List<String> notes = new ArrayList<>();
  private final SortedMap<String, PlanPoint> points;
  private final Box box;
  private final PlanFrame frame;
  private final Window window;
  private final Labeller labeller;
  private final Legend legend;
  private final Marks marks;

  private DigSketch(Subject subject, DigTarget target, String id, double height) {
    this.subject = subject;
    this.target = target;
    this.words = subject.words();
    this.id = id;
    this.height = height;
    this.points = subject.points();
    this.box = new Box(1, 1, WIDTH - 2, height - FOOT_ROOM - 1);
    this.frame = frame();
    this.window = new Window(box.grown(-2));
    this.labeller = new Labeller(box.grown(-2));
    this.legend = new Legend(words);
    this.marks = new Marks(labeller, legend);
  }

  /**
   * The surroundings of a dig.
   *
   * @param id that no other drawing on the page has
   * @param height of it without the lines below, points
   */
  public static Tag draw(Subject subject, DigTarget target, String id, double height) {
    return new DigSketch(subject, target, id, height).made();
  }

  private PlanFrame frame() {
    List<PlanPoint> extent = new ArrayList<>(target.box().corners());
    TapeTies ties = target.ties();
    if (ties != null) {
      extent.add(landmark(ties.first()));
      extent.add(landmark(ties.second()));
    } else {
      PlanPoint at = target.spot();
      extent.add(new PlanPoint(at.x() - AROUND, at.y() - AROUND));
      extent.add(new PlanPoint(at.x() + AROUND, at.y() + AROUND));
    }
    PlanFrame fitting =
        PlanFrame.of(
            extent,
            box.grown(PlanFrame.ROOM_FOR_LABELS - MARGIN),
            words.shown(),
            subject.plan(),
            target.box().bearing());
    double largest = words.shown() == Shown.METRES ? LARGEST : 48;
    if (fitting.scale().n() >= largest) {
      return fitting;
    }
    // The same ground in the middle, but no larger than that.
    double x = extent.stream().mapToDouble(PlanPoint::x).average().orElse(0);
    double y = extent.stream().mapToDouble(PlanPoint::y).average().orElse(0);
    return PlanFrame.about(new PlanPoint(x, y), box, new Scale(largest), fitting.up());
  }

  private PlanPoint landmark(TapeTies.Tape tape) {
    PlanPoint at = points.get(tape.landmark());
    if (at == null) {
      throw new IllegalArgumentException("a tape must start somewhere, was " + tape.landmark());
    }
    return at;
  }

  private Tag made() {
    PlanServices services = new PlanServices(subject);
    services.draw(this, frame, window, labeller, legend);
    PlanCourse course = new PlanCourse(subject, this, frame, window, labeller, legend);
    course.pipes();
    open();
    tapes();
    landmarks();
    services.labels(frame, window, marks);
    nodes(course);
    add(marks.settled());
    add(Pen.box(box, "none", Ink.DARK).with("stroke-width", 0.8));
    Box body = new Box(box.x(), box.y(), box.width(), height - 1);
    PlanFoot.measure(this, body, frame, words, BAR_PART);
    told();
    return svg();
  }

  /** The box to open, with how deep; its spot is where the tapes meet. */
  private void open() {
    List<Point> corners = target.box().corners().stream().map(frame::at).toList();
    add(Pen.path(Pen.through(corners, true), Ink.DARK, 2.2));
    List<Point> round = new ArrayList<>(corners);
    round.add(corners.getFirst());
    Pen.strokes(round).forEach(labeller::wall);
    Point at = frame.at(target.spot());
    add(Pen.path(cross(at), Ink.DARK, 1.6));
    labeller.keepClear(Box.around(at.x(), at.y(), 5));
    String size =
        words.say(
            "draw.sketch.box",
            new Argument.Length(target.box().along()),
            new Argument.Length(target.box().across()));
    double clear = frame.length(target.box().across()) / 2 + 3;
    marks.write(Tag.of("g"), at, clear, null, size, true, Marks.STOP);
    marks.write(Tag.of("g"), at, clear, null, depth(), true, Marks.STOP);
  }

  private static String cross(Point at) {
    String x = Tag.number(at.x());
    String y = Tag.number(at.y());
    return "M" + x + " " + y + "m-4 -4l8 8m0 -8l-8 8";
  }

  private String depth() {
    Measured depth = target.crown() == null ? target.invert() : target.crown();
    return depth == null
        ? words.word("draw.sketch.no_depth")
        : words.say(
            target.crown() == null ? "draw.sketch.invert" : "draw.sketch.crown",
            new Argument.Length(Math.max(0, depth.lower95())),
            new Argument.Length(Math.max(0, depth.upper95())));
  }

  private void tapes() {
    TapeTies ties = target.ties();
    if (ties == null) {
      notes.add(words.word("draw.sketch.no_tie"));
      return;
    }
    for (TapeTies.Tape tape : List.of(ties.first(), ties.second())) {
      Point from = frame.at(landmark(tape));
      Point to = frame.at(target.spot());
      Stroke stroke = new Stroke(from.x(), from.y(), to.x(), to.y());
      add(Pen.line(stroke, Ink.DARK, 1).with("stroke-dasharray", "1.5 2.5"));
      labeller.avoid(stroke);
      String text =
          words.say(
              "draw.sketch.tape",
              new Argument.Label(tape.landmark()),
              new Argument.UncertainLength(tape.length()));
      Point middle = new Point((from.x() + to.x()) / 2, (from.y() + to.y()) / 2);
      marks.write(Tag.of("g"), middle, 2, null, text, true, Marks.STOP);
    }
  }

  private void landmarks() {
    for (Landmark landmark : subject.book().site().landmarks()) {
      PlanPoint spot = points.get(landmark.label());
      if (spot != null && window.holds(frame.at(spot))) {
        Point at = frame.at(spot);
        add(Symbols.landmark(landmark.kind(), at.x(), at.y()));
        labeller.keepClear(Box.around(at.x(), at.y(), 4));
        String what = landmark.what() == null ? words.name(landmark.kind()) : landmark.what();
        marks.write(Tag.of("g"), at, 4, null, landmark.label() + " " + what, false, Marks.CARE);
      }
    }
  }

  private void nodes(PlanCourse course) {
    course
        .nodes()
        .forEach(
            (label, at) -> {
              add(Symbols.node(subject.kind(label), at.x(), at.y()));
              labeller.keepClear(Box.around(at.x(), at.y(), 5.5));
              marks.write(Tag.of("g"), at, 5.5, Captions.node(subject, label), false);
            });
  }

  /** What the strokes cannot say. */
  private void told() {
    notes.add(frame.scale().say(words) + " · " + PlanFoot.way(frame, words));
    notes.add(words.word("draw.sketch.signs"));
    for (ServiceFound one : new PlanServices(subject).unplaced()) {
      notes.add(words.say("draw.service.open", new Argument.Text(Captions.service(subject, one))));
    }
    for (int i = 0; i < marks.meanings().size(); i++) {
      notes.add((i + 1) + " " + String.join(" · ", marks.meanings().get(i)));
    }
    notes.addAll(marks.unnumbered());
  }

  private Tag svg() {
    List<String> lines = new ArrayList<>();
    notes.forEach(note -> lines.addAll(Pen.wrap(note, Sheet.SMALL, false, WIDTH - 4)));
    double end = height + 2 + LINE * lines.size() + 2;
    Tag svg =
        Tag.of("svg")
            .with("xmlns", "http://www.w3.org/2000/svg")
            .with("viewBox", "0 0 " + Tag.number(WIDTH) + " " + Tag.number(end))
            .with("class", "sketch")
            .with("role", "img")
            .with("lang", words.language().code())
            .with("aria-labelledby", unique("title") + " " + unique("desc"))
            .with("font-family", Typeface.FAMILY)
            .add(Tag.of("title", words.word("draw.sketch.title")).with("id", unique("title")))
            .add(Tag.of("desc", desc()).with("id", unique("desc")))
            .add(defs);
    drawn.forEach(svg::add);
    for (int i = 0; i < lines.size(); i++) {
      double baseline = height + LINE * (i + 1);
      svg.add(Pen.text(2, baseline, lines.get(i), Sheet.SMALL, false, Ink.DARK));
    }
    return svg;
  }

  /** What it shows, for who cannot see it. */
  private String desc() {
    List<String> said = new ArrayList<>();
    said.add(words.word("draw.sketch.desc"));
    TapeTies ties = target.ties();
    if (ties == null) {
      said.add(words.word("draw.sketch.no_tie"));
    } else {
      for (TapeTies.Tape tape : List.of(ties.first(), ties.second())) {
        said.add(
            words.say(
                    "draw.sketch.tape",
                    new Argument.Label(tape.landmark()),
                    new Argument.UncertainLength(tape.length()))
                + ".");
      }
    }
    said.add(Words.capitalised(depth()) + ".");
    return String.join(" ", said);
  }

  @Override
  public void add(Tag... tags) {
    drawn.addAll(List.of(tags));
  }

  @Override
  public void define(Tag definition) {
    defs.add(definition);
  }

  @Override
  public String unique(String name) {
    return id + "-" + name;
  }
}
