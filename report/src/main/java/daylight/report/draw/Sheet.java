package daylight.report.draw;

import daylight.line.answer.StopOrder;
import daylight.line.measure.Argument;
import daylight.report.markup.Tag;
import daylight.report.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A Letter sheet lying on its side, with what every drawing carries: stop orders on top, title,
 * day, a side column for signs and numbers, and the notice at the foot. What the side column does
 * not hold stands in columns below the drawing, or on sheets behind it. Points of 1/72 in.
 */
final class Sheet implements Canvas {
  static final double WIDTH = 792;

  /** How high a drawing may be to lie at full size on Letter and A4, with a heading and a foot. */
  static final double HIGHEST = 530;

  static final double MARGIN = 24;

  /** How wide the drawing itself is. */
  static final double BODY = WIDTH - 2 * MARGIN - SideColumn.WIDTH - 12;

  static final double SMALL = 8;

  /** As many columns as stand beside each other below a drawing. */
  private static final int COLUMNS = 4;

  /** So many stop orders stand on top; each of the others has its sign where it is. */
  private static final int BANNERS = 3;

  /** So many meanings of one number stand in one piece, which is never broken. */
  private static final int TOGETHER = 8;

  private final String id;
  private final Subject subject;
  private final Words words;
  private final String title;
  private final String desc;
  private final Tag defs = Tag.of("defs");
  private final List<Tag> drawn = new ArrayList<>();
  private final SideColumn side = new SideColumn();
  private final List<String> notice;
  private double height;
  private Box body;
  private @Nullable String bookmark;

  /** A line of the side column: a sign that is drawn about a point, and what it means. */
  record Sign(Tag tag, String meaning) {}

  Sheet(String id, Subject subject, double height, String title, String desc) {
    this.id = id;
    this.subject = subject;
    this.words = subject.words();
    this.title = title;
    this.desc = desc;
    this.height = height;
    this.notice = Pen.wrap(words.word("draw.notice"), 8.5, true, WIDTH - 2 * MARGIN);
    double top = banner();
    top = heading(top);
    body = new Box(MARGIN, top, BODY, footTop(height) - top);
  }

  /** Where the drawing itself goes. */
  Box body() {
    return body;
  }

  /** Makes the sheet as high as it has to be for a body that ends there. */
  void endBody(double bottom) {
    height += bottom - body.bottom();
    body = new Box(body.x(), body.y(), body.width(), bottom - body.y());
  }

  /** Lets who reads it on paper go right to it by a name. */
  void bookmark(String name) {
    bookmark = name;
  }

  @Override
  public String unique(String name) {
    return id + "-" + name;
  }

  @Override
  public void define(Tag definition) {
    defs.add(definition);
  }

  @Override
  public void add(Tag... tags) {
    drawn.addAll(List.of(tags));
  }

  /** The sheet, with what the side column did not hold in columns below the drawing. */
  Tag finished() {
    List<SideColumn.Piece> rest = beside(Stream.of(side, side.tight()));
    double end = height;
    if (!rest.isEmpty()) {
      List<SideColumn.Piece> below = goingOn(rest);
      double room = SideColumn.balanced(below, COLUMNS);
      columns(SideColumn.columns(below, room), body.bottom() + 12);
      end += 12 + room + 8;
    }
    return svg(end);
  }

  /**
   * The sheet, and behind it as many as take what the side column did not hold; none for what is
   * told elsewhere.
   */
  List<Tag> sheets() {
    SideColumn needed = side.needed();
    List<SideColumn.Piece> rest = beside(Stream.of(side, side.tight(), needed, needed.tight()));
    List<Tag> sheets = new ArrayList<>(List.of(svg(height)));
    while (!rest.isEmpty()) {
      String name = id + "-on-" + sheets.size();
      String told = words.say("draw.goes_on", new Argument.Text(title));
      Sheet next = new Sheet(name, subject, HIGHEST, told, desc);
      List<SideColumn.Piece> all = goingOn(rest);
      List<List<SideColumn.Piece>> columns = SideColumn.columns(all, next.body.height() - 4);
      List<List<SideColumn.Piece>> here = columns.subList(0, Math.min(COLUMNS, columns.size()));
      next.columns(here, next.body.y() + 2);
      sheets.add(next.svg(HIGHEST));
      int written = here.stream().mapToInt(List::size).sum() - (all.size() - rest.size());
      rest = rest.subList(written, rest.size());
    }
    return sheets;
  }

  /**
   * Draws the side column in the first of these ways in which the drawing's height holds all of it;
   * what it does not hold in the usual way, where there is none.
   */
  private List<SideColumn.Piece> beside(Stream<SideColumn> ways) {
    double room = body.height() - 2;
    List<SideColumn.Piece> pieces =
        ways.map(SideColumn::pieces)
            .filter(all -> SideColumn.height(all) <= room)
            .findFirst()
            .orElse(side.pieces());
    int held = SideColumn.fitting(pieces, room);
    add(SideColumn.drawn(pieces.subList(0, held), sideX(), body.y() + 2));
    return pieces.subList(held, pieces.size());
  }

  /** The rest below the heading that it stood under. */
  private List<SideColumn.Piece> goingOn(List<SideColumn.Piece> rest) {
    if (rest.getFirst().heading()) {
      return rest;
    }
    List<SideColumn.Piece> all = side.pieces();
    String heading = "";
    for (SideColumn.Piece piece : all.subList(0, all.size() - rest.size())) {
      heading = piece.heading() ? piece.text() : heading;
    }
    SideColumn again = new SideColumn();
    again.heading(words.say("draw.goes_on", new Argument.Text(heading)));
    again.pieces().addAll(rest);
    return again.pieces();
  }

  private void columns(List<List<SideColumn.Piece>> columns, double top) {
    double step = (WIDTH - 2 * MARGIN - SideColumn.WIDTH) / (COLUMNS - 1);
    for (int i = 0; i < columns.size(); i++) {
      add(SideColumn.drawn(columns.get(i), MARGIN + i * step, top));
    }
  }

  private Tag svg(double end) {
    Tag svg =
        Tag.of("svg")
            .with("xmlns", "http://www.w3.org/2000/svg")
            .with("viewBox", "0 0 " + Tag.number(WIDTH) + " " + Tag.number(end))
            .with("role", "img")
            .with("lang", words.language().code())
            .with("aria-labelledby", id + "-title " + id + "-desc")
            .with("font-family", Typeface.FAMILY);
    if (bookmark != null) {
      svg.with("data-bookmark", bookmark);
    }
    svg.add(Tag.of("title", title).with("id", id + "-title"))
        .add(Tag.of("desc", desc).with("id", id + "-desc"))
        .add(defs)
        .add(Pen.box(new Box(0, 0, WIDTH, end), Ink.PAPER, "none"));
    drawn.forEach(svg::add);
    double first = footTop(end) + 20;
    for (int i = 0; i < notice.size(); i++) {
      svg.add(Pen.text(MARGIN, first + 11.0 * i, notice.get(i), 8.5, true, Ink.DARK));
    }
    return svg.add(
        Pen.line(new Stroke(MARGIN, first - 12, WIDTH - MARGIN, first - 12), Ink.DARK, 1));
  }

  /** Where the notice takes over from the body of a sheet that is so high. */
  private double footTop(double end) {
    return end - MARGIN + 6 - 11.0 * (notice.size() - 1) - 20;
  }

  private double banner() {
    double y = MARGIN - 8;
    List<StopOrder> stops = subject.answers().stops();
    for (StopOrder stop : stops.subList(0, Math.min(BANNERS, stops.size()))) {
      String head = words.named(words.word("report.stop"), Captions.stop(subject, stop));
      if (stops.size() > BANNERS && stop.equals(stops.get(BANNERS - 1))) {
        Argument more = new Argument.Count(stops.size() - BANNERS);
        head += " " + words.say("draw.stops.more", more);
      }
      Box box = new Box(MARGIN, y, WIDTH - 2 * MARGIN, 36);
      add(Pen.box(box, Ink.STOP, Ink.DARK).with("stroke-width", 2));
      double wide = box.width() - 20;
      add(Pen.text(MARGIN + 10, y + 15, Pen.cut(head, 11, true, wide), 11, true, Ink.PAPER));
      String act = Pen.cut(words.word("report.stop.do"), 9, false, wide);
      add(Pen.text(MARGIN + 10, y + 28, act, 9, false, Ink.PAPER));
      y += 42;
    }
    return y;
  }

  private double heading(double top) {
    double baseline = top + 18;
    String day = Captions.visit(subject);
    double dayWidth = Typeface.width(day, 9, false);
    add(Pen.text(WIDTH - MARGIN - dayWidth, baseline, day, 9, false, Ink.SOFT));
    double room = WIDTH - 2 * MARGIN - dayWidth - 20;
    add(Pen.text(MARGIN, baseline, Pen.cut(title, 14, true, room), 14, true, Ink.DARK));
    double y = baseline + 7;
    if (subject.book().site().invented()) {
      String invented = words.word("report.invented");
      add(Pen.text(MARGIN, y + 9, invented, 9, true, Ink.STOP));
      y += 14;
    }
    add(Pen.line(new Stroke(MARGIN, y + 3, WIDTH - MARGIN, y + 3), Ink.DARK, 1));
    return y + 11;
  }

  /** Writes a heading into the side column. */
  void sideHeading(String text) {
    side.heading(text);
  }

  /** Writes signs with their meaning into the side column. */
  void side(List<Sign> signs) {
    side(signs, 24);
  }

  private void side(List<Sign> signs, double indent) {
    signs.forEach(sign -> side.sign(sign.tag(), sign.meaning(), indent));
  }

  /** Lines of text into the side column, each behind its number or label. */
  void sideList(List<String> heads, List<String> texts) {
    List<Sign> signs = new ArrayList<>();
    double widest = 0;
    for (int i = 0; i < heads.size(); i++) {
      String head = Pen.cut(heads.get(i), SMALL, true, SideColumn.WIDTH / 2);
      widest = Math.max(widest, Typeface.width(head, SMALL, true));
      signs.add(new Sign(Pen.text(-6, 3, head, SMALL, true, Ink.DARK), texts.get(i)));
    }
    side(signs, Math.max(24, widest + 10));
  }

  /** What is written into the side column meanwhile is told elsewhere too. */
  void spare(Runnable writing) {
    side.spare(writing);
  }

  /** A sentence in the side column. */
  void note(String text) {
    side.note(text);
  }

  /** How high the side column is so far, were it as high as it likes. */
  double sideHeight() {
    return SideColumn.height(side.pieces()) + 2;
  }

  /** What the numbers on the drawing stand for. */
  void key(Words words, Marks marks) {
    List<String> heads = new ArrayList<>();
    List<String> texts = new ArrayList<>();
    for (int i = 0; i < marks.meanings().size(); i++) {
      List<String> all = marks.meanings().get(i);
      for (int from = 0; from < all.size(); from += TOGETHER) {
        heads.add(Integer.toString(i + 1));
        texts.add(String.join(" · ", all.subList(from, Math.min(all.size(), from + TOGETHER))));
      }
    }
    for (String text : marks.unnumbered()) {
      heads.add("–");
      texts.add(text);
    }
    if (!heads.isEmpty()) {
      sideHeading(words.word("draw.key"));
      sideList(heads, texts);
    }
  }

  private static double sideX() {
    return WIDTH - MARGIN - SideColumn.WIDTH;
  }
}
