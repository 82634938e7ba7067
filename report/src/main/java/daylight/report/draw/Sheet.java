package daylight.report.draw;

import daylight.line.answer.StopOrder;
import daylight.line.course.Route;
import daylight.line.measure.Argument;
import daylight.report.markup.Tag;
import daylight.report.words.Words;
import java.util.ArrayList;
import java.util.List;

/**
 * A Letter sheet lying on its side, with what every drawing carries: stop orders on top, title,
 * day, a side column for signs and numbers, and the notice at the foot. Points of 1/72 in.
 */
final class Sheet {
  static final double WIDTH = 792;

  /** How high a drawing may be to lie at full size on Letter and A4, with a heading and a foot. */
  static final double HIGHEST = 530;

  static final double MARGIN = 24;
  static final double SMALL = 8;
  static final double SIDE = 168;
  private static final double SIDE_LINE = 10;

  /** Between two signs of the side column, which are as high as a line and a little. */
  private static final double SIDE_GAP = 2;

  private final String id;
  private final Words words;
  private final Tag svg;
  private final Tag defs = Tag.of("defs");
  private final Box body;
  private double sideY;

  /** A line of the side column: a sign that is drawn about a point, and what it means. */
  record Sign(Tag tag, String meaning) {}

  Sheet(String id, Subject subject, double height, String title, String desc) {
    this.id = id;
    this.words = subject.words();
    this.svg =
        Tag.of("svg")
            .with("xmlns", "http://www.w3.org/2000/svg")
            .with("viewBox", "0 0 " + Tag.number(WIDTH) + " " + Tag.number(height))
            .with("role", "img")
            .with("lang", words.language().code())
            .with("aria-labelledby", id + "-title " + id + "-desc")
            .with("font-family", Typeface.FAMILY)
            .add(Tag.of("title", title).with("id", id + "-title"))
            .add(Tag.of("desc", desc).with("id", id + "-desc"))
            .add(defs)
            .add(Pen.box(new Box(0, 0, WIDTH, height), Ink.PAPER, "none"));
    double top = banner(subject);
    top = heading(subject, title, top);
    double bottom = notice(height);
    body = new Box(MARGIN, top, WIDTH - 2 * MARGIN - SIDE - 12, bottom - top);
    sideY = top + 2;
  }

  /** Where the drawing itself goes. */
  Box body() {
    return body;
  }

  /** An id that no other drawing on a page uses. */
  String unique(String name) {
    return id + "-" + name;
  }

  void define(Tag definition) {
    defs.add(definition);
  }

  void add(Tag... tag) {
    svg.add(tag);
  }

  Tag finished() {
    return svg;
  }

  private double banner(Subject subject) {
    double y = MARGIN - 8;
    Route route = subject.route();
    for (StopOrder stop : subject.answers().stops()) {
      String head =
          words.named(
              words.word("report.stop"),
              words.say(
                  "report.stop.what",
                  new Argument.Text(Words.capitalised(words.kind(stop.finding().finding().kind()))),
                  new Argument.Text(Captions.distance(words, route, stop.finding().from())),
                  new Argument.Label(route.from())));
      Box box = new Box(MARGIN, y, WIDTH - 2 * MARGIN, 36);
      svg.add(Pen.box(box, Ink.STOP, Ink.DARK).with("stroke-width", 2));
      double wide = box.width() - 20;
      svg.add(Pen.text(MARGIN + 10, y + 15, Pen.cut(head, 11, true, wide), 11, true, Ink.PAPER));
      String act = Pen.cut(words.word("report.stop.do"), 9, false, wide);
      svg.add(Pen.text(MARGIN + 10, y + 28, act, 9, false, Ink.PAPER));
      y += 42;
    }
    return y;
  }

  private double heading(Subject subject, String title, double top) {
    double baseline = top + 18;
    String day = Captions.visit(subject);
    double dayWidth = Typeface.width(day, 9, false);
    svg.add(Pen.text(WIDTH - MARGIN - dayWidth, baseline, day, 9, false, Ink.SOFT));
    double room = WIDTH - 2 * MARGIN - dayWidth - 20;
    svg.add(Pen.text(MARGIN, baseline, Pen.cut(title, 14, true, room), 14, true, Ink.DARK));
    double y = baseline + 7;
    if (subject.book().site().invented()) {
      String invented = words.word("report.invented");
      svg.add(Pen.text(MARGIN, y + 9, invented, 9, true, Ink.STOP));
      y += 14;
    }
    svg.add(Pen.line(new Stroke(MARGIN, y + 3, WIDTH - MARGIN, y + 3), Ink.DARK, 1));
    return y + 11;
  }

  private double notice(double height) {
    double y = height - MARGIN + 6;
    List<String> lines = Pen.wrap(words.word("draw.notice"), 8.5, true, WIDTH - 2 * MARGIN);
    double first = y - 11.0 * (lines.size() - 1);
    for (int i = 0; i < lines.size(); i++) {
      svg.add(Pen.text(MARGIN, first + 11.0 * i, lines.get(i), 8.5, true, Ink.DARK));
    }
    svg.add(Pen.line(new Stroke(MARGIN, first - 12, WIDTH - MARGIN, first - 12), Ink.DARK, 1));
    return first - 20;
  }

  /** Writes a heading into the side column. */
  void sideHeading(String text) {
    sideY += sideY > body.y() + 2 ? 18 : 10;
    svg.add(Pen.text(sideX(), sideY, text, 9, true, Ink.DARK));
    sideY += 6;
  }

  /** Writes signs with their meaning into the side column, as far as there is room. */
  void side(List<Sign> signs) {
    side(signs, 24);
  }

  private void side(List<Sign> signs, double indent) {
    for (Sign sign : signs) {
      List<String> lines = Pen.wrap(sign.meaning(), SMALL, false, SIDE - indent - 2);
      if (!sideHolds(lines.size())) {
        return;
      }
      svg.add(
          Tag.of("g")
              .with(
                  "transform",
                  "translate(" + Tag.number(sideX() + 8) + " " + Tag.number(sideY + 7) + ")")
              .add(sign.tag()));
      double baseline = sideY + 10;
      for (String line : lines) {
        svg.add(Pen.text(sideX() + indent, baseline, line, SMALL, false, Ink.DARK));
        baseline += SIDE_LINE;
      }
      sideY += SIDE_GAP + SIDE_LINE * lines.size();
    }
  }

  /** Whether the side column has room for so many more lines. */
  boolean sideHolds(int lines) {
    return sideY + SIDE_GAP + SIDE_LINE * lines <= body.bottom();
  }

  /** Lines of text into the side column, each behind its number or label. */
  void sideList(List<String> heads, List<String> texts) {
    List<Sign> signs = new ArrayList<>();
    double widest = 0;
    for (int i = 0; i < heads.size(); i++) {
      String head = Pen.cut(heads.get(i), SMALL, true, SIDE / 2);
      widest = Math.max(widest, Typeface.width(head, SMALL, true));
      signs.add(new Sign(Pen.text(-6, 3, head, SMALL, true, Ink.DARK), texts.get(i)));
    }
    side(signs, Math.max(24, widest + 10));
  }

  /** A sentence in the side column, where there is room for it. */
  void note(String text) {
    List<String> lines = Pen.wrap(text, SMALL, true, SIDE);
    if (sideHolds(lines.size() + 1)) {
      sideY += 6;
      for (String line : lines) {
        sideY += 10;
        svg.add(Pen.text(sideX(), sideY, line, SMALL, true, Ink.DARK));
      }
    }
  }

  /** Where the side column ends so far. */
  double sideEnd() {
    return sideY;
  }

  /** What the numbers on the drawing stand for, as far as there is room, and how many are left. */
  void key(Words words, Marks marks) {
    int count = marks.numbers().size();
    if (count == 0 || !sideHolds(4)) {
      return;
    }
    sideHeading(words.word("draw.key"));
    int written = 0;
    while (written < count && sideHolds(3)) {
      sideList(
          marks.numbers().subList(written, written + 1),
          marks.meanings().subList(written, written + 1));
      written++;
    }
    if (written < count) {
      sideY += 10;
      String more = words.say("draw.key.more", new Argument.Count(count - written));
      svg.add(Pen.text(sideX(), sideY, more, SMALL, false, Ink.DARK));
    }
  }

  private double sideX() {
    return WIDTH - MARGIN - SIDE;
  }
}
