package daylight.report.draw;

import daylight.line.course.PlacedFinding;
import daylight.line.course.Run;
import daylight.line.measure.Argument;
import daylight.line.survey.PlanPoint;
import daylight.report.cut.Part;
import daylight.report.markup.Tag;
import daylight.report.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The whole line with the outlines of its sheets, each with its number. */
final class KeyPlan {
  private static final double NUMBER = 11;

  private final Subject subject;
  private final Words words;
  private final List<Part> parts;
  private final List<List<PlanPoint>> corners;
  private final Sheet sheet;
  private final Box box;
  private final PlanFrame frame;
  private final Labeller labeller;
  private final Legend legend;
  private final Marks marks;
  private final PlanServices services;

  /**
   * The key to sheets.
   *
   * @param corners of the ground that each part shows
   */
  KeyPlan(Subject subject, List<Part> parts, List<List<PlanPoint>> corners) {
    this.subject = subject;
    this.words = subject.words();
    this.parts = parts;
    this.corners = corners;
    this.sheet =
        PlanDrawing.sheet(
            subject,
            "plan-key",
            words.say("draw.key_plan.title", new Argument.Text(subject.book().site().name())),
            words.say("draw.key_plan.desc", new Argument.Count(parts.size())));
    sheet.bookmark(words.word("draw.key_plan"));
    this.box = PlanDrawing.box(sheet);
    List<PlanPoint> extent = new ArrayList<>();
    corners.forEach(extent::addAll);
    this.frame =
        PlanFrame.of(
            extent, box, words.shown(), subject.plan(), PlanFrame.bearing(subject.route()));
    this.labeller = new Labeller(box);
    this.legend = new Legend(words);
    this.marks = new Marks(labeller, legend);
    this.services = new PlanServices(subject);
  }

  List<Tag> sheets() {
    services.draw(sheet, frame, Window.ALL, labeller, legend);
    outlines();
    PlanCourse course = new PlanCourse(subject, sheet, frame, Window.ALL, labeller, legend);
    lines();
    stops(course);
    nodes(course);
    numbers();
    course
        .nodes()
        .forEach(
            (label, at) -> marks.write(Tag.of("g"), at, 5.5, Captions.node(subject, label), true));
    sheet.add(marks.settled());
    PlanFoot.draw(sheet, frame, words);
    side(course);
    return sheet.sheets();
  }

  private void outlines() {
    for (List<PlanPoint> one : corners) {
      String d = Pen.through(one.stream().map(frame::at).toList(), true);
      sheet.add(Pen.path(d, Ink.SOFT, 0.9).with("stroke-dasharray", "6 3"));
    }
  }

  private void lines() {
    for (Run run : subject.line().runs()) {
      if (run.stations().size() > 1) {
        List<Point> path = run.stations().stream().map(s -> frame.at(s.spot())).toList();
        sheet.add(
            Tag.of("g")
                .with("data-place", run.reach().label())
                .add(Pen.path(Pen.through(path, false), Ink.DRAIN, SeenStroke.STROKE)));
        Pen.strokes(path).forEach(labeller::wall);
      }
    }
    legend.use(Legend.Entry.LINE_WHOLE);
    legend.use(Legend.Entry.SHEET);
  }

  /** What may kill is on every drawing. */
  private void stops(PlanCourse course) {
    for (PlacedFinding placed : course.findings()) {
      Point at = course.at(placed.from());
      if (at != null && course.isStop(placed)) {
        PlanCourse.ring(subject, placed, at, sheet, labeller, legend);
      }
    }
  }

  private void nodes(PlanCourse course) {
    course
        .nodes()
        .forEach(
            (label, at) -> {
              sheet.add(Symbols.node(subject.kind(label), at.x(), at.y()));
              labeller.keepClear(Box.around(at.x(), at.y(), 5.5));
              legend.use(subject.kind(label));
            });
  }

  /** A number and its room. */
  private record Numbered(String number, Labeller.Spot spot) {}

  /**
   * Each number stands as near to the middle of its sheet as the drain lets it; of more sheets than
   * there is room for only every second is numbered, or every fifth: the others lie between.
   */
  private void numbers() {
    for (int every : new int[] {1, 2, 5, 10, 20, 50}) {
      Labeller tried = labeller.copy();
      List<Numbered> all = numbered(every, tried);
      if (all.size() == (parts.size() + every - 1) / every) {
        all.forEach(this::number);
        return;
      }
    }
  }

  private List<Numbered> numbered(int every, Labeller room) {
    List<Numbered> all = new ArrayList<>();
    for (int i = 0; i < parts.size(); i += every) {
      String number = Integer.toString(parts.get(i).number());
      double width = Typeface.width(number, NUMBER, true);
      List<Point> anchors = new ArrayList<>(List.of(frame.at(parts.get(i).middle())));
      corners.get(i).forEach(corner -> anchors.add(frame.at(corner)));
      Optional<Labeller.Spot> spot =
          anchors.stream()
              .map(at -> room.place(at.x(), at.y(), 3, width, NUMBER + 2))
              .flatMap(Optional::stream)
              .findFirst();
      spot.ifPresent(found -> all.add(new Numbered(number, found)));
    }
    return all;
  }

  private void number(Numbered one) {
    Box room = one.spot().box();
    labeller.keepClear(room);
    if (one.spot().leader() != null) {
      sheet.add(Pen.line(one.spot().leader(), Ink.SOFT, 0.6));
    }
    double baseline = room.middleY() + (Typeface.ASCENT - Typeface.DESCENT) * NUMBER / 2;
    sheet.add(Pen.rimmed(room.x(), baseline, one.number(), NUMBER, true));
  }

  private void side(PlanCourse course) {
    sheet.sideHeading(words.word("draw.legend"));
    sheet.side(legend.signs());
    new SideNotes(subject).grades(sheet);
    services.notes(sheet);
    sheet.sideHeading(words.word("draw.sheets"));
    sheet.sideList(
        parts.stream().map(part -> Integer.toString(part.number())).toList(),
        parts.stream().map(part -> PlanSheets.stretch(subject, part)).toList());
    sheet.key(words, marks);
    course.missing().forEach(sheet::note);
  }
}
